package hornwright.desk.virtual;

import hornwright.bench.plan.NumberName;
import hornwright.bench.plan.Plan;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.plan.PlannedPlace;

/** Holds the numbers of a plan against the truth of its horn. */
final class Stated {
    private final Plan plan;
    private final Coverage coverage;

    Stated(Plan plan, Coverage coverage) {
        this.plan = plan;
        this.coverage = coverage;
    }

    void against(VirtualHorn horn) {
        for (VirtualCup cup : horn.cups()) {
            PlannedPlace pad = plan.place("pad." + cup.cup().hole());
            pads(pad, cup, Draw.of(horn.seed(), "made " + cup.cup().id()));
            heights(pad, cup);
            stop(cup);
        }
    }

    private void pads(PlannedPlace pad, VirtualCup cup, Draw draw) {
        double made = draw.within(-Spread.PAD_THICKNESS, Spread.PAD_THICKNESS);
        double aimed = cup.cup().adhesive().thicknessMm();
        String tried = pad.number(NumberName.PROUD)
                .map(proud -> plan.becauses().get(proud.because()).rule().startsWith("landed level")
                        ? ", tried level"
                        : ", tried")
                .orElse(", not tried");
        check(pad, NumberName.CUP_INSIDE, "", cup.inside());
        check(pad, NumberName.FLOOR_TO_RIM, tried, cup.floorToRim());
        check(pad, NumberName.PARALLEL_GAP, tried, cup.rimGap());
        check(pad, NumberName.PROJECTION, tried, cup.rimGap() + cup.seat());
        check(pad, NumberName.THICKNESS, tried, cup.room() - aimed - made);
        pad.number(NumberName.CHOSEN_THICKNESS)
                .ifPresent(chosen -> check(pad, NumberName.FLOAT, tried, cup.room() - chosen.value() - made));
        window(pad, cup, made);
        check(pad, NumberName.FRONT_GAP_IF_PROUD, "", 0.1 * cup.hole() / (cup.arm() - cup.radius()));
        check(pad, NumberName.BACK_GAP_IF_SHY, "", 0.1 * cup.hole() / (cup.arm() + cup.radius()));
    }

    /** A window says: any pad out of it leaves a film that can be floated. Asked of its ends, its middle and the pad taken. */
    private void window(PlannedPlace pad, VirtualCup cup, double made) {
        PlannedNumber wanted = pad.number(NumberName.THICKNESS).orElseThrow();
        Double low = wanted.low();
        Double high = wanted.high();
        boolean floated = cup.hole() > 6;
        if (floated && low != null && high != null) {
            coverage.promise("window: thinnest pad floats", floats(cup, low + made));
            coverage.promise("window: middle pad floats", floats(cup, (low + high) / 2 + made));
            coverage.promise("window: thickest pad floats", floats(cup, high + made));
            pad.number(NumberName.CHOSEN_THICKNESS)
                    .ifPresent(
                            chosen -> coverage.promise("window: pad taken floats", floats(cup, chosen.value() + made)));
        }
        coverage.promise("window claimed", low != null);
    }

    private static boolean floats(VirtualCup cup, double pad) {
        double film = cup.room() - pad;
        return film >= Baseline.FILM_LEAST_MM && film <= Baseline.FILM_MOST_MM;
    }

    private void heights(PlannedPlace pad, VirtualCup cup) {
        check(pad, NumberName.HEIGHT_NOW, "", cup.frontAsFound());
        check(pad, NumberName.HEIGHT_TARGET, "", cup.factoryFront());
        pad.number(NumberName.HEIGHT_TARGET).ifPresent(target -> {
            check(pad, NumberName.HEIGHT_SETTLED, "", cup.front(cup.material(target.value()) - loss(cup, target)));
            pad.number(NumberName.HEIGHT_CENTRE)
                    .ifPresent(centre -> coverage.add(
                            name(NumberName.HEIGHT_CENTRE, ""),
                            centre.value(),
                            centre.u(),
                            cup.centre().lift(cup.edge().rotation(cup.factoryFront()))));
        });
    }

    private static double loss(VirtualCup cup, PlannedNumber target) {
        double material = cup.material(target.value());
        double others = cup.layers().stream()
                .skip(1)
                .mapToDouble(layer -> layer.layer().thicknessMm())
                .sum();
        double loss = (material - others) * cup.layers().getFirst().willLose();
        return loss
                + cup.layers().stream()
                        .skip(1)
                        .mapToDouble(layer -> layer.layer().thicknessMm() * layer.willLose())
                        .sum();
    }

    private void stop(VirtualCup cup) {
        if (cup.layers().isEmpty()) {
            return;
        }
        PlannedPlace foot = plan.place(cup.layers().getFirst().layer().place());
        double target = plan.number("pad." + cup.cup().hole(), NumberName.HEIGHT_TARGET)
                .orElseThrow()
                .value();
        double others = cup.layers().stream()
                .skip(1)
                .mapToDouble(layer -> layer.layer().thicknessMm())
                .sum();
        String by = way(foot);
        check(foot, NumberName.THICKNESS, by, cup.material(target) - others);
        double half = 0.25;
        double rise = (cup.front(cup.material(target) - half) - cup.front(cup.material(target) + half)) / (2 * half);
        check(foot, NumberName.RATIO, "", rise);
        check(foot, NumberName.CHANGE, "", cup.material(target) - cup.now());
        check(
                foot,
                NumberName.SETTLES,
                "",
                loss(
                        cup,
                        plan.number("pad." + cup.cup().hole(), NumberName.HEIGHT_TARGET)
                                .orElseThrow()));
    }

    /** By which of its ways a foot was sized, from its because. */
    private static String way(PlannedPlace foot) {
        return foot.number(NumberName.THICKNESS)
                .map(number -> number.because().contains("clearance")
                        ? ", by clearance"
                        : number.because().contains("height now") ? ", by height" : ", by pattern")
                .orElse("");
    }

    private void check(PlannedPlace place, NumberName name, String way, double truth) {
        place.number(name)
                .ifPresent(number -> coverage.add(
                        name(name, place.id().startsWith("pad.") ? way : ", foot" + way),
                        number.value(),
                        number.u(),
                        truth));
    }

    private static String name(NumberName name, String way) {
        return name.word() + way;
    }
}
