package boughwright.intake;

import boughwright.catalogue.CatalogueFault;
import boughwright.catalogue.CatalogueRows;
import boughwright.text.Text;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Currency;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Reads the rows of a file in one pass. */
public final class Intake {

    /** Faults that are listed one by one; the rest are counted. */
    public static final int FAULTS_LISTED = 1_000;

    /** Rows between two words of progress. */
    private static final int PROGRESS_EACH = 200;
    /** Characters of a value that a fault repeats. */
    private static final int SHOWN = 200;

    /** In place of a mend: the cell's fault has been told already. */
    private static final String TOLD = "";

    private final IntakeFile file;
    private final Kind kind;
    private final Mapping mapping;
    private final CatalogueRows rows;
    private final Tidy tidy;
    private final Currency currency;
    private final Progress progress;
    private final int[] index;
    private final List<Optional<LengthUnit>> units = new ArrayList<>();
    private final List<GoodRow> good = new ArrayList<>();
    private final List<IntakeFault> faults = new ArrayList<>();
    private final Map<String, Integer> lineOfSku = new HashMap<>();
    private final Map<String, Integer> lineOfGtin = new HashMap<>();
    private final Map<String, Tally> notes = new LinkedHashMap<>();
    private int allFaults;
    private int allRows;
    private boolean cancelled;

    /** A note while it is being counted. */
    private record Tally(String column, String how, int line, String before, String after, int[] rows) {
    }

    private Intake(IntakeFile file, Kind kind, Mapping mapping, Set<String> looks, Currency currency, Progress progress) {
        this.file = file;
        this.kind = kind;
        this.mapping = mapping;
        this.rows = new CatalogueRows(looks, currency);
        this.tidy = new Tidy(currency);
        this.currency = currency;
        this.progress = progress;
        this.index = new int[kind.columns().size()];
        for (int i = 0; i < index.length; i++) {
            String column = kind.columns().get(i);
            index[i] = mapping.heading(column).map(file.headings()::indexOf).orElse(-1);
            units.add(mapping.unit(column));
        }
    }

