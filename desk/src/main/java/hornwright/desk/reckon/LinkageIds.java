package hornwright.desk.reckon;

import hornwright.desk.json.Fields;
import hornwright.engines.linkage.Landing;
import hornwright.engines.linkage.Mechanism;
import hornwright.engines.linkage.Press;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;

/** Ids of a linkage input: each once in its list, and every one referred to is there. */
final class LinkageIds {
    private final Fields in;
    private final Set<String> keys;
    private final String someKey;

    private LinkageIds(LinkageFields read, Fields in) {
        this.in = in;
        List<String> ids = read.keys().stream().map(Mechanism.Key::id).toList();
        keys = new HashSet<>(ids);
        someKey = ids.isEmpty() ? "f" : ids.getFirst();
        in.uniqueIds("keys", ids);
    }

    static void check(LinkageFields read, Fields in) {
        LinkageIds ids = new LinkageIds(read, in);
        in.uniqueIds("cups", read.cups().stream().map(Mechanism.Cup::id).toList());
        in.uniqueIds("stops", read.stops().stream().map(Mechanism.Stop::id).toList());
        in.uniqueIds("links", read.links().stream().map(Mechanism.Link::id).toList());
        ids.known("cups", "key", read.cups(), Mechanism.Cup::key);
        ids.known("stops", "key", read.stops(), Mechanism.Stop::key);
        ids.known("links", "driver", read.links(), Mechanism.Link::driver);
        ids.known("links", "follower", read.links(), Mechanism.Link::follower);
        ids.known("springs", "key", read.springs(), Mechanism.Spring::key);
        ids.known("press", "key", read.presses(), Press::key);
        ids.known("sets", "press", read.landings(), landing -> landing.press().key());
        ids.links(read.links());
        ids.landings(read);
    }

    private <T> void known(String list, String field, List<T> members, Function<T, String> key) {
        for (int i = 0; i < members.size(); i++) {
            String named = key.apply(members.get(i));
            if (!keys.contains(named)) {
                fault(list + "/" + i + "/" + field, "no key has the id \"" + named + "\"", "\"" + someKey + "\"");
            }
        }
    }

    private void links(List<Mechanism.Link> links) {
        for (int i = 0; i < links.size(); i++) {
            if (links.get(i).driver().equals(links.get(i).follower())) {
                fault("links/" + i + "/follower", "a key cannot drive itself", "the id of another key");
            }
        }
    }

    private void landings(LinkageFields read) {
        Set<String> cups =
                new HashSet<>(read.cups().stream().map(Mechanism.Cup::id).toList());
        for (int i = 0; i < read.landings().size(); i++) {
            Landing landing = read.landings().get(i);
            String closes = "sets/" + i + "/closes";
            if (landing.cups().isEmpty()) {
                fault(closes, "a set closes at least one cup", "[\"cup.f\"]");
            }
            for (int j = 0; j < landing.cups().size(); j++) {
                String cup = landing.cups().get(j);
                if (!cups.contains(cup)) {
                    fault(closes + "/" + j, "no cup has the id \"" + cup + "\"", "\"cup.f\"");
                } else if (landing.cups().indexOf(cup) < j) {
                    fault(closes + "/" + j, "\"" + cup + "\" stands twice in this set", "each cup once");
                }
            }
        }
    }

    /** One fault a place: a missing id is told as missing, not as unknown too. */
    private void fault(String path, String what, String example) {
        String pointer = in.pointer() + "/" + path;
        if (in.faults().list().stream().noneMatch(fault -> fault.pointer().equals(pointer))) {
            in.faults().add(pointer, what, example);
        }
    }
}
