package boughwright.intake;

import boughwright.brief.Word;
import boughwright.catalogue.CatalogueRows;
import boughwright.catalogue.Traits.Family;
import boughwright.colour.Srgb;
import boughwright.intake.ColumnGuess.Sureness;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Currency;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What people call the columns of a product file: our own names, the terms of schema.org ({@code Product}, {@code Offer},
 * {@code QuantitativeValue}) and of the GS1 Web Vocabulary, and plain words of the trade (common practice, no published source).
 */
final class Names {

    /** @param rank order within a column, first is best */
    private record Meaning(String column, Sureness sureness, int rank) {
    }

    private static final Map<String, List<Meaning>> MEANINGS = new HashMap<>();

    static {
        CatalogueRows.COLUMNS.forEach(column -> means(column, Sureness.EXACT, column));
        likely("sku", "item number, item no, item #, item code, stock code, article number, article no, article code,"
                + "part number, part no, product code, product number, product no, product id, style number, style no, sku code,"
                + "sku number, stock number, stock no");
        guess("sku", "mpn, model, model number, style, code, id, item, number, no, reference, ref");
        likely("gtin", "gtin13, gtin12, gtin14, gtin8, ean, ean13, ean8, ean code, upc, upca, upc code, barcode, bar code, gtin number, ean upc");
        likely("name", "product name, item name, title, product title, item description, product description name,"
                + "regulated product name, label name");
        guess("name", "description, product description, short description, product, item, article, desc, label");
        likely("brand", "brand name, brand owner, make");
        guess("brand", "manufacturer, maker, vendor, supplier");
        likely("roles", "role");
        guess("roles", "category, product category, product type, type, use, usage, department, class");
        likely("family", "colour family, color family, colour group, color group, base colour, base color, main colour, main color");
        likely("colour", "color, colour hex, color hex, hex, hex colour, hex color, rgb, colour code, color code");
        guess("colour", "shade, colour description, color description");
        likely("second_colour", "second color, secondary colour, secondary color, colour 2, color 2, accent colour, accent color, second colour hex");
        guess("texture", "surface");
        guess("finish", "sheen, surface finish, gloss");
        likely("material", "materials, material description, made of");
        guess("material", "fabric, composition, content");
        guess("shape", "form, item shape, silhouette, motif");
        likely("pattern", "print");
        guess("pattern", "design, decoration");
        guess("weave", "weave type, fabric weave");
        likely("width_mm", "width, diameter, dia, ribbon width, head width, ball diameter, out of package width");
        guess("width_mm", "size, w, item width, product width, in package width");
        likely("length_mm", "length, stem length, overall length, roll length, drop, drop length, lit length, lighted length");
        guess("length_mm", "height, depth, l, h, d, item length, item height, out of package height, out of package depth");
        likely("bulbs", "bulb count, number of bulbs, lights, light count, number of lights, led count, leds, lamp count");
        likely("watts", "wattage, watt, total watts, w total");
        guess("watts", "power");
        likely("max_run", "maximum run, max connect, max connected, max sets, maximum sets, end to end, max end to end, connectable");
        likely("pack", "pack size, pack qty, pack quantity, pieces per pack, units per pack, pcs per pack, pieces, pcs,"
                + "unit count, count per pack, set size");
        guess("pack", "case pack, inner pack, unit, units, count, quantity per pack, number of items");
        likely("price", "offers price, retail price, selling price, sell price, sales price, unit price, list price,"
                + "rrp, msrp, srp, retail, offer price");
        guess("price", "amount, our price, price each, each");
        likely("currency", "price currency, offers price currency, currency code, iso currency");
        likely("level", "price level, price tier, tier");
        guess("level", "grade, quality, range");
        likely("stock", "inventory level, offers inventory level, inventory, qty on hand, quantity on hand, on hand,"
                + "stock on hand, soh, stock level, stock qty,"
                + "stock quantity, in stock qty, qty in stock, quantity in stock, qoh, oh");
        guess("stock", "qty, quantity, available, in stock, on shelf, balance");
        likely("shelf", "bin, bin location, location, shelf location, aisle, bin no, bin number");
        guess("shelf", "bay, slot, place, position, zone, rack");
        likely("looks", "look, theme, themes, collection, collections");
        guess("looks", "story, season, trend, tags");
        guess("safety", "warnings, warning, cautions, caution, hazard, hazards, safety notes");
    }

    private Names() {
    }

    private static void likely(String column, String names) {
        Arrays.stream(names.split(",")).forEach(name -> means(name, Sureness.LIKELY, column));
    }

