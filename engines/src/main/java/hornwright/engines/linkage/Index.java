package hornwright.engines.linkage;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;

/** Places of ids in a list. */
record Index(Map<String, Integer> places) {

    static Index of(List<String> ids) {
        Map<String, Integer> places = HashMap.newHashMap(ids.size());
        for (int i = 0; i < ids.size(); i++) {
            places.put(ids.get(i), i);
        }
        return new Index(places);
    }

    int of(String id) {
        Integer place = places.get(id);
        if (place == null) {
            throw new NoSuchElementException("nothing here is called " + id);
        }
        return place;
    }
}
