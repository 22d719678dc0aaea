package boughwright.proposal;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.kit.KitLine;
import boughwright.kit.Patience;
import boughwright.needs.Layer;
import boughwright.needs.Role;
import boughwright.proposal.Growth.Year;
import boughwright.proposal.Offers.Kind;
import boughwright.proposal.Offers.Offer;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** Three ways to meet one brief, and the same brief over three years. */
class OffersTest {

    private static Offers offers(String brief) {
        return ProposalFixture.season().offers(ProposalFixture.made(ProposalFixture.season(), brief), Patience.usual());
    }

    private static String brief(String budget, String abundance) {
        return "{\"tree\":{\"height\":\"9 ft\"},\"abundance\":\"" + abundance + "\"" + (budget.isEmpty() ? "" : ",\"budget\":\"" + budget + "\"") + "}";
    }

    @Test
    void the_leaner_costs_at_most_three_quarters_and_says_what_it_saves() {
        for (String abundance : List.of("generous", "lavish")) {
            Offers offers = offers(brief("900.00", abundance));
            assertThat(offers.offers().get(0).kind()).isEqualTo(Kind.ASKED);
            Offer leaner = offers.offers().stream().filter(o -> o.kind() == Kind.LEANER).findFirst().orElseThrow();
            assertThat(leaner.proposal().kit().total().amount()).isLessThanOrEqualTo(new BigDecimal("675.00"));
            assertThat(leaner.sentence()).contains(offers.offers().get(0).proposal().kit().total().minus(leaner.proposal().kit().total()).show());
            assertThat(leaner.differences()).isNotEmpty();
        }
    }

    @Test
    void the_fuller_keeps_to_a_quarter_more_and_names_what_it_adds() {
        Offers offers = offers(brief("560.00", "restrained"));
        Offer fuller = offers.offers().stream().filter(o -> o.kind() == Kind.FULLER).findFirst().orElseThrow();
        assertThat(fuller.proposal().kit().total().amount()).isLessThanOrEqualTo(new BigDecimal("700.00"));
        assertThat(fuller.sentence()).contains("generous rather than restrained");
        assertThat(fuller.differences()).anySatisfy(d -> assertThat(d).isEqualTo("Height stems: 12 instead of 8"));
    }

    @Test
    void what_money_cannot_better_is_not_offered() {
        assertThat(offers(brief("", "lavish")).offers()).extracting(Offer::kind).doesNotContain(Kind.FULLER);
    }

    @Test
    void an_offer_taken_as_a_brief_gives_the_same_kit() {
        for (Offer offer : offers(brief("900.00", "generous")).offers()) {
            String taken = brief(offer.budget().orElseThrow().decimal(), offer.abundance().word());
            assertThat(ProposalFixture.made(ProposalFixture.season(), taken).kit().lines()).isEqualTo(offer.proposal().kit().lines());
        }
    }

    private static Growth growth(String brief) {
        return ProposalFixture.season().growth(ProposalFixture.made(ProposalFixture.season(), brief), Patience.usual());
    }

    private static long styles(Year year, Role role) {
        return year.proposal().kit().lines().stream().filter(l -> l.role() == role).map(KitLine::sku).distinct().count();
    }

    @Test
    void each_year_gains_styles_and_keeps_what_was_bought() {
        Growth growth = growth(brief("700.00", "generous"));
        assertThat(growth.years()).hasSize(3);
        Map<String, Integer> bought = new TreeMap<>();
        for (Year year : growth.years()) {
            Map<String, Integer> used = new TreeMap<>();
            year.proposal().kit().lines().forEach(l -> used.merge(l.sku(), l.owned(), Integer::sum));
            used.forEach((sku, owned) -> assertThat(owned).as("%s in year %s", sku, year.number()).isLessThanOrEqualTo(bought.getOrDefault(sku, 0)));
            assertThat(bought.keySet()).as("what was bought is used in year %s", year.number()).allSatisfy(sku -> assertThat(used).containsKey(sku));
            assertThat(year.spend().amount()).isLessThanOrEqualTo(new BigDecimal("700.00"));
            assertThat(year.joins()).isNotEmpty();
            year.proposal().kit().lines().forEach(l -> bought.merge(l.sku(), l.packs() * l.packSize(), Integer::sum));
        }
        // A scheme may start with one or two spray styles and gain one each year (common practice, no published source).
        assertThat(styles(growth.years().get(0), Role.SPRAY)).isBetween(1L, 2L);
        for (int i = 1; i < 3; i++) {
            assertThat(styles(growth.years().get(i), Role.SPRAY)).isGreaterThanOrEqualTo(styles(growth.years().get(i - 1), Role.SPRAY));
        }
        assertThat(styles(growth.years().get(2), Role.SPRAY)).isGreaterThan(styles(growth.years().get(0), Role.SPRAY));
        assertThat(growth.total().amount()).isEqualTo(growth.years().stream().map(y -> y.spend().amount()).reduce(BigDecimal.ZERO, BigDecimal::add));
    }

    @Test
    void the_first_year_costs_less_than_the_whole() {
        Growth growth = growth(brief("", "lavish"));
        assertThat(growth.years().get(0).spend()).isLessThan(ProposalFixture.made(ProposalFixture.season(), brief("", "lavish")).kit().total());
    }

    /** Facts of composition: common practice, no published source. */
    @Test
    void a_generous_kit_is_composed_as_the_trade_composes_it() {
        Proposal p = ProposalFixture.made(ProposalFixture.season(), brief("", "generous"));
        assertThat(p.kit().lines().stream().filter(l -> l.layer() == Layer.TOPPER && !l.role().flower())).as("two sprays").hasSize(2);
        assertThat(p.kit().lines().stream().filter(l -> l.layer() == Layer.TOPPER && l.role().flower())).as("two flowers").hasSize(2);
        assertThat(p.kit().lines().stream().filter(l -> l.layer() == Layer.TOPPER).map(l -> p.product(l).texture()).distinct().count())
                .as("textures in the topper").isGreaterThanOrEqualTo(2);
        assertThat(p.kit().lines().stream().filter(l -> l.role() == Role.FILLER_BALL).map(KitLine::sku).distinct()).as("ball styles").hasSize(4);
        assertThat(p.kit().lines().stream().filter(l -> l.role().ribbon()).map(KitLine::sku).distinct()).as("ribbon set").hasSize(3);
    }
}
