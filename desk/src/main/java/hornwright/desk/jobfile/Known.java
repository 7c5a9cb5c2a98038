package hornwright.desk.jobfile;

import hornwright.bench.horn.ById;
import hornwright.bench.horn.Keywork;
import hornwright.bench.survey.Subject;
import hornwright.desk.json.Fields;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * The ids a job may speak of.
 *
 * @param keywork null when it could not be read; then nothing is said about ids
 */
record Known(@Nullable Keywork keywork) {
    void check(Fields f, String field, String id, Subject subject) {
        switch (subject) {
            case CUP -> check(f, field, id, "cup", Keywork::cups);
            case HOLE -> check(f, field, id, "hole", Keywork::holes);
            case KEY -> check(f, field, id, "key", Keywork::keys);
            case LINK -> check(f, field, id, "link", Keywork::links);
            case PLACE -> check(f, field, id, "place", Keywork::places);
            case HORN -> {}
        }
    }

    private void check(Fields f, String field, String id, String kind, Function<Keywork, ById<?>> all) {
        if (keywork != null && f.has(field) && !all.apply(keywork).contains(id)) {
            f.fault(
                    field,
                    "no " + kind + " of this keywork is called \"" + id + "\"",
                    "\"" + field + "\": \""
                            + all.apply(keywork).list().getFirst().id() + "\"");
        }
    }
}
