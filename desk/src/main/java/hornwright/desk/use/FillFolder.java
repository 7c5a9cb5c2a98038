package hornwright.desk.use;

import hornwright.desk.json.BadInput;
import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.LinkedHashMap;
import java.util.Map;

/** Puts files into a folder: first all of them under passing names, then each to its place, so that none is ever half there. */
public final class FillFolder {
    private FillFolder() {}

    /** Makes the folder when it is not there; files of the same name are replaced, others left alone. */
    public static void with(Map<String, byte[]> files, Path folder) throws IOException {
        try {
            Files.createDirectories(folder);
        } catch (FileAlreadyExistsException inTheWay) {
            throw new BadInput("", folder + " is a file, not a folder", "--out plan");
        }
        Map<Path, Path> passing = new LinkedHashMap<>();
        try {
            for (Map.Entry<String, byte[]> file : files.entrySet()) {
                // A temporary file of the library's making would be closed to everybody else in the shop.
                Path beside = folder.resolve(
                        "." + file.getKey() + "." + ProcessHandle.current().pid() + ".part");
                passing.put(beside, folder.resolve(file.getKey()));
                Files.write(beside, file.getValue());
            }
            for (Map.Entry<Path, Path> move : passing.entrySet()) {
                Files.move(move.getKey(), move.getValue(), StandardCopyOption.REPLACE_EXISTING);
            }
        } finally {
            for (Path beside : passing.keySet()) {
                Files.deleteIfExists(beside);
            }
        }
    }
}
