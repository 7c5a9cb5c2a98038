package hornwright.browser;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The demo shop, with a horn that has been looked at and measured a little, and the pages there are. */
record Shown(Program program, String horn) {
    private static final Pattern HORN = Pattern.compile("href=\"(/horn/[^\"]+)\">(?:(?!</a>)[\\s\\S])*<b>41207</b>");

    record PageOf(String name, String path) {}

    static Shown in(Path folder) throws IOException, InterruptedException {
        return of(Program.start(folder, "--demo"));
    }

    static Shown of(Program program) throws IOException, InterruptedException {
        Matcher horn = HORN.matcher(program.get("/"));
        if (!horn.find()) {
            throw new IOException("the demo shop has no horn 41207 on its shelf");
        }
        return new Shown(program, horn.group(1));
    }

    List<PageOf> pages() {
        return List.of(
                new PageOf("shelf", "/"),
                new PageOf("horn", horn),
                new PageOf("horn-place", horn + "?layer=as-built&place=pad.low-b"),
                new PageOf("arrival", horn + "/arrival"),
                new PageOf("find", "/find?q=felt&horn=" + horn.substring(6)),
                new PageOf("photos", horn + "/photos"),
                new PageOf("photo", horn + "/photos/f.demo-low-b"),
                new PageOf("kept", horn + "/kept"),
                new PageOf("survey", horn + "/survey"),
                new PageOf("measure", horn + "/measure?sheet=cups"),
                new PageOf("measure-heights", horn + "/measure?sheet=heights"),
                new PageOf("point", horn + "/point?sheet=heights"),
                new PageOf("caliper", "/caliper"),
                new PageOf("plan", horn + "/plan"),
                new PageOf("links", horn + "/links"),
                new PageOf("feel", horn + "/feel"),
                new PageOf("closing", horn + "/closing"),
                new PageOf("lever", horn + "/lever/e"),
                new PageOf("measure-trials", horn + "/measure?sheet=trials"),
                new PageOf("work", horn + "/work"),
                new PageOf("fit", horn + "/fit"),
                new PageOf("holes", horn + "/holes"),
                new PageOf("neck", horn + "/neck"),
                new PageOf("leaks", horn + "/leaks"),
                new PageOf("body", horn + "/body"),
                new PageOf("finish", horn + "/finish"),
                new PageOf("adhesives", horn + "/adhesives"),
                new PageOf("octave", horn + "/octave"),
                new PageOf("trays", horn + "/trays?key=bis"),
                new PageOf("handover", horn + "/handover"),
                new PageOf("as-built", horn + "/as-built"),
                new PageOf("as-built-any", "/archive/as-built?voice=alto&serial=45300"),
                new PageOf("keep", horn + "/keep"),
                new PageOf("archive", "/archive"),
                new PageOf("witness", "/archive/witness/w-41880"),
                new PageOf("archive-history", "/archive/history"),
                new PageOf("evidence", "/archive/place?voice=alto&serial=41207&place=foot.d"),
                new PageOf("sound", horn + "/sound"),
                new PageOf("sound-leak", horn + "/sound/leak?cup=cup.g&mm=0.65"),
                new PageOf("sound-before", horn + "/sound/before"),
                new PageOf("history", horn + "/history"),
                new PageOf("fits", "/archive/fits"),
                new PageOf("instead", horn + "/instead/foot.d"),
                new PageOf("instead-roller", horn + "/instead/roller.low-e-flat"),
                new PageOf("import", "/archive/import"),
                new PageOf("share", "/archive/share"),
                new PageOf("stock", "/stock"),
                new PageOf("materials", "/materials"),
                new PageOf("rules", "/rules"),
                new PageOf("shop-history", "/history"),
                new PageOf("refusal", "/horn/q-9999"));
    }
}