    /**
     * Reads the file to its end, or until it is refused or cancelled. Every row is checked by {@code CatalogueRows}, after {@link Tidy} made
     * canonical cells of what can mean one thing only; SKUs and GTINs that stand in two rows are a fault of the later one.
     *
     * @param looks ids of the looks that a product may name
     * @param currency the shop's; it is meant where the mapping leaves the column unused
     * @throws UncheckedIOException when the disk fails
     */
    public static Delivery read(IntakeFile file, Kind kind, Mapping mapping, Set<String> looks, Currency currency, Progress progress) {
        List<String> missing = mapping.missing(kind, file.headings());
        if (!missing.isEmpty()) {
            return new Delivery.Refused(Refusal.MAPPING, Text.of("intake.refusal.mapping", String.join(", ", missing)));
        }
        try {
            return new Intake(file, kind, mapping, looks, currency, progress).read();
        } catch (RefusedFile e) {
            return new Delivery.Refused(e.why(), e.getMessage());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private Delivery read() throws IOException, RefusedFile {
        file.source().each(this::row);
        return cancelled || !progress.at(allRows, file.bytes(), file.bytes()) ? new Delivery.Cancelled(allRows)
                : new Delivery.Read(kind, List.copyOf(good), List.copyOf(faults), allFaults, allRows, faultySkus(), told());
    }

    private Set<String> faultySkus() {
        Set<String> skus = new HashSet<>(lineOfSku.keySet());
        good.stream().map(row -> row.cells().get(0)).forEach(skus::remove);
        return Set.copyOf(skus);
    }

    private boolean row(SourceRow row, long bytes) throws RefusedFile {
        if (row.line() <= file.headingLine()) {
            return true;
        }
        allRows++;
        if (allRows > file.limits().rows()) {
            throw new RefusedFile(Refusal.ROWS, String.valueOf(file.limits().rows()));
        }
        if (row.trouble().isPresent()) {
            SourceRow.Trouble trouble = row.trouble().get();
            String heading = trouble.column() >= 0 && trouble.column() < file.headings().size() ? file.headings().get(trouble.column()) : "";
            fault(row, canonical(heading), heading, trouble.value(), trouble.mend());
        } else if (file.format() == Format.CSV && !wholeRow(row)) {
            fault(row, "", "", "", Text.of("intake.columns.count", String.valueOf(row.cells().length), String.valueOf(file.headings().size())));
        } else {
            cells(row);
        }
        if (allRows % PROGRESS_EACH == 0 && !progress.at(allRows, bytes, file.bytes())) {
            cancelled = true;
        }
        return !cancelled;
    }

    private String canonical(String heading) {
        return kind.columns().stream().filter(column -> mapping.heading(column).filter(heading::equals).isPresent()).findFirst().orElse("");
    }

    /** Whether a line has as many cells as the heading, blank ones at its end aside. */
    private boolean wholeRow(SourceRow row) {
        for (int i = file.headings().size(); i < row.cells().length; i++) {
            if (!row.cells()[i].isBlank()) {
                return false;
            }
        }
        return row.cells().length >= file.headings().size();
    }

    private void cells(SourceRow row) {
        int columns = kind.columns().size();
        String[] cells = new String[columns];
        Map<String, String> mends = new HashMap<>();
        int before = allFaults;
        for (int i = 0; i < columns; i++) {
            cells[i] = cell(row, i, mends);
        }
        List<CatalogueFault> found = new ArrayList<>();
        GoodRow read = checked(row.line(), cells, found);
        for (CatalogueFault fault : found) {
            int column = kind.columns().indexOf(fault.column());
            String mend = mends.getOrDefault(fault.column(), fault.mend());
            if (!mend.equals(TOLD)) {
                fault(row, column, mend);
            }
        }
        twice(row, cells, "sku", lineOfSku);
        twice(row, cells, "gtin", lineOfGtin);
        if (read != null && allFaults == before) {
            good.add(read);
        }
    }

    private String cell(SourceRow row, int i, Map<String, String> mends) {
        String column = kind.columns().get(i);
        if (index[i] < 0) {
            return constant(column);
        }
        String raw = raw(row, i);
        SourceRow.Mark mark = row.marks().get(index[i]);
        if (raw.length() > file.limits().cellCharacters()) {
            return told(row, i, mends, Text.of("intake.cell.long", String.valueOf(file.limits().cellCharacters())));
        }
        if (mark == SourceRow.Mark.DATE || mark == SourceRow.Mark.ERROR) {
            return told(row, i, mends, Text.of(mark == SourceRow.Mark.DATE ? "intake.cell.date" : "intake.cell.error"));
        }
        Optional<Integer> unprintable = Tidy.unprintable(raw);
        if (unprintable.isPresent()) {
            return told(row, i, mends, Text.of("intake.cell.unprintable", String.format("U+%04X", unprintable.get())));
        }
        Tidy.Tidied tidied = tidy.cell(column, raw, units.get(i));
        if (mark == SourceRow.Mark.FORMULA) {
            if (Tidy.number(column)) {
                mends.put(column, Text.of("intake.cell.formula"));
            } else {
                note(column, "formula", row.line(), raw, tidied.cell());
            }
        } else if (!tidied.mend().isEmpty()) {
            mends.put(column, tidied.mend());
        }
        if (!tidied.how().isEmpty()) {
            note(column, tidied.how(), row.line(), raw, tidied.cell());
        }
        return tidied.cell();
    }

    private String told(SourceRow row, int i, Map<String, String> mends, String mend) {
        fault(row, i, mend);
        mends.put(kind.columns().get(i), TOLD);
        return "";
    }

    private String constant(String column) {
        Optional<Mapping.Source> source = mapping.source(column);
        if (source.isPresent() && source.get() instanceof Mapping.Source.Constant constant) {
            return tidy.cell(column, constant.value(), Optional.empty()).cell();
        }
        if (column.equals("currency")) {
            return mapping.heading("price").flatMap(Names::currency).orElse(currency).getCurrencyCode();
        }
        return "";
    }

    /** What stands in the file, without an apostrophe that our own export set before it. */
    private String raw(SourceRow row, int i) {
        String text = row.cell(index[i]);
        return file.format() == Format.JSON ? text : Formulas.soften(text);
    }

    private GoodRow checked(int line, String[] cells, List<CatalogueFault> found) {
        List<String> header = kind.columns();
        return switch (kind) {
            case WHOLE -> rows.product(line, header, cells, found).map(p -> new GoodRow.Whole(line, p)).orElse(null);
            case STOCK -> {
                var stock = rows.stock(line, header, cells, found);
                yield stock.isPresent() ? new GoodRow.Stock(line, cells[0], cells[1], stock.getAsInt()) : null;
            }
            case PRICE -> rows.price(line, header, cells, found).map(price -> new GoodRow.Price(line, cells[0], cells[1], price)).orElse(null);
        };
    }

    /** A fault when an earlier row, good or not, has the same number. */
    private void twice(SourceRow row, String[] cells, String column, Map<String, Integer> lines) {
        int i = kind.columns().indexOf(column);
        Integer earlier = cells[i].isEmpty() ? null : lines.putIfAbsent(cells[i], row.line());
        if (earlier != null) {
            fault(row, i, Text.of("intake.twice", file.place(earlier)));
        }
    }

    private void fault(SourceRow row, int i, String mend) {
        String heading = index[i] < 0 ? "" : file.headings().get(index[i]);
        String value = index[i] < 0 ? constant(kind.columns().get(i)) : raw(row, i);
        fault(row, kind.columns().get(i), heading, value, mend);
    }

    private void fault(SourceRow row, String column, String heading, String value, String mend) {
        allFaults++;
        if (faults.size() < FAULTS_LISTED) {
            faults.add(new IntakeFault(row.line(), file.place(row.line()), column, heading, shown(value), mend));
        }
    }

    /** As much of a text as a person needs to find it again, and never half of a letter. */
    private static String shown(String text) {
        String stripped = text.strip();
        return stripped.codePointCount(0, stripped.length()) > SHOWN ? stripped.substring(0, stripped.offsetByCodePoints(0, SHOWN)) + "…" : stripped;
    }

    private void note(String column, String how, int line, String before, String after) {
        notes.computeIfAbsent(column + " " + how, key -> new Tally(column, how, line, shown(before), after, new int[1])).rows()[0]++;
    }

    private List<Note> told() {
        return notes.values().stream().map(t -> {
            String heading = mapping.heading(t.column()).orElse("");
            int rows = t.rows()[0];
            return new Note(t.column(), heading, rows, t.line(), t.before(), t.after(),
                    Text.of("intake.note." + t.how(), heading.isEmpty() ? t.column() : heading, rows, file.place(t.line()), t.before(), t.after()));
        }).toList();
    }
}
