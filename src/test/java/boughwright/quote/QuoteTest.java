package boughwright.quote;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.KioskFixture;
import boughwright.catalogue.Catalogue;
import boughwright.kit.KitSolver;
import boughwright.measure.Money;
import boughwright.needs.Adjustments;
import boughwright.needs.Taste;
import boughwright.needs.Trait;
import boughwright.proposal.Designer;
import boughwright.proposal.Outcome;
import boughwright.proposal.PickList;
import boughwright.proposal.Proposal;
import boughwright.proposal.ProposalJson;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

class QuoteTest {

    private static final Tax TAX = new Tax("Sales tax", new BigDecimal("8.875"), false, Tax.Basis.TOTAL, Tax.Rounding.HALF_UP);
    private static final Quote.Made MADE = new Quote.Made("kelp-4-moss", 2, 3, "Ada", LocalDate.of(2026, 11, 28), LocalDate.of(2026, 12, 5));

    private static Proposal proposal(Adjustments hand) {
        return ((Outcome.Made) KioskFixture.designer().propose("{\"tree\": {\"height\": \"7 ft 6 in\"}}", hand, Designer.SEED)).proposal();
    }

    @Test
    void a_quote_has_a_line_for_each_product_to_buy_and_the_tax_on_top() {
        Proposal proposal = proposal(Adjustments.NONE);
        Quote quote = Quote.of(proposal, MADE, TAX, List.of());
        assertThat(quote.lines()).hasSize(PickList.rows(proposal).size());
        assertThat(quote.goods()).isEqualTo(proposal.kit().total());
        assertThat(quote.total()).isEqualTo(quote.goods().plus(quote.tax()));
        assertThat(quote.tax()).isEqualTo(TAX.of(quote.goods()));
        assertThat(quote.lines().stream().map(QuoteLine::price).reduce(Money::plus)).hasValue(quote.goods());
    }

    @Test
    void tax_within_the_prices_leaves_the_total_as_the_shelves_say() {
        Quote quote = Quote.of(proposal(Adjustments.NONE), MADE, new Tax("VAT", new BigDecimal("20"), true, Tax.Basis.LINE, Tax.Rounding.HALF_UP), List.of());
        assertThat(quote.total()).isEqualTo(quote.goods());
        assertThat(quote.lines().stream().map(QuoteLine::tax).reduce(Money::plus)).hasValue(quote.tax());
        assertThat(quote.tax().amount()).isPositive();
    }

    @Test
    void a_quote_holds_to_the_end_of_its_last_day() {
        Quote quote = Quote.of(proposal(Adjustments.NONE), MADE, TAX, List.of());
        assertThat(quote.holdsOn(LocalDate.of(2026, 12, 5))).isTrue();
        assertThat(quote.holdsOn(LocalDate.of(2026, 12, 6))).isFalse();
    }

    @Test
    void what_is_kept_as_json_is_read_back_as_it_was() {
        Quote quote = Quote.of(proposal(Adjustments.NONE), MADE, TAX, List.of(new Substitution("spray", "Fern, “old”", "Fern & berry")));
        assertThat(QuoteJson.read(QuoteJson.text(quote))).isEqualTo(quote);
    }

    @Test
    void what_stands_in_for_a_product_that_ran_out_is_named() {
        Proposal before = proposal(Adjustments.NONE);
        String seen = ProposalJson.text(ProposalJson.of(before));
        assertThat(Substitutions.since(seen, before)).isEmpty();
        var line = before.kit().lines().stream().filter(l -> l.packs() > 0).findFirst().orElseThrow();
        Catalogue sparse = new Catalogue(before.catalogue().products().stream().map(p -> p.sku().equals(line.sku()) ? p.withStock(0) : p).toList());
        Designer designer = new Designer(KioskFixture.designer().rulebook(), sparse, new KitSolver());
        Proposal after = ((Outcome.Made) designer.propose("{\"tree\": {\"height\": \"7 ft 6 in\"}}", Adjustments.NONE, Designer.SEED)).proposal();
        assertThat(Substitutions.since(seen, after)).anySatisfy(s -> assertThat(s.was()).isEqualTo(line.name()));
    }

    @Test
    void what_another_wish_has_changed_is_no_substitution() {
        Proposal before = proposal(Adjustments.NONE);
        var line = before.kit().lines().stream().filter(l -> l.packs() > 0).findFirst().orElseThrow();
        Proposal after = proposal(Adjustments.NONE.withTaste(Taste.no(Trait.PRODUCT, line.sku())));
        assertThat(after.kit().line(line.needId()).orElseThrow().sku()).isNotEqualTo(line.sku());
        assertThat(Substitutions.since(ProposalJson.text(ProposalJson.of(before)), after)).isEmpty();
    }
}
