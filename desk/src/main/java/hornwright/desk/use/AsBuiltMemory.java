package hornwright.desk.use;

import hornwright.bench.archive.AsBuiltAt;
import hornwright.bench.horn.Voice;
import hornwright.bench.job.Archives;
import hornwright.bench.job.History;
import hornwright.bench.job.Identity;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** What the archive says of a serial, remembered until the archive grows: weighing all witnesses takes many milliseconds. */
final class AsBuiltMemory {
    private static final int MOST = 500;

    private record Asked(long archiveSeq, String maker, Voice voice, long serial) {}

    private final Shop shop;
    private final Map<Asked, Map<String, AsBuiltAt>> answers = new ConcurrentHashMap<>();

    AsBuiltMemory(Shop shop) {
        this.shop = shop;
    }

    /** By place; empty for a horn without a serial. */
    Map<String, AsBuiltAt> of(Identity horn) {
        Long serial = horn.serial();
        if (serial == null) {
            return Map.of();
        }
        History<Archives> archive = shop.archive();
        if (answers.size() > MOST) {
            answers.clear();
        }
        return answers.computeIfAbsent(
                new Asked(archive.seq(), horn.maker(), horn.voice(), serial),
                asked -> archive.state().of(asked.maker()).asBuilt(asked.voice(), asked.serial()));
    }
}
