package hornwright.engines.air;

import hornwright.engines.air.AirInput.Bell;
import hornwright.engines.air.AirInput.BorePoint;
import hornwright.engines.air.AirInput.End;
import hornwright.engines.air.AirInput.Fingering;
import hornwright.engines.air.AirInput.Hole;
import hornwright.engines.air.AirInput.Leak;
import hornwright.engines.air.AirInput.Mouthpiece;
import hornwright.engines.air.AirInput.Mouthpiece.Cavity;
import hornwright.engines.air.AirInput.Pad;
import hornwright.engines.air.AirResult.Peak;
import hornwright.engines.air.AirResult.Voicing;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** The air columns of the check cases; lengths in mm. */
final class Horns {
    static final Air KEEFE = AirModel.KEEFE.at(26.85);
    static final Cavity NOTHING = new Cavity(0);
    static final Cavity MISSING_CONE = new Cavity(6568e-9);

    /** Position, radius, chimney and pad height of the six holes. */
    private static final double[][] SIX = {
        {370, 6.0, 3.0, 3.0}, {430, 8.0, 3.0, 3.5}, {500, 9.5, 3.0, 4.0},
        {580, 11.0, 3.0, 5.0}, {670, 13.0, 3.5, 6.0}, {770, 15.5, 4.0, 7.0}
    };

    private Horns() {}

    static AirInput tube(double length, double radius1, double radius2, Mouthpiece mouthpiece, End end) {
        List<BorePoint> bore = List.of(new BorePoint(0, radius1 / 1e3), new BorePoint(length / 1e3, radius2 / 1e3));
        return new AirInput(
                KEEFE,
                bore,
                mouthpiece,
                new Bell(end, 0),
                List.of(),
                List.of(new Fingering(List.of(), 1)),
                List.of(),
                true,
                false,
                3,
                false,
                null);
    }

    static AirInput saxCone() {
        return tube(1000, 5.6, 33.6, MISSING_CONE, End.UNFLANGED);
    }

    static AirInput lossless(AirInput in) {
        return with(in, in.holes(), in.fingerings(), false, in.interaction(), in.modes(), in.sensitivity());
    }

    static AirInput modes(AirInput in, int modes) {
        return with(in, in.holes(), in.fingerings(), in.losses(), in.interaction(), modes, in.sensitivity());
    }

    static AirInput together(AirInput in) {
        return with(in, in.holes(), in.fingerings(), in.losses(), true, in.modes(), in.sensitivity());
    }

    static AirInput sensitive(AirInput in) {
        return with(in, in.holes(), in.fingerings(), in.losses(), in.interaction(), in.modes(), true);
    }

    static AirInput fingered(AirInput in, List<Fingering> fingerings) {
        return with(in, in.holes(), fingerings, in.losses(), in.interaction(), in.modes(), in.sensitivity());
    }

    static AirInput drilled(AirInput in, List<Hole> holes, Integer... open) {
        return with(in, holes, List.of(new Fingering(List.of(open), 1)), in.losses(), false, in.modes(), false);
    }

    static AirInput leaking(AirInput in, double at, double radius, double depth) {
        return in.withLeaks(List.of(new Leak(at / 1e3, radius / 1e3, depth / 1e3)));
    }

    private static AirInput with(
            AirInput in,
            List<Hole> holes,
            List<Fingering> fingerings,
            boolean losses,
            boolean interaction,
            int modes,
            boolean sensitivity) {
        return new AirInput(
                in.air(),
                in.bore(),
                in.mouthpiece(),
                in.bell(),
                holes,
                fingerings,
                in.leaks(),
                losses,
                interaction,
                modes,
                sensitivity,
                null);
    }

    static Hole hole(double at, double radius, double chimney, double wall, @Nullable Pad pad) {
        return new Hole(at / 1e3, radius / 1e3, chimney / 1e3, wall / 1e3, pad);
    }

    static Pad pad(double radius, double height) {
        return new Pad(radius / 1e3, height / 1e3, 0);
    }

    static List<Hole> sixHoles() {
        List<Hole> holes = new ArrayList<>();
        for (double[] h : SIX) {
            holes.add(hole(h[0], h[1], h[2], 0.8, pad(h[1] + 2.5, h[3])));
        }
        return holes;
    }

    /** The six-hole cone with the holes from {@code first} (1 to 6, 7 for none) to the bell open. */
    static AirInput six(int first) {
        return drilled(saxCone(), sixHoles(), openFrom(first));
    }

    static Integer[] openFrom(int first) {
        return IntStream.range(first - 1, 6).boxed().toArray(Integer[]::new);
    }

    static List<Hole> raised(List<Hole> holes, double factor, int... which) {
        List<Hole> all = new ArrayList<>(holes);
        for (int i : which) {
            Pad pad = there(all.get(i).pad());
            all.set(i, all.get(i).withHeight(pad.height() * factor));
        }
        return all;
    }

    static Voicing first(AirInput in) {
        return AirColumn.reckon(in).fingerings().getFirst();
    }

    static List<Peak> peaks(AirInput in) {
        return first(in).peaks();
    }

    static double peak(AirInput in, int number) {
        return peaks(in).get(number - 1).frequency();
    }

    /** A value that must be there. */
    static <T> T there(@Nullable T value) {
        return Objects.requireNonNull(value);
    }

    static double cents(double from, double to) {
        return 1200 * Math.log(to / from) / Math.log(2);
    }
}
