package boughwright.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.brief.Fullness;
import boughwright.brief.SeenFrom;
import boughwright.brief.Tree;
import boughwright.catalogue.Product;
import boughwright.measure.Length;
import boughwright.needs.Layer;
import boughwright.proposal.Proposal;
import boughwright.proposal.ProposalFixture;
import boughwright.proposal.SeededProposals;
import org.junit.jupiter.api.Test;

/** What branches bear: the rule of a cantilever (textbook) on an anchor that is common practice, no published source. */
class BearingTest {

    private static Bearing bearing(Fullness fullness, boolean real) {
        Length height = Length.ofFeet(9);
        return new Bearing(new Tree(height, Tree.usualDiameter(height, fullness), fullness, SeenFrom.ROUND, false, real));
    }

    @Test
    void a_branch_bears_four_times_as_much_at_half_its_reach_and_a_longer_branch_more_at_its_tip() {
        Bearing bearing = bearing(Fullness.MEDIUM, false);
        assertThat(bearing.bears(0.6, 0.5)).isCloseTo(4 * bearing.bears(0.6, 1), within(1e-12));
        assertThat(bearing.bears(0.7, 1)).isCloseTo(0.25, within(1e-12));
        assertThat(bearing.bears(0.35, 1)).isCloseTo(0.125, within(1e-12));
    }

    @Test
    void a_cut_tree_and_a_sparse_one_bear_less_and_a_full_one_more() {
        double usual = bearing(Fullness.MEDIUM, false).bears(0.5, 1);
        assertThat(bearing(Fullness.MEDIUM, true).bears(0.5, 1)).isLessThan(usual);
        assertThat(bearing(Fullness.SPARSE, false).bears(0.5, 1)).isLessThan(usual);
        assertThat(bearing(Fullness.FULL, false).bears(0.5, 1)).isGreaterThan(usual);
    }

    @Test
    void the_least_radius_is_where_the_branch_just_bears_the_weight() {
        Bearing bearing = bearing(Fullness.MEDIUM, false);
        double radius = bearing.leastRadius(0.12, 0.93);
        assertThat(bearing.bears(radius, 0.93)).isCloseTo(0.12, within(1e-9));
    }

    @Test
    void glass_is_heavier_than_plastic_of_the_same_size_and_a_ball_of_8_cm_weighs_some_twenty_to_fifty_grams() {
        Product glass = ProposalFixture.season().catalogue().products().stream()
                .filter(p -> p.shape().word().equals("ball") && p.material().word().equals("glass")).findFirst().orElseThrow();
        double area = Math.PI * glass.width().metres() * glass.width().metres();
        // Surface times a millimetre of soda-lime glass, 2500 kg/m³ (from memory).
        assertThat(Bearing.weight(glass)).isCloseTo(area * 0.001 * 2500, within(0.001));
        assertThat(Bearing.weight(glass)).isBetween(0.01, 0.12);
    }

    @Test
    void no_ornament_hangs_where_no_branch_bears_it_unless_the_plan_says_so() {
        int heavy = 0;
        for (Proposal p : SeededProposals.all()) {
            Bearing bearing = new Bearing(p.brief().tree());
            for (Placement piece : p.layout().pieces()) {
                if (piece.layer() == Layer.ORNAMENTS && !p.layout().strained().contains(piece.needId())) {
                    double weight = Bearing.weight(p.catalogue().product(piece.sku()).orElseThrow());
                    heavy += weight > 0.06 ? 1 : 0;
                    assertThat(bearing.bears(TreeFixture.radius(p, piece.height()), piece.depth())).as("%s %s", SeededProposals.of(p), piece)
                            .isGreaterThanOrEqualTo(weight - 1e-9);
                }
            }
            assertThat(p.plan().cautions().stream().anyMatch(c -> c.id().equals("too-heavy"))).isEqualTo(!p.layout().strained().isEmpty());
        }
        assertThat(heavy).as("pieces for which it matters").isGreaterThan(50);
    }
}
