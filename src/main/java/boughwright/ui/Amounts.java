package boughwright.ui;

import boughwright.measure.Money;
import boughwright.text.Text;
import java.util.Currency;
import java.util.Locale;

/** Amounts as people type them, and as they read them. */
final class Amounts {

    private Amounts() {
    }

    /** Without currency signs, spaces and thousands' commas: {@code $1,000} → {@code 1000}. What is no amount stays what it is. */
    static String plain(String typed) {
        String bare = typed.strip().replaceAll("^[^\\d.,-]{1,3}(?=\\d)|(?<=\\d)[^\\d.,-]{1,4}$", "");
        return bare.matches("\\d{1,3}(,\\d{3})+(\\.\\d+)?") ? bare.replace(",", "") : bare;
    }

    /** How much dearer or cheaper: {@code $3.20 more}. */
    static String change(long coins, Currency currency) {
        Money amount = Money.ofCoins(Math.abs(coins), currency);
        return coins == 0 ? Text.of("amount.same") : Text.of(coins > 0 ? "amount.more" : "amount.less", amount.show());
    }

    /** A gain or a loss of points, to a tenth. */
    static String points(double points) {
        double tenth = Math.round(10 * Math.abs(points)) / 10.0;
        return tenth == 0 ? Text.of("points.same") : Text.of(points > 0 ? "points.more" : "points.less", String.format(Locale.ENGLISH, "%.1f", tenth));
    }

    static String plainPoints(double points) {
        return String.format(Locale.ENGLISH, "%.1f", points + 0.0);
    }
}
