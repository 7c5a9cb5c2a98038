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

    /** What stays upright about a spot when the sheet is turned to stand. */
    record Upright(Spot pivot, List<Mark> marks) implements Mark {
        public Upright {
            marks = List.copyOf(marks);
        }
    }

    /** A place that can be pointed at. The token stands there when the layer shows how the work stands. */
    record Handle(Place place, List<Mark> marks, Spot token) implements Mark {
        public Handle {
            marks = List.copyOf(marks);
        }
    }

    /** Words on a touch, on the bell or in a margin; the spot is on the base line, where {@code align} says. */
    record Words(Type type, String text, Spot at, double size, PrintWord.Align align) implements Mark {
        static Words centred(Type type, String text, Spot at, double size) {
            return new Words(type, text, at, size, PrintWord.Align.MIDDLE);
        }
    }

    /** What words are. */
    enum Type {
        ON_TOUCH("on-touch", PrintWord.Face.PLAIN),
        ENGRAVED("engraved", PrintWord.Face.ENGRAVED),
        NAME("lbl", PrintWord.Face.STRONG),
        FIGURE("lbl-figure", PrintWord.Face.PLAIN);

        private final String css;
        private final PrintWord.Face face;

        Type(String css, PrintWord.Face face) {
            this.css = css;
            this.face = face;
        }

        String css() {
            return css;
        }

        PrintWord.Face face() {
            return face;
        }
    }
}
