package hornwright.desk.use;

import hornwright.bench.archive.Archive;
import hornwright.bench.archive.AsBuiltAt;
import hornwright.bench.archive.Course;
import hornwright.bench.archive.Family;
import hornwright.bench.archive.Kin;
import hornwright.bench.archive.NextLook;
import hornwright.bench.archive.SerialRange;
import hornwright.bench.archive.Witness;
import hornwright.bench.archive.YearAnswer;
import hornwright.bench.horn.KeyGroup;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.Place;
import hornwright.bench.horn.PlaceKind;
import hornwright.bench.horn.Voice;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import java.util.stream.LongStream;

/** What left the factory at a serial, place by place and along the serials. Worked out once and remembered until the archive grows. */
public final class ShowAsBuilt {
    private static final int MOST = 50;

    /** A wider archive is shown by thousands, a narrow one by hundreds. */
    private static final long WIDE = 4000;

    /** Kinds of which each place is its own affair. */
    private static final Set<PlaceKind> SINGLE =
            EnumSet.of(PlaceKind.FINISH, PlaceKind.ENGRAVING, PlaceKind.STAMP, PlaceKind.SCREW_HEAD);

    private record Asked(long archiveSeq, Voice voice, long serial, String keywork) {}

    /**
     * @param built every place of the keywork; one nobody looked at is a gap
     * @param shown the serials the ruler runs over
     * @param year when such a number was made, by the shop's table
     * @param next where one more look would tell most, one place of each family
     * @param kin what places of the same kind in the same group of keys tell of one that few horns were looked at
     */
    public record Sheet(
            Keywork keywork,
            Voice voice,
            long serial,
            Map<String, AsBuiltAt> built,
            List<Family> families,
            SerialRange shown,
            List<NextLook> next,
            Map<String, Kin> kin,
            int witnesses,
            YearAnswer year) {}

    private final Shop shop;
    private final Map<Asked, Sheet> known = new ConcurrentHashMap<>();

    public ShowAsBuilt(Shop shop) {
        this.shop = shop;
    }

    public Sheet of(Keywork keywork, Voice voice, long serial) {
        if (known.size() > MOST) {
            known.clear();
        }
        Asked asked = new Asked(shop.archive().seq(), voice, serial, keywork.id() + keywork.switches());
        return known.computeIfAbsent(asked, none -> sheet(keywork, voice, serial));
    }

    private Sheet sheet(Keywork keywork, Voice voice, long serial) {
        Archive archive = shop.archive().state().of(keywork.maker());
        List<String> places =
                keywork.places().where(place -> true).stream().map(Place::id).toList();
        SerialRange shown = shown(archive, voice, serial);
        Map<String, AsBuiltAt> built = archive.asBuilt(voice, serial, places);
        Map<String, Course> courses = new LinkedHashMap<>();
        archive.courses(voice, shown, places).forEach(course -> courses.put(course.place(), course));
        List<Family> families = Family.of(keywork.places(), built, courses);
        List<String> firsts =
                families.stream().map(family -> family.places().getFirst().id()).toList();
        return new Sheet(
                keywork,
                voice,
                serial,
                built,
                families,
                shown,
                archive.nextLooks(voice, serial, firsts),
                archive.kin(voice, serial, kindred(keywork)),
                (int) serials(archive, voice).count(),
                archive.allYears().at(serial));
    }

    /** Places that a works would have treated alike: of one kind, in one group of keys; what sticks, by what it sticks. */
    private static List<List<String>> kindred(Keywork keywork) {
        record Like(PlaceKind kind, PlaceKind over, Optional<KeyGroup> group) {}
        return keywork.places().where(place -> !SINGLE.contains(place.kind())).stream()
                .collect(Collectors.groupingBy(
                        place -> new Like(
                                place.kind(),
                                place.beneath() == null
                                        ? place.kind()
                                        : keywork.places().get(place.beneath()).kind(),
                                keywork.groupOf(place)),
                        LinkedHashMap::new,
                        Collectors.mapping(Place::id, Collectors.toList())))
                .values()
                .stream()
                .filter(alike -> alike.size() > 2)
                .toList();
    }

    private static SerialRange shown(Archive archive, Voice voice, long serial) {
        long low = serials(archive, voice).min().orElse(serial);
        long high = serials(archive, voice).max().orElse(serial);
        low = Math.min(low, serial);
        high = Math.max(high, serial);
        long round = high - low > WIDE ? 1000 : 100;
        return new SerialRange(Math.max(0, Math.floorDiv(low, round) * round), Math.ceilDiv(high + 1, round) * round);
    }

    private static LongStream serials(Archive archive, Voice voice) {
        return archive.witnesses().stream()
                .filter(witness -> witness.voice() == voice)
                .mapToLong(Witness::serial);
    }
}
