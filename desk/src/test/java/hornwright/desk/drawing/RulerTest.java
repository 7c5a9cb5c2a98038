package hornwright.desk.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hornwright.bench.archive.Course;
import hornwright.bench.archive.SerialRange;
import hornwright.bench.horn.Voice;
import hornwright.desk.archivefile.ArchiveFile;
import java.io.StringReader;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.xml.sax.InputSource;

/** The ruler: a band is as thick in a material as that material is likely there. */
final class RulerTest {
    private static final SerialRange SHOWN = new SerialRange(38_000, 61_000);
    private static final RulerScale SCALE = new RulerScale(SHOWN, 12);

    private static Course course(String place) {
        return ArchiveFile.demo().courses(Voice.ALTO, SHOWN, List.of(place)).getFirst();
    }

    @Test
    void the_boards_of_a_band_are_together_as_thick_as_the_band_and_each_as_thick_as_it_is_likely() {
        Course course = course("foot.d");
        List<Scarf.Board> boards = Scarf.of(course, SHOWN).boards();
        assertThat(boards).extracting(Scarf.Board::material).startsWith("natural cork", "woven wool felt");
        int within = 0;
        for (Course.Step step : course.steps()) {
            double x = SCALE.share(step.serial());
            for (Scarf.Board board : boards) {
                for (int i = 0; i < board.upper().size(); i++) {
                    boolean whole = boards.getFirst().upper().get(i).y() < 0.001;
                    if (whole && Math.abs(board.upper().get(i).x() - x) < 1e-9) {
                        double thick =
                                board.lower().get(i).y() - board.upper().get(i).y();
                        assertThat(thick).isCloseTo(step.of(board.material()), within(0.02));
                        within++;
                    }
                }
            }
        }
        assertThat(within).isGreaterThan(20);
        assertThat(boards.getLast().lower())
                .allSatisfy(spot -> assertThat(spot.y()).isBetween(0.5, 1.0));
    }

    @Test
    void beyond_the_last_horn_looked_at_the_band_is_narrow() {
        Course course = course("guard.low-b");
        Scarf.Board felt = Scarf.of(course, SHOWN).boards().getFirst();
        double end = felt.lower().getLast().y() - felt.upper().getLast().y();
        assertThat(end).isLessThan(0.4);
    }

    @Test
    void two_materials_of_one_stuff_get_different_patterns() {
        List<Scarf.Board> sleeves = Scarf.of(course("sleeve.side-c"), SHOWN).boards();
        assertThat(sleeves).extracting(Scarf.Board::stuff).containsOnly(Stuff.TUBING);
        assertThat(sleeves).extracting(Scarf.Board::second).startsWith(false, true);
    }

    @Test
    void ticks_stand_at_round_serials_and_find_room() {
        List<Long> numbered = SCALE.ticks().stream()
                .filter(RulerScale.Tick::numbered)
                .map(RulerScale.Tick::serial)
                .toList();
        assertThat(numbered)
                .hasSizeBetween(6, 13)
                .allSatisfy(serial -> assertThat(serial % 1000).isZero());
        assertThat(RulerScale.written(41_207)).isEqualTo("41\u2009207");
        assertThat(RulerScale.written(960)).isEqualTo("960");
    }

    @Test
    void screen_and_paper_are_well_formed_and_say_what_they_show() throws Exception {
        Course course = course("foot.d");
        String band = new RulerSvg(SCALE, 41_207).band(course, "b", "cork, then felt");
        assertThat(band).contains("aria-label=\"cork, then felt\"").doesNotContain("style=");
        for (String svg : List.of(
                band,
                new RulerSvg(SCALE, 41_207).axis(),
                RulerSvg.patterns(),
                new RulerPrint(SCALE, 41_207, 96).band(course, "b", "x").svg(),
                new RulerPrint(SCALE, 41_207, 96).axis().svg())) {
            DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(svg)));
        }
    }
}
