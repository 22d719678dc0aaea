package boughwright.intake;

import boughwright.text.Text;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Finds out what a file is, by its content, and where its heading stands. */
final class Recognition {

    /** What a file falls back to that is not UTF-8: what older spreadsheets write in western countries. */
    private static final Charset FALLBACK = Charset.forName("windows-1252");
    private static final char[] SEPARATORS = {',', ';', '\t'};
    /** Rows among which the heading is looked for. */
    private static final int HEADING_WITHIN = 10;
    private static final int HEAD = 4096;

    private final String name;
    private final Path stored;
    private final Limits limits;
    private final List<String> assumptions = new ArrayList<>();

    Recognition(String name, Path stored, Limits limits) {
        this.name = name;
        this.stored = stored;
        this.limits = limits;
    }

    IntakeFile file() throws IOException, RefusedFile {
        long bytes = Files.size(stored);
        if (bytes == 0) {
            throw new RefusedFile(Refusal.EMPTY);
        }
        if (bytes > limits.fileBytes()) {
            throw new RefusedFile(Refusal.FILE_SIZE, String.valueOf(limits.fileBytes() / 1_000_000));
        }
        byte[] head;
        try (InputStream in = Files.newInputStream(stored)) {
            head = in.readNBytes(HEAD);
        }
        if (begins(head, 0xD0, 0xCF, 0x11, 0xE0)) {
            throw new RefusedFile(Refusal.OLD_SPREADSHEET);
        }
        if (begins(head, 'P', 'K', 3, 4) || begins(head, 'P', 'K', 5, 6)) {
            return xlsx(bytes);
        }
        Charset charset = charset(head);
        String text = new String(head, charset).strip();
        if (text.startsWith("\uFEFF")) {
            text = text.substring(1).strip();
        }
        if (text.isEmpty() && head.length < HEAD) {
            throw new RefusedFile(Refusal.EMPTY);
        }
        if (text.startsWith("{") || text.startsWith("[")) {
            return json(bytes, charset);
        }
        if (text.startsWith("<") || text.startsWith("%PDF")) {
            throw new RefusedFile(Refusal.UNKNOWN);
        }
        return csv(bytes, charset);
    }

    private IntakeFile xlsx(long bytes) throws IOException, RefusedFile {
        List<XlsxPackage.Sheet> visible;
        try (XlsxPackage book = new XlsxPackage(stored, limits)) {
            visible = book.sheets().stream().filter(XlsxPackage.Sheet::visible).toList();
        } catch (XmlPieces.Stopped e) {
            throw e.refused();
        }
        for (XlsxPackage.Sheet sheet : visible) {
            XlsxSource source = new XlsxSource(stored, limits, sheet.part());
            if (holdsSomething(source)) {
                if (visible.size() > 1) {
                    assumptions.add(Text.of("intake.assumed.sheet", sheet.name()));
                }
                return headed(Format.XLSX, source, bytes, ',');
            }
        }
        throw new RefusedFile(Refusal.NO_SHEET);
    }

    private static boolean holdsSomething(RowSource source) throws IOException, RefusedFile {
        boolean[] something = new boolean[1];
        source.each((row, bytes) -> {
            something[0] = true;
            return false;
        });
        return something[0];
    }

    private IntakeFile json(long bytes, Charset charset) throws IOException, RefusedFile {
        if (!assumptions.isEmpty()) {
            throw new RefusedFile(Refusal.BROKEN, Text.of("intake.broken.utf8"));
        }
        return headed(Format.JSON, JsonSource.of(stored, charset, limits), bytes, ',');
    }

    private IntakeFile csv(long bytes, Charset charset) throws IOException, RefusedFile {
        char separator = separator(firstLines(charset));
        IntakeFile file = headed(Format.CSV, new CsvSource(stored, charset, separator, limits), bytes, separator);
        if (file.headings().size() < 2) {
            throw new RefusedFile(Refusal.ONE_COLUMN);
        }
        return file;
    }

