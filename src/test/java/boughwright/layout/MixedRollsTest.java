package boughwright.layout;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.brief.SeenFrom;
import boughwright.catalogue.Product;
import boughwright.measure.Length;
import boughwright.needs.RibbonMeasures;
import boughwright.needs.Role;
import boughwright.proposal.ProposalFixture;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Body ribbons from rolls of different length. */
class MixedRollsTest {

    private static final RibbonMeasures MEASURES = new RibbonMeasures(0.2032, 0.6096, 0.3048, 0.3048, 4, 4);

    private static Product ribbon(Role role, double yards) {
        Product p = ProposalFixture.small().catalogue().inRole(role).get(0);
        return new Product(p.sku(), p.gtin(), p.name(), p.brand(), p.roles(), p.family(), p.colour(), p.secondColour(), p.texture(), p.finish(), p.material(),
                p.shape(), p.pattern(), p.weave(), p.width(), Length.ofMetres(yards * 0.9144), p.lights(), p.pack(), p.price(), p.level(), p.stock(),
                p.shelf(), p.looks(), p.safety(), p.lab());
    }

    private static RibbonRuns.Laid lay(double baseYards, int baseRolls, double overlayYards, int overlayRolls) {
        return new RibbonRuns(TreeFixture.surface(9, SeenFrom.ROUND), MEASURES, 1, List.of(), Map.of()).lay(Optional.of(ribbon(Role.BASE_RIBBON, baseYards)), baseRolls,
                Optional.of(ribbon(Role.OVERLAY_RIBBON, overlayYards)), overlayRolls);
    }

    @Test
    void five_rolls_of_ten_yards_make_five_runs_each() {
        assertThat(lay(10, 5, 10, 5).runs().size()).isEqualTo(25);
    }

    @Test
    void two_long_rolls_of_overlay_go_as_far_as_five_short_rolls_of_base() {
        // 50 yd of each: the kit counts a 25 yd roll as two and a half, so nothing may stay unused for want of a partner.
        assertThat(lay(10, 5, 25, 2).runs().size()).isGreaterThanOrEqualTo(25);
    }
}
