package hornwright.desk.drawing;

import hornwright.bench.horn.KeyGroup;
import hornwright.bench.horn.Place;
import hornwright.desk.drawing.Mark.Group;
import hornwright.desk.drawing.Mark.Handle;
import java.util.List;
import java.util.stream.Stream;

/** The parts of the sheet that fill a screen: the keys of one group, with the sides of the whole sheet. */
final class Parts {
    /** Room left round the outermost places, in units. */
    private static final double MARGIN = 26;

    private Parts() {}

    static Box whole() {
        return new Box(0, 0, Sheet.WIDTH, Sheet.HEIGHT);
    }

    static Box of(UnrolledHorn horn, KeyGroup group) {
        List<Spot> spots = handles(horn.marks())
                .filter(handle -> in(horn, group, handle.place()))
                .map(Handle::token)
                .toList();
        if (spots.isEmpty()) {
            return whole();
        }
        double left = spots.stream().mapToDouble(Spot::x).min().orElseThrow() - MARGIN;
        double right = spots.stream().mapToDouble(Spot::x).max().orElseThrow() + MARGIN;
        double top = spots.stream().mapToDouble(Spot::y).min().orElseThrow() - MARGIN;
        double bottom = spots.stream().mapToDouble(Spot::y).max().orElseThrow() + MARGIN;
        double width = Math.max(right - left, (bottom - top) * Sheet.WIDTH / Sheet.HEIGHT);
        return Box.about(new Spot((left + right) / 2, (top + bottom) / 2), width, width * Sheet.HEIGHT / Sheet.WIDTH);
    }

    private static boolean in(UnrolledHorn horn, KeyGroup group, Place place) {
        return horn.keywork().groupOf(place).filter(group::equals).isPresent();
    }

    private static Stream<Handle> handles(List<Mark> marks) {
        return marks.stream().flatMap(mark -> switch (mark) {
            case Handle handle -> Stream.of(handle);
            case Group group -> handles(group.marks());
            default -> Stream.empty();
        });
    }
}
