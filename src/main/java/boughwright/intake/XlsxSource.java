package boughwright.intake;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;

/**
 * Rows of one sheet of an XLSX.
 *
 * <p>Numbers come as plain decimals without an exponent, rounded to the fifteen digits that spreadsheets show of their binary fractions.
 * Formulas are not worked out and what the spreadsheet last made of them is not taken: they are text that begins with =. Dates come as ISO
 * 8601 and are marked, since no column holds a date and a spreadsheet makes one of “1-2” unasked. Hidden rows count.
 *
 * <p>Memory: the strings that cells share, and one row.
 *
 * @param part the sheet's name in the package
 */
record XlsxSource(Path stored, Limits limits, String part) implements RowSource {

    /** Strings that cells share; Excel has no more cells in a sheet of {@link Limits#rows} rows that hold text of their own. */
    private static final int MOST_SHARED = 4_000_000;
    private static final int MOST_SHARED_CHARACTERS = 60_000_000;
    /** Formats of cells: Excel's own limit is 65,490. */
    private static final int MOST_FORMATS = 65_490;
    private static final MathContext SHOWN = new MathContext(15);
    private static final int LONGEST_NUMBER = 64;
    /** 31 December 9999, the last day that a spreadsheet knows. */
    private static final int LAST_DAY = 2_958_465;
    /** Number formats of dates and times that need no description of their own (ECMA-376 part 1, 18.8.30). */
    private static final Set<Integer> DATES = new TreeSet<>(List.of(14, 15, 16, 17, 18, 19, 20, 21, 22, 27, 28, 29, 30, 31, 32, 33, 34, 35, 36,
            45, 46, 47, 50, 51, 52, 53, 54, 55, 56, 57, 58));
    private static final Pattern NOT_OF_A_DATE = Pattern.compile("\"[^\"]*\"|\\[[^\\]]*\\]|\\\\.|_.|\\*.|(?i:general)");
    private static final Pattern OF_A_DATE = Pattern.compile("[dmyhsDMYHS]");

    @Override
    public void each(Sink sink) throws IOException, RefusedFile {
        try (XlsxPackage book = new XlsxPackage(stored, limits)) {
            List<String> shared = shared(book);
            boolean[] dates = dates(book);
            long before = book.unpacked();
            long size = Math.max(1, book.size(part));
            long bytes = stored.toFile().length();
            try (XmlPart xml = book.part(part)) {
                Sheet sheet = new Sheet(xml, limits, shared, dates, book.from1904());
                while (xml.next()) {
                    if (xml.begins("row")) {
                        SourceRow row = sheet.row();
                        double done = Math.min(1, (double) (book.unpacked() - before) / size);
                        if (!row.blank() && !sink.row(row, (long) (bytes * done))) {
                            return;
                        }
                    } else if (xml.ends("sheetData")) {
                        return;
                    }
                }
            }
        } catch (XmlPieces.Stopped e) {
            throw e.refused();
        }
    }

    private static List<String> shared(XlsxPackage book) throws IOException, RefusedFile {
        List<String> shared = new ArrayList<>();
        if (book.shared() == null) {
            return shared;
        }
        long characters = 0;
        try (XmlPart xml = book.part(book.shared())) {
            while (xml.next()) {
                if (xml.begins("si")) {
                    String text = xml.text();
                    characters += text.length();
                    shared.add(text);
                    if (characters > MOST_SHARED_CHARACTERS || shared.size() > MOST_SHARED) {
                        throw new RefusedFile(Refusal.UNPACKED_SIZE, String.valueOf(MOST_SHARED_CHARACTERS / 1_000_000));
                    }
                }
            }
        }
        return shared;
    }

    /** Which formats of cells are of dates or times. */
    private static boolean[] dates(XlsxPackage book) throws IOException, RefusedFile {
        boolean[] dates = new boolean[0];
        if (book.styles() == null) {
            return dates;
        }
        Map<Integer, Boolean> own = new HashMap<>();
        int formats = 0;
        boolean ofCells = false;
        try (XmlPart xml = book.part(book.styles())) {
            while (xml.next()) {
                if (xml.begins("numFmt") && own.size() < MOST_FORMATS) {
                    own.put(xml.number("numFmtId", 0), date(String.valueOf(xml.attribute("formatCode"))));
                } else if (xml.begins("cellXfs") || xml.ends("cellXfs")) {
                    ofCells = xml.begins("cellXfs");
                } else if (ofCells && xml.begins("xf")) {
                    int format = xml.number("numFmtId", 0);
                    if (formats == MOST_FORMATS) {
                        throw xml.broken();
                    }
                    dates = formats < dates.length ? dates : Arrays.copyOf(dates, formats * 2 + 16);
                    dates[formats++] = own.getOrDefault(format, DATES.contains(format));
                }
            }
        }
        return dates;
    }

    private static boolean date(String code) {
        return OF_A_DATE.matcher(NOT_OF_A_DATE.matcher(code).replaceAll("")).find();
    }

    /** Reads one row after the other. */
    private static final class Sheet {

