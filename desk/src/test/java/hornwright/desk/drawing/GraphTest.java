package hornwright.desk.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import hornwright.desk.drawing.Graph.At;
import hornwright.desk.drawing.Graph.Axis;
import java.util.List;
import org.junit.jupiter.api.Test;

class GraphTest {
    private static Graph graph() {
        return new Graph("Force along the travel", Axis.holding("mm", 5.3), Axis.holding("N", 0.93))
                .wanted(0.44, 0.74)
                .curve(List.of(new At(0, 0), new At(2.65, 0.5), new At(5.3, 0.93)))
                .spot(5.3, 0.77, "does its work");
    }

    @Test
    void an_axis_ends_at_or_beyond_what_it_must_hold_and_has_few_round_marks() {
        for (double most : new double[] {0.07, 0.93, 1, 5.3, 6, 44, 163, 1000}) {
            Axis axis = Axis.holding("x", most);
            assertThat(axis.to()).isGreaterThanOrEqualTo(most).isLessThan(2 * most);
            assertThat(axis.marks()).hasSizeBetween(3, 9);
        }
    }

    /** The box of a graph is 380 wide; half the travel stands half way between the first and the last mark of the axis. */
    @Test
    void a_point_half_way_stands_half_way() {
        String svg = new Graph("x", new Axis("mm", 0, 10), new Axis("N", 0, 1))
                .curve(List.of(new At(0, 0), new At(5, 0.5), new At(10, 1)))
                .screen();
        assertThat(svg).contains("class=\"curve\"").contains("M44 176L205 102L366 28");
    }

    @Test
    void a_graph_is_drawn_for_a_page_without_colours_and_for_paper_with_all_of_them() {
        assertThat(graph().screen()).doesNotContain("style=", "NaN", "#");
        Print print = graph().print();
        assertThat(print.shapes()).doesNotContain("class=", "var(", "NaN");
        assertThat(print.words())
                .extracting(PrintWord::text)
                .contains("mm", "N", "does its work")
                .allSatisfy(word -> assertThat(word).isNotBlank());
    }
}
