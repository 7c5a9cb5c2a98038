package hornwright.bench.plan.contacts;

import hornwright.bench.horn.AdjustingScrew;
import hornwright.bench.horn.Cup;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.Link;
import hornwright.bench.horn.Owner;
import hornwright.bench.horn.PadCentreKind;
import hornwright.bench.horn.Place;
import hornwright.bench.horn.Spring;
import hornwright.bench.plan.Because;
import hornwright.bench.plan.Chapter;
import hornwright.bench.plan.NumberName;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.plan.Reasons;
import hornwright.bench.plan.heights.CutFull;
import hornwright.bench.plan.measured.CupGeometry;
import hornwright.bench.plan.measured.ReadNumbers;
import hornwright.bench.plan.treatment.PlaceTreatment;
import hornwright.bench.regulation.Regulation;
import hornwright.bench.rules.ShopRules;
import hornwright.bench.stock.Stock;
import hornwright.bench.survey.Decision;
import hornwright.bench.survey.Reading;
import hornwright.bench.survey.ReadingKind;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Sizes of contacts, springs and pad centres. */
public final class ContactChapter {
    /**
     * Everything these sizes depend on.
     *
     * @param treatments by place
     * @param readings of material thickness, link space and hole diameter that still count
     * @param decided what is added or taken at links
     * @param sizedElsewhere places whose thickness follows from a height
     */
    public record Question(
            Keywork keywork,
            Map<String, PlaceTreatment> treatments,
            List<Reading> readings,
            Set<String> sizedElsewhere,
            List<Decision.Contact> decided,
            Stock stock,
            ShopRules rules) {}

    private final Question ask;
    private final Reasons reasons = new Reasons();
    private final ReadNumbers read;
    private final CutFull cuts;
    private final Map<String, Map<NumberName, PlannedNumber>> numbers = new LinkedHashMap<>();

    private ContactChapter(Question ask) {
        this.ask = ask;
        this.read = new ReadNumbers(ask.rules(), reasons);
        this.cuts = new CutFull(ask.rules(), ask.stock(), reasons);
    }

    public static Chapter of(Question ask) {
        ContactChapter chapter = new ContactChapter(ask);
        ask.keywork().places().forEach(chapter::size);
        return new Chapter("contacts", chapter.numbers, Map.of(), List.of(), chapter.reasons.table());
    }

    private void size(Place place) {
        Map<NumberName, PlannedNumber> sizes = new LinkedHashMap<>();
        asBuilt(place).ifPresent(number -> sizes.put(NumberName.AS_BUILT, number));
        switch (place.kind()) {
            case FOOT, BUMPER, GUARD, UPPER_STOP, ROCKER_CONTACT, SADDLE, GUIDE, SLEEVE, NECK_CORK ->
                contact(place, sizes);
            case LINK -> link(place, sizes);
            case SPRING -> spring(place, sizes);
            case RESONATOR, RIVET -> centre(place, sizes);
            default -> {}
        }
        if (!sizes.isEmpty()) {
            numbers.put(place.id(), sizes);
        }
    }

    /** Pads are chosen by their own window; of what carries a cork or felt the archive tells the thickness. */
    private Optional<PlannedNumber> asBuilt(Place place) {
        PlaceTreatment treatment = ask.treatments().get(place.id());
        boolean piece = switch (place.kind()) {
            case FOOT, BUMPER, GUARD, UPPER_STOP, ROCKER_CONTACT, SADDLE, GUIDE, SLEEVE, NECK_CORK, LINK -> true;
            default -> false;
        };
        return piece && treatment != null
                ? PackedSince.asBuilt(place, treatment.built(), ask.rules(), reasons)
                : Optional.empty();
    }

    private void contact(Place place, Map<NumberName, PlannedNumber> sizes) {
        if (ask.sizedElsewhere().contains(place.id()) || !(place.asBuilt().thicknessMm() > 0)) {
            return;
        }
        PlannedNumber wanted =
                pattern("thickness " + place.id(), place.asBuilt().thicknessMm(), "foot.from-pattern_mm");
        sizes.put(NumberName.THICKNESS, wanted);
        if (renewed(place)) {
            fromTheShelf(place, wanted, cuts.foot(place.id(), wanted), sizes);
        }
    }

    /** With the space between the closed keys measured the thickness follows; without it only how full to cut. */
    private void link(Place place, Map<NumberName, PlannedNumber> sizes) {
        Optional<PlannedNumber> space = space(place);
        space.ifPresent(number -> sizes.put(NumberName.THICKNESS, number));
        ask.decided().stream()
                .filter(contact -> contact.link().equals(place.belongsTo().id()))
                .findFirst()
                .ifPresent(contact -> decided(contact, sizes));
        if (renewed(place) && place.asBuilt().thicknessMm() > 0) {
            PlannedNumber expected = space.orElseGet(
                    () -> pattern("thickness " + place.id(), place.asBuilt().thicknessMm(), "foot.from-pattern_mm"));
            PlannedNumber full = cuts.link(place.id(), expected);
            sizes.put(NumberName.CUT_FULL, full);
            material(place)
                    .flatMap(material -> cuts.sheet(material, full.value()))
                    .ifPresent(sheet -> sizes.put(NumberName.SHEET, sheet));
        }
    }

