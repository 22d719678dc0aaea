package boughwright.catalogue;

import boughwright.catalogue.Traits.Family;
import boughwright.catalogue.Traits.Finish;
import boughwright.catalogue.Traits.Level;
import boughwright.catalogue.Traits.Material;
import boughwright.catalogue.Traits.Pattern;
import boughwright.catalogue.Traits.Safety;
import boughwright.catalogue.Traits.Shape;
import boughwright.catalogue.Traits.Texture;
import boughwright.catalogue.Traits.Weave;
import boughwright.colour.Lab;
import boughwright.colour.Srgb;
import boughwright.measure.Length;
import boughwright.measure.Money;
import boughwright.needs.Role;
import boughwright.text.Text;
import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.databind.ObjectReader;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.Currency;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Reads a catalogue from CSV (RFC 4180, UTF-8, one header line), all or nothing.
 *
 * <p>The columns are those of {@link #COLUMNS}, in any order. A row is read field by field as text and checked here, because a
 * binding reader would turn a short row into silent nulls.
 */
public final class CatalogueReader {

    public static final List<String> COLUMNS = List.of("sku", "gtin", "name", "roles", "family", "colour", "second_colour", "texture",
            "finish", "material", "shape", "pattern", "weave", "width_mm", "length_mm", "bulbs", "watts", "max_run", "pack", "price",
            "currency", "level", "stock", "shelf", "looks", "safety");

    private static final ObjectReader ROWS = new CsvMapper()
            .readerFor(String[].class)
            .with(CsvParser.Feature.WRAP_AS_ARRAY)
            .with(CsvParser.Feature.SKIP_EMPTY_LINES);

    private static final int MOST_FAULTS = 200;

    private final Set<String> looks;
    private final Currency currency;

    /**
     * @param looks ids of the looks that a product may name
     * @param currency the shop's
     */
    public CatalogueReader(Set<String> looks, Currency currency) {
        this.looks = Set.copyOf(looks);
        this.currency = currency;
    }

    /** Reads a text that is in memory already. */
    public CatalogueReading read(String csv) {
        try {
            return read(new StringReader(csv));
        } catch (IOException e) {
            throw new IllegalStateException("a text in memory does not break", e);
        }
    }

    /**
     * Reads to the end and leaves the reader open. Broken text is a fault.
     *
     * @throws IOException when the stream breaks, or its bytes are not of its character set
     */
    public CatalogueReading read(Reader csv) throws IOException {
        List<CatalogueFault> faults = new ArrayList<>();
        List<Product> products = new ArrayList<>();
        Map<String, Integer> lineOfSku = new HashMap<>();
        Map<String, Integer> lineOfGtin = new HashMap<>();
        List<String> header = null;
        for (CsvRecords.Entry entry : CsvRecords.of(csv)) {
            String[] row = cells(entry, header, faults);
            if (row == null) {
                continue;
            }
            if (header == null) {
                header = header(row, faults);
                if (header.isEmpty()) {
                    return new CatalogueReading.Faulty(faults);
                }
            } else if (row.length != header.size()) {
                faults.add(new CatalogueFault(entry.line(), "", "",
                        Text.of("catalogue.columns.count", String.valueOf(row.length), String.valueOf(header.size()))));
            } else {
                Row reading = new Row(entry.line(), header, row, faults);
                boolean unique = unique(reading, "sku", lineOfSku) & unique(reading, "gtin", lineOfGtin);
                product(reading).filter(p -> unique).ifPresent(products::add);
            }
            if (faults.size() >= MOST_FAULTS) {
                break;
            }
        }
        if (header == null && faults.isEmpty()) {
            faults.add(new CatalogueFault(1, "", "", Text.of("catalogue.empty", String.join(",", COLUMNS))));
        }
        if (faults.isEmpty() && products.isEmpty()) {
            faults.add(new CatalogueFault(1, "", "", Text.of("catalogue.no-products")));
        }
        return faults.isEmpty() ? new CatalogueReading.Read(new Catalogue(products)) : new CatalogueReading.Faulty(List.copyOf(faults));
    }

    /** The cells of one record, or null and a fault when it cannot be split into any. */
    private static String[] cells(CsvRecords.Entry entry, List<String> header, List<CatalogueFault> faults) {
        if (entry.open()) {
            String column = header != null && entry.column() < header.size() ? header.get(entry.column()) : "";
            faults.add(new CatalogueFault(entry.line(), column, entry.text().lines().findFirst().orElse("").strip(), Text.of("catalogue.open-quote")));
            return null;
        }
        try (MappingIterator<String[]> rows = ROWS.readValues(entry.text())) {
            return rows.hasNextValue() ? rows.nextValue() : null;
        } catch (IOException e) {
            faults.add(new CatalogueFault(entry.line(), "", "", Text.of("catalogue.csv")));
            return null;
        }
    }

    private static List<String> header(String[] row, List<CatalogueFault> faults) {
        List<String> names = new ArrayList<>();
        for (String name : row) {
            names.add(name.strip());
        }
        for (String name : COLUMNS) {
            if (!names.contains(name)) {
                faults.add(new CatalogueFault(1, name, "", Text.of("catalogue.column.missing")));
            }
        }
        for (String name : names) {
            if (!COLUMNS.contains(name)) {
                faults.add(new CatalogueFault(1, name, name, Text.of("catalogue.column.unknown", String.join(", ", COLUMNS))));
            } else if (names.indexOf(name) != names.lastIndexOf(name)) {
                faults.add(new CatalogueFault(1, name, name, Text.of("catalogue.column.twice")));
            }
        }
        return faults.isEmpty() ? names : List.of();
    }

    private static boolean unique(Row row, String column, Map<String, Integer> lineOf) {
        if (row.text(column).isEmpty()) {
            return true;
        }
        Integer earlier = lineOf.putIfAbsent(row.text(column), row.line());
        if (earlier != null) {
            row.fault(column, Text.of("catalogue.twice", String.valueOf(earlier)));
        }
        return earlier == null;
    }

    private Optional<Product> product(Row row) {
        int before = row.faults().size();
        String sku = row.required("sku");
        String gtin = row.gtin();
        String name = row.required("name");
        Set<Role> roles = row.words("roles", Role.class, Role::bought);
        if (row.text("roles").isEmpty()) {
            row.fault("roles", Text.of("catalogue.roles.none"));
        }
        Family family = row.word("family", Family.class);
        Srgb colour = row.colour("colour");
        Optional<Srgb> second = row.text("second_colour").isEmpty() ? Optional.empty() : Optional.ofNullable(row.colour("second_colour"));
        Texture texture = row.word("texture", Texture.class);
        Finish finish = row.word("finish", Finish.class);
        Material material = row.word("material", Material.class);
        Shape shape = row.word("shape", Shape.class);
        boolean ribbon = roles.stream().anyMatch(Role::ribbon);
        boolean light = roles.contains(Role.LIGHT_STRING);
        Optional<Pattern> pattern = ribbon ? Optional.ofNullable(row.word("pattern", Pattern.class)) : Optional.empty();
        Optional<Weave> weave = ribbon ? Optional.ofNullable(row.word("weave", Weave.class)) : Optional.empty();
        if (!ribbon) {
            row.unused("pattern", "weave");
        }
        if (!light) {
            row.unused("bulbs", "watts", "max_run");
        }
        double width = row.decimal("width_mm", 0.1, 2_000);
        boolean hasLength = ribbon || light || roles.stream().anyMatch(Role::stem) || roles.contains(Role.FEATURE_ORNAMENT);
        double length = hasLength || !row.text("length_mm").isEmpty() ? row.decimal("length_mm", hasLength ? 1 : 0, 200_000) : 0;
        Optional<Product.Lights> lights = light
                ? Optional.of(new Product.Lights(row.whole("bulbs", 1, 10_000), row.decimal("watts", 0.1, 2_000), row.whole("max_run", 0, 1_000)))
                : Optional.empty();
        int pack = row.whole("pack", 1, 1_000);
        Money price = row.price(currency);
        Level level = row.word("level", Level.class);
        int stock = row.whole("stock", 0, 1_000_000);
        String shelf = row.required("shelf");
        Set<String> itsLooks = row.listed("looks", looks);
        Set<Safety> safety = row.words("safety", Safety.class, s -> true);
        if (row.faults().size() > before) {
            return Optional.empty();
        }
        return Optional.of(new Product(sku, gtin, name, roles, family, colour, second, texture, finish, material, shape, pattern, weave,
                Length.ofMillimetres(width), Length.ofMillimetres(length), lights, pack, price, level, stock, shelf, itsLooks, safety,
                Lab.of(colour)));
    }
}
