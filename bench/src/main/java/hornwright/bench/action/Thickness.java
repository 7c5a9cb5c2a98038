package hornwright.bench.action;

import hornwright.bench.horn.Key;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.Layer;
import hornwright.bench.horn.Link;
import hornwright.bench.horn.Stop;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;

/**
 * What lies in every contact, by the id of its link or stop, mm. A contact of several layers counts as their sum; one
 * whose material is missing as 0.
 */
public record Thickness(Map<String, Double> mmByContact) {
    public Thickness {
        mmByContact = Collections.unmodifiableMap(new LinkedHashMap<>(mmByContact));
    }

    /** As the keywork states them, which is as built. */
    public static Thickness asBuilt(Keywork keywork) {
        return ofPlaces(keywork, Map.of());
    }

    /** As found at the places, mm; a place not in the map counts as built. */
    public static Thickness ofPlaces(Keywork keywork, Map<String, Double> mmByPlace) {
        Map<String, Double> all = new LinkedHashMap<>();
        for (Key key : keywork.keys()) {
            for (Stop stop : key.stops()) {
                all.put(stop.id(), sum(stop.layers(), mmByPlace));
            }
        }
        for (Link link : keywork.links()) {
            all.put(link.id(), sum(link.layers(), mmByPlace));
        }
        return new Thickness(all);
    }

    private static double sum(List<Layer> layers, Map<String, Double> mmByPlace) {
        return layers.stream()
                .mapToDouble(layer -> mmByPlace.getOrDefault(layer.place(), layer.thicknessMm()))
                .sum();
    }

    public double mm(String contact) {
        Double mm = mmByContact.get(contact);
        if (mm == null) {
            throw new NoSuchElementException("no contact is called " + contact);
        }
        return mm;
    }

    /** The same with one contact changed. */
    public Thickness with(String contact, double mm) {
        Map<String, Double> changed = new LinkedHashMap<>(mmByContact);
        changed.put(contact, mm);
        return new Thickness(changed);
    }
}
