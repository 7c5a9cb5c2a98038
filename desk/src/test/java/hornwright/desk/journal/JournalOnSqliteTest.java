package hornwright.desk.journal;

import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;

class JournalOnSqliteTest extends JournalContract {
    @TempDir
    Path folder;

    @Override
    Place place() {
        return new Place.InFolder(folder);
    }
}
