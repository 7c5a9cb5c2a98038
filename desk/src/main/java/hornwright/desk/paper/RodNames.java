package hornwright.desk.paper;

import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.PlaceKind;
import java.util.stream.Collectors;

/** What a rod is called at the bench: after what it carries, as its screw head is. */
record RodNames(Keywork keywork) {
    String of(String rod) {
        return keywork.places().stream()
                .filter(place -> place.kind() == PlaceKind.SCREW_HEAD
                        && place.belongsTo().id().equals(rod))
                .findFirst()
                .map(place -> place.display().replaceFirst(" (rod head|pivot screws)$", ""))
                .orElseGet(() -> keywork.keysOn(keywork.rods().get(rod)).stream()
                        .map(key -> key.name().display())
                        .collect(Collectors.joining(", ")));
    }
}
