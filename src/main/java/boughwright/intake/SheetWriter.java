package boughwright.intake;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.databind.SequenceWriter;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.Closeable;
import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;

/** Writes rows of cells, made harmless by {@link Formulas}, as CSV or XLSX; the stream below stays open. */
abstract sealed class SheetWriter implements Closeable {

    /** What a cell should look like. */
    enum Look {
        PLAIN, HEADING, FAULTY
    }

    /**
     * @param numbers columns, by index, whose cells are numbers in a spreadsheet
     * @param looks of each cell, as long as the row
     */
    abstract void row(List<String> cells, Set<Integer> numbers, List<Look> looks) throws IOException;

    void row(List<String> cells, Set<Integer> numbers, Look look) throws IOException {
        row(cells, numbers, java.util.Collections.nCopies(cells.size(), look));
    }

    /** UTF-8 with a byte order mark, without which spreadsheets take accents for something else. */
    static SheetWriter csv(OutputStream out, char separator) throws IOException {
        return new Csv(out, separator);
    }

    static SheetWriter xlsx(OutputStream out, String sheet) {
        return new Xlsx(out, sheet);
    }

    private static final class Csv extends SheetWriter {

        private final SequenceWriter rows;

        Csv(OutputStream out, char separator) throws IOException {
            OutputStreamWriter text = new OutputStreamWriter(unclosed(out), StandardCharsets.UTF_8);
            text.write('\uFEFF');
            rows = new CsvMapper().configure(JsonGenerator.Feature.AUTO_CLOSE_TARGET, true).writerFor(String[].class)
                    .with(CsvSchema.emptySchema().withColumnSeparator(separator).withLineSeparator("\r\n"))
                    .writeValues(text);
        }

        @Override
        void row(List<String> cells, Set<Integer> numbers, List<Look> looks) throws IOException {
            rows.write(cells.stream().map(Formulas::harden).toArray(String[]::new));
        }

        @Override
        public void close() throws IOException {
            rows.close();
        }
    }

    private static final class Xlsx extends SheetWriter {

        /** Digits above which spreadsheets show a whole number with an exponent. */
        private static final int SHOWN_DIGITS = 11;
        private static final int FLUSHED_EACH = 500;

        private final Workbook book;
        private final Worksheet sheet;
        private int row;

        Xlsx(OutputStream out, String name) {
            book = new Workbook(unclosed(out), "Boughwright", "1.0");
            sheet = book.newWorksheet(name);
            sheet.freezePane(0, 1);
        }

        @Override
        void row(List<String> cells, Set<Integer> numbers, List<Look> looks) throws IOException {
            for (int i = 0; i < cells.size(); i++) {
                String cell = cells.get(i);
                if (numbers.contains(i) && cell.matches("(?:0|[1-9]\\d{0," + (SHOWN_DIGITS - 1) + "})(?:\\.\\d{1,6})?")) {
                    sheet.value(row, i, new BigDecimal(cell));
                } else if (!cell.isEmpty()) {
                    sheet.inlineString(row, i, Formulas.harden(cell));
                }
                if (looks.get(i) == Look.HEADING) {
                    sheet.style(row, i).bold().set();
                } else if (looks.get(i) == Look.FAULTY) {
                    sheet.style(row, i).fillColor("F6D5C9").set();
                }
            }
            row++;
            if (row % FLUSHED_EACH == 0) {
                sheet.flush();
            }
        }

        @Override
        public void close() throws IOException {
            book.close();
        }
    }

    private static OutputStream unclosed(OutputStream out) {
        return new FilterOutputStream(out) {
            @Override
            public void write(byte[] bytes, int from, int count) throws IOException {
                out.write(bytes, from, count);
            }

            @Override
            public void close() throws IOException {
                flush();
            }
        };
    }
}
