package boughwright.quote;

import boughwright.measure.Money;
import boughwright.proposal.PickList;
import boughwright.proposal.Proposal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;

/**
 * What a kit costs, said on one day and good until another.
 *
 * @param code of the consultation
 * @param number of the quotes made in it, from 1
 * @param revision of the consultation that it prices
 * @param shop whose quote it is
 * @param by who made it
 * @param madeOn by the shop's own calendar
 * @param validTo the last day on which it holds
 * @param lines in the order of the shelves; may be empty when the customer owns everything
 * @param goods the lines' prices together
 * @param tax within the goods or on top of them, as {@code terms} say
 * @param total what is to be paid
 * @param substitutions since the customer saw the kit last
 */
public record Quote(
        String code, int number, int revision, String shop, String by, LocalDate madeOn, LocalDate validTo, Currency currency, List<QuoteLine> lines,
        Money goods, Tax terms, Money tax, Money total, List<Substitution> substitutions) {

    public Quote {
        lines = List.copyOf(lines);
        substitutions = List.copyOf(substitutions);
    }

    /** Who makes a quote, when, and how long it is to hold. */
    public record Made(String code, int number, int revision, String by, LocalDate on, LocalDate validTo) {
    }

    /** Prices what the proposal has to buy. */
    public static Quote of(Proposal proposal, Made made, Tax terms, List<Substitution> substitutions) {
        Currency currency = proposal.kit().total().currency();
        List<PickList.Row> rows = PickList.rows(proposal);
        List<Money> prices = rows.stream().map(r -> money(r.price(), currency)).toList();
        Money goods = prices.stream().reduce(Money.zero(currency), Money::plus);
        Money tax = prices.isEmpty() ? goods : terms.ofAll(prices);
        List<Money> taxes = terms.ofLines(prices);
        List<QuoteLine> lines = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            PickList.Row row = rows.get(i);
            lines.add(new QuoteLine(row.sku(), row.name(), row.shelf(), row.packs(), row.packSize(), money(row.unitPrice(), currency), prices.get(i),
                    taxes.get(i)));
        }
        return new Quote(made.code(), made.number(), made.revision(), proposal.edition().shop(), made.by(), made.on(), made.validTo(), currency, lines, goods,
                terms, tax, terms.within() ? goods : goods.plus(tax), substitutions);
    }

    private static Money money(String decimal, Currency currency) {
        return Money.read(decimal, currency).orElseThrow(() -> new IllegalArgumentException("not an amount: " + decimal));
    }

    /** Whether it still holds on a day. */
    public boolean holdsOn(LocalDate day) {
        return !day.isAfter(validTo);
    }
}
