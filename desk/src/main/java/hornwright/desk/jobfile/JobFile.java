package hornwright.desk.jobfile;

import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.Switches;
import hornwright.bench.horn.Voice;
import hornwright.bench.horn.variant.Variants;
import hornwright.bench.plan.PlanInputs;
import hornwright.bench.rules.ShopRules;
import hornwright.bench.stock.Stock;
import hornwright.bench.survey.AgreedUse;
import hornwright.bench.survey.Finding;
import hornwright.bench.survey.GroupFinding;
import hornwright.bench.survey.Reading;
import hornwright.bench.survey.Stage;
import hornwright.bench.survey.WorkDone;
import hornwright.desk.json.BadInput;
import hornwright.desk.json.Bound;
import hornwright.desk.json.Faults;
import hornwright.desk.json.Fields;
import hornwright.desk.json.StrictJson;
import hornwright.desk.keyworkfile.KeyworkFile;
import hornwright.desk.keyworkfile.SwitchesJson;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;

/** Reads job files. A file with a fault anywhere is refused with all of them. */
public final class JobFile {
    private static final double MOST_SERIAL = 1e15;

    private JobFile() {}

    /** The job in {@code text}, else {@link BadInput} with JSON pointers. */
    public static JobRequest read(String text) {
        JsonNode tree = StrictJson.object(text);
        Faults faults = new Faults();
        JobRequest job = Fields.of(tree, "", faults).read(file -> job(file, tree));
        faults.refuseIfAny();
        return job;
    }

    private static JobRequest job(Fields file, JsonNode tree) {
        file.textIfAny("note", "demo");
        Keywork keywork = keywork(file);
        Known known = new Known(keywork);
        Voice voice = file.choice("voice", Spoken.of(Voice.values(), Voice::word));
        if (keywork != null && file.has("voice") && voice != keywork.voice()) {
            file.fault(
                    "voice",
                    "the keywork is of " + keywork.voice().word() + ", not " + voice.word(),
                    "\"voice\": \"" + keywork.voice().word() + "\"");
        }
        List<Reading> readings = file.list("readings", f -> ReadingJson.read(f, known));
        file.uniqueIds("readings", readings.stream().map(Reading::id).toList());
        List<Finding> findings = file.list("findings", f -> FindingJson.read(f, known));
        List<GroupFinding> groups = file.list("groupFindings", FindingJson::group);
        List<DecisionJson.Dated> decisions = file.list("decisions", f -> DecisionJson.read(f, known));
        List<WorkDone> work = file.list("work", WorkJson::read);
        Stock stock = StockJson.read(file);
        ShopRules rules = RulesJson.read(file);
        Long serial = serial(file);
        Stage stage = file.choiceOr("stage", Spoken.of(Stage.values(), Stage::word), Stage.ARRIVAL);
        PlanInputs inputs = new PlanInputs(
                keywork == null ? standIn() : keywork,
                serial,
                file.has("use") ? file.choice("use", Spoken.of(AgreedUse.values(), AgreedUse::word)) : null,
                stage,
                readings,
                findings,
                groups,
                decisions.stream().map(DecisionJson.Dated::decision).toList(),
                work,
                FileChronicle.of(stage, decisions, readings, work),
                ArchiveField.read(file, keywork, serial),
                stock,
                rules);
        return new JobRequest(
                inputs,
                file.textOr("title", keywork == null ? "" : keywork.maker() + " " + keywork.name(), "alto 41207"),
                file.textOr("shop", "", "Quayside Winds"),
                tree);
    }

    private static @Nullable Long serial(Fields file) {
        Double serial = file.numberIfAny("serial", Bound.WHOLE, "41207");
        if (serial != null && !(serial >= 0 && serial <= MOST_SERIAL)) {
            file.fault("serial", "a serial is a whole number from 0", "\"serial\": 41207");
        }
        return serial == null ? null : Long.valueOf(serial.longValue());
    }

    /** A shipped one by its id, or one written out; with the switches the horn really has. Null after a fault. */
    private static @Nullable Keywork keywork(Fields file) {
        JsonNode node = file.raw("keywork");
        Switches switches = file.has("switches") ? file.object("switches", SwitchesJson::read) : null;
        Keywork base = node == null ? missing(file) : base(file, node);
        if (base == null || switches == null || switches.equals(base.switches())) {
            return base;
        }
        List<String> refusals = Variants.refusals(base, switches);
        refusals.forEach(refusal -> file.fault("switches", refusal, "the switches of " + base.id()));
        return refusals.isEmpty() ? Variants.of(base, switches) : base;
    }

    private static @Nullable Keywork missing(Fields file) {
        file.fault("keywork", "missing", "\"keywork\": \"" + KeyworkFile.SHIPPED.getFirst() + "\"");
        return null;
    }

    private static @Nullable Keywork base(Fields file, JsonNode node) {
        if (node.isString()) {
            Optional<Keywork> shipped = KeyworkFile.shipped(node.stringValue());
            if (shipped.isEmpty()) {
                file.fault(
                        "keywork",
                        "there is no keywork \"" + node.stringValue() + "\"",
                        "one of " + String.join(", ", KeyworkFile.SHIPPED));
            }
            return shipped.orElse(null);
        }
        try {
            return KeyworkFile.read(node, "/keywork");
        } catch (BadInput bad) {
            file.faults().addAll(bad.faults());
            return null;
        }
    }

    /** Never planned with: there is a fault already, and reading goes on for the others. */
    private static Keywork standIn() {
        return KeyworkFile.shipped(Objects.requireNonNull(KeyworkFile.SHIPPED.getFirst()))
                .orElseThrow();
    }
}
