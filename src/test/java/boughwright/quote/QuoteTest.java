package boughwright.quote;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.KioskFixture;
import boughwright.measure.Money;
import boughwright.needs.Adjustments;
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
    void what_stands_in_for_another_product_is_named_unless_the_customer_chose_it() {
        Proposal before = proposal(Adjustments.NONE);
        String seen = ProposalJson.text(ProposalJson.of(before));
        assertThat(Substitutions.since(seen, before)).isEmpty();
        var line = before.kit().lines().stream().filter(l -> l.needId().startsWith("florals/single")).findFirst().orElseThrow();
        Proposal without = proposal(Adjustments.NONE.withTaste(boughwright.needs.Taste.no(boughwright.needs.Trait.PRODUCT, line.sku())));
        assertThat(Substitutions.since(seen, without)).anySatisfy(s -> assertThat(s.was()).isEqualTo(line.name()));
        String other = without.kit().line(line.needId()).orElseThrow().sku();
        Proposal chosen = proposal(Adjustments.NONE.withProduct(line.slot(), other));
        assertThat(Substitutions.since(seen, chosen)).noneSatisfy(s -> assertThat(s.was()).isEqualTo(line.name()));
    }
}