    /** The first lines that are not blank, or what there is of them within a reasonable length. */
    private List<String> firstLines(Charset charset) throws IOException {
        try (InputStream in = Files.newInputStream(stored)) {
            return new String(in.readNBytes(16 * HEAD), charset).lines().map(line -> line.replace("\uFEFF", "")).filter(line -> !line.isBlank())
                    .limit(HEADING_WITHIN).toList();
        }
    }

    /**
     * What a first line {@code sep=;} names; or else what parts a line into names that are known; or else whichever of comma, semicolon
     * and tab stands most often, outside quotes, in the first line that has any; a comma when none has.
     */
    private static char separator(List<String> lines) {
        Optional<Character> named = lines.stream().limit(1).map(CsvSource::separatorLine).flatMap(Optional::stream).findFirst();
        if (named.isPresent()) {
            return named.get();
        }
        for (String line : lines) {
            for (char separator : SEPARATORS) {
                if (heading(parted(line, separator).toArray(String[]::new))) {
                    return separator;
                }
            }
        }
        for (String line : lines) {
            int commas = parted(line, ',').size();
            int semicolons = parted(line, ';').size();
            int tabs = parted(line, '\t').size();
            if (commas + semicolons + tabs > 3) {
                return tabs > commas && tabs > semicolons ? '\t' : semicolons > commas ? ';' : ',';
            }
        }
        return ',';
    }

