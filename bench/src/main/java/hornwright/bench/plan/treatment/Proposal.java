package hornwright.bench.plan.treatment;

import hornwright.bench.horn.PlaceKind;
import hornwright.bench.plan.Built;
import hornwright.bench.plan.Found;
import hornwright.bench.survey.AgreedUse;
import hornwright.bench.survey.Condition;
import hornwright.bench.survey.Originality;
import hornwright.bench.survey.Treatment;
import org.jspecify.annotations.Nullable;

/**
 * What to do with one place, from what was built, what was found and what the horn is for (bench judgement): keep what is
 * sound and original; take back what is later and of another material; on a horn that is not a working instrument keep
 * what is doubtful as well.
 *
 * @param material what is there afterwards; null when not known
 */
record Proposal(Treatment treatment, String why, @Nullable String material) {

    static Proposal of(PlaceKind kind, Built built, @Nullable Found found, AgreedUse use) {
        if (found == null) {
            return unseen(kind, built);
        }
        return wears(kind) ? worn(built, found, use) : lasting(built, found);
    }

    /** Kinds of place whose material is used up. */
    static boolean wears(PlaceKind kind) {
        return switch (kind) {
            case PAD,
                    FOOT,
                    BUMPER,
                    GUARD,
                    LINK,
                    SLEEVE,
                    NECK_CORK,
                    UPPER_STOP,
                    ROCKER_CONTACT,
                    SADDLE,
                    GUIDE,
                    SPRING,
                    ADHESIVE,
                    RESONATOR,
                    RIVET,
                    PAD_CENTRE -> true;
            case TENON,
                    NECK_RECEIVER,
                    NECK_SCREW,
                    NECK_BRACE,
                    PIP,
                    END_PLUG,
                    PEARL,
                    ROLLER,
                    THUMB_REST,
                    THUMB_HOOK,
                    STRAP_RING,
                    SCREW_HEAD,
                    KEY_GUARD,
                    GUARD_SCREW,
                    BRACE,
                    SOLDERED_RING,
                    FINISH,
                    ENGRAVING,
                    STAMP -> false;
        };
    }

    private static Proposal unseen(PlaceKind kind, Built built) {
        return wears(kind)
                ? new Proposal(Treatment.DECIDE, "nobody has looked", built.material())
                : new Proposal(Treatment.KEEP, "nobody has looked; kept until somebody does", built.material());
    }

    private static Proposal worn(Built built, Found found, AgreedUse use) {
        if (found.condition() == Condition.MISSING || found.originality() == Originality.MISSING) {
            return new Proposal(Treatment.REPLACE_LIKE, "missing", built.material());
        }
        if (found.byGroup()) {
            return stroke(built, found);
        }
        return switch (found.condition().fit()) {
            case SPENT -> new Proposal(Treatment.REPLACE_LIKE, found.condition().word(), built.material());
            case DOUBTFUL -> doubtful(built, found, use);
            case GOOD -> good(built, found);
        };
    }

    /** Only the group was looked over, and not for its condition. */
    private static Proposal stroke(Built built, Found found) {
        return same(built, found)
                ? new Proposal(
                        Treatment.DECIDE,
                        "the group is mostly " + found.material() + ", as built; look at each: keep what is sound",
                        built.material())
                : new Proposal(
                        Treatment.REPLACE_LIKE,
                        "the group is mostly " + found.material() + " where " + built.material() + " was built",
                        built.material());
    }

    private static Proposal doubtful(Built built, Found found, AgreedUse use) {
        String state = found.condition().word();
        boolean original = found.originality() == Originality.ORIGINAL;
        if (found.condition() == Condition.LIFTED && (original || same(built, found))) {
            return new Proposal(Treatment.REFIT, state + ": stick it down again", found.material());
        }
        if (use == AgreedUse.WORKING) {
            return new Proposal(
                    Treatment.REPLACE_LIKE, state + "; does not last on a working instrument", built.material());
        }
        if (original || same(built, found)) {
            return new Proposal(Treatment.KEEP, state + ", good enough for " + use.word(), found.material());
        }
        return new Proposal(Treatment.REPLACE_LIKE, state + ", and not as built", built.material());
    }

    private static Proposal good(Built built, Found found) {
        if (found.originality() == Originality.ORIGINAL) {
            return cleaned(found, "original and " + found.condition().word());
        }
        if (same(built, found)) {
            return cleaned(found, found.condition().word() + " and of the material built");
        }
        return found.originality() == Originality.LATER
                ? new Proposal(
                        Treatment.REPLACE_LIKE,
                        "later repair: " + found.material() + " where " + built.material() + " was built",
                        built.material())
                : new Proposal(
                        Treatment.DECIDE,
                        found.material() + " where " + built.material() + " was built; original or not?",
                        built.material());
    }

    private static Proposal cleaned(Found found, String why) {
        boolean dirty = found.condition() == Condition.STAINED || found.condition() == Condition.TARNISHED;
        return new Proposal(dirty ? Treatment.CLEAN : Treatment.KEEP, why, found.material());
    }

    /** Metal, pearl and finish: kept whatever their state, made only when they are gone or broken. */
    private static Proposal lasting(Built built, Found found) {
        return switch (found.condition()) {
            case MISSING -> new Proposal(Treatment.MAKE, "missing", built.material());
            case BROKEN, CRACKED ->
                new Proposal(
                        Treatment.REFIT,
                        found.condition().word() + ": mend it before thinking of a new one",
                        found.material());
            case STAINED, TARNISHED, RUST_SPOTS ->
                new Proposal(
                        Treatment.CLEAN,
                        found.condition().word() + "; no further than the eye needs",
                        found.material());
            default -> new Proposal(Treatment.KEEP, found.condition().word(), found.material());
        };
    }

    private static boolean same(Built built, Found found) {
        return found.material() != null && found.material().equals(built.material());
    }
}
