package hornwright.bench.archive;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;

/**
 * What another shop told of its own work on the archive: where it looked, what it set aside, its table of years. It is
 * kept under its name beside what this shop says and never takes the place of it.
 *
 * @param from the shop, by its short name
 * @param searches by place
 * @param resolutions what it set aside for itself; here they are only shown
 */
public record Heard(String from, Map<String, SearchLog> searches, List<Resolution> resolutions, List<YearRow> years) {
    public Heard {
        searches = Collections.unmodifiableMap(new TreeMap<>(searches));
        resolutions = List.copyOf(resolutions);
        years = List.copyOf(years);
    }

    public int size() {
        return searches.size() + resolutions.size() + years.size();
    }

    /** The same with what came later; of one place, item or serial the later word counts. */
    public Heard and(Heard more) {
        Map<String, SearchLog> all = new TreeMap<>(searches);
        all.putAll(more.searches);
        return new Heard(
                from,
                all,
                later(resolutions, more.resolutions, Resolution::evidence),
                later(years, more.years, row -> Long.toString(row.serial())));
    }

    private static <T> List<T> later(List<T> before, List<T> more, Function<T, String> name) {
        Map<String, T> all = new TreeMap<>();
        before.forEach(one -> all.put(name.apply(one), one));
        more.forEach(one -> all.put(name.apply(one), one));
        return new ArrayList<>(all.values());
    }
}
