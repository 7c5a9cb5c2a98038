package hornwright.desk.use;

import hornwright.bench.horn.KeyGroup;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.Place;
import hornwright.bench.horn.TradeName;
import hornwright.bench.job.Job;
import hornwright.bench.survey.AgreedUse;
import hornwright.bench.survey.Finding;
import hornwright.bench.survey.GroupFinding;
import hornwright.bench.survey.Observed;
import hornwright.bench.survey.Reading;
import hornwright.desk.find.Text;
import hornwright.desk.find.Trouble;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** What stands written on one horn. */
final class TextsOfJob {
    private final Job job;
    private final Keywork keywork;
    private final String horn;

    private TextsOfJob(Job job) {
        this.job = job;
        this.keywork = Keyworks.of(job);
        this.horn = (job.identity().maker() + " " + job.identity().inWords()).strip();
    }

    /** @param owner the name; empty when the horn is the shop's own or the owner was forgotten */
    static List<Text> of(Job job, String owner) {
        TextsOfJob texts = new TextsOfJob(job);
        List<Text> all = new ArrayList<>();
        all.add(texts.horn(owner));
        job.notes().forEach((about, text) -> all.add(texts.note(about, text)));
        job.findings().places().forEach(finding -> all.add(texts.found(finding)));
        job.findings().groups().forEach(finding -> all.add(texts.found(finding)));
        job.readings().current().stream()
                .flatMap(reading -> texts.stamp(reading).stream())
                .forEach(all::add);
        return all;
    }

    /** Every place of a horn by its names, for finding it in the drawing, and the pages by what is complained of. */
    static List<Text> places(String job, Keywork keywork) {
        Stream<Text> pages = Stream.of(Trouble.values()).map(trouble -> trouble.text(job));
        Stream<Text> places = keywork.places().stream()
                .map(place -> new Text(
                        Text.Sort.PLACE,
                        capital(place.display()),
                        keywork.groupOf(place).map(KeyGroup::title).orElse("Tube and neck"),
                        "/horn/%s?place=%s#place".formatted(job, place.id()),
                        place.kind().spoken() + " "
                                + String.join(" ", place.name().displayAliases())));
        return Stream.concat(pages, places).toList();
    }

    private Text horn(String owner) {
        String detail = Stream.of(owner, job.arrival().complaint(), job.stage().word())
                .filter(part -> !part.isEmpty())
                .collect(Collectors.joining("; "));
        return new Text(
                Text.Sort.HORN,
                horn,
                detail,
                "/horn/" + job.id(),
                job.id() + " " + job.agreedUse().map(AgreedUse::word).orElse(""));
    }

    private Text note(String about, String text) {
        Optional<Place> place = keywork.places().find(about);
        return new Text(
                Text.Sort.NOTE,
                place.map(one -> capital(one.display()) + ", ").orElse("") + horn,
                text,
                place.map(one -> at(one.id())).orElse("/horn/" + job.id()));
    }

    private Text found(Finding finding) {
        String name = keywork.places().find(finding.place()).map(Place::display).orElse(finding.place());
        return new Text(
                Text.Sort.FOUND,
                capital(name) + ", " + horn,
                joined(
                        finding.material(),
                        finding.colour(),
                        finding.condition().word(),
                        finding.originality().word()),
                at(finding.place()));
    }

    private Text found(GroupFinding finding) {
        String group = Stream.of(KeyGroup.values())
                .filter(one -> one.word().equals(finding.group()))
                .map(KeyGroup::title)
                .findFirst()
                .orElse("Tube and neck");
        return new Text(
                Text.Sort.FOUND,
                "%s, %s, %s".formatted(group, finding.placeKind().replace('-', ' '), horn),
                joined("mostly " + finding.mostly(), finding.state().word(), String.join(", ", finding.also())),
                "/horn/%s/survey#group-%s".formatted(job.id(), finding.group()));
    }

    private Optional<Text> stamp(Reading reading) {
        return reading.observed() instanceof Observed.Says says
                ? Optional.of(new Text(
                        Text.Sort.STAMP,
                        "%s of %s, %s".formatted(capital(reading.kind().word()), reading.of(), horn),
                        says.inWords(),
                        "/horn/%s/measure?sheet=stamps".formatted(job.id())))
                : Optional.empty();
    }

    private String at(String place) {
        return "/horn/%s?place=%s#place".formatted(job.id(), place);
    }

    static String joined(@Nullable String... parts) {
        return Stream.of(parts)
                .filter(part -> part != null && !part.isEmpty() && !part.equals("unknown"))
                .map(TradeName::withSigns)
                .distinct()
                .collect(Collectors.joining(", "));
    }

    static String capital(String text) {
        return text.isEmpty() ? text : text.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + text.substring(1);
    }
}
