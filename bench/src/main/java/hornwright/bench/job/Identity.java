package hornwright.bench.job;

import hornwright.bench.horn.Switches;
import hornwright.bench.horn.Voice;
import org.jspecify.annotations.Nullable;

/**
 * Which horn lies on the bench.
 *
 * @param keywork id of the keywork it is planned by
 * @param serial as stamped; null when there is none or it cannot be read
 */
public record Identity(
        String keywork, String maker, Voice voice, @Nullable Long serial, Switches switches) {
    /** "alto 41207" or "alto without a serial". */
    public String inWords() {
        return voice.word() + (serial == null ? " without a serial" : " " + serial);
    }
}
