package hornwright.desk.web;

import io.javalin.http.Context;

/** The headers every answer carries, refusals included. Source: OWASP ASVS 5.0.0, 3.4. */
final class Headers {
    /** Nothing inline, nothing from elsewhere, no frames; forms go home. */
    static final String POLICY = "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self'; "
            + "connect-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'";

    private Headers() {}

    static void on(Context context) {
        context.header("Content-Security-Policy", POLICY)
                .header("X-Content-Type-Options", "nosniff")
                .header("Referrer-Policy", "same-origin")
                .header("Cross-Origin-Opener-Policy", "same-origin")
                .header("Cross-Origin-Resource-Policy", "same-origin")
                .header("Permissions-Policy", "camera=(self), microphone=(self), geolocation=()")
                .header("Cache-Control", "no-store");
    }
}
