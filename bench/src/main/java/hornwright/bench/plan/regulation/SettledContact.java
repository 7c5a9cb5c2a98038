package hornwright.bench.plan.regulation;

import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.Link;
import hornwright.bench.plan.PlanInputs;
import hornwright.bench.regulation.Watch;
import hornwright.bench.survey.Decision;
import hornwright.bench.survey.Happening;
import hornwright.bench.survey.Reading;
import hornwright.bench.survey.WorkDone;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A change at a contact that was accepted and waits to be done.
 *
 * @param link the contact
 * @param stale why it no longer stands: felt again since, or something under it moved; null while it does
 */
public record SettledContact(
        Link link, Decision.Contact decision, @Nullable String stale) {
    /** What is done: "take 0.08 mm", or how far its screw is turned. */
    public String words() {
        return decision.words(link);
    }

    /** In the order they were settled. Contacts of one round do not make each other stale: they were reckoned together. */
    public static List<SettledContact> of(PlanInputs inputs) {
        Course course = new Course(inputs.keywork());
        inputs.chronicle().happenings().forEach(course::happen);
        inputs.decisions().stream().filter(course::isNew).forEach(course::settle);
        return course.contacts.values().stream()
                .filter(contact -> inputs.decisions().contains(contact.decision()))
                .toList();
    }

    private static final class Course {
        private final Keywork keywork;
        private final Map<String, SettledContact> contacts = new LinkedHashMap<>();
        private final Map<String, String> press = new LinkedHashMap<>();

        Course(Keywork keywork) {
            this.keywork = keywork;
        }

        /** What was settled nobody wrote down when counts as the latest. */
        private boolean isNew(Decision decision) {
            return contacts.values().stream()
                    .noneMatch(contact -> contact.decision().equals(decision));
        }

        private void happen(Happening happening) {
            switch (happening) {
                case Happening.Settled settled -> settle(settled.decision());
                case Happening.Measured measured -> felt(measured.reading());
                case Happening.Withdrawn withdrawn -> withdrawn(withdrawn.reading());
                case Happening.Worked worked -> moved(worked.work());
                case Happening.Dropped dropped -> {}
                case Happening.Reached reached -> {}
            }
        }

        private void settle(Decision decision) {
            if (decision instanceof Decision.Contact contact) {
                keywork.links().find(contact.link()).ifPresent(link -> {
                    contacts.remove(link.id());
                    contacts.put(link.id(), new SettledContact(link, contact, null));
                });
            }
        }

        private void felt(Reading reading) {
            switch (reading.kind()) {
                case LINKED_GAP, CONTACT_GAP -> {
                    String key = reading.point().replaceFirst("^pressing ", "");
                    press.put(reading.id(), key);
                    outdate(key, "felt again with %s pressed".formatted(name(key)));
                }
                default -> {}
            }
        }

        private void withdrawn(String reading) {
            String key = press.get(reading);
            if (key != null) {
                outdate(key, "what was felt with %s pressed was taken back".formatted(name(key)));
            }
        }

        private void moved(WorkDone work) {
            switch (work.kind()) {
                case ARM_BENT, CUP_LEVELLED, HOLE_LEVELLED, KEY_FITTED, PAD_FITTED -> {
                    String key = work.of().replaceFirst("^cup\\.", "");
                    keywork.keys()
                            .find(key)
                            .ifPresent(moved -> presses()
                                    .filter(finger ->
                                            Watch.ways(keywork, finger).contains(key))
                                    .forEach(finger -> outdate(
                                            finger,
                                            "%s: %s"
                                                    .formatted(
                                                            moved.name().display(),
                                                            work.kind().word()))));
                }
                default -> {}
            }
        }

        private Stream<String> presses() {
            return Watch.all(keywork).stream().map(Watch::press).distinct();
        }

        private void outdate(String finger, String why) {
            Set<String> ways = Watch.ways(keywork, finger);
            contacts.replaceAll((link, contact) ->
                    ways.contains(link) ? new SettledContact(contact.link(), contact.decision(), why) : contact);
        }

        private String name(String key) {
            return keywork.keys().find(key).map(found -> found.name().display()).orElse(key);
        }
    }
}
