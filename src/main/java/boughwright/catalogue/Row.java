package boughwright.catalogue;

import boughwright.brief.Word;
import boughwright.colour.Srgb;
import boughwright.measure.Money;
import boughwright.text.Text;
import java.util.Collections;
import java.util.Currency;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.regex.Pattern;

/**
 * One row of a catalogue file, read cell by cell; what cannot be read is added to the faults under its line and column.
 *
 * @param cells as many as the header has columns
 */
record Row(int line, List<String> header, String[] cells, List<CatalogueFault> faults) {

    private static final Pattern DECIMAL = Pattern.compile("\\d{1,7}(\\.\\d{1,6})?");
    private static final Pattern SPACES = Pattern.compile("\\s+");
    private static final Pattern WHOLE = Pattern.compile("\\d{1,9}");

    /** What stands in the cell; empty also where the file has no such column. */
    String text(String column) {
        int at = header.indexOf(column);
        return at < 0 ? "" : cells[at].strip();
    }

    void fault(String column, String mend) {
        faults.add(new CatalogueFault(line, column, text(column), mend));
    }

    String required(String column) {
        if (text(column).isEmpty()) {
            fault(column, Text.of("catalogue.blank"));
        }
        return text(column);
    }

    /** The sku and the gtin, one of which may be missing when rows only say something of products that are known. */
    void known() {
        if (text("sku").isEmpty() && text("gtin").isEmpty()) {
            fault("sku", Text.of("catalogue.known"));
        } else if (!text("gtin").isEmpty()) {
            gtin();
        }
    }

    /** Faults for cells that hold something although this kind of product has none of it; a role in doubt says nothing. */
    void unused(String... columns) {
        if (text("roles").isEmpty() || faults.stream().anyMatch(f -> f.line() == line && f.column().equals("roles"))) {
            return;
        }
        for (String column : columns) {
            if (!text(column).isEmpty()) {
                fault(column, Text.of("catalogue.unused"));
            }
        }
    }

    String gtin() {
        String gtin = text("gtin");
        if (!Gtin.wellFormed(gtin)) {
            fault("gtin", Text.of("catalogue.gtin.digits"));
        } else if (!Gtin.rightCheckDigit(gtin)) {
            fault("gtin", Text.of("catalogue.gtin.check", String.valueOf(Gtin.checkDigit(gtin))));
        }
        return gtin;
    }

    /** The word's choice; null, and a fault, for any other text. */
    <W extends Enum<W> & Word> W word(String column, Class<W> choices) {
        Optional<W> choice = Word.read(choices, text(column));
        if (choice.isEmpty()) {
            fault(column, Text.of("catalogue.word", String.join(", ", Word.words(choices))));
        }
        return choice.orElse(null);
    }

    <W extends Enum<W> & Word> Set<W> words(String column, Class<W> choices, Predicate<W> allowed) {
        EnumSet<W> chosen = EnumSet.noneOf(choices);
        for (String word : parts(column)) {
            Optional<W> choice = Word.read(choices, word).filter(allowed);
            choice.ifPresentOrElse(chosen::add, () -> fault(column, Text.of("catalogue.words", word, String.join(", ",
                    EnumSet.allOf(choices).stream().filter(allowed).map(Word::word).toList()))));
        }
        return Collections.unmodifiableSet(chosen);
    }

    Set<String> listed(String column, Set<String> allowed) {
        Set<String> chosen = new TreeSet<>();
        for (String word : parts(column)) {
            if (allowed.contains(word)) {
                chosen.add(word);
            } else {
                fault(column, Text.of("catalogue.words", word, String.join(", ", new TreeSet<>(allowed))));
            }
        }
        return Collections.unmodifiableSet(chosen);
    }

    private List<String> parts(String column) {
        return text(column).isEmpty() ? List.of() : List.of(SPACES.split(text(column)));
    }

    Srgb colour(String column) {
        Optional<Srgb> colour = Srgb.read(text(column));
        if (colour.isEmpty()) {
            fault(column, Text.of("catalogue.colour"));
        }
        return colour.orElse(null);
    }

    double decimal(String column, double least, double most) {
        String text = text(column);
        double value = DECIMAL.matcher(text).matches() ? Double.parseDouble(text) : Double.NaN;
        if (!(value >= least && value <= most)) {
            fault(column, Text.of("catalogue.decimal", plain(least), plain(most)));
        }
        return value;
    }

    int whole(String column, int least, int most) {
        String text = text(column);
        long value = WHOLE.matcher(text).matches() ? Long.parseLong(text) : -1;
        if (value < least || value > most) {
            fault(column, Text.of("catalogue.whole", String.valueOf(least), String.valueOf(most)));
        }
        return (int) value;
    }

    /** Packs on hand. */
    int stock() {
        return whole("stock", 0, 1_000_000);
    }

    Money price(Currency shop) {
        if (!text("currency").equals(shop.getCurrencyCode())) {
            fault("currency", Text.of("catalogue.currency", shop.getCurrencyCode()));
        }
        Optional<Money> price = Money.read(text("price"), shop).filter(p -> p.amount().signum() > 0);
        if (price.isEmpty()) {
            fault("price", Text.of("catalogue.price", String.valueOf(shop.getDefaultFractionDigits())));
        }
        return price.orElse(null);
    }

    private static String plain(double value) {
        return value == Math.rint(value) ? String.valueOf((long) value) : String.valueOf(value);
    }
}
