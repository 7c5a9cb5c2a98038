package hornwright.desk.web.photo;

import hornwright.bench.survey.Moment;
import hornwright.bench.survey.Photo;
import hornwright.bench.survey.Shot;
import hornwright.bench.survey.Stage;
import hornwright.desk.web.photo.PhotosPage.Card;
import hornwright.desk.web.photo.PhotosPage.Group;
import hornwright.desk.web.photo.PhotosPage.Pair;
import hornwright.desk.web.view.Clocks;
import hornwright.desk.web.view.OnBench;
import hornwright.desk.web.view.PhotoForm;
import hornwright.desk.web.view.PhotoForm.Section;
import hornwright.desk.web.view.PhotoPrint;
import hornwright.desk.web.view.PlacePanel;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Writes the photographs of a horn: the pair, the list with its gaps, and the form. */
public final class PhotoRows {
    private final OnBench bench;
    private final List<Photo> photos;

    public PhotoRows(OnBench bench) {
        this.bench = bench;
        this.photos = List.copyOf(bench.job().keeping().photos().values());
    }

    /** What a photograph is of: "shot.serial", "place.pad.f", or itself when it is neither. */
    public static String subject(Photo photo) {
        return photo.shot() != null
                ? "shot." + photo.shot()
                : photo.place() != null ? "place." + photo.place() : "photo." + photo.id();
    }

    public List<Group> groups() {
        return Stream.of(Shot.Group.values()).map(this::group).toList();
    }

    private Group group(Shot.Group group) {
        List<Card> cards = new ArrayList<>();
        List<PhotosPage.Wanted> wanted = new ArrayList<>();
        for (Shot shot : group.shots()) {
            List<Photo> taken = photos.stream()
                    .filter(photo -> shot.id().equals(photo.shot()))
                    .toList();
            if (!taken.isEmpty()) {
                cards.add(card("shot." + shot.id(), taken));
            } else if (!bench.job().isTaken(shot)) {
                wanted.add(new PhotosPage.Wanted(OnBench.capital(shot.words()), page("?shot=" + shot.id() + "#put")));
            }
        }
        int all = group.shots().size();
        return new Group(group.title(), "%d of %d".formatted(all - wanted.size(), all), cards, wanted);
    }

    public String fact() {
        long there = Stream.of(Shot.values()).filter(bench.job()::isTaken).count();
        return there == 0
                ? "Nothing of the list is taken yet."
                : there == Shot.values().length
                        ? "The whole list is taken."
                        : "%d of %d of the list are taken.".formatted(there, Shot.values().length);
    }

    private Card card(String subject, List<Photo> of) {
        return new Card(title(of.getFirst()), look(subject), print(of.getFirst()), told(of));
    }

    /** Every subject that is not on the list, in the order it was first photographed. */
    public List<Card> places() {
        Map<String, List<Photo>> bySubject = new LinkedHashMap<>();
        photos.stream()
                .filter(photo -> photo.shot() == null)
                .forEach(photo -> bySubject
                        .computeIfAbsent(subject(photo), none -> new ArrayList<>())
                        .add(photo));
        return bySubject.entrySet().stream()
                .map(entry -> card(entry.getKey(), entry.getValue()))
                .toList();
    }

    /** The photographs that show a place, a pin or a sign of the finish, or point at it. */
    public List<PhotoPrint> of(String subject) {
        return bench.job().keeping().photosOf(subject).stream().map(this::print).toList();
    }

    private static String told(List<Photo> of) {
        boolean before = of.stream().anyMatch(photo -> photo.moment() == Moment.BEFORE);
        boolean after = of.stream().anyMatch(photo -> photo.moment() == Moment.AFTER);
        return before && after ? "before and after" : of.getFirst().moment().word();
    }

    /** The pair of that subject, else of the first that has both sides, else of the first there is. */
    public @Nullable Pair compared(String asked) {
        Optional<String> subject = subjects().stream().filter(asked::equals).findFirst();
        return subject.or(() -> subjects().stream().filter(this::isWhole).findFirst())
                .or(() -> subjects().stream().findFirst())
                .map(this::pair)
                .orElse(null);
    }

    private List<String> subjects() {
        return photos.stream().map(PhotoRows::subject).distinct().toList();
    }

    private boolean isWhole(String subject) {
        Pair pair = pair(subject);
        return pair.before() != null && pair.now() != null;
    }

    private Pair pair(String subject) {
        List<Photo> of =
                photos.stream().filter(photo -> subject(photo).equals(subject)).toList();
        Optional<Photo> before =
                of.stream().filter(photo -> photo.moment() == Moment.BEFORE).findFirst();
        Optional<Photo> now =
                of.stream().filter(photo -> photo.moment() != Moment.BEFORE).reduce((first, second) -> second);
        return new Pair(
                title(of.getFirst()),
                before.map(this::print).orElse(null),
                now.map(this::print).orElse(null),
                before.isEmpty()
                        ? "Nobody photographed it as it came."
                        : "Not photographed since. Take it again when the work is done.");
    }

    public PhotoPrint print(Photo photo) {
        String line = OnBench.capital(photo.moment().word()) + ", " + Clocks.day(photo.when());
        return new PhotoPrint(
                page("/" + photo.id()),
                photo.file(),
                photo.small(),
                photo.width(),
                photo.height(),
                title(photo) + ", " + photo.moment().word(),
                line);
    }

    public String title(Photo photo) {
        return Stream.of(Shot.values())
                .filter(shot -> shot.id().equals(photo.shot()))
                .findFirst()
                .map(Shot::words)
                .or(() -> Optional.ofNullable(photo.place()).map(bench::pictured))
                .map(OnBench::capital)
                .orElse("The horn");
    }

    /** Where a photograph of this is put in, and the browser sent back from. */
    public String putAddress(String subject) {
        return page("?of=" + subject + "#put");
    }

    /**
     * @param shot the one that is asked for; "" for none
     * @param subject what it is taken of, by its id; "" for something of the list
     */
    public PhotoForm form(String shot, String subject, String back, String fresh) {
        Moment likely = bench.job().stage() == Stage.ARRIVAL
                ? Moment.BEFORE
                : bench.job().stage().compareTo(Stage.REGULATED) >= 0 ? Moment.AFTER : Moment.DURING;
        return new PhotoForm(
                page(""),
                back,
                bench.history().seq(),
                fresh,
                subject,
                Stream.of(Shot.Group.values())
                        .map(group -> new Section(
                                group.title(),
                                group.shots().stream()
                                        .map(one -> new PlacePanel.Option(
                                                one.id(),
                                                OnBench.capital(one.words()),
                                                one.id().equals(shot)))
                                        .toList()))
                        .toList(),
                Stream.of(Moment.values())
                        .map(moment -> new PlacePanel.Option(moment.name(), moment.word(), moment == likely))
                        .toList());
    }

    private String look(String subject) {
        return page("?look=" + subject + "#pair");
    }

    private String page(String rest) {
        return bench.address("photos") + rest;
    }
}
