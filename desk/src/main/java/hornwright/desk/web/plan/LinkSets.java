package hornwright.desk.web.plan;

import hornwright.bench.horn.Cup;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.Link;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.plan.regulation.LinksAnswer;
import hornwright.bench.plan.regulation.LinksAnswer.SpotLine;
import hornwright.bench.regulation.Watch;
import hornwright.desk.drawing.LinkedStack;
import hornwright.desk.paper.ContactWords;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The drawing of what each finger closes. */
final class LinkSets {
    private final Keywork keywork;
    private final LinksAnswer answer;

    LinkSets(Keywork keywork, LinksAnswer answer) {
        this.keywork = keywork;
        this.answer = answer;
    }

    /** Keys that close or hold others, in the order of the bench. */
    List<String> presses() {
        return answer.spots().stream()
                .map(spot -> spot.watch().press())
                .distinct()
                .toList();
    }

    LinkedStack of(String press) {
        List<Link> links = links(press);
        Set<String> keys = new LinkedHashSet<>(List.of(press));
        for (Link link : links) {
            keys.add(link.driver());
            keys.add(link.follower());
        }
        return LinkedStack.of(
                keys.stream().map(key -> column(press, key)).toList(),
                links.stream()
                        .map(link -> new LinkedStack.Contact(link, words(link.id())))
                        .toList(),
                LinkedStack.inWords(keywork, press));
    }

    /** Contacts that decide whether something shuts, nearest the finger first. */
    private List<Link> links(String press) {
        Set<String> ways = Watch.ways(keywork, press);
        List<Link> all = keywork.links()
                .where(link ->
                        ways.contains(link.id()) && answer.contact(link.id()).isPresent());
        List<Link> ordered = new ArrayList<>();
        Set<String> reached = new LinkedHashSet<>(List.of(press));
        boolean grew = true;
        while (grew) {
            grew = false;
            for (Link link : all) {
                if (reached.contains(link.driver()) && !ordered.contains(link)) {
                    ordered.add(link);
                    reached.add(link.follower());
                    grew = true;
                }
            }
        }
        return ordered;
    }

    private LinkedStack.Column column(String press, String key) {
        Optional<Cup> cup = keywork.cupOf(keywork.keys().get(key));
        Optional<SpotLine> spot = answer.spots().stream()
                .filter(line -> line.watch().press().equals(press)
                        && cup.isPresent()
                        && line.watch().at().equals(cup.get().id()))
                .findFirst();
        return new LinkedStack.Column(
                keywork.keys().get(key),
                cup.isPresent(),
                spot.map(SpotLine::read).map(PlannedNumber::value).orElse(null),
                spot.map(SpotLine::expected).map(PlannedNumber::value).orElse(null));
    }

    private String words(String link) {
        return answer.contact(link).map(ContactWords::beside).orElse("");
    }
}
