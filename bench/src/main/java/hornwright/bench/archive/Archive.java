package hornwright.bench.archive;

import hornwright.bench.horn.Voice;
import hornwright.engines.belief.Workshop;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * All that is known of one maker's horns. Asked for a serial number it says, place by place, what most probably left
 * the factory, how good the evidence is, and where the gaps are.
 *
 * @param observations each names a witness of this archive
 * @param searches where somebody looked for more about a place; without one nothing there is Established
 * @param years the shop's own table from serial to year
 * @param fittings what is said to fit where
 * @param heard what other shops told of their own searches, asides and years
 */
public record Archive(
        String maker,
        List<Witness> witnesses,
        List<Observation> observations,
        List<Statement> statements,
        List<Resolution> resolutions,
        Map<String, SearchLog> searches,
        YearTable years,
        List<Fitting> fittings,
        List<Heard> heard) {
    /** What is assumed of a works before anything is seen; see {@link PlaceArchive}. */
    public static final Workshop ASSUMED = PlaceArchive.ASSUMED;

    public Archive {
        witnesses = List.copyOf(witnesses);
        observations = List.copyOf(observations);
        statements = List.copyOf(statements);
        resolutions = List.copyOf(resolutions);
        searches = Map.copyOf(searches);
        fittings = List.copyOf(fittings);
        heard = List.copyOf(heard);
        Map<String, Witness> known = new HashMap<>();
        for (Witness witness : witnesses) {
            if (known.put(witness.id(), witness) != null) {
                throw new IllegalArgumentException("witness " + witness.id() + " is listed twice");
            }
        }
        for (Observation seen : observations) {
            if (!known.containsKey(seen.witness())) {
                throw new IllegalArgumentException(
                        "observation " + seen.id() + " names " + seen.witness() + ", who is no witness");
            }
        }
    }

    /** Without a table of years. */
    public Archive(
            String maker,
            List<Witness> witnesses,
            List<Observation> observations,
            List<Statement> statements,
            List<Resolution> resolutions,
            Map<String, SearchLog> searches) {
        this(maker, witnesses, observations, statements, resolutions, searches, new YearTable(List.of()));
    }

    /** Without anything that fits and anything heard. */
    public Archive(
            String maker,
            List<Witness> witnesses,
            List<Observation> observations,
            List<Statement> statements,
            List<Resolution> resolutions,
            Map<String, SearchLog> searches,
            YearTable years) {
        this(maker, witnesses, observations, statements, resolutions, searches, years, List.of(), List.of());
    }

    public Archive with(YearTable table) {
        return new Archive(maker, witnesses, observations, statements, resolutions, searches, table, fittings, heard);
    }

    public Archive withWitnesses(List<Witness> all) {
        return new Archive(maker, all, observations, statements, resolutions, searches, years, fittings, heard);
    }

    public Archive withObservations(List<Observation> all) {
        return new Archive(maker, witnesses, all, statements, resolutions, searches, years, fittings, heard);
    }

    public Archive withStatements(List<Statement> all) {
        return new Archive(maker, witnesses, observations, all, resolutions, searches, years, fittings, heard);
    }

    public Archive withResolutions(List<Resolution> all) {
        return new Archive(maker, witnesses, observations, statements, all, searches, years, fittings, heard);
    }

    public Archive withSearches(Map<String, SearchLog> all) {
        return new Archive(maker, witnesses, observations, statements, resolutions, all, years, fittings, heard);
    }

    public Archive withFittings(List<Fitting> all) {
        return new Archive(maker, witnesses, observations, statements, resolutions, searches, years, all, heard);
    }

    public Archive withHeard(List<Heard> all) {
        return new Archive(maker, witnesses, observations, statements, resolutions, searches, years, fittings, all);
    }

    /** Where somebody looked for more about a place: this shop, else another that told of it. */
    public @Nullable SearchLog search(String place) {
        SearchLog own = searches.get(place);
        return own != null
                ? own
                : heard.stream()
                        .map(shop -> shop.searches().get(place))
                        .filter(Objects::nonNull)
                        .findFirst()
                        .orElse(null);
    }

    /** The shop's own table, and what other shops' rows add to it without contradicting a row that is there. */
    public YearTable allYears() {
        YearTable table = years;
        for (Heard shop : heard) {
            for (YearRow row : shop.years()) {
                table = table.and(row).orElse(table);
            }
        }
        return table;
    }

    public static Archive empty(String maker) {
        return new Archive(maker, List.of(), List.of(), List.of(), List.of(), Map.of());
    }

    /** As built at this serial, for every place anybody has looked at or written about. */
    public Map<String, AsBuiltAt> asBuilt(Voice voice, long serial) {
        TreeSet<String> places = new TreeSet<>();
        Map<String, Witness> known = witnesses(voice);
        observations.stream().filter(o -> known.containsKey(o.witness())).forEach(o -> places.add(o.place()));
        statements.stream().filter(s -> s.voice() == voice).forEach(s -> places.add(s.place()));
        return asBuilt(voice, serial, places);
    }

    /** As built at this serial, for these places in their order; a place nobody has looked at comes back as a gap. */
    public Map<String, AsBuiltAt> asBuilt(Voice voice, long serial, Collection<String> places) {
        Map<String, PlaceArchive> byPlace = byPlace(voice, places);
        Map<String, AsBuiltAt> built = new LinkedHashMap<>();
        byPlace.forEach((place, archive) -> built.put(place, archive.at(serial)));
        return built;
    }

    /**
     * Where one more original horn, looked at in one place, would lower the doubt about this serial most; best first.
     * Places that are as good as settled, and looks that would change nothing, are left out.
     */
    public List<NextLook> nextLooks(Voice voice, long serial, Collection<String> places) {
        return byPlace(voice, places).values().stream()
                .flatMap(archive -> NextLook.best(archive, serial).stream())
                .sorted(NextLook.MOST_TELLING_FIRST)
                .toList();
    }

    /**
     * What families of places say of those of their places on which too few horns were looked at, by place.
     *
     * @param families places that a works would have treated alike, as the feet of a stack
     */
    public Map<String, Kin> kin(Voice voice, long serial, Collection<List<String>> families) {
        Map<String, Kin> kin = new LinkedHashMap<>();
        Map<String, PlaceArchive> byPlace =
                byPlace(voice, families.stream().flatMap(List::stream).toList());
        for (List<String> family : families) {
            List<PlaceArchive> places = byPlace.values().stream()
                    .filter(place -> family.contains(place.place()))
                    .toList();
            if (places.stream().anyMatch(place -> place.sightings().size() < Kinship.ENOUGH)) {
                kin.putAll(new Kinship(places).at(serial));
            }
        }
        return kin;
    }

    /** How these places went along the serials shown, in their order; a place nobody looked at has an empty course. */
    public List<Course> courses(Voice voice, SerialRange shown, Collection<String> places) {
        return byPlace(voice, places).values().stream()
                .map(place -> place.course(shown))
                .toList();
    }

    /** Everything that speaks of one place, looks and statements, each with the strength it has at this serial. */
    public List<Item> items(Voice voice, String place, long serial) {
        Map<String, Witness> known = witnesses(voice);
        List<Item> items = new ArrayList<>();
        for (Observation seen : observations) {
            Witness witness = known.get(seen.witness());
            if (witness != null && seen.place().equals(place)) {
                items.add(Item.of(seen, witness, resolution(seen.id())));
            }
        }
        statements.stream()
                .filter(said -> said.voice() == voice && said.place().equals(place))
                .forEach(said -> items.add(
                        Item.of(said, serial, resolution(said.evidence().id()))));
        items.sort(
                Comparator.comparingLong((Item item) -> item.serials().from()).thenComparing(Item::id));
        return items;
    }

    private @Nullable Resolution resolution(String evidence) {
        return resolutions.stream()
                .filter(one -> one.evidence().equals(evidence))
                .findFirst()
                .orElse(null);
    }

    private Map<String, PlaceArchive> byPlace(Voice voice, Collection<String> places) {
        Map<String, Witness> known = witnesses(voice);
        Map<String, List<PlaceArchive.Look>> looks = new HashMap<>();
        for (Observation seen : observations) {
            PlaceArchive.Look.of(seen, known.get(seen.witness()))
                    .ifPresent(look -> looks.computeIfAbsent(seen.place(), none -> new ArrayList<>())
                            .add(look));
        }
        Map<String, List<Statement>> said =
                statements.stream().filter(s -> s.voice() == voice).collect(Collectors.groupingBy(Statement::place));
        Answers answers = new Answers();
        Map<String, PlaceArchive> byPlace = new LinkedHashMap<>();
        for (String place : places) {
            byPlace.put(
                    place,
                    new PlaceArchive(
                            place,
                            List.copyOf(known.values()),
                            looks.getOrDefault(place, List.of()),
                            said.getOrDefault(place, List.of()),
                            resolutions,
                            search(place),
                            answers));
        }
        return byPlace;
    }

    private Map<String, Witness> witnesses(Voice voice) {
        Map<String, Witness> known = new LinkedHashMap<>();
        witnesses.stream().filter(w -> w.voice() == voice).forEach(w -> known.put(w.id(), w));
        return known;
    }
}
