package hornwright.bench.plan.missing;

import hornwright.bench.horn.Cup;
import hornwright.bench.horn.KeyGroup;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.Place;
import hornwright.bench.horn.PlaceKind;
import hornwright.bench.horn.Rest;
import hornwright.bench.plan.Missing;
import hornwright.bench.plan.NumberName;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.plan.heights.HeightAnswer;
import hornwright.bench.plan.measured.Measurements;
import hornwright.bench.plan.pads.PadAnswer;
import hornwright.bench.plan.treatment.PlaceTreatment;
import hornwright.bench.rules.ShopRules;
import hornwright.bench.survey.ReadingKind;
import hornwright.bench.survey.Stage;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

/** Gathers the wishes and ranks them. */
public final class MissingChapter {
    /** Everything the wishes depend on; answers by cup id, treatments by place. */
    public record Question(
            Keywork keywork,
            boolean serialKnown,
            boolean useAgreed,
            Stage stage,
            Measurements measured,
            Map<String, PadAnswer> pads,
            Map<String, HeightAnswer> heights,
            Map<String, PlaceTreatment> treatments,
            ShopRules rules) {}

    private record Wish(Missing missing, double rank) {}

    /** Smaller holes are not worth a feeler under a disc. */
    private static final double DISC_FROM_MM = 20;

    private static final int SECONDS_A_KIND = 10;

    private final Question ask;
    private final List<Wish> wishes = new ArrayList<>();

    private MissingChapter(Question ask) {
        this.ask = ask;
    }

    /** Most useful first; wishes of equal use in the order of the keywork. */
    public static List<Missing> of(Question ask) {
        MissingChapter chapter = new MissingChapter(ask);
        chapter.horn();
        ask.keywork().cups().forEach(chapter::cup);
        chapter.groups();
        return chapter.wishes.stream()
                .sorted(Comparator.comparingDouble(Wish::rank).reversed())
                .map(Wish::missing)
                .toList();
    }

    private void horn() {
        if (!ask.serialKnown()) {
            wish(Worth.STOPS_AN_ORDER, ReadingKind.SERIAL, "horn", "serial number", "what is as built at this serial");
        }
        if (!ask.useAgreed()) {
            look(Worth.STOPS_AN_ORDER, "horn", "ask the owner what the horn is for", 20, "what may be kept");
        }
        if (ask.measured().all(ReadingKind.STAMP).findAny().isEmpty()) {
            wish(
                    Worth.SETS_THE_ORDER,
                    ReadingKind.STAMP,
                    "neck",
                    "assembly numbers of body, neck, keys and guards",
                    "whether the horn is of one piece");
        }
        if (ask.measured().all(ReadingKind.PLAY).findAny().isEmpty()
                && ask.stage().compareTo(Stage.KEYS_FITTED) < 0) {
            look(
                    Worth.OPENS_A_WINDOW,
                    "horn",
                    "feel every key for play; note only those that are clear or loose",
                    60,
                    "which keys are fitted before their pads are tried");
        }
        if (ask.stage() == Stage.ARRIVAL) {
            baseline(ReadingKind.LEAK, "total leak, all keys shut");
            baseline(ReadingKind.TUNING, "tuning, a few long tones");
        }
    }

    private void baseline(ReadingKind kind, String what) {
        if (ask.measured().all(kind).findAny().isEmpty()) {
            add(
                    new Missing(kind, "horn", what, List.of("before and after"), kind.seconds(), true),
                    Worth.SETS_THE_ORDER);
        }
    }

    private void cup(Cup cup) {
        String name = ask.keywork().nameOf(cup).display();
        diameters(cup, name);
        heights(cup, name);
        landing(cup, name);
        if (!has(ReadingKind.RIM_GAP, cup.hole())
                && ask.stage().compareTo(Stage.HOLES_LEVEL) < 0
                && ask.keywork().holeOf(cup).diameterMm() >= DISC_FROM_MM) {
            wish(
                    Worth.SETS_THE_ORDER,
                    ReadingKind.RIM_GAP,
                    cup.hole(),
                    name + ": worst gap under a flat disc, and where",
                    "whether the hole is levelled first");
        }
    }

    private void diameters(Cup cup, String name) {
        int read = ask.measured().of(ReadingKind.CUP_INSIDE, cup.id()).size();
        if (read == 0) {
            add(
                    new Missing(
                            ReadingKind.CUP_INSIDE,
                            cup.id(),
                            name + ": cup inside diameter, two ways",
                            List.of("pad diameter", "the order"),
                            2 * ReadingKind.CUP_INSIDE.seconds(),
                            false),
                    Worth.STOPS_AN_ORDER);
        } else if (read == 1) {
            wish(
                    Worth.SHARPENS,
                    ReadingKind.CUP_INSIDE,
                    cup.id(),
                    name + ": cup inside diameter the other way",
                    "whether the cup is oval");
        }
    }

    private void heights(Cup cup, String name) {
        boolean open = cup.rest() == Rest.OPEN;
        boolean early = ask.stage() == Stage.ARRIVAL;
        if (early && ask.measured().before(ReadingKind.FRONT_HEIGHT, cup.id()).isEmpty()) {
            add(
                    new Missing(
                            ReadingKind.FRONT_HEIGHT,
                            cup.id(),
                            name + ": front height, before strip-down" + (open ? "" : ", key pressed fully open"),
                            List.of("baseline", "odd steps", "foot thickness"),
                            ReadingKind.FRONT_HEIGHT.seconds(),
                            true),
                    open ? Worth.LOST_AT_STRIP_DOWN : Worth.SHARPENS);
        }
        HeightAnswer answer = ask.heights().get(cup.id());
        if (answer != null && answer.asItStands() != null && answer.foot() != null) {
            foot(answer, cup, name);
        }
    }