    private static void guess(String column, String names) {
        Arrays.stream(names.split(",")).forEach(name -> means(name, Sureness.GUESS, column));
    }

    private static void means(String name, Sureness sureness, String column) {
        List<Meaning> meanings = MEANINGS.computeIfAbsent(plain(name), key -> new ArrayList<>());
        meanings.add(new Meaning(column, sureness, MEANINGS.size()));
    }

    /** Lower-case letters and digits alone, so that “Item No.”, “item_no” and “itemNo” are one. */
    static String plain(String heading) {
        String folded = Normalizer.normalize(heading, Normalizer.Form.NFKC).toLowerCase(Locale.ROOT).replace("#", " no");
        StringBuilder plain = new StringBuilder();
        folded.codePoints().filter(Character::isLetterOrDigit).forEach(plain::appendCodePoint);
        return plain.toString();
    }

    /** Whether a text is a name that columns are known by, with a unit or a currency or without. */
    static boolean known(String heading) {
        return !meanings(heading).isEmpty();
    }

    private static List<Meaning> meanings(String heading) {
        List<Meaning> whole = MEANINGS.getOrDefault(plain(heading), List.of());
        if (!whole.isEmpty()) {
            return whole;
        }
        String base = base(heading);
        boolean length = unit(heading).isPresent();
        return MEANINGS.getOrDefault(plain(base), List.of()).stream().filter(m -> length ? m.column().endsWith("_mm") : m.column().equals("price"))
                .map(m -> new Meaning(m.column(), m.sureness() == Sureness.EXACT ? Sureness.LIKELY : m.sureness(), m.rank())).toList();
    }

    /** The unit of length that a heading ends in: {@code width_mm}, {@code width (cm)}, {@code Width in}. */
    static Optional<LengthUnit> unit(String heading) {
        String[] words = words(heading);
        return words.length < 2 ? Optional.empty() : LengthUnit.named(words[words.length - 1]);
    }

    /** The currency that a heading ends in, as {@code price (EUR)} does. */
    static Optional<Currency> currency(String heading) {
        String[] words = words(heading);
        String last = words.length < 2 ? "" : words[words.length - 1].toUpperCase(Locale.ROOT);
        return Currency.getAvailableCurrencies().stream().filter(c -> c.getCurrencyCode().equals(last)).findFirst();
    }

    private static String base(String heading) {
        if (unit(heading).isEmpty() && currency(heading).isEmpty()) {
            return heading;
        }
        String[] words = words(heading);
        return String.join(" ", Arrays.copyOf(words, words.length - 1));
    }

    private static String[] words(String heading) {
        return heading.strip().split("[\\s_()\\[\\],./:-]+");
    }

    static List<ColumnGuess> guesses(IntakeFile file, Kind kind) {
        record Candidate(Meaning meaning, String heading) {
        }
        List<Candidate> candidates = new ArrayList<>();
        for (int i = 0; i < file.headings().size(); i++) {
            String heading = file.headings().get(i);
            for (Meaning meaning : meanings(heading)) {
                candidates.add(new Candidate(byContent(meaning, file, i), heading));
            }
        }
        candidates.sort(Comparator.comparing((Candidate c) -> c.meaning().sureness()).thenComparing(c -> c.meaning().rank()));
        Map<String, ColumnGuess> found = new HashMap<>();
        Set<String> taken = new HashSet<>();
        for (Candidate candidate : candidates) {
            String column = candidate.meaning().column();
            if (kind.columns().contains(column) && !found.containsKey(column) && taken.add(candidate.heading())) {
                found.put(column, new ColumnGuess(column, Optional.of(candidate.heading()), candidate.meaning().sureness(),
                        column.endsWith("_mm") ? unit(candidate.heading()) : Optional.empty()));
            }
        }
        return kind.columns().stream()
                .map(column -> found.getOrDefault(column, new ColumnGuess(column, Optional.empty(), Sureness.NONE, Optional.empty()))).toList();
    }

    /** A column of colour words rather than of codes is the colour family. */
    private static Meaning byContent(Meaning meaning, IntakeFile file, int index) {
        if (!meaning.column().equals("colour")) {
            return meaning;
        }
        List<String> values = file.preview().stream().map(row -> row.get(index).strip()).filter(v -> !v.isEmpty()).toList();
        boolean words = values.stream().noneMatch(v -> Srgb.read(v.startsWith("#") ? v : "#" + v).isPresent())
                && values.stream().anyMatch(v -> Word.read(Family.class, v.toLowerCase(Locale.ROOT)).isPresent());
        return words ? new Meaning("family", Sureness.GUESS, meaning.rank()) : meaning;
    }
}
