package hornwright.desk.use;

import hornwright.bench.archive.Evidence;
import hornwright.bench.archive.Fitting;
import hornwright.bench.archive.Heard;
import hornwright.bench.archive.Kind;
import hornwright.bench.archive.Observation;
import hornwright.bench.archive.Origin;
import hornwright.bench.archive.Resolution;
import hornwright.bench.archive.Statement;
import hornwright.bench.archive.Witness;
import hornwright.bench.archive.YearRow;
import hornwright.bench.job.EvidenceBroughtIn.Brought;
import java.util.Comparator;
import java.util.function.UnaryOperator;

/**
 * How items are called on their way between shops. At home {@code w-41630}, abroad {@code s1a2b3c4d:w-41630}; an item that
 * comes home is itself again, and one that is passed on keeps the name of who saw it.
 */
record SenderNames(String sender) {
    /** Under what our own searches, asides and years stand at home. */
    static final String OWN = "";

    private static final String MARK = ":";

    /** As it is sent: under the sender's name; what was only heard joins the sender's one group and counts once. */
    Brought abroad(Brought home) {
        return renamed(home, this::abroad, this::groupAbroad, from -> from.equals(OWN) ? sender : from);
    }

    /** As it is kept here: our own without a name before it. */
    Brought home(Brought abroad) {
        return renamed(
                abroad,
                id -> id.startsWith(sender + MARK) ? id.substring(sender.length() + 1) : id,
                origin -> origin,
                from -> from.equals(sender) ? OWN : from);
    }

    static boolean isForeign(String id) {
        return id.contains(MARK);
    }

    /** Whose item this is, by its name abroad. */
    static String author(String id) {
        return id.substring(0, Math.max(0, id.indexOf(MARK)));
    }

    private String abroad(String id) {
        return isForeign(id) ? id : sender + MARK + id;
    }

    private interface Group {
        Origin of(Origin origin);
    }

    private Origin groupAbroad(Origin origin) {
        boolean heard = origin.kind() == Kind.HEARSAY;
        return heard && !isForeign(origin.id()) ? new Origin(sender + MARK + "heard", origin.kind()) : origin;
    }

    private static Brought renamed(Brought all, UnaryOperator<String> id, Group group, UnaryOperator<String> teller) {
        return new Brought(
                all.maker(),
                all.witnesses().stream()
                        .map(one -> renamed(one, id))
                        .sorted(Comparator.comparing(Witness::id))
                        .toList(),
                all.observations().stream()
                        .map(one -> renamed(one, id, group))
                        .sorted(Comparator.comparing(Observation::id))
                        .toList(),
                all.statements().stream()
                        .map(one -> renamed(one, id, group))
                        .sorted(Comparator.comparing(one -> one.evidence().id()))
                        .toList(),
                all.fittings().stream()
                        .map(one -> renamed(one, id, group))
                        .sorted(Comparator.comparing(one -> one.evidence().id()))
                        .toList(),
                all.heard().stream()
                        .map(one -> renamed(one, id, teller))
                        .sorted(Comparator.comparing(Heard::from))
                        .toList());
    }

    private static Heard renamed(Heard one, UnaryOperator<String> id, UnaryOperator<String> teller) {
        return new Heard(
                teller.apply(one.from()),
                one.searches(),
                one.resolutions().stream()
                        .map(aside ->
                                new Resolution(id.apply(aside.evidence()), aside.reason(), aside.who(), aside.when()))
                        .sorted(Comparator.comparing(Resolution::evidence))
                        .toList(),
                one.years().stream()
                        .sorted(Comparator.comparingLong(YearRow::serial))
                        .toList());
    }

    private static Witness renamed(Witness one, UnaryOperator<String> id) {
        return new Witness(
                id.apply(one.id()),
                one.serial(),
                one.voice(),
                one.maker(),
                one.model(),
                one.built(),
                one.integrity(),
                one.assemblyNumbers());
    }

    private static Observation renamed(Observation one, UnaryOperator<String> id, Group group) {
        return new Observation(
                id.apply(one.id()),
                id.apply(one.witness()),
                one.place(),
                one.material(),
                one.colour(),
                one.thicknessAtLeastMm(),
                one.adhesive(),
                one.shape(),
                one.cut(),
                one.means(),
                one.hand(),
                one.bearing(),
                group.of(one.origin()),
                one.interest(),
                one.citation(),
                one.file());
    }

    private static Statement renamed(Statement one, UnaryOperator<String> id, Group group) {
        return new Statement(one.voice(), one.place(), one.material(), renamed(one.evidence(), id, group));
    }

    private static Fitting renamed(Fitting one, UnaryOperator<String> id, Group group) {
        return new Fitting(
                one.kind(), one.voice(), one.places(), one.part(), one.sizeMm(), renamed(one.evidence(), id, group));
    }

    private static Evidence renamed(Evidence said, UnaryOperator<String> id, Group group) {
        return new Evidence(
                id.apply(said.id()),
                said.means(),
                said.hand(),
                said.bearing(),
                said.stance(),
                group.of(said.origin()),
                said.interest(),
                said.integrity(),
                said.serials(),
                said.citation(),
                said.file(),
                said.search());
    }
}