    /** What was settled here, as exactly as the hand does it; a screw is turned and its cork left alone. */
    private void decided(Decision.Contact contact, Map<NumberName, PlannedNumber> sizes) {
        Link link = ask.keywork().links().get(contact.link());
        AdjustingScrew screw = link.screw();
        Because.Decided why =
                new Because.Decided("decided " + contact.about(), contact.words(link) + ": " + contact.why());
        if (screw == null) {
            sizes.put(
                    NumberName.CHANGE,
                    reasons.leaf(why, contact.changeMm(), "mm", Regulation.handUMm(link, ask.rules())));
        } else {
            double u = ask.rules().value("regulation.turn-u");
            sizes.put(NumberName.TURN, reasons.leaf(why, screw.turns(contact.changeMm()), "turns", u));
        }
    }

    private Optional<PlannedNumber> space(Place place) {
        if (!(place.belongsTo() instanceof Owner.OfLink owner)) {
            return Optional.empty();
        }
        Link link = ask.keywork().links().get(owner.id());
        return read.mean(place.id() + "/space", "mean of the spaces read", readings(ReadingKind.LINK_SPACE, link.id()))
                .map(space -> reasons.derive(
                        place.id() + "/thickness",
                        "space between driver and follower with both cups closed: what fills it closes both together",
                        "mm",
                        in -> in[0],
                        Because.Input.of("space, both closed", space)));
    }

    private void spring(Place place, Map<NumberName, PlannedNumber> sizes) {
        Optional<PlannedNumber> measured =
                read.mean(place.id() + "/wire", "mean of the sizes read", readings(ReadingKind.THICKNESS, place.id()));
        Spring built = ask.keywork().keys().get(place.belongsTo().id()).spring();
        sizes.put(
                NumberName.WIRE,
                measured.orElseGet(
                        () -> pattern("spring " + place.id(), built.thicknessMm(), "spring.from-pattern_mm")));
    }

    /** As built, but never so large that it comes within the clearance of the hole. */
    private void centre(Place place, Map<NumberName, PlannedNumber> sizes) {
        if (!(place.belongsTo() instanceof Owner.OfCup owner)) {
            return;
        }
        Cup cup = ask.keywork().cups().get(owner.id());
        PlannedNumber built = reasons.leaf(
                new Because.FromPattern(
                        "pattern centre " + cup.hole(),
                        "pad centre in the pattern " + ask.keywork().id(),
                        ask.keywork().id()),
                cup.centre().diameterMm(),
                "mm",
                0);
        if (cup.centre().kind() != PadCentreKind.RESONATOR) {
            sizes.put(NumberName.DIAMETER, built);
            return;
        }
        CupGeometry geometry = CupGeometry.of(
                ask.keywork(), cup, readings(ReadingKind.HOLE, cup.hole()), List.of(), ask.rules(), reasons);
        PlannedNumber clear = reasons.rule(ask.rules(), "resonator.clearance_mm");
        double most = geometry.hole().value() - clear.value();
        sizes.put(
                NumberName.DIAMETER,
                reasons.derive(
                                place.id() + "/diameter",
                                "as built, at most hole diameter - clearance all round",
                                "mm",
                                in -> Math.min(in[0], in[1] - in[2]),
                                Because.Input.of("as built", built),
                                geometry.holeInput(),
                                Because.Input.of("clearance", clear))
                        .within(0, most));
    }

    private void fromTheShelf(
            Place place, PlannedNumber wanted, PlannedNumber full, Map<NumberName, PlannedNumber> sizes) {
        sizes.put(NumberName.CUT_FULL, full);
        cuts.fromTheShelf(place.id(), material(place).orElse(null), wanted, full, sizes);
    }

    private boolean renewed(Place place) {
        PlaceTreatment treatment = ask.treatments().get(place.id());
        return treatment != null && treatment.mayNeedNew();
    }

    private Optional<String> material(Place place) {
        PlaceTreatment treatment = ask.treatments().get(place.id());
        return treatment == null ? Optional.empty() : Optional.ofNullable(treatment.material());
    }

    private List<Reading> readings(ReadingKind kind, String of) {
        return ask.readings().stream()
                .filter(reading -> reading.kind() == kind && reading.of().equals(of))
                .toList();
    }

    private PlannedNumber pattern(String what, double value, String differs) {
        return CupGeometry.pattern(reasons, ask.rules(), ask.keywork(), what, value, differs);
    }
}
