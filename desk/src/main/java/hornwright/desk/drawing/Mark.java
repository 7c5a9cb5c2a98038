package hornwright.desk.drawing;

import hornwright.bench.horn.Place;
import java.util.List;

/** What stands on a drawing, in the order it is painted. */
sealed interface Mark {
    record Shape(Ink ink, Outline outline) implements Mark {}

    /** Shapes of one kind, such as all cups. */
    record Group(String name, List<Mark> marks) implements Mark {
        public Group {
            marks = List.copyOf(marks);
        }
    }

    /** A place that can be pointed at. The token stands there when the layer shows how the work stands. */
    record Handle(Place place, List<Mark> marks, Spot token) implements Mark {
        public Handle {
            marks = List.copyOf(marks);
        }
    }

    /** Words on a touch or in the margin of the sheet. */
    record Words(String name, String text, Spot at, double size) implements Mark {}
}
