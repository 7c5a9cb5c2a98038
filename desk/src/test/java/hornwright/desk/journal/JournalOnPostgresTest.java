package hornwright.desk.journal;

import org.junit.jupiter.api.Tag;

@Tag("postgres")
class JournalOnPostgresTest extends JournalContract {
    private final String url = PostgresServer.freshDatabase();

    @Override
    Place place() {
        return new Place.OnServer(url);
    }
}
