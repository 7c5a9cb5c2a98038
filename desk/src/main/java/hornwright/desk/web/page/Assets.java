package hornwright.desk.web.page;

import hornwright.desk.web.view.Frame;
import hornwright.desk.web.view.SoundScripts;
import io.javalin.http.Context;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The few files a page refers to. Their names carry the hash of their content, so a browser may keep them for ever. */
public final class Assets {
    private static final String FOLDER = "/hornwright/web/";
    private static final String HTMX = "/META-INF/resources/webjars/htmx.org/2.0.10/dist/htmx.min.js";
    private static final List<String> SHEETS = List.of(
            "tokens.css",
            "page.css",
            "drawing.css",
            "horn.css",
            "bench.css",
            "archive.css",
            "sound.css",
            "flow.css",
            "sheets.css",
            "feel.css",
            "links.css",
            "photo.css",
            "narrow.css",
            "print.css");

    private static final List<String> SCRIPTS =
            List.of("hornwright.js", "horn.js", "because.js", "live.js", "point.js");

    private record Asset(String type, byte[] content, String tag) {}

    private final Map<String, Asset> byAddress = new LinkedHashMap<>();
    private final String style;
    private final String script;
    private final String htmx;
    private final String icon;
    private final String listen;
    private final String ear;

    public Assets() {
        style = keep("hornwright", "css", "text/css", joined(SHEETS));
        script = keep("hornwright", "js", "text/javascript", joined(SCRIPTS));
        htmx = keep("htmx", "js", "text/javascript", resource(HTMX));
        listen = keep("listen", "js", "text/javascript", resource(FOLDER + "listen.js"));
        ear = keep("ear", "js", "text/javascript", resource(FOLDER + "ear.js"));
        icon = keep("mark", "svg", "image/svg+xml", resource(FOLDER + "mark.svg"));
    }

    Frame.Files files() {
        return new Frame.Files(style, script, htmx, icon);
    }

    SoundScripts scripts() {
        return new SoundScripts(listen, ear);
    }

    public void answer(Context context) {
        Asset asset = byAddress.get(context.path());
        if (asset == null) {
            throw Refusal.notFound("There is no such file here; load the page again.");
        }
        context.header("Cache-Control", "public, max-age=31536000, immutable").header("ETag", asset.tag());
        if (asset.tag().equals(context.header("If-None-Match"))) {
            context.status(304);
            return;
        }
        context.contentType(asset.type() + "; charset=utf-8").result(asset.content());
    }

    /** Browsers ask for this name whatever the page says. */
    public void icon(Context context) {
        context.header("Cache-Control", "max-age=86400")
                .contentType("image/svg+xml")
                .result(resource(FOLDER + "mark.svg"));
    }

    private String keep(String name, String extension, String type, byte[] content) {
        String hash = hash(content);
        String address = "/assets/%s.%s.%s".formatted(name, hash, extension);
        byAddress.put(address, new Asset(type, content, "\"" + hash + "\""));
        return address;
    }

    private static byte[] joined(List<String> names) {
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        names.forEach(name -> all.writeBytes(resource(FOLDER + name)));
        return all.toByteArray();
    }

    private static byte[] resource(String path) {
        try (InputStream stream = Assets.class.getResourceAsStream(path)) {
            if (stream == null) {
                throw new IllegalStateException("the program lacks its own file " + path);
            }
            return stream.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String hash(byte[] content) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(content), 0, 8);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}
