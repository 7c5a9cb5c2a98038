package hornwright.bench.plan.bounce;

import hornwright.bench.bounce.OpeningKey;
import hornwright.bench.horn.Key;
import hornwright.bench.horn.PadCentre;
import hornwright.bench.horn.PadCentreKind;
import hornwright.bench.material.Materials;
import hornwright.bench.material.Sheet;
import hornwright.bench.plan.Becauses;
import hornwright.bench.plan.Reasons;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Lets the keys of a horn go as planned, and one of them with other centres and bumpers, what the maker fitted first. */
public final class BounceChapter {
    /** What was let go, and why each number is so. */
    public record Answer(List<Bounced> keys, Becauses becauses) {
        public Answer {
            keys = List.copyOf(keys);
        }

        public Optional<Bounced> of(String key) {
            return keys.stream().filter(one -> one.key().equals(key)).findFirst();
        }
    }

    private static final double BRASS = 8.5e-3;
    private static final double PLASTIC = 1.2e-3;

    /** What a foot is commonly covered with, in the words of the table of materials. */
    private static final List<String> BUMPERS = List.of(
            "natural cork", "woven wool felt", "dense wool felt", "cork-rubber composite", "synthetic felt", "leather");

    private final BounceQuestion ask;
    private final Materials materials;
    private final Reasons reasons = new Reasons();
    private final LettingGo letting;

    private BounceChapter(BounceQuestion ask) {
        this.ask = ask;
        this.materials = Materials.of(ask.rules());
        this.letting = new LettingGo(materials, reasons);
    }

    /** Every key that a spring opens, as the plan has it. */
    public static Answer of(BounceQuestion ask) {
        BounceChapter chapter = new BounceChapter(ask);
        List<Bounced> keys = ask.keywork().keys().stream()
                .flatMap(key -> chapter.planned(key).stream())
                .flatMap(key -> chapter.letting.of(key, "as planned", false).stream())
                .toList();
        return new Answer(keys, chapter.reasons.table());
    }

    /** One key: as built, as planned, then other centres and other bumpers; empty if no spring opens it. */
    public static Answer sideBySide(BounceQuestion ask, Key key) {
        BounceChapter chapter = new BounceChapter(ask);
        return new Answer(chapter.beside(key), chapter.reasons.table());
    }

    /** One key on what this plan lays under it; without a number if no spring opens it. */
    public static Answer tried(BounceQuestion ask, Key key, String what, boolean period) {
        BounceChapter chapter = new BounceChapter(ask);
        List<Bounced> keys = chapter.planned(key).stream()
                .flatMap(one -> chapter.letting.of(one, what, period).stream())
                .toList();
        return new Answer(keys, chapter.reasons.table());
    }

    private Optional<OpeningKey> planned(Key key) {
        return OpeningKey.of(ask.keywork(), key, materials).map(built -> built.on(ask.sheets(key)));
    }

    private List<Bounced> beside(Key key) {
        Optional<OpeningKey> built = OpeningKey.of(ask.keywork(), key, materials);
        Optional<OpeningKey> planned = planned(key);
        List<Bounced> all = new ArrayList<>();
        if (built.isEmpty() || planned.isEmpty()) {
            return all;
        }
        letting.of(built.get(), "as built: " + words(built.get()), true).ifPresent(all::add);
        letting.of(planned.get(), "as planned: " + words(planned.get()), false).ifPresent(all::add);
        centres(planned.get(), all);
        bumpers(key, planned.get(), all);
        return all;
    }

    private static String words(OpeningKey key) {
        return String.join(
                        " on ",
                        key.cushion().sheets().stream().map(Sheet::material).toList())
                + (key.cup().centre().kind() == PadCentreKind.BARE
                        ? ", bare pad"
                        : ", " + key.cup().centre().kind().word());
    }

    private void centres(OpeningKey key, List<Bounced> all) {
        PadCentre built = key.cup().centre();
        double hole = ask.keywork().holeOf(key.cup()).diameterMm();
        if (built.kind() != PadCentreKind.BARE) {
            letting.of(key.withCentre(0, 1, 0), "bare pad", false).ifPresent(all::add);
        }
        if (built.kind() != PadCentreKind.RIVET) {
            letting.of(key.withCentre(0.3, 6, 1), "rivet, 0.3 g", false).ifPresent(all::add);
        }
        disc(key, "plastic resonator", 0.6 * hole, 1.2, PLASTIC, all);
        disc(key, "brass resonator", 0.6 * hole, 0.4, BRASS, all);
        disc(key, "heavy brass resonator", hole - ask.rules().value("resonator.clearance_mm"), 0.8, BRASS, all);
    }

    /** A plain disc; its weight is area x thickness x density, in g. */
    private void disc(
            OpeningKey key, String what, double diameterMm, double thicknessMm, double density, List<Bounced> all) {
        double grams = Math.PI / 4 * diameterMm * diameterMm * thicknessMm * density;
        String words = String.format(java.util.Locale.ROOT, "%s %.0f mm, %.1f g", what, diameterMm, grams);
        letting.of(key.withCentre(grams, diameterMm, thicknessMm), words, false).ifPresent(all::add);
    }

    private void bumpers(Key key, OpeningKey planned, List<Bounced> all) {
        double thickness = planned.cushion().thicknessMm();
        List<String> there = ask.sheets(key).stream().map(Sheet::material).toList();
        for (String material : BUMPERS) {
            if (!there.equals(List.of(material))) {
                letting.of(planned.on(List.of(new Sheet(material, thickness))), material + " under the foot", false)
                        .ifPresent(all::add);
            }
        }
    }
}
