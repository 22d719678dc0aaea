package boughwright.catalogue;

import java.io.IOException;
import java.io.Reader;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;

/**
 * Cuts a CSV text (RFC 4180) into its records, so that each can be read, and told, by itself.
 *
 * <p>A reader that takes the whole text loses its place at the first quote that never closes, and with it all later faults. Such a
 * quote is taken to end with its line when no later line closes it, and the following lines are read as their own.
 */
final class CsvRecords {

    /**
     * One record.
     *
     * @param line where it begins, from 1
     * @param open whether a quote in it never closes
     * @param column of the open quote, from 0; 0 when none is open
     */
    record Entry(int line, String text, boolean open, int column) {
    }

    private final String text;
    private final List<Entry> entries = new ArrayList<>();

    private CsvRecords(String text) {
        this.text = text;
    }

    /** All records but empty lines. A byte order mark at the beginning, which spreadsheets like to write, is passed over. */
    static List<Entry> of(Reader csv) throws IOException {
        StringWriter all = new StringWriter();
        csv.transferTo(all);
        String text = all.toString();
        CsvRecords records = new CsvRecords(text.startsWith("\uFEFF") ? text.substring(1) : text);
        records.cut();
        return List.copyOf(records.entries);
    }

    private void cut() {
        int at = 0;
        int line = 1;
        while (at < text.length()) {
            int end = end(at, true);
            boolean open = end < 0;
            if (open) {
                end = end(at, false);
            }
            String record = text.substring(at, end);
            if (!record.isBlank()) {
                entries.add(new Entry(line, record, open, open ? openColumn(record) : 0));
            }
            int next = end + (text.startsWith("\r\n", end) ? 2 : 1);
            line += (int) text.substring(at, Math.min(next, text.length())).chars().filter(c -> c == '\n').count();
            at = next;
        }
    }

    /** Where the record that begins at {@code from} ends; −1 when quotes are heeded and one never closes, or closes in mid-cell. */
    private int end(int from, boolean heedQuotes) {
        boolean quoted = false;
        for (int i = from; i < text.length(); i++) {
            char c = text.charAt(i);
            if (heedQuotes && c == '"') {
                if (quoted && i + 1 < text.length() && text.charAt(i + 1) == '"') {
                    i++;
                } else if (quoted && i + 1 < text.length() && ",\r\n".indexOf(text.charAt(i + 1)) < 0) {
                    // A quote that "closes" before other text belongs to a later cell: this one was left open.
                    return -1;
                } else {
                    quoted = !quoted;
                }
            } else if (!quoted && (c == '\n' || c == '\r' && text.startsWith("\r\n", i))) {
                return i;
            }
        }
        return quoted ? -1 : text.length();
    }

    private static int openColumn(String record) {
        boolean quoted = false;
        int column = 0;
        int openAt = 0;
        for (int i = 0; i < record.length(); i++) {
            char c = record.charAt(i);
            if (c == '"') {
                quoted = !quoted;
                openAt = quoted ? column : openAt;
            } else if (c == ',' && !quoted) {
                column++;
            }
        }
        return openAt;
    }
}
