package hornwright.desk.web.measure;

import hornwright.desk.units.Caliper;
import hornwright.desk.units.LengthUnit;
import hornwright.desk.web.page.Choices;
import hornwright.desk.web.page.Desk;
import hornwright.desk.web.view.PlacePanel;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.SameSite;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Learns how the caliper of this bench types, and remembers it in a cookie of this browser. */
public final class Calipers {
    private static final String COOKIE = "hornwright-caliper";
    private static final int A_YEAR = 365 * 24 * 3600;
    private static final int LONGEST = 40;

    private final Desk desk;

    public Calipers(Desk desk) {
        this.desk = desk;
    }

    public void routes(RoutesConfig routes) {
        routes.get("/caliper", context -> show(context, "", ""));
        routes.post("/caliper", this::learn);
    }

    /** The caliper of this browser; empty until one was learnt. */
    static Optional<Caliper> of(Context context) {
        String text = context.cookie(COOKIE);
        return text == null ? Optional.empty() : Caliper.parse(text);
    }

    private void learn(Context context) {
        List<Caliper.Sample> samples = IntStream.rangeClosed(1, 3)
                .mapToObj(n -> new Caliper.Sample(Desk.field(context, "shown" + n), Desk.field(context, "arrived" + n)))
                .filter(sample ->
                        !sample.arrived().isEmpty() && sample.arrived().length() <= LONGEST)
                .toList();
        switch (Caliper.learn(samples, unit(context))) {
            case Caliper.Learnt.Unclear unclear -> {
                context.status(422);
                show(context, unclear.sentence(), "");
            }
            case Caliper.Learnt.Profile profile -> {
                keep(context, profile.caliper());
                show(context, "", told(profile.caliper()));
            }
        }
    }

    private void show(Context context, String fault, String learnt) {
        LengthUnit unit = unit(context);
        desk.answer(
                context,
                "caliper",
                new CaliperPage(
                        desk.frame(context, "Caliper"),
                        !learnt.isEmpty()
                                ? learnt
                                : of(context).map(Calipers::told).orElse(""),
                        fault,
                        IntStream.rangeClosed(1, 3)
                                .mapToObj(n -> new CaliperPage.Sample(
                                        n, Desk.field(context, "shown" + n), Desk.field(context, "arrived" + n)))
                                .toList(),
                        Stream.of(LengthUnit.MILLIMETRE, LengthUnit.INCH)
                                .map(one -> new PlacePanel.Option(one.name(), one.symbol(), one == unit))
                                .toList()));
    }

    private static String told(Caliper caliper) {
        return "It types through a %s keyboard; a bare number is in %s."
                .formatted(caliper.layout().word(), caliper.unit().symbol());
    }

    private static LengthUnit unit(Context context) {
        return Choices.of(
                LengthUnit.class,
                Desk.field(context, "unit").toUpperCase(Locale.ROOT),
                of(context).map(Caliper::unit).orElse(LengthUnit.MILLIMETRE));
    }

    private static void keep(Context context, Caliper caliper) {
        Cookie cookie = new Cookie(COOKIE, caliper.text());
        cookie.setPath("/");
        cookie.setMaxAge(A_YEAR);
        cookie.setHttpOnly(true);
        cookie.setSameSite(SameSite.STRICT);
        context.cookie(cookie);
    }
}
