package boughwright.quote;

import boughwright.measure.Money;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/**
 * How a shop taxes what it sells: one rate for everything, on top of its prices or within them.
 *
 * <p>The tax of an amount is {@code amount × percent / 100} on top, {@code amount × percent / (100 + percent)} within, each worked out
 * exactly and then rounded once to the currency's smallest coin. Rules differ on what is rounded, each line or the whole, and on
 * a half coin; a shop chooses what its own law asks for. Several states of the USA let a seller choose between item and invoice, and have
 * a third decimal of five or more rounded up (Streamlined Sales and Use Tax Agreement, section 324, as in R.I. Gen. Laws § 44-18.1-25).
 *
 * @param name as a receipt calls it; the shop's own word
 * @param percent of the price, at least 0 and below 100
 * @param within whether prices have it in them
 */
public record Tax(String name, BigDecimal percent, boolean within, Basis basis, Rounding rounding) {

    /** What is rounded. */
    public enum Basis { LINE, TOTAL }

    /** What becomes of less than a coin. */
    public enum Rounding {
        HALF_UP(RoundingMode.HALF_UP), HALF_EVEN(RoundingMode.HALF_EVEN), DOWN(RoundingMode.DOWN);

        private final RoundingMode mode;

        Rounding(RoundingMode mode) {
            this.mode = mode;
        }
    }

    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    /** No tax is named or reckoned. */
    public static final Tax NONE = new Tax("", BigDecimal.ZERO, false, Basis.TOTAL, Rounding.HALF_UP);

    /** @throws IllegalArgumentException when the rate is out of its bounds */
    public Tax {
        if (percent.signum() < 0 || percent.compareTo(HUNDRED) >= 0) {
            throw new IllegalArgumentException("a tax of " + percent + " %");
        }
        percent = percent.signum() == 0 ? BigDecimal.ZERO : percent.stripTrailingZeros();
        percent = percent.scale() < 0 ? percent.setScale(0) : percent;
    }

    public boolean none() {
        return percent.signum() == 0;
    }

    /** The tax of one amount, rounded. */
    public Money of(Money amount) {
        int decimals = amount.amount().scale();
        BigDecimal share = within ? HUNDRED.add(percent) : HUNDRED;
        return new Money(amount.amount().multiply(percent).divide(share, decimals, rounding.mode), amount.currency());
    }

    /** The tax of several lines, by line when lines are what is rounded; else all of it belongs to none of them. @param lines at least one */
    public List<Money> ofLines(List<Money> lines) {
        List<Money> taxes = new ArrayList<>();
        lines.forEach(line -> taxes.add(basis == Basis.LINE ? of(line) : Money.zero(line.currency())));
        return taxes;
    }

    /** The tax of all lines together. @param lines at least one */
    public Money ofAll(List<Money> lines) {
        return basis == Basis.LINE ? ofLines(lines).stream().reduce(Money::plus).orElseThrow() : of(lines.stream().reduce(Money::plus).orElseThrow());
    }
}