    /** A line parted at each separator outside quotes, which are left out. */
    private static List<String> parted(String line, char separator) {
        List<String> parts = new ArrayList<>();
        StringBuilder part = new StringBuilder();
        boolean quoted = false;
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            if (c == '"') {
                quoted = !quoted;
            } else if (c == separator && !quoted) {
                parts.add(part.toString());
                part.setLength(0);
            } else {
                part.append(c);
            }
        }
        parts.add(part.toString());
        return parts;
    }

    /** Whether cells are headings: two names among them are known. */
    private static boolean heading(String... cells) {
        return Arrays.stream(cells).filter(Names::known).map(Names::plain).distinct().count() >= 2;
    }

    private IntakeFile headed(Format format, RowSource source, long bytes, char separator) throws IOException, RefusedFile {
        List<SourceRow> first = new ArrayList<>();
        source.each((row, read) -> {
            first.add(row);
            return first.size() < HEADING_WITHIN + IntakeFile.PREVIEWED;
        });
        if (first.isEmpty()) {
            throw new RefusedFile(Refusal.EMPTY);
        }
        int at = format == Format.JSON ? 0 : heading(first);
        if (at > 0) {
            assumptions.add(Text.of("intake.assumed.heading", String.valueOf(first.get(at).line())));
        }
        List<String> headings = headings(first.get(at));
        List<List<String>> preview = first.subList(at + 1, first.size()).stream().limit(IntakeFile.PREVIEWED)
                .map(row -> padded(row, headings.size())).toList();
        if (preview.isEmpty()) {
            throw new RefusedFile(Refusal.NO_ROWS);
        }
        return new IntakeFile(name, format, source, limits, bytes, separator, first.get(at).line(), headings, preview, assumptions);
    }

    /** The first row with two names that are known, or else the first that has two cells, or else the first. */
    private static int heading(List<SourceRow> first) {
        List<SourceRow> among = first.subList(0, Math.min(HEADING_WITHIN, first.size()));
        return IntStream.range(0, among.size()).filter(i -> heading(among.get(i).cells())).findFirst()
                .orElseGet(() -> IntStream.range(0, among.size()).filter(i -> filled(among.get(i)) >= 2).findFirst().orElse(0));
    }

    private static long filled(SourceRow row) {
        return Arrays.stream(row.cells()).filter(cell -> !cell.isBlank()).count();
    }

    private static List<String> headings(SourceRow row) {
        int last = row.cells().length;
        while (last > 0 && row.cells()[last - 1].isBlank()) {
            last--;
        }
        List<String> headings = new ArrayList<>();
        for (int i = 0; i < last; i++) {
            String heading = row.cells()[i].strip();
            if (heading.length() > 100) {
                heading = heading.substring(0, 100) + "…";
            }
            String base = heading.isEmpty() ? Text.of("intake.heading.blank", letters(i)) : heading;
            String unique = base;
            for (int n = 2; headings.contains(unique); n++) {
                unique = base + " (" + n + ")";
            }
            headings.add(unique);
        }
        return headings;
    }

    /** A column's letters, as spreadsheets count: A … Z, AA … */
    static String letters(int index) {
        return index < 26 ? String.valueOf((char) ('A' + index)) : letters(index / 26 - 1) + letters(index % 26);
    }

    private static List<String> padded(SourceRow row, int columns) {
        List<String> cells = new ArrayList<>();
        for (int i = 0; i < columns; i++) {
            cells.add(row.cell(i));
        }
        return List.copyOf(cells);
    }

    private Charset charset(byte[] head) throws IOException, RefusedFile {
        if (begins(head, 0xFF, 0xFE) || begins(head, 0xFE, 0xFF)) {
            Charset wide = head[0] == (byte) 0xFF ? StandardCharsets.UTF_16LE : StandardCharsets.UTF_16BE;
            if (!holds(wide)) {
                throw new RefusedFile(Refusal.UNKNOWN);
            }
            return wide;
        }
        requireText();
        if (holds(StandardCharsets.UTF_8)) {
            return StandardCharsets.UTF_8;
        }
        if (begins(head, 0xEF, 0xBB, 0xBF)) {
            throw new RefusedFile(Refusal.BROKEN, Text.of("intake.broken.text"));
        }
        assumptions.add(Text.of("intake.assumed.charset"));
        return FALLBACK;
    }

    /** A zero is no letter in any set of bytes; what holds one is a picture, a program, or UTF-16 that does not say so. */
    private void requireText() throws IOException, RefusedFile {
        byte[] bytes = new byte[64 * 1024];
        try (InputStream in = Files.newInputStream(stored)) {
            for (int read = in.read(bytes); read >= 0; read = in.read(bytes)) {
                for (int i = 0; i < read; i++) {
                    if (bytes[i] == 0) {
                        throw new RefusedFile(Refusal.UNKNOWN);
                    }
                }
            }
        }
    }

    /** Whether the whole file is text in the character set. */
    private boolean holds(Charset charset) throws IOException, RefusedFile {
        CharsetDecoder decoder = charset.newDecoder().onMalformedInput(CodingErrorAction.REPORT).onUnmappableCharacter(CodingErrorAction.REPORT);
        ByteBuffer bytes = ByteBuffer.allocate(64 * 1024);
        CharBuffer chars = CharBuffer.allocate(64 * 1024);
        try (InputStream in = Files.newInputStream(stored)) {
            for (boolean end = false; !end;) {
                int read = in.read(bytes.array(), bytes.position(), bytes.remaining());
                end = read < 0;
                bytes.position(bytes.position() + Math.max(0, read)).flip();
                for (CoderResult result = CoderResult.OVERFLOW; result.isOverflow();) {
                    result = decoder.decode(bytes, chars.clear(), end);
                    if (result.isError()) {
                        result.throwException();
                    }
                    requireText(chars.flip());
                }
                bytes.compact();
            }
            return true;
        } catch (CharacterCodingException e) {
            return false;
        }
    }

    private static void requireText(CharBuffer chars) throws RefusedFile {
        for (int i = 0; i < chars.length(); i++) {
            if (chars.charAt(i) == 0) {
                throw new RefusedFile(Refusal.UNKNOWN);
            }
        }
    }

    private static boolean begins(byte[] head, int... bytes) {
        for (int i = 0; i < bytes.length; i++) {
            if (i >= head.length || (head[i] & 0xFF) != bytes[i]) {
                return false;
            }
        }
        return true;
    }
}
