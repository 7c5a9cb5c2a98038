package hornwright.desk.web.archive;

import hornwright.bench.archive.Bearing;
import hornwright.bench.archive.Edtf;
import hornwright.bench.archive.Hand;
import hornwright.bench.archive.How;
import hornwright.bench.archive.Integrity;
import hornwright.bench.archive.Interest;
import hornwright.bench.archive.Kind;
import hornwright.bench.archive.Origin;
import hornwright.bench.archive.Painting;
import hornwright.bench.archive.Sight;
import hornwright.bench.archive.Witness;
import hornwright.bench.horn.Cut;
import hornwright.bench.horn.Form;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.Place;
import hornwright.bench.horn.Voice;
import hornwright.desk.picture.CleanPicture;
import hornwright.desk.picture.Darkroom;
import hornwright.desk.picture.UnreadablePicture;
import hornwright.desk.units.Typed;
import hornwright.desk.use.KeepFile;
import hornwright.desk.use.Shop;
import hornwright.desk.web.page.Choices;
import hornwright.desk.web.page.Desk;
import hornwright.desk.web.page.Units;
import hornwright.desk.web.page.Uploads;
import hornwright.desk.web.view.OnBench;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Reads what was typed of a witness. Everything that is wrong is said at once; nothing is guessed. */
public final class WitnessForm {
    private static final int LONGEST = 200;
    private static final String DIGITS = "\\d{1,9}";
    private static final String STAMP = "([a-z][a-z -]{0,30})[ :]+([A-Za-z0-9/-]{1,12})";

    private final Context context;
    private final @Nullable Shop shop;
    private final List<String> faults = new ArrayList<>();

    public WitnessForm(Context context) {
        this(context, null);
    }

    /** @param shop where a picture or scan that comes along is kept; null where none can come */
    public WitnessForm(Context context, @Nullable Shop shop) {
        this.context = context;
        this.shop = shop;
    }

    public List<String> faults() {
        return faults;
    }

    /** The witness as typed; only to be used when there are no faults. */
    Witness witness(String id, String maker) {
        String serial = field("serial");
        if (!serial.matches(DIGITS)) {
            faults.add("A serial is digits like 41630.");
        }
        long number = serial.matches(DIGITS) ? Long.parseLong(serial) : 0;
        Voice voice = Choices.of(Voice.class, field("voice"), Voice.ALTO);
        return new Witness(
                id.isEmpty() ? "w-" + number : id,
                number,
                voice,
                maker,
                shortened("model", "A model"),
                date("built"),
                Choices.of(Integrity.class, field("integrity"), Integrity.UNKNOWN),
                stamps());
    }

    @Nullable
    public Edtf date(String name) {
        String typed = field(name);
        if (typed.isEmpty()) {
            return null;
        }
        try {
            return Edtf.parse(typed);
        } catch (IllegalArgumentException wrong) {
            faults.add(OnBench.capital(String.valueOf(wrong.getMessage())) + ".");
            return null;
        }
    }

    private Map<String, String> stamps() {
        Map<String, String> stamps = new LinkedHashMap<>();
        for (String one : field("stamps").split("[,;\n]")) {
            String stamp = one.strip().toLowerCase(Locale.ROOT);
            if (stamp.matches(STAMP)) {
                int cut = Math.max(stamp.lastIndexOf(' '), stamp.lastIndexOf(':'));
                stamps.put(stamp.substring(0, cut).replace(":", "").strip(), stamp.substring(cut + 1));
            } else if (!stamp.isEmpty()) {
                faults.add("Stamped numbers are written like: body 630, neck 630. This reads \"" + one.strip() + "\".");
            }
        }
        return stamps;
    }

    /** @param plainly what the origin is called when nobody says otherwise, by kind */
    public How how(Function<Kind, String> plainly) {
        MeansChoice means = Choices.of(MeansChoice.class, field("means"), MeansChoice.MAY_BE_LATER);
        Kind kind = means.means().kind();
        String origin = shortened("origin", "An origin");
        String file = file();
        return new How(
                means.means(),
                Choices.of(Hand.class, field("hand"), Hand.UNKNOWN),
                Choices.of(Bearing.class, field("bearing"), Bearing.DIRECT),
                new Origin(origin.isEmpty() ? plainly.apply(kind) : origin, kind),
                Choices.of(Interest.class, field("interest"), Interest.NEUTRAL),
                emptyIsNull(shortened("citation", "A citation")),
                emptyIsNull(file));
    }

