package hornwright.desk.use;

import hornwright.desk.journal.Place;
import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;

final class ShopOnSqliteTest extends ShopContract {
    @TempDir
    @SuppressWarnings("NullAway.Init")
    private Path folder;

    @Override
    Place place() {
        return new Place.InFolder(folder);
    }
}
