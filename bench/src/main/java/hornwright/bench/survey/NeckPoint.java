package hornwright.bench.survey;

import java.util.Optional;
import java.util.stream.Stream;

/** What is measured on a neck, by the words it is kept under. */
public enum NeckPoint {
    TENON_UPPER("tenon, upper end, one way", "Tenon, upper end"),
    TENON_UPPER_ACROSS("tenon, upper end, the other way", "Upper end, across"),
    TENON_LOWER("tenon, lower end, one way", "Tenon, lower end"),
    TENON_LOWER_ACROSS("tenon, lower end, the other way", "Lower end, across"),
    RECEIVER("receiver, inside, screw off", "Receiver inside, screw off"),
    TENON_LENGTH("tenon, length in the receiver", "Length in the receiver"),
    BORE("mouthpiece bore", "Mouthpiece bore"),
    NECK_END("neck outside, at its small end", "Neck at its end"),
    CORK_BACK("neck outside, where the cork ends", "Neck where the cork ends"),
    CORK_LENGTH("cork length", "Cork length");

    private final String words;
    private final String label;

    NeckPoint(String words, String label) {
        this.words = words;
        this.label = label;
    }

    /** The point of the reading. */
    public String words() {
        return words;
    }

    /** What stands over its field. */
    public String label() {
        return label;
    }

    /** Whether it is a size of the neck itself; that of a mouthpiece or a strip no work on the neck changes. */
    public boolean isOfTheNeck() {
        return this != BORE && this != CORK_LENGTH;
    }

    public static Optional<NeckPoint> at(String point) {
        return Stream.of(values()).filter(one -> one.words.equals(point)).findFirst();
    }
}
