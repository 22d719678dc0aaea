package boughwright.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import boughwright.proposal.ProposalFixture;
import com.google.ortools.linearsolver.MPConstraint;
import com.google.ortools.linearsolver.MPVariable;
import java.util.Arrays;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class IntegerProgrammeTest {

    @BeforeAll
    static void loadTheSolver() {
        ProposalFixture.solver();
    }

    private static double best(int[] profits, int[][] weights, int[] capacities) {
        try (IntegerProgramme programme = new IntegerProgramme()) {
            MPVariable[] taken = Arrays.stream(profits).mapToObj(p -> {
                MPVariable x = programme.binary();
                programme.worth(x, p);
                return x;
            }).toArray(MPVariable[]::new);
            for (int i = 0; i < weights.length; i++) {
                MPConstraint room = programme.atMost(capacities[i]);
                for (int j = 0; j < taken.length; j++) {
                    room.setCoefficient(taken[j], weights[i][j]);
                }
            }
            assertThat(programme.maximise(0, Patience.usual())).isEqualTo(IntegerProgramme.Outcome.SOLVED);
            assertThat(programme.bound()).isGreaterThanOrEqualTo(programme.value() - 1e-6);
            return programme.value();
        }
    }

    /** C. C. Petersen, Management Science 13 (1967) 736, problem 1; OR-Library mknap1, problem 1: 6 projects, 10 years, optimum 3800. */
    @Test
    void petersens_first_multidimensional_knapsack_has_its_published_optimum() {
        int[] profits = {100, 600, 1200, 2400, 500, 2000};
        int[][] weights = {
            {8, 12, 13, 64, 22, 41}, {8, 12, 13, 75, 22, 41}, {3, 6, 4, 18, 6, 4}, {5, 10, 8, 32, 6, 12}, {5, 13, 8, 42, 6, 20},
            {5, 13, 8, 48, 6, 20}, {0, 0, 0, 0, 8, 0}, {3, 0, 4, 0, 8, 0}, {3, 2, 4, 0, 8, 4}, {3, 2, 4, 8, 8, 4}};
        assertThat(best(profits, weights, new int[] {80, 96, 20, 36, 44, 48, 10, 18, 22, 24})).isCloseTo(3800, within(1e-6));
    }

    /** H. M. Weingartner and D. N. Ness, Operations Research 15 (1967) 83, problem 1: 28 projects, 2 budgets, optimum 141278. */
    @Test
    void weingartners_first_multidimensional_knapsack_has_its_published_optimum() {
        int[] profits = {1898, 440, 22507, 270, 14148, 3100, 4650, 30800, 615, 4975, 1160, 4225, 510, 11880, 479, 440, 490, 330, 110, 560, 24355,
            2885, 11748, 4550, 750, 3720, 1950, 10500};
        int[][] weights = {
            {45, 0, 85, 150, 65, 95, 30, 0, 170, 0, 40, 25, 20, 0, 0, 25, 0, 0, 25, 0, 165, 0, 85, 0, 0, 0, 0, 100},
            {30, 20, 125, 5, 80, 25, 35, 73, 12, 15, 15, 40, 5, 10, 10, 12, 10, 9, 0, 20, 60, 40, 50, 36, 49, 40, 19, 150}};
        assertThat(best(profits, weights, new int[] {600, 600})).isCloseTo(141278, within(1e-6));
    }

    @Test
    void what_cannot_be_is_called_impossible() {
        try (IntegerProgramme programme = new IntegerProgramme()) {
            programme.atLeast(2).setCoefficient(programme.binary(), 1);
            assertThat(programme.minimise(0, Patience.usual())).isEqualTo(IntegerProgramme.Outcome.IMPOSSIBLE);
        }
    }

    @Test
    void nothing_is_solved_for_somebody_who_has_gone() {
        Patience gone = Patience.usual();
        gone.cancel();
        try (IntegerProgramme programme = new IntegerProgramme()) {
            programme.binary();
            assertThatThrownBy(() -> programme.maximise(0, gone)).isInstanceOf(CancellationException.class);
        }
    }
}
