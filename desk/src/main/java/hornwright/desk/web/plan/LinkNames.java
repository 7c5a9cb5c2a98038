package hornwright.desk.web.plan;

import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.Link;
import hornwright.bench.regulation.Watch;
import java.util.List;

/** Linked keys and their contacts in the words of the trade. */
final class LinkNames {
    private final Keywork keywork;

    LinkNames(Keywork keywork) {
        this.keywork = keywork;
    }

    String key(String id) {
        return keywork.keys().get(id).name().display();
    }

    String cup(String id) {
        return keywork.nameOf(keywork.cups().get(id)).display();
    }

    /** "D on F♯". */
    String contact(String link) {
        Link one = keywork.links().get(link);
        return key(one.driver()) + " on " + key(one.follower());
    }

    /** What another finger holds out of the way meanwhile, ", G♯ lever held open". */
    String held(Watch watch) {
        return watch.away().isEmpty()
                ? ""
                : ", " + String.join(", ", watch.away().stream().map(this::key).toList()) + " pressed away";
    }

    /** What must be felt again once this contact is altered: everything a finger works through it. */
    String after(String link) {
        List<String> again = Watch.all(keywork).stream()
                .map(Watch::press)
                .distinct()
                .filter(press -> Watch.ways(keywork, press).contains(link))
                .map(this::key)
                .toList();
        return "then feel again with " + String.join(", ", again);
    }
}
