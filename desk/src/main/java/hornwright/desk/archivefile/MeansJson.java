package hornwright.desk.archivefile;

import hornwright.bench.archive.Kind;
import hornwright.bench.archive.Means;
import hornwright.bench.archive.Method;
import hornwright.desk.json.Fields;
import hornwright.desk.json.Out;
import hornwright.desk.keyworkfile.Words;

/** What stands behind an item, in JSON: its kind, and the one mark that decides how far that kind can be trusted. */
final class MeansJson {
    private MeansJson() {}

    static Means read(Fields f) {
        return switch (f.choice("kind", Words.of(Kind.class))) {
            case OBJECT ->
                new Means.Examined(f.choice("method", Words.of(Method.class)), f.flagOr("partUnaltered", false));
            case DOCUMENT -> new Means.Written(f.flagOr("byMaker", false));
            case PHOTO -> new Means.Pictured(f.flagOr("clearWithScale", false));
            case TESTIMONY -> new Means.Told(f.flagOr("recordedAndNamed", false));
            case LITERATURE -> new Means.Published(f.flagOr("citesItsSources", false));
            case HEARSAY -> new Means.Rumoured();
        };
    }

    static Out write(Means means) {
        Out out = Out.object().put("kind", means.kind().word());
        return switch (means) {
            case Means.Examined seen ->
                out.put("method", seen.method().word()).put("partUnaltered", seen.partUnaltered());
            case Means.Written paper -> out.put("byMaker", paper.byMaker());
            case Means.Pictured picture -> out.put("clearWithScale", picture.clearWithScale());
            case Means.Told told -> out.put("recordedAndNamed", told.recordedAndNamed());
            case Means.Published book -> out.put("citesItsSources", book.citesItsSources());
            case Means.Rumoured rumour -> out;
        };
    }
}
