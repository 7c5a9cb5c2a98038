package hornwright.browser;

import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A shop with one horn on it that has been looked at and measured a little, and the pages there are. */
record Shown(Program program, String horn) {
    record PageOf(String name, String path) {}

    static Shown in(Path folder) throws IOException, InterruptedException {
        Program program = Program.start(folder, "--empty");
        String horn = program.newHorn("tarrant-loe-alto", "41207");
        Map<String, String> readings = new LinkedHashMap<>();
        String[] cups = {
            "low-b-flat 48.75 48.52",
            "low-b 47.40 47.37",
            "low-c-sharp 39.65 39.71",
            "low-c 40.94 41.03",
            "d 34.9 35.1",
            "e 33.0 33.1"
        };
        for (String line : cups) {
            String[] parts = line.split(" ");
            readings.put("r/CUP_INSIDE/cup." + parts[0] + "/along the hinge", parts[1]);
            readings.put("r/CUP_INSIDE/cup." + parts[0] + "/across the hinge", parts[2]);
        }
        readings.put("seq", "2");
        program.post(horn + "/readings", readings);
        paint(program, horn, "bell", "pad", "kid leather over woven wool felt");
        paint(program, horn, "bell", "guard", "synthetic felt");
        paint(program, horn, "lower-stack", "foot", "natural cork");
        program.newHorn("tarrant-loe-tenor", "18866");
        program.post(
                "/stock",
                Map.of(
                        "kind",
                        "PAD",
                        "material",
                        "kid leather over woven wool felt",
                        "diameter",
                        "48.5",
                        "thickness",
                        "4.3",
                        "count",
                        "6"));
        program.post(
                "/stock", Map.of("kind", "CORK_SHEET", "material", "natural cork", "thickness", "1.6", "count", "2"));
        return new Shown(program, horn);
    }

    private static void paint(Program program, String horn, String group, String kind, String material)
            throws IOException, InterruptedException {
        program.post(
                horn + "/survey",
                Map.of(
                        "stroke", "stroke-" + group + "-" + kind,
                        "group", group,
                        "kind", kind,
                        "material", material,
                        "seq", "2"));
    }

    List<PageOf> pages() {
        return List.of(
                new PageOf("shelf", "/"),
                new PageOf("horn", horn),
                new PageOf("horn-place", horn + "?layer=as-built&place=pad.low-b"),
                new PageOf("survey", horn + "/survey"),
                new PageOf("measure", horn + "/measure?sheet=cups"),
                new PageOf("measure-heights", horn + "/measure?sheet=heights"),
                new PageOf("plan", horn + "/plan"),
                new PageOf("work", horn + "/work"),
                new PageOf("history", horn + "/history"),
                new PageOf("stock", "/stock"),
                new PageOf("rules", "/rules"),
                new PageOf("refusal", "/horn/q-9999"));
    }
}