    /** The picture or scan behind it: one that comes along, or one that is kept already. */
    private String file() {
        String file = field("file");
        Shop keeper = shop;
        if (keeper == null) {
            return file;
        }
        List<byte[]> pictures = Uploads.of(context, "picture");
        if (!pictures.isEmpty()) {
            return kept(keeper, pictures.getFirst());
        }
        boolean known = file.isEmpty()
                || (file.matches("[0-9a-f]{64}")
                        && new KeepFile(keeper).find(file).isPresent());
        if (!known) {
            faults.add("No picture of that name is kept here; put the picture or scan itself in.");
        }
        return known ? file : "";
    }

    /** Written anew like every photograph, without place or camera; kept only when nothing else is wrong. */
    private String kept(Shop keeper, byte[] upload) {
        try {
            CleanPicture clean = Darkroom.develop(upload);
            return faults.isEmpty()
                    ? new KeepFile(keeper)
                            .keep(clean.large(), CleanPicture.MEDIA)
                            .sha256()
                    : "";
        } catch (UnreadablePicture unreadable) {
            faults.add(unreadable.sentence());
            return "";
        }
    }

    /** Every stroke for which a material was chosen. */
    List<Painting.Stroke> strokes(Keywork keywork) {
        List<Painting.Stroke> strokes = new ArrayList<>();
        WitnessRows.strokes(keywork).forEach((name, places) -> {
            String other = shortened("o." + name, "A material");
            String material = other.isEmpty() ? field("m." + name) : other;
            List<String> ticked = places.stream()
                    .map(Place::id)
                    .filter(context.formParams("p." + name)::contains)
                    .toList();
            if (!material.isEmpty() && ticked.isEmpty()) {
                faults.add("Tick at least one place for " + material + ", or choose \"not looked at\".");
            }
            if (!material.isEmpty()) {
                strokes.add(new Painting.Stroke(name.replace('.', '-'), ticked, sight(name, material)));
            }
        });
        return strokes;
    }

    private Sight sight(String name, String material) {
        return new Sight(
                material,
                emptyIsNull(shortened("c." + name, "A colour")),
                thickness("t." + name),
                emptyIsNull(shortened("a." + name, "An adhesive")),
                choice(Form.values(), field("s." + name)),
                choice(Cut.values(), field("k." + name)));
    }

    private @Nullable Double thickness(String name) {
        String typed = field(name);
        if (typed.isEmpty()) {
            return null;
        }
        return switch (Units.length(context, typed)) {
            case Typed.Unclear unclear -> {
                faults.add("Thickness: " + unclear.sentence());
                yield null;
            }
            case Typed.Amount amount -> amount.value().doubleValue();
        };
    }

    private static <E extends Enum<E>> @Nullable E choice(E[] all, String word) {
        return Stream.of(all).filter(one -> one.name().equals(word)).findFirst().orElse(null);
    }

    private String shortened(String name, String what) {
        String typed = field(name);
        if (typed.length() > LONGEST) {
            faults.add(what + " is at most 200 letters.");
        }
        return typed;
    }

    static @Nullable String emptyIsNull(String typed) {
        return typed.isEmpty() ? null : typed;
    }

    private String field(String name) {
        return Desk.field(context, name);
    }

    /** What was sent, to be shown again. */
    WitnessRows.Typed again() {
        return new WitnessRows.Typed() {
            @Override
            public String of(String field) {
                return field(field);
            }

            @Override
            public boolean ticked(String field, String place) {
                return context.formParams(field).contains(place);
            }
        };
    }

    /** A page that is opened: nothing said, every place ticked. */
    static WitnessRows.Typed fresh() {
        return new WitnessRows.Typed() {
            @Override
            public String of(String field) {
                return "";
            }

            @Override
            public boolean ticked(String field, String place) {
                return true;
            }
        };
    }
}