    private void foot(HeightAnswer answer, Cup cup, String name) {
        String foot = Objects.requireNonNull(answer.foot());
        PlannedNumber change = answer.footNumbers().get(NumberName.CHANGE);
        boolean worth = change != null
                && Math.abs(change.value() * ratio(answer)) > ask.rules().value("height.tell_mm");
        boolean unknown = ask.stage().compareTo(Stage.CORKED) < 0 && !thicknessKnown(foot);
        if (worth && unknown) {
            wish(
                    Worth.SETS_THE_ORDER,
                    ReadingKind.THICKNESS,
                    foot,
                    name + ": thickness of the foot as it is",
                    "how thick the new one is");
        }
        if (worth && !has(ReadingKind.TRIAL_SHIM, cup.key()) && !has(ReadingKind.AXIS_TO_FOOT, cup.key())) {
            wish(
                    Worth.SETS_THE_ORDER,
                    ReadingKind.TRIAL_SHIM,
                    cup.key(),
                    name + ": trial shim of 1.0 mm at the foot",
                    "how far the cup moves for each millimetre");
        }
    }

    private boolean thicknessKnown(String foot) {
        PlaceTreatment treatment = ask.treatments().get(foot);
        boolean found = treatment != null
                && treatment.found() != null
                && treatment.found().thicknessMm() != null;
        return found || has(ReadingKind.THICKNESS, foot);
    }

    private static double ratio(HeightAnswer answer) {
        PlannedNumber ratio = answer.footNumbers().get(NumberName.RATIO);
        return ratio == null ? 1 : ratio.value();
    }

    private void landing(Cup cup, String name) {
        PadAnswer pad = ask.pads().get(cup.id());
        PlannedNumber wanted = pad == null ? null : pad.numbers().get(NumberName.THICKNESS);
        if (wanted != null && !wanted.hasWindow()) {
            boolean gated = pad != null && pad.provisional() != null;
            wish(
                    Worth.OPENS_A_WINDOW,
                    ReadingKind.TRIAL_PAD,
                    cup.id(),
                    name + ": trial pad of known thickness, where it touches first"
                            + (gated ? ", once the key is fitted" : ""),
                    "thickness window");
        }
        if (!has(ReadingKind.CUP_DEPTH, cup.id())) {
            wish(Worth.SHARPENS, ReadingKind.CUP_DEPTH, cup.id(), name + ": cup depth", "thickness class", "the look");
        }
        if (!has(ReadingKind.HOLE, cup.hole())) {
            wish(Worth.SHARPENS, ReadingKind.HOLE, cup.hole(), name + ": hole diameter", "gaps", "resonator size");
        }
        if (!has(ReadingKind.AXIS_TO_CENTRE, cup.id())) {
            wish(Worth.SHARPENS, ReadingKind.AXIS_TO_CENTRE, cup.id(), name + ": axis to centre", "gaps", "heights");
        }
    }

    /** Places still to be looked at, one wish a group; what goes with a pad or lies under a cork needs no look of its own. */
    private void groups() {
        Map<KeyGroup, Set<String>> unseen = new EnumMap<>(KeyGroup.class);
        Map<KeyGroup, Set<String>> seen = new EnumMap<>(KeyGroup.class);
        for (Place place : ask.keywork().places()) {
            PlaceTreatment treatment = ask.treatments().get(place.id());
            if (treatment != null && treatment.provisional() && !follows(place.kind())) {
                KeyGroup group = ask.keywork().groupOf(place).orElse(KeyGroup.OTHER);
                (treatment.found() == null ? unseen : seen)
                        .computeIfAbsent(group, none -> new LinkedHashSet<>())
                        .add(place.kind().spoken());
            }
        }
        unseen.forEach((group, kinds) -> look(
                Worth.KEEPS_OR_REPLACES,
                group.word(),
                group.title() + ": material and state of " + String.join(", ", kinds),
                SECONDS_A_KIND * kinds.size(),
                "kept or replaced"));
        seen.forEach((group, kinds) -> look(
                Worth.SHARPENS,
                group.word(),
                group.title() + ": which are sound, packed, hard: " + String.join(", ", kinds),
                SECONDS_A_KIND * kinds.size(),
                "kept or replaced"));
    }

    private static boolean follows(PlaceKind kind) {
        return switch (kind) {
            case ADHESIVE, RESONATOR, RIVET, PAD_CENTRE -> true;
            default -> false;
        };
    }

    private boolean has(ReadingKind kind, String of) {
        return ask.measured().has(kind, of);
    }

    private void wish(Worth worth, ReadingKind kind, String of, String measure, String... decides) {
        add(new Missing(kind, of, measure, List.of(decides), kind.seconds(), false), worth);
    }

    private void look(Worth worth, String of, String measure, int seconds, String... decides) {
        add(new Missing(null, of, measure, List.of(decides), seconds, false), worth);
    }

    private void add(Missing missing, Worth worth) {
        wishes.add(new Wish(missing, worth.perSecond(missing.seconds())));
    }
}
