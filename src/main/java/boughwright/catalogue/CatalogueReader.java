package boughwright.catalogue;

import boughwright.text.Text;
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
 * <p>The columns are those of {@link #COLUMNS}, in any order; {@code brand} may stand beside them. A row is read field by field as
 * text and checked here, because a binding reader would turn a short row into silent nulls.
 */
public final class CatalogueReader {

    /** Those that every file must have. */
    public static final List<String> COLUMNS = List.of("sku", "gtin", "name", "roles", "family", "colour", "second_colour", "texture",
            "finish", "material", "shape", "pattern", "weave", "width_mm", "length_mm", "bulbs", "watts", "max_run", "pack", "price",
            "currency", "level", "stock", "shelf", "looks", "safety");

    private static final int MOST_FAULTS = 200;

    private final CatalogueRows rows;

    /**
     * @param looks ids of the looks that a product may name
     * @param currency the shop's
     */
    public CatalogueReader(Set<String> looks, Currency currency) {
        this.rows = new CatalogueRows(looks, currency);
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
        CsvRecords records = new CsvRecords(csv);
        for (Optional<CsvRecords.Entry> next = records.next(); next.isPresent(); next = records.next()) {
            CsvRecords.Entry entry = next.get();
            String[] row = cells(records, entry, header, faults);
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
                rows.product(entry.line(), header, row, faults).filter(p -> unique).ifPresent(products::add);
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
    private static String[] cells(CsvRecords records, CsvRecords.Entry entry, List<String> header, List<CatalogueFault> faults) {
        if (entry.open()) {
            String column = header != null && entry.column() < header.size() ? header.get(entry.column()) : "";
            faults.add(new CatalogueFault(entry.line(), column, entry.text().lines().findFirst().orElse("").strip(),
                    Text.of("catalogue.open-quote")));
            return null;
        }
        Optional<String[]> cells = records.cells(entry);
        if (cells.isEmpty()) {
            faults.add(new CatalogueFault(entry.line(), "", "", Text.of("catalogue.csv")));
        }
        return cells.orElse(null);
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
            if (!CatalogueRows.COLUMNS.contains(name)) {
                faults.add(new CatalogueFault(1, name, name, Text.of("catalogue.column.unknown", String.join(", ", CatalogueRows.COLUMNS))));
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
}
