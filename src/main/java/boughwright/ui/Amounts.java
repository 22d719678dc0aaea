package boughwright.ui;

import boughwright.measure.Money;
import boughwright.text.Language;
import boughwright.text.Text;
import java.util.Currency;

/** Amounts as people type them, and as they read them. */
final class Amounts {

    private Amounts() {
    }

    /**
     * An amount as people type it in any of the languages that are spoken here, as a plain decimal: {@code $1,000} → {@code 1000},
     * {@code 1.234,50 €} → {@code 1234.50}. A single mark before exactly three digits parts thousands where the spoken language writes it so;
     * elsewhere it may mean either, and the text stays what it is, as does what is no amount at all.
     */
    static String plain(String typed) {
        String bare = typed.strip().replaceAll("^[^\\d.,-]{1,4}(?=\\d)|(?<=\\d)[^\\d.,-]{1,5}$", "")
                .replaceAll("(?<=\\d)[\\s\u00a0\u202f’](?=\\d{3})", "");
        boolean commas = Language.now() == Language.ENGLISH;
        if (bare.matches("\\d{1,3}(,\\d{3})+\\.\\d+|\\d{1,3}(,\\d{3}){2,}") || commas && bare.matches("\\d{1,3},\\d{3}")) {
            return bare.replace(",", "");
        }
        if (bare.matches("\\d{1,3}(\\.\\d{3})+,\\d+|\\d{1,3}(\\.\\d{3}){2,}") || !commas && bare.matches("\\d{1,3}\\.\\d{3}")) {
            return bare.replace(".", "").replace(',', '.');
        }
        return bare.matches("\\d+,\\d{1,2}") ? bare.replace(',', '.') : bare;
    }

    /** How much dearer or cheaper: {@code $3.20 more}. */
    static String change(long coins, Currency currency) {
        Money amount = Money.ofCoins(Math.abs(coins), currency);
        return coins == 0 ? Text.of("amount.same") : Text.of(coins > 0 ? "amount.more" : "amount.less", amount.show());
    }

    /** A gain or a loss of points, to a tenth. */
    static String points(double points) {
        double tenth = Math.round(10 * Math.abs(points)) / 10.0;
        return tenth == 0 ? Text.of("points.same") : Text.of(points > 0 ? "points.more" : "points.less", Text.number(tenth, 1));
    }

    static String plainPoints(double points) {
        return Text.number(points + 0.0, 1);
    }
}
