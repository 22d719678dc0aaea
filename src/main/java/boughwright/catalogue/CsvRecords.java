package boughwright.catalogue;

import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.databind.ObjectReader;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.io.Reader;
import java.util.Optional;

/**
 * Cuts a CSV text (RFC 4180) into its records as it comes, so that each can be read, and told, by itself.
 *
 * <p>A reader that takes the whole text loses its place at the first quote that never closes, and with it all later faults. Such a
 * quote is taken to end with its line when nothing within {@link #WINDOW} characters closes it, and the following lines are read as
 * their own. A quote within a cell that does not begin with one is a character like any other, as in {@code 2" ball}.
 *
 * <p>Memory: one record, and the window.
 */
public final class CsvRecords {

    /** How far a quoted cell may reach; one that does not close by then is open. */
    static final int WINDOW = 64 * 1024;
    /** The longest record, in characters; a longer one is cut there and told. */
    public static final int LONGEST = 1024 * 1024;

    private static final int PIECE = 16 * 1024;

    /**
     * One record.
     *
     * @param line where it begins, from 1
     * @param open whether a quote in it never closes
     * @param column of the open quote, from 0; 0 when none is open
     * @param cut whether it was longer than {@link #LONGEST}
     */
    public record Entry(int line, String text, boolean open, int column, boolean cut) {
    }

    private final Reader csv;
    private final char separator;
    private final ObjectReader cells;
    private final StringBuilder text = new StringBuilder();
    private final char[] piece = new char[PIECE];
    private int at;
    private int line = 1;
    private boolean ended;
    private boolean begun;

    /** Of a text with commas; a byte order mark at its beginning, which spreadsheets like to write, is passed over. */
    public CsvRecords(Reader csv) {
        this(csv, ',');
    }

    /** @param separator what stands between cells: a comma, a semicolon or a tab */
    public CsvRecords(Reader csv, char separator) {
        this.csv = csv;
        this.separator = separator;
        this.cells = new CsvMapper().readerFor(String[].class).with(CsvSchema.emptySchema().withColumnSeparator(separator))
                .with(CsvParser.Feature.WRAP_AS_ARRAY).with(CsvParser.Feature.SKIP_EMPTY_LINES);
    }

    /**
     * The next record that is no empty line, or empty at the end.
     *
     * @throws IOException when the stream breaks
     */
    public Optional<Entry> next() throws IOException {
        if (!begun) {
            begun = true;
            if (has(0) && text.charAt(0) == '\uFEFF') {
                at = 1;
            }
        }
        while (has(at)) {
            int end = end(at, true);
            boolean open = end < 0;
            if (open) {
                end = end(at, false);
            }
            boolean cut = has(end) && text.charAt(end) != '\n' && text.charAt(end) != '\r';
            String record = text.substring(at, end);
            Entry entry = new Entry(line, record, open, open ? openColumn(record) : 0, cut);
            int next = cut ? end : end + (has(end + 1) && text.charAt(end) == '\r' && text.charAt(end + 1) == '\n' ? 2 : 1);
            line += lines(at, Math.min(next, text.length()));
            at = Math.min(next, text.length());
            if (at > LONGEST) {
                text.delete(0, at);
                at = 0;
            }
            if (!record.isBlank()) {
                return Optional.of(entry);
            }
        }
        return Optional.empty();
    }

    /** The cells of a record without an open quote; empty when it cannot be split into any. */
    public Optional<String[]> cells(Entry entry) {
        try (MappingIterator<String[]> rows = cells.readValues(entry.text())) {
            return rows.hasNextValue() ? Optional.of(rows.nextValue()) : Optional.of(new String[0]);
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    /** Where the record that begins at {@code from} ends; −1 when quotes are heeded and one never closes, or closes in mid-cell. */
    private int end(int from, boolean heedQuotes) throws IOException {
        boolean quoted = false;
        boolean begins = true;
        int opened = from;
        for (int i = from; has(i) && i - from < LONGEST; i++) {
            char c = text.charAt(i);
            if (quoted) {
                if (i - opened > WINDOW) {
                    return -1;
                }
                if (c == '"' && has(i + 1) && text.charAt(i + 1) == '"') {
                    i++;
                } else if (c == '"') {
                    quoted = false;
                    if (has(i + 1) && text.charAt(i + 1) != separator && text.charAt(i + 1) != '\r' && text.charAt(i + 1) != '\n') {
                        // A quote that "closes" before other text belongs to a later cell: this one was left open.
                        return -1;
                    }
                }
            } else if (c == '\n' || c == '\r') {
                return i;
            } else if (heedQuotes && begins && c == '"') {
                quoted = true;
                opened = i;
            }
            begins = !quoted && c == separator;
        }
        return quoted ? -1 : Math.min(text.length(), from + LONGEST);
    }

    private boolean has(int index) throws IOException {
        while (index >= text.length() && !ended) {
            int read = csv.read(piece);
            ended = read < 0;
            if (read > 0) {
                text.append(piece, 0, read);
            }
        }
        return index < text.length();
    }

    private int lines(int from, int to) {
        int lines = 0;
        for (int i = from; i < to; i++) {
            char c = text.charAt(i);
            if (c == '\n' || c == '\r' && !(i + 1 < text.length() && text.charAt(i + 1) == '\n')) {
                lines++;
            }
        }
        return lines;
    }

    private int openColumn(String record) {
        boolean quoted = false;
        boolean begins = true;
        int column = 0;
        int openAt = 0;
        for (int i = 0; i < record.length(); i++) {
            char c = record.charAt(i);
            if (c == '"' && (quoted || begins)) {
                quoted = !quoted;
                openAt = quoted ? column : openAt;
            } else if (c == separator && !quoted) {
                column++;
            }
            begins = !quoted && c == separator;
        }
        return openAt;
    }
}
