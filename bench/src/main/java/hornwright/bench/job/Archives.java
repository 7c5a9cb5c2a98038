package hornwright.bench.job;

import hornwright.bench.archive.Archive;
import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;

/** Everything the shop knows of how horns left their factories, maker by maker. */
public record Archives(Map<String, Archive> byMaker) {
    public Archives {
        byMaker = Collections.unmodifiableMap(new TreeMap<>(byMaker));
    }

    /** What is known of a maker's horns; of a maker nobody has looked at, nothing. */
    public Archive of(String maker) {
        return byMaker.getOrDefault(maker, Archive.empty(maker));
    }

    Archives with(Archive changed) {
        Map<String, Archive> all = new TreeMap<>(byMaker);
        all.put(changed.maker(), changed);
        return new Archives(all);
    }
}
