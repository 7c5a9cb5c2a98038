package hornwright.engines.linkage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hornwright.engines.Ref;
import hornwright.engines.linkage.Mechanism.Limits;
import hornwright.engines.linkage.Mechanism.Spring;
import hornwright.engines.linkage.Mechanism.Stop;
import hornwright.engines.linkage.Mechanism.Towards;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Contact forces solve a linear complementarity problem; the enumerating solver used beside the engine is held here. */
class ComplementarityTest {
    private static final Ref REF = Ref.read("linkage/complementarity");

    private static double[] vector(String text) {
        return Arrays.stream(text.strip().split("\\s+"))
                .mapToDouble(Double::parseDouble)
                .toArray();
    }

    private static double[][] matrix(String name) {
        return Arrays.stream(REF.text(name + ".M").split(";"))
                .map(ComplementarityTest::vector)
                .toArray(double[][]::new);
    }

    private static List<double[]> solve(String name) {
        return EveryBasis.solutions(matrix(name), vector(REF.text(name + ".q")));
    }

    @ParameterizedTest
    @ValueSource(strings = {"opening", "mixed", "degenerate", "murty4", "fathi4"})
    void a_published_problem_with_one_solution_has_that_one(String name) {
        List<double[]> found = solve(name);
        assertThat(found).hasSize(1);
        assertThat(found.getFirst()).containsExactly(vector(REF.text(name + ".z")), within(1e-9));
    }

    @ParameterizedTest
    @ValueSource(strings = {"murty4", "fathi4"})
    void its_slacks_are_the_published_ones(String name) {
        double[] z = solve(name).getFirst();
        double[][] m = matrix(name);
        double[] w = vector(REF.text(name + ".q"));
        for (int i = 0; i < w.length; i++) {
            for (int j = 0; j < w.length; j++) {
                w[i] += m[i][j] * z[j];
            }
        }
        assertThat(w).containsExactly(vector(REF.text(name + ".w")), within(1e-9));
    }

    @ParameterizedTest
    @ValueSource(strings = {"four", "none"})
    void problems_with_several_or_no_solutions_are_known_as_such(String name) {
        assertThat(solve(name)).hasSize((int) REF.number(name + ".solutions"));
    }

    @ParameterizedTest
    @ValueSource(ints = {3, 4, 5, 6, 7, 8, 9, 10})
    void the_worst_case_family_ends_at_its_last_unit_vector(int n) {
        double[][] m = new double[n][n];
        double[] q = new double[n];
        double[] last = new double[n];
        last[n - 1] = 1;
        for (int i = 0; i < n; i++) {
            q[i] = -1;
            m[i][i] = 1;
            for (int j = i + 1; j < n; j++) {
                m[i][j] = 2;
            }
        }
        assertThat(EveryBasis.solutions(m, q)).hasSize(1);
        assertThat(EveryBasis.solutions(m, q).getFirst()).containsExactly(last, within(0.0));
    }

    /**
     * M = a aᵀ/rate + 1/k is what one sprung key with two stops makes; the opening example is arms of 1, rate 1, k 1.
     */
    @Test
    void the_engine_itself_finds_the_forces_of_the_opening_example() {
        Mechanism mechanism = new Mechanism(
                List.of(new Mechanism.Key("k", 0)),
                List.of(),
                List.of(
                        new Stop("one", "k", 1, 0, 0, 1, Limits.OPENING),
                        new Stop("two", "k", 1, 0, 1, 1, Limits.OPENING)),
                List.of(),
                List.of(new Spring("k", 5, 1, Towards.OPEN)));
        Equilibrium rest = Balance.of(mechanism).atRest();
        assertThat(rest.stops().force()).containsExactly(vector(REF.text("opening.z")), within(1e-12));
    }
}
