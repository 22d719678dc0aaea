package boughwright.intake;

import boughwright.catalogue.CsvRecords;
import boughwright.text.Text;
import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/**
 * Rows of a text with separators.
 *
 * @param separator a comma, a semicolon or a tab
 * @param charset of bytes that have been found to be of it
 */
record CsvSource(Path stored, Charset charset, char separator, Limits limits) implements RowSource {

    @Override
    public void each(Sink sink) throws IOException, RefusedFile {
        try (CountingStream bytes = new CountingStream(new BufferedInputStream(Files.newInputStream(stored)));
                Reader text = new InputStreamReader(bytes, charset.newDecoder().onMalformedInput(CodingErrorAction.REPLACE)
                        .onUnmappableCharacter(CodingErrorAction.REPLACE))) {
            CsvRecords records = new CsvRecords(text, separator);
            boolean first = true;
            for (Optional<CsvRecords.Entry> next = records.next(); next.isPresent(); next = records.next()) {
                CsvRecords.Entry entry = next.get();
                boolean separatorLine = first && separatorLine(entry.text()).isPresent();
                first = false;
                if (separatorLine) {
                    continue;
                }
                SourceRow row = row(records, entry);
                if (row.cells().length > limits.columns()) {
                    throw new RefusedFile(Refusal.COLUMNS, String.valueOf(limits.columns()));
                }
                if (!row.blank() && !sink.row(row, bytes.bytes())) {
                    return;
                }
            }
        }
    }

    private static SourceRow row(CsvRecords records, CsvRecords.Entry entry) throws RefusedFile {
        if (entry.cut()) {
            throw new RefusedFile(Refusal.TEXT_LENGTH, String.valueOf(CsvRecords.LONGEST));
        }
        if (entry.open()) {
            String begins = entry.text().lines().findFirst().orElse("").strip();
            return SourceRow.troubled(entry.line(), new String[] {entry.text()},
                    new SourceRow.Trouble(entry.column(), begins, Text.of("catalogue.open-quote")));
        }
        return records.cells(entry).map(cells -> SourceRow.of(entry.line(), cells)).orElseGet(() -> SourceRow.troubled(entry.line(),
                new String[] {entry.text()}, new SourceRow.Trouble(-1, "", Text.of("catalogue.csv"))));
    }

    /** The separator that a first line such as {@code sep=;} names, which some spreadsheets write and heed. */
    static Optional<Character> separatorLine(String line) {
        return line.length() == 5 && line.startsWith("sep=") ? Optional.of(line.charAt(4)) : Optional.empty();
    }
}
