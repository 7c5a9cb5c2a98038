package hornwright.desk.drawing;

import hornwright.bench.horn.Place;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * The unrolled horn for a page: classes for every look, a handle for every place, no colours and no styles of its own.
 * The page chooses the layer with data-layer and turns the sheet upright with a class.
 */
final class ScreenSvg {
    private final UnrolledHorn horn;
    private final Showing showing;
    private final StringBuilder out = new StringBuilder();
    private final Set<Stuff> used = EnumSet.noneOf(Stuff.class);

    ScreenSvg(UnrolledHorn horn, Showing showing) {
        this.horn = horn;
        this.showing = showing;
    }

    String svg() {
        horn.marks().forEach(this::put);
        labels("lying", horn.lyingLabels());
        labels("upright", horn.uprightLabels());
        String body = out.toString();
        return ("<svg class=\"unrolled\" xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %s %s\" role=\"group\""
                        + " aria-label=\"The horn unrolled, neck to bell\">%s%s</svg>\n")
                .formatted(Text.n(Sheet.WIDTH), Text.n(Sheet.HEIGHT), defs(), body);
    }

    private String defs() {
        StringBuilder defs = new StringBuilder("<defs>");
        used.forEach(stuff -> defs.append(stuff.screenPattern("horn-" + stuff.word())));
        defs.append("<pattern id=\"horn-hatch\" width=\"5\" height=\"5\" patternUnits=\"userSpaceOnUse\"")
                .append(" patternTransform=\"rotate(45)\"><rect class=\"g-stale\" width=\"5\" height=\"5\"/>")
                .append("<path class=\"k-stale\" d=\"M0 0V5\"/></pattern>");
        for (Standing standing : Standing.values()) {
            if (standing.hasToken()) {
                defs.append("<g id=\"horn-is-")
                        .append(standing.word())
                        .append("\"><circle class=\"i-back\" r=\"7.6\"/>");
                defs.append("<path class=\"i-line\" d=\"")
                        .append(standing.token())
                        .append("\"/></g>");
            }
        }
        return defs.append("</defs>\n").toString();
    }

    private void put(Mark mark) {
        switch (mark) {
            case Mark.Shape(Ink ink, Outline outline) -> shape(ink, outline, "");
            case Mark.Group(String name, List<Mark> marks) -> {
                out.append("<g class=\"").append(name).append("\">\n");
                marks.forEach(this::put);
                out.append("</g>\n");
            }
            case Mark.Handle handle -> handle(handle);
            case Mark.Words(String name, String text, Spot at, double size) -> words(name, text, at);
        }
    }

    private void shape(Ink ink, Outline outline, String fill) {
        out.append(outline.opening())
                .append(" class=\"")
                .append(ink.css())
                .append('"')
                .append(fill)
                .append("/>");
    }

    private void words(String name, String text, Spot at) {
        out.append("<text class=\"%s\" x=\"%s\" y=\"%s\">%s</text>"
                .formatted(name, Text.n(at.x()), Text.n(at.y()), Text.escaped(text)));
    }

    private void handle(Mark.Handle handle) {
        Place place = handle.place();
        Showing.Shown shown = showing.of(place);
        Stuff stuff = Stuff.of(shown.material());
        String name = Text.escaped(place.display() + ", " + shown.material() + ", "
                + shown.standing().spoken());
        out.append(("<g class=\"place p-%s m-%s\" id=\"at-%s\" data-place=\"%s\" data-state=\"%s\" role=\"button\""
                        + " tabindex=\"0\" aria-label=\"%s\"><title>%s</title>")
                .formatted(
                        place.kind().word(),
                        stuff.word(),
                        place.id(),
                        place.id(),
                        shown.standing().word(),
                        name,
                        name));
        String fill = "";
        if (stuff.patterned()) {
            used.add(stuff);
            fill = " fill=\"url(#horn-" + stuff.word() + ")\"";
        }
        for (Mark mark : handle.marks()) {
            if (mark instanceof Mark.Shape(Ink ink, Outline outline)) {
                shape(ink, outline, ink == Ink.FACE ? fill : "");
            } else {
                put(mark);
            }
        }
        if (shown.standing().hasToken()) {
            out.append("<use class=\"token\" href=\"#horn-is-%s\" x=\"%s\" y=\"%s\"/>"
                    .formatted(
                            shown.standing().word(),
                            Text.n(handle.token().x()),
                            Text.n(handle.token().y())));
        }
        out.append("</g>\n");
    }

    private void labels(String name, List<Label> labels) {
        out.append("<g class=\"labels ").append(name).append("\">\n");
        for (Label label : labels) {
            if (label.far()) {
                out.append("<path class=\"leader\" d=\"M")
                        .append(Text.at(label.leader()))
                        .append('L');
                out.append(Text.at(label.centre())).append("\"/>");
            }
        }
        for (Label label : labels) {
            words("lbl", label.text(), label.centre());
        }
        out.append("</g>\n");
    }
}
