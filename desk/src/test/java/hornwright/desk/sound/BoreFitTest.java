package hornwright.desk.sound;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hornwright.bench.horn.Keywork;
import hornwright.bench.sound.BoreFit;
import hornwright.bench.sound.HornAir;
import hornwright.desk.keyworkfile.KeyworkFile;
import hornwright.engines.air.Air;
import hornwright.engines.air.AirColumn;
import hornwright.engines.air.AirInput;
import hornwright.engines.air.AirInput.BorePoint;
import hornwright.engines.air.AirInput.Mouthpiece.Cavity;
import hornwright.engines.air.AirModel;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("slow")
class BoreFitTest {
    private static final Air AIR = AirModel.CHAIGNE_KERGOMARD.at(26.85);
    private final Keywork keywork = KeyworkFile.shipped("tarrant-loe-alto").orElseThrow();

    /** A horn whose diameters differ by a parabola through three shares, and whose mouthpiece is another. */
    private double[] played(double volumeMm3, double neck, double middle, double bell, double noise, Random dice) {
        AirInput in = VirtualHorn.brief(HornAir.asBuilt(keywork, AIR));
        double end = in.bore().getLast().at();
        List<BorePoint> bore = in.bore().stream()
                .map(point -> {
                    double s = point.at() / end;
                    double wider = neck * (1 - s) * (1 - 2 * s) + middle * 4 * s * (1 - s) + bell * s * (2 * s - 1);
                    return new BorePoint(point.at(), point.radius() * (1 + wider));
                })
                .toList();
        AirInput horn = in.withBore(bore).withMouthpiece(new Cavity(volumeMm3 * 1e-9));
        return AirColumn.reckon(horn).fingerings().stream()
                .mapToDouble(v -> Objects.requireNonNull(v.sounding()).frequency()
                        * Math.pow(2, noise * dice.nextGaussian() / 1200))
                .toArray();
    }

    @Test
    void the_pattern_itself_is_fitted_without_a_correction() {
        double own = keywork.tube().mouthpieceVolumeMm3();
        BoreFit fit = BoreFit.of(keywork, AIR, played(own, 0, 0, 0, 0, new Random(1)), 1);
        assertThat(fit.volumeMm3()).isCloseTo(own, within(1e-3 * own));
        fit.bore().forEach(share -> assertThat(share).isCloseTo(0, within(1e-5)));
        assertThat(fit.leftCents()).isCloseTo(0, within(0.01));
    }

    @Test
    void a_mouthpiece_far_smaller_than_the_patterns_is_found_exactly_when_nothing_is_noisy() {
        double volume = 0.62 * keywork.tube().mouthpieceVolumeMm3();
        double[] bore = {-0.002, 0.003, -0.002};
        BoreFit fit = BoreFit.of(keywork, AIR, played(volume, bore[0], bore[1], bore[2], 0, new Random(1)), 0.05);
        assertThat(fit.volumeMm3()).isCloseTo(volume, within(1e-3 * volume));
        for (int i = 0; i < 3; i++) {
            assertThat(fit.bore().get(i)).isCloseTo(bore[i], within(1e-4));
        }
        assertThat(fit.leftCents()).isLessThan(0.01);
    }

    @Test
    void a_hidden_mouthpiece_and_bore_are_found_within_their_uncertainty() {
        Random dice = new Random(11);
        int within2 = 0;
        for (int run = 0; run < 5; run++) {
            double volume = keywork.tube().mouthpieceVolumeMm3() * (1 + 0.12 * dice.nextGaussian());
            double[] bore = {0.01 * dice.nextGaussian(), 0.01 * dice.nextGaussian(), 0.01 * dice.nextGaussian()};
            BoreFit fit = BoreFit.of(keywork, AIR, played(volume, bore[0], bore[1], bore[2], 3, dice), 3);
            assertThat(fit.volumeU()).isLessThan(0.1 * volume);
            assertThat(fit.leftCents()).isBetween(1.5, 4.5);
            within2 += Math.abs(fit.volumeMm3() - volume) <= 2 * fit.volumeU() ? 1 : 0;
            for (int i = 0; i < 3; i++) {
                within2 +=
                        Math.abs(fit.bore().get(i) - bore[i]) <= 2 * fit.boreU().get(i) ? 1 : 0;
            }
        }
        assertThat(within2).as("of 20 within twice their uncertainty").isGreaterThanOrEqualTo(17);
    }
}
