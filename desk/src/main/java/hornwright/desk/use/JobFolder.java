package hornwright.desk.use;

import hornwright.bench.job.Job;
import hornwright.bench.job.PhotoTick;
import hornwright.bench.survey.Finding;
import hornwright.bench.survey.Photo;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;

/** What an exported job looks like on the disk: the names of its files, and which pictures belong to it. */
final class JobFolder {
    static final String READ_ME = "README.txt";
    static final String JOB = "job.json";
    static final String OWNER = "owner.json";
    static final String READINGS = "readings.csv";
    static final String FINDINGS = "findings.csv";
    static final String DECISIONS = "decisions.csv";
    static final String WORK = "work.csv";
    static final String NOTES = "notes.csv";
    static final String PLAY_TESTS = "play-tests.csv";
    static final String HISTORY = "history.csv";
    static final String KEYWORK = "keywork.json";
    static final String PHOTOS = "photos";

    private JobFolder() {}

    /** The pictures a job names, by their SHA-256, each with what it shows. */
    static Map<String, String> pictures(Job job) {
        Map<String, String> pictures = new LinkedHashMap<>();
        for (PhotoTick tick : job.photos().values()) {
            if (tick.file() != null) {
                pictures.putIfAbsent(tick.file(), tick.shot());
            }
        }
        Collection<Finding> findings = job.findings().places();
        findings.stream()
                .filter(finding -> finding.photo() != null)
                .forEach(finding -> pictures.putIfAbsent(Objects.requireNonNull(finding.photo()), finding.place()));
        for (Photo photo : job.keeping().photos().values()) {
            String shows = Stream.of(photo.shot(), photo.place())
                            .filter(Objects::nonNull)
                            .findFirst()
                            .orElse("horn")
                    + " " + photo.moment().word();
            pictures.putIfAbsent(photo.file(), shows);
            pictures.putIfAbsent(photo.small(), shows + " small");
        }
        return pictures;
    }

    /** A name a person recognises: what it shows, then enough of the hash to tell it from others. */
    static String pictureName(String sha256, String shows, String media) {
        String ending = switch (media) {
            case "image/jpeg" -> ".jpg";
            case "image/png" -> ".png";
            case "image/webp" -> ".webp";
            case "audio/wav", "audio/x-wav" -> ".wav";
            default -> ".bin";
        };
        return shows.replaceAll("[^A-Za-z0-9.-]", "-") + "-" + sha256.substring(0, 8) + ending;
    }

    static String mediaOf(String name) {
        String ending = name.substring(name.lastIndexOf('.') + 1);
        return switch (ending) {
            case "jpg" -> "image/jpeg";
            case "png" -> "image/png";
            case "webp" -> "image/webp";
            case "wav" -> "audio/wav";
            default -> "application/octet-stream";
        };
    }
}
