package hornwright.desk.keyworkfile;

import hornwright.bench.horn.Direction;
import hornwright.bench.horn.Post;
import hornwright.bench.horn.Rod;
import hornwright.bench.horn.RodKind;
import hornwright.desk.json.Bound;
import hornwright.desk.json.Fields;
import hornwright.desk.json.Out;

/** A hinge rod and its posts in JSON. */
final class RodJson {
    private RodJson() {}

    static Rod read(Fields f) {
        return new Rod(
                Names.id(f, "rod.upper-stack"),
                f.whole("order", Bound.COUNT, "7"),
                f.choiceOr("kind", Words.of(RodKind.class), RodKind.ROD),
                f.number("diameter_mm", Bound.POSITIVE, "2.5"),
                f.choiceOr("direction", Words.of(Direction.class), Direction.ALONG),
                f.number("from_mm", Bound.NOT_NEGATIVE, "292"),
                f.number("to_mm", Bound.NOT_NEGATIVE, "440"),
                f.number("angle_deg", Bound.ANY, "61"),
                f.number("heightAboveBody_mm", Bound.NOT_NEGATIVE, "7"),
                f.list("posts", p -> new Post(Names.id(p, "post.upper-stack.1"), Names.position(p))),
                f.texts("removeAfter"));
    }

    static Out write(Rod rod) {
        return Out.object()
                .put("id", rod.id())
                .put("order", rod.order())
                .put("kind", rod.kind().word())
                .put("diameter_mm", rod.diameterMm())
                .put("direction", rod.direction().word())
                .put("from_mm", rod.fromMm())
                .put("to_mm", rod.toMm())
                .put("angle_deg", rod.angleDeg())
                .put("heightAboveBody_mm", rod.heightAboveBodyMm())
                .put(
                        "posts",
                        rod.posts().stream()
                                .map(post -> Names.put(Out.object().put("id", post.id()), post.at()))
                                .toList())
                .putTexts("removeAfter", rod.removeAfter());
    }
}
