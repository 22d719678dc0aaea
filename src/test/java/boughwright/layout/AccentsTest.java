package boughwright.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.needs.AccentKind;
import boughwright.needs.Layer;
import boughwright.needs.Role;
import boughwright.proposal.Proposal;
import boughwright.proposal.SeededProposals;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The gaps that are left and what fills them: common practice, no published source. */
class AccentsTest {

    /** The middle of a hole is followed to half a millimetre. */
    private static final double HAIR = 0.002;

    @Test
    void gaps_are_filled_from_the_largest_down() {
        for (Proposal p : SeededProposals.all()) {
            List<Gap> gaps = p.layout().gaps();
            for (int i = 1; i < gaps.size(); i++) {
                assertThat(gaps.get(i).diameter()).as(SeededProposals.of(p)).isLessThanOrEqualTo(gaps.get(i - 1).diameter() + HAIR);
            }
        }
    }

    @Test
    void no_more_gaps_are_filled_than_the_house_asks_for_and_each_is_filled_by_its_size() {
        for (Proposal p : SeededProposals.all()) {
            assertThat(p.layout().gaps().size()).as(SeededProposals.of(p)).isLessThanOrEqualTo(p.needs().quantity(Layer.ACCENTS, Role.GAP_ACCENT));
            for (Gap gap : p.layout().gaps()) {
                // 8 in tails for a small gap, a one-loop bow from 13 cm, a two-loop bow from 16.5 cm: rules S-26 to S-28 as shipped.
                AccentKind bow = gap.diameter() >= 0.165 ? AccentKind.TWO_LOOP_BOW : AccentKind.ONE_LOOP_BOW;
                AccentKind most = gap.diameter() >= 0.13 ? bow : AccentKind.TAILS;
                assertThat(gap.accent()).as("%s %s", SeededProposals.of(p), gap).isLessThanOrEqualTo(most);
                double ribbon = switch (gap.accent()) {
                    case TAILS -> 16;
                    case ONE_LOOP_BOW -> 32;
                    case TWO_LOOP_BOW -> 48;
                } * 0.0254;
                assertThat(gap.ribbon()).as("%s %s", SeededProposals.of(p), gap).isCloseTo(ribbon, within(1e-9));
            }
        }
    }

    @Test
    void a_smaller_accent_than_the_gap_asks_for_is_taken_only_when_the_ribbon_runs_short() {
        for (Proposal p : SeededProposals.all()) {
            double left = p.layout().cutList().stream().filter(r -> r.sku().equals(accentSku(p))).mapToDouble(RollCuts::leftover).max().orElse(0);
            for (Gap gap : p.layout().gaps()) {
                boolean large = gap.diameter() >= 0.165;
                if (large && gap.accent() != AccentKind.TWO_LOOP_BOW) {
                    assertThat(left).as("%s %s", SeededProposals.of(p), gap).isLessThan(48 * 0.0254);
                }
            }
        }
    }

    private static String accentSku(Proposal p) {
        return p.kit().lines().stream().filter(l -> l.role() == Role.ACCENT_RIBBON).findFirst().orElseThrow().sku();
    }

    @Test
    void a_gap_is_where_its_height_and_clock_say_at_the_branch_tips() {
        for (Proposal p : SeededProposals.all()) {
            for (Gap gap : p.layout().gaps()) {
                double radius = TreeFixture.radius(p, gap.height());
                double angle = TreeFixture.angle(gap.clock());
                assertThat(gap.at().distance(new Point(radius * Math.sin(angle), gap.height(), radius * Math.cos(angle)))).isLessThan(1e-9);
            }
        }
    }

    @Test
    void no_piece_at_the_tips_lies_inside_a_gap() {
        for (Proposal p : SeededProposals.all()) {
            for (Gap gap : p.layout().gaps()) {
                for (Placement piece : p.layout().pieces()) {
                    if (piece.zone() == Zone.TIP) {
                        assertThat(piece.at().distance(gap.at()) - piece.radius()).as("%s %s %s", SeededProposals.of(p), gap, piece)
                                .isGreaterThanOrEqualTo(gap.diameter() / 2 - 1e-9);
                    }
                }
            }
        }
    }

    @Test
    void after_the_accents_no_gap_is_left_that_is_larger_than_the_last_one_filled() {
        for (Proposal p : SeededProposals.all()) {
            List<Gap> gaps = p.layout().gaps();
            if (!gaps.isEmpty()) {
                assertThat(p.layout().measures().largestEmptyDisc()).as(SeededProposals.of(p))
                        .isLessThanOrEqualTo(gaps.get(gaps.size() - 1).diameter() + HAIR);
            }
        }
    }
}
