package boughwright.kit;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.catalogue.Catalogue;
import boughwright.measure.Money;
import boughwright.needs.Adjustments;
import boughwright.needs.Role;
import boughwright.proposal.Designer;
import boughwright.proposal.Outcome;
import boughwright.proposal.ProposalFixture;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What the customer is told when not everything can hold at once. */
class NoKitFitsTest {

    private static final String NINE_FEET = "{\"tree\":{\"height\":\"9 ft\"}%s}";

    private static String brief(String more) {
        return String.format(NINE_FEET, more);
    }

    private static Outcome ask(String brief, Adjustments adjustments) {
        return ProposalFixture.season().propose(brief, adjustments, Designer.SEED);
    }

    private static Conflict conflict(String brief, Adjustments adjustments) {
        return conflict(ask(brief, adjustments));
    }

    private static Conflict conflict(Outcome outcome) {
        assertThat(outcome).isInstanceOf(Outcome.NoKitFits.class);
        return ((Outcome.NoKitFits) outcome).conflict();
    }

    private static List<String> wishes(Conflict conflict) {
        return conflict.wishes().stream().map(Conflict.Wished::id).toList();
    }

    private static Money total(Conflict conflict, String wish) {
        return conflict.waysOut().stream().filter(w -> w.steps().get(0).wish().equals(wish)).findFirst().orElseThrow().total();
    }

    @Test
    void a_budget_below_any_kit_is_the_one_wish_named() {
        assertThat(wishes(conflict(brief(",\"budget\":\"50.00\""), Adjustments.NONE))).containsExactly("budget");
    }

    @Test
    void the_way_out_of_a_small_budget_names_the_least_that_will_do_to_the_cent() {
        for (int feet = 4; feet <= 12; feet++) {
            String tree = "{\"tree\":{\"height\":\"" + feet + " ft\"},\"look\":\"frost-fair\",\"budget\":\"%s\"}";
            Money least = total(conflict(String.format(tree, "40.00"), Adjustments.NONE), "budget");
            assertThat(ask(String.format(tree, least.decimal()), Adjustments.NONE)).as("%s ft for %s", feet, least).isInstanceOf(Outcome.Made.class);
            Money cent = Money.ofCoins(1, least.currency());
            assertThat(ask(String.format(tree, least.minus(cent).decimal()), Adjustments.NONE)).as("%s ft for a cent less than %s", feet, least)
                    .isInstanceOf(Outcome.NoKitFits.class);
        }
    }

    @Test
    void a_budget_that_a_restrained_scheme_would_meet_clashes_with_abundance() {
        Money lavish = total(conflict(brief(",\"abundance\":\"lavish\",\"budget\":\"50.00\""), Adjustments.NONE), "budget");
        Money restrained = total(conflict(brief(",\"abundance\":\"restrained\",\"budget\":\"50.00\""), Adjustments.NONE), "budget");
        assertThat(restrained).isLessThan(lavish);
        Conflict conflict = conflict(brief(",\"abundance\":\"lavish\",\"budget\":\"" + restrained.decimal() + "\""), Adjustments.NONE);
        assertThat(wishes(conflict)).containsExactly("budget", "abundance:generous");
        assertThat(total(conflict, "budget")).isEqualTo(lavish);
        assertThat(total(conflict, "abundance:generous")).isEqualTo(restrained);
    }

    @Test
    void letting_go_of_any_wish_in_the_conflict_gives_a_kit() {
        Adjustments sprays = Adjustments.NONE.withQuantity("florals/spray/1", 400);
        String budget = ",\"budget\":\"900.00\"";
        assertThat(wishes(conflict(brief(budget), sprays))).containsExactlyInAnyOrder("quantity:florals/spray/1", "budget");
        assertThat(ask(brief(budget), Adjustments.NONE)).isInstanceOf(Outcome.Made.class);
        assertThat(ask(brief(""), sprays)).isInstanceOf(Outcome.Made.class);
    }

    @Test
    void every_wish_in_the_conflict_has_its_way_out() {
        Conflict conflict = conflict(brief(",\"budget\":\"900.00\""), Adjustments.NONE.withQuantity("florals/spray/1", 400));
        assertThat(conflict.waysOut()).extracting(w -> w.steps().get(0).wish()).containsAll(wishes(conflict));
        assertThat(conflict.waysOut()).allSatisfy(w -> assertThat(w.text()).isNotBlank());
    }

    @Test
    void two_wishes_that_are_each_impossible_still_leave_a_way_out() {
        Adjustments both = Adjustments.NONE.withQuantity("florals/spray/1", 5000).withQuantity("ornaments/filler-ball/80mm", 5000);
        Conflict conflict = conflict(brief(""), both);
        assertThat(conflict.wishes()).isNotEmpty();
        assertThat(conflict.waysOut()).as("ways out of %s", conflict).isNotEmpty().allSatisfy(way -> assertThat(way.steps().stream().map(Conflict.Step::wish))
                .containsExactlyInAnyOrder("quantity:florals/spray/1", "quantity:ornaments/filler-ball/80mm"));
    }

    @Test
    void a_product_that_the_shop_does_not_sell_is_named_as_the_wish_to_let_go() {
        Conflict conflict = conflict(brief(""), Adjustments.NONE.withProduct("florals/spray/1", "NO-SUCH"));
        assertThat(wishes(conflict)).containsExactly("product:florals/spray/1");
    }

    @Test
    void a_catalogue_without_lights_names_the_shortage_and_no_wish() {
        Catalogue dark = new Catalogue(ProposalFixture.season().catalogue().products().stream().filter(p -> !p.roles()
                .contains(Role.LIGHT_STRING)).toList());
        Conflict conflict = conflict(ProposalFixture.designer(dark).propose(brief(",\"budget\":\"3000.00\""), Adjustments.NONE, 1));
        assertThat(conflict.wishes()).isEmpty();
        assertThat(conflict.waysOut()).isEmpty();
        assertThat(conflict.shortages()).hasSize(1);
        assertThat(conflict.shortages().get(0)).contains("lights/light-string");
    }

    @Test
    void an_empty_catalogue_names_every_layer_that_cannot_be_filled() {
        Conflict conflict = conflict(ProposalFixture.designer(new Catalogue(List.of())).propose(brief(""), Adjustments.NONE, 1));
        assertThat(conflict.shortages()).hasSizeGreaterThan(10);
    }
}
