package boughwright.catalogue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Currency;
import java.util.List;
import java.util.Set;

/** Catalogue texts: the samples of the project, and one good row to spoil. */
public final class CatalogueFixture {

    public static final Set<String> LOOKS = Set.of("woodland", "frost-fair", "orchard-supper", "gilded-library", "harbour-light", "bramble-vespers", "night-orrery",
            "moorland-loom");
    public static final Currency USD = Currency.getInstance("USD");
    static final String HEADER = String.join(",", CatalogueReader.COLUMNS);

    private static final String[] BALL = {"BL-1", "6291041500213", "Silver bauble", "filler-ball", "silver", "#bcbec2", "", "smooth", "satin",
        "shatterproof", "ball", "", "", "60", "", "", "", "", "12", "17.75", "USD", "fine", "54", "B1-2", "frost-fair", ""};
    private static final String[] RIBBON = {"RO-1", "7300011000017", "Candle stripe", "overlay-ribbon accent-ribbon", "brown", "#322b25", "#d69a3c",
        "smooth", "shiny", "fabric", "ribbon", "stripe", "close", "38", "9144", "", "", "", "1", "10.99", "USD", "everyday", "25", "C3-4", "", ""};
    private static final String[] LIGHTS = {"LT-1", "8904000210037", "Candle-glow string", "light-string", "gold", "#ffdca0", "", "smooth", "matte",
        "plastic", "string", "", "", "5", "10000", "100", "5", "40", "1", "12.49", "USD", "value", "239", "A1-2", "woodland", ""};

    private CatalogueFixture() {
    }

    public static String ball(String... changes) {
        return row(BALL, changes);
    }

    public static String ribbon(String... changes) {
        return row(RIBBON, changes);
    }

    public static String lights(String... changes) {
        return row(LIGHTS, changes);
    }

    /** A row with some cells replaced: column, value, column, value … */
    private static String row(String[] good, String... changes) {
        List<String> cells = new ArrayList<>(Arrays.asList(good));
        for (int i = 0; i < changes.length; i += 2) {
            cells.set(CatalogueReader.COLUMNS.indexOf(changes[i]), changes[i + 1]);
        }
        return String.join(",", cells);
    }

    public static String file(String... rows) {
        return HEADER + "\n" + String.join("\n", rows) + "\n";
    }

    static CatalogueReading read(String csv) {
        return new CatalogueReader(LOOKS, USD).read(csv);
    }

    static List<Product> products(String csv) {
        if (read(csv) instanceof CatalogueReading.Read read) {
            return read.catalogue().products();
        }
        throw new AssertionError("not read: " + faults(csv));
    }

    static List<CatalogueFault> faults(String csv) {
        if (read(csv) instanceof CatalogueReading.Faulty faulty) {
            return faulty.faults();
        }
        throw new AssertionError("read without a fault");
    }

    /** The text of a file in catalogue-samples. */
    public static String sample(String name) {
        try {
            return Files.readString(Path.of("catalogue-samples", name));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
