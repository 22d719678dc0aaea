package boughwright.intake;

import boughwright.text.Text;
import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** The file that staff brought, with what is to be mended written beside each row. */
public final class MarkedCopy {

    private MarkedCopy() {
    }

    /** The format of the copy: XLSX of an XLSX, CSV of anything else. */
    public static Format format(IntakeFile file) {
        return file.format() == Format.XLSX ? Format.XLSX : Format.CSV;
    }

    /**
     * Writes the rows as they stand in the file and one more column, “to mend”. In an XLSX the cells at fault are coloured; of a workbook the
     * sheet that was read is written. Text is made harmless as in every file that is written here. Numbers in an XLSX stay numbers. An older
     * “to mend” column is left out.
     *
     * @param faults as {@link Delivery.Read#faults} lists them; those that it only counts are not marked
     * @param out stays open
     * @throws IOException when the disk or {@code out} fails
     */
    public static void write(IntakeFile file, Collection<IntakeFault> faults, OutputStream out) throws IOException {
        Map<Integer, List<IntakeFault>> byLine = faults.stream().collect(Collectors.groupingBy(IntakeFault::line));
        try (SheetWriter writer = format(file) == Format.XLSX ? SheetWriter.xlsx(out, Text.of("intake.sheet.marked"))
                : SheetWriter.csv(out, file.format() == Format.CSV ? file.separator() : ',')) {
            new Copy(file, byLine, writer).write();
        } catch (RefusedFile e) {
            throw new IOException("the file changed after it was read: " + e.getMessage(), e);
        }
    }

    private record Copy(IntakeFile file, Map<Integer, List<IntakeFault>> byLine, SheetWriter writer) {

        /** Carries an {@link IOException} through the reading. */
        private static final class Failed extends RuntimeException {

            private static final long serialVersionUID = 1;

            Failed(IOException cause) {
                super(cause);
            }
        }

        void write() throws IOException, RefusedFile {
            try {
                file.source().each((row, bytes) -> {
                    try {
                        write(row);
                    } catch (IOException e) {
                        throw new Failed(e);
                    }
                    return true;
                });
            } catch (Failed e) {
                throw (IOException) e.getCause();
            }
        }

        private void write(SourceRow row) throws IOException {
            boolean heading = row.line() == file.headingLine();
            List<IntakeFault> faults = byLine.getOrDefault(row.line(), List.of());
            Set<String> faulty = faults.stream().map(IntakeFault::heading).collect(Collectors.toCollection(TreeSet::new));
            List<String> cells = new ArrayList<>();
            List<SheetWriter.Look> looks = new ArrayList<>();
            Set<Integer> numbers = IntStream.range(0, file.headings().size()).boxed().collect(Collectors.toSet());
            // A torn line stays torn, with the mend behind its last cell: filled up it would pass for a whole one when it is brought again.
            boolean torn = faults.stream().anyMatch(fault -> fault.heading().isEmpty() && fault.column().isEmpty()) || row.trouble().isPresent();
            for (int i = 0; i < (torn ? row.cells().length : Math.max(file.headings().size(), row.cells().length)); i++) {
                String name = i < file.headings().size() ? file.headings().get(i) : "";
                if (!name.equals(Text.of("intake.mend.heading"))) {
                    cells.add(Formulas.soften(row.cell(i)));
                    boolean marked = !name.isEmpty() && faulty.contains(name);
                    looks.add(heading ? SheetWriter.Look.HEADING : marked ? SheetWriter.Look.FAULTY : SheetWriter.Look.PLAIN);
                }
            }
            cells.add(heading ? Text.of("intake.mend.heading") : faults.stream().map(MarkedCopy::mend).collect(Collectors.joining(" ")));
            looks.add(heading ? SheetWriter.Look.HEADING : SheetWriter.Look.PLAIN);
            writer.row(cells, numbers, looks);
        }
    }

    private static String mend(IntakeFault fault) {
        String where = fault.heading().isEmpty() ? fault.column() : fault.heading();
        return where.isEmpty() ? fault.mend() : Text.of("intake.mend.cell", where, fault.mend());
    }
}
