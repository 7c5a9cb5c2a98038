package hornwright.desk.use;

import hornwright.desk.journal.Place;
import hornwright.desk.journal.PostgresServer;
import org.junit.jupiter.api.Tag;

@Tag("postgres")
final class ShopOnPostgresTest extends ShopContract {
    private final String url = PostgresServer.freshDatabase();

    @Override
    Place place() {
        return new Place.OnServer(url);
    }
}
