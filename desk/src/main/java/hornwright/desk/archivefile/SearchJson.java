package hornwright.desk.archivefile;

import hornwright.bench.archive.Edtf;
import hornwright.bench.archive.SearchLog;
import hornwright.desk.json.Fields;
import hornwright.desk.json.Out;
import java.util.List;

/** Where somebody looked for more, in JSON. One entry may cover several places. */
record SearchJson(List<String> places, SearchLog log) {
    static SearchJson read(Fields f) {
        List<String> places = f.texts("places");
        if (places.isEmpty()) {
            f.fault("places", "a search is for one place at least", "\"places\": [\"foot.d\"]");
        }
        return new SearchJson(places, log(f));
    }

    static SearchLog log(Fields f) {
        String where = f.text("where", "bench books of the shop");
        Edtf when = WitnessJson.date(f, "when");
        if (!f.has("when")) {
            f.fault("when", "missing", "\"when\": \"2026-01\"");
        }
        return new SearchLog(where, when == null ? Edtf.parse("2026") : when, f.text("terms", "foot cork, stack foot"));
    }

    static Out write(SearchLog log) {
        return Out.object()
                .put("where", log.where())
                .put("when", log.when().text())
                .put("terms", log.terms());
    }

    static Out write(List<String> places, SearchLog log) {
        return Out.object()
                .putTexts("places", places)
                .put("where", log.where())
                .put("when", log.when().text())
                .put("terms", log.terms());
    }
}
