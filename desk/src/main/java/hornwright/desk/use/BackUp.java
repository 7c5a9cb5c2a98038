package hornwright.desk.use;

import hornwright.desk.journal.Backup;
import hornwright.desk.journal.Restore;
import hornwright.desk.json.BadInput;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;

/** Copies everything the shop keeps to a folder, and reads the copy back to prove that it can be restored. */
public record BackUp(Shop shop) {
    /** @param folder must not exist yet */
    public Backup.Made to(Path folder) {
        if (Files.exists(folder)) {
            throw new BadInput(
                    "", folder + " is there already", "a new folder for each backup, such as " + folder + "-2");
        }
        Backup.Made made = new Backup(shop.data()).writeTo(folder);
        Restore.from(folder);
        return made;
    }

    /** Brings a backup back into a place where no shop is yet. */
    public static Backup.Made restore(Path folder, OpenShop.Where where, Clock clock) {
        if (!Files.isDirectory(folder)) {
            throw new BadInput("", "there is no folder " + folder, "the folder a backup was written to");
        }
        Restore restore = Restore.from(folder);
        if (where instanceof OpenShop.Where.Folder target
                && hornwright.desk.journal.DataFolder.holdsShop(target.path())) {
            throw new BadInput(
                    "",
                    "there is a shop in " + target.path() + " already",
                    "an empty folder; move the old one away first");
        }
        try (var data = OpenShop.data(where, clock)) {
            Backup.Made made = restore.into(data);
            new RebuildCards(Shop.lookInto(data)).all();
            return made;
        }
    }
}
