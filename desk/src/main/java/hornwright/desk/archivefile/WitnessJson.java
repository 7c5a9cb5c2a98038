package hornwright.desk.archivefile;

import hornwright.bench.archive.Edtf;
import hornwright.bench.archive.Integrity;
import hornwright.bench.archive.Witness;
import hornwright.bench.horn.Voice;
import hornwright.desk.json.Bound;
import hornwright.desk.json.Fields;
import hornwright.desk.json.Out;
import hornwright.desk.keyworkfile.Words;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** A horn somebody looked at, in JSON. */
final class WitnessJson {
    private WitnessJson() {}

    static Witness read(Fields f, String maker) {
        return new Witness(
                f.text("id", "w-41630"),
                f.whole("serial", Bound.COUNT, "41630"),
                f.choice("voice", Words.of(Voice.class)),
                maker,
                f.textOr("model", "", "first model"),
                date(f, "built"),
                f.choice("integrity", Words.of(Integrity.class)),
                stamps(f));
    }

    private static Map<String, String> stamps(Fields f) {
        Map<String, String> stamps = new LinkedHashMap<>();
        List<String[]> read =
                f.list("assemblyNumbers", one -> new String[] {one.text("part", "neck"), one.text("number", "630")});
        read.forEach(stamp -> stamps.put(stamp[0], stamp[1]));
        return stamps;
    }

    /** A date as far as it is known. */
    static @Nullable Edtf date(Fields f, String name) {
        String text = f.textIfAny(name, "1925~");
        if (text == null) {
            return null;
        }
        try {
            return Edtf.parse(text);
        } catch (IllegalArgumentException wrong) {
            f.fault(name, String.valueOf(wrong.getMessage()), "\"" + name + "\": \"1925~\"");
            return null;
        }
    }

    static Out write(Witness witness) {
        Out out = Out.object()
                .put("id", witness.id())
                .put("serial", witness.serial())
                .put("voice", witness.voice().word());
        if (!witness.model().isEmpty()) {
            out.put("model", witness.model());
        }
        Edtf built = witness.built();
        if (built != null) {
            out.put("built", built.text());
        }
        out.put("integrity", witness.integrity().word());
        if (witness.assemblyNumbers().isEmpty()) {
            return out;
        }
        return out.put(
                "assemblyNumbers",
                new TreeMap<>(witness.assemblyNumbers())
                        .entrySet().stream()
                                .map(stamp ->
                                        Out.object().put("part", stamp.getKey()).put("number", stamp.getValue()))
                                .toList());
    }
}