        private final XmlPart xml;
        private final Limits limits;
        private final List<String> shared;
        private final boolean[] dates;
        private final boolean from1904;
        private final Map<Integer, SourceRow.Mark> marks = new HashMap<>();
        private String[] cells = new String[32];
        private int line;

        Sheet(XmlPart xml, Limits limits, List<String> shared, boolean[] dates, boolean from1904) {
            this.xml = xml;
            this.limits = limits;
            this.shared = shared;
            this.dates = dates;
            this.from1904 = from1904;
        }

        SourceRow row() throws RefusedFile {
            line = Math.max(xml.number("r", 0), line + 1);
            marks.clear();
            int filled = 0;
            int column = -1;
            while (xml.next() && !xml.ends("row")) {
                if (xml.begins("c")) {
                    column = column(xml.attribute("r"), column + 1);
                    int at = column;
                    String cell = cell(at);
                    if (cell.isEmpty()) {
                        continue;
                    }
                    if (at >= limits.columns()) {
                        throw new RefusedFile(Refusal.COLUMNS, String.valueOf(limits.columns()));
                    }
                    cells = at < cells.length ? cells : Arrays.copyOf(cells, at * 2);
                    if (at >= filled) {
                        Arrays.fill(cells, filled, at, "");
                        filled = at + 1;
                    }
                    cells[at] = cell;
                }
            }
            return new SourceRow(line, Arrays.copyOf(cells, filled), marks.isEmpty() ? Map.of() : Map.copyOf(marks), Optional.empty());
        }

        /** The column that a reference such as {@code AB12} names, from 0; the one after the last where a cell has no reference. */
        private int column(String reference, int otherwise) throws RefusedFile {
            if (reference == null) {
                return otherwise;
            }
            int column = 0;
            int i = 0;
            for (; i < reference.length() && i < 4 && reference.charAt(i) >= 'A' && reference.charAt(i) <= 'Z'; i++) {
                column = column * 26 + reference.charAt(i) - 'A' + 1;
            }
            if (i == 0 || i > 3) {
                throw xml.broken();
            }
            return column - 1;
        }

        private String cell(int at) throws RefusedFile {
            String type = String.valueOf(xml.attribute("t"));
            int style = xml.number("s", 0);
            String value = "";
            String formula = null;
            while (xml.next() && !xml.ends("c")) {
                if (xml.begins("v") || xml.begins("is")) {
                    value = xml.text();
                } else if (xml.begins("f")) {
                    formula = xml.text();
                }
            }
            if (formula != null) {
                marks.put(at, SourceRow.Mark.FORMULA);
                return "=" + (formula.isEmpty() ? "…" : formula);
            }
            return switch (type) {
                case "s" -> string(value);
                case "inlineStr", "str" -> value;
                case "b" -> value.equals("1") ? "TRUE" : "FALSE";
                case "e" -> marked(at, SourceRow.Mark.ERROR, value);
                case "d" -> marked(at, SourceRow.Mark.DATE, value);
                default -> number(at, value, style);
            };
        }

        private String marked(int at, SourceRow.Mark mark, String value) {
            marks.put(at, mark);
            return value;
        }

        private String string(String value) throws RefusedFile {
            if (value.isEmpty()) {
                return "";
            }
            if (!value.matches("[0-9]{1,9}") || Integer.parseInt(value) >= shared.size()) {
                throw xml.broken();
            }
            return shared.get(Integer.parseInt(value));
        }

        private String number(int at, String value, int style) {
            Optional<BigDecimal> number = plain(value);
            if (number.isEmpty()) {
                return value;
            }
            if (style < dates.length && dates[style]) {
                return marked(at, SourceRow.Mark.DATE, day(number.get()));
            }
            return number.get().toPlainString();
        }

        /** As a date, and a time where there is one. A spreadsheet takes 1900 for a leap year, which shifts the days before March. */
        private String day(BigDecimal days) {
            int whole = days.signum() < 0 || days.compareTo(BigDecimal.valueOf(LAST_DAY)) > 0 ? -1 : days.intValue();
            if (whole < 0) {
                return days.toPlainString();
            }
            LocalDate day = from1904 ? LocalDate.of(1904, 1, 1).plusDays(whole) : LocalDate.of(1899, 12, whole < 60 ? 31 : 30).plusDays(whole);
            int minutes = days.subtract(BigDecimal.valueOf(whole)).multiply(BigDecimal.valueOf(24 * 60)).intValue();
            return minutes == 0 ? day.toString() : day + " " + day.atStartOfDay().plusMinutes(minutes).toLocalTime();
        }
    }

    /** A number of reasonable length, rounded to what is shown of it; empty for any other text. */
    static Optional<BigDecimal> plain(String text) {
        if (text.isEmpty() || text.length() > LONGEST_NUMBER) {
            return Optional.empty();
        }
        try {
            BigDecimal number = new BigDecimal(text.strip()).round(SHOWN).stripTrailingZeros();
            return Math.abs(number.scale()) > LONGEST_NUMBER || Math.abs((long) number.precision() - number.scale()) > LONGEST_NUMBER
                    ? Optional.empty() : Optional.of(number);
        } catch (NumberFormatException | ArithmeticException e) {
            return Optional.empty();
        }
    }
}
