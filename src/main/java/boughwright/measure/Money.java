package boughwright.measure;

import boughwright.text.Language;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.text.NumberFormat;
import java.util.Currency;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * An amount of money in one currency, at that currency's own number of decimals.
 *
 * @param amount exact; its scale is the currency's (2 for USD, 0 for JPY)
 */
public record Money(BigDecimal amount, Currency currency) implements Comparable<Money> {

    private static final Pattern PLAIN_DECIMAL = Pattern.compile("\\d{1,9}(\\.\\d+)?");

    /** @throws IllegalArgumentException when the amount has more decimals than the currency */
    public Money {
        int decimals = Math.max(0, currency.getDefaultFractionDigits());
        if (amount.stripTrailingZeros().scale() > decimals) {
            throw new IllegalArgumentException(amount + " has more decimals than " + currency);
        }
        amount = amount.setScale(decimals, RoundingMode.UNNECESSARY);
    }

    public static Money zero(Currency currency) {
        return new Money(BigDecimal.ZERO, currency);
    }

    /**
     * Reads a plain decimal such as {@code 650.00}: digits, a point, no sign, no grouping, no currency mark.
     *
     * @return empty when the text is anything else, or has more decimals than the currency
     */
    public static Optional<Money> read(String text, Currency currency) {
        if (text == null || !PLAIN_DECIMAL.matcher(text).matches()) {
            return Optional.empty();
        }
        BigDecimal amount = new BigDecimal(text);
        if (amount.stripTrailingZeros().scale() > Math.max(0, currency.getDefaultFractionDigits())) {
            return Optional.empty();
        }
        return Optional.of(new Money(amount, currency));
    }

    public Money plus(Money other) {
        requireSame(other);
        return new Money(amount.add(other.amount), currency);
    }

    /** This less {@code other}; may be negative. */
    public Money minus(Money other) {
        requireSame(other);
        return new Money(amount.subtract(other.amount), currency);
    }

    public Money times(int count) {
        return new Money(amount.multiply(BigDecimal.valueOf(count)), currency);
    }

    /** The amount in the currency's smallest coin, for whole-number arithmetic. */
    public long coins() {
        return amount.unscaledValue().longValueExact();
    }

    public static Money ofCoins(long coins, Currency currency) {
        return new Money(BigDecimal.valueOf(coins, Math.max(0, currency.getDefaultFractionDigits())), currency);
    }

    /** Plain decimal text with the currency's decimals, as files and the API carry it: {@code 38.97}. */
    public String decimal() {
        return amount.toPlainString();
    }

    /** As a customer reads it in the language that is spoken, by CLDR: {@code $38.97}, {@code 38,97 $}, with a space that does not break. */
    public String show() {
        NumberFormat format = NumberFormat.getCurrencyInstance(Language.now().locale());
        format.setCurrency(currency);
        format.setMinimumFractionDigits(amount.scale());
        format.setMaximumFractionDigits(amount.scale());
        return format.format(amount);
    }

    @Override
    public int compareTo(Money other) {
        requireSame(other);
        return amount.compareTo(other.amount);
    }

    private void requireSame(Money other) {
        if (!currency.equals(other.currency)) {
            throw new IllegalArgumentException("cannot mix " + currency + " and " + other.currency);
        }
    }
}
