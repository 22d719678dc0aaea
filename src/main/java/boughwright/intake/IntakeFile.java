package boughwright.intake;

import boughwright.text.Text;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;

/**
 * A file that staff brought, recognised by its content and found to be readable.
 *
 * <p>CSV with commas, semicolons or tabs, in UTF-8, in UTF-16 with a byte order mark, or else taken to be Windows-1252; XLSX, its first
 * visible sheet that is not blank; JSON in UTF-8, a list of objects or an object with such a list named {@code products}. The heading is the
 * first of the first ten rows in which two names are known, or else the first with two cells.
 */
public final class IntakeFile {

    /** Rows below the heading that {@link #preview} shows at most. */
    public static final int PREVIEWED = 20;

    private final String name;
    private final Format format;
    private final RowSource source;
    private final Limits limits;
    private final long bytes;
    private final char separator;
    private final int headingLine;
    private final List<String> headings;
    private final List<List<String>> preview;
    private final List<String> assumptions;

    IntakeFile(String name, Format format, RowSource source, Limits limits, long bytes, char separator, int headingLine, List<String> headings,
            List<List<String>> preview, List<String> assumptions) {
        this.name = name;
        this.format = format;
        this.source = source;
        this.limits = limits;
        this.bytes = bytes;
        this.separator = separator;
        this.headingLine = headingLine;
        this.headings = List.copyOf(headings);
        this.preview = List.copyOf(preview);
        this.assumptions = List.copyOf(assumptions);
    }

    /** Recognises a file within {@link Limits#DEFAULT}. */
    public static Opening of(String name, Path stored) {
        return of(name, stored, Limits.DEFAULT);
    }

    /**
     * Recognises a file and looks through it once; nothing of it is loaded.
     *
     * @param name as staff know it; only ever shown
     * @param stored must stay as it is while the file is used
     * @throws UncheckedIOException when the disk fails
     */
    public static Opening of(String name, Path stored, Limits limits) {
        try {
            return new Opening.Opened(new Recognition(name, stored, limits).file());
        } catch (RefusedFile e) {
            return new Opening.Refused(e.why(), e.getMessage());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public String name() {
        return name;
    }

    public Format format() {
        return format;
    }

    /** Its size. */
    public long bytes() {
        return bytes;
    }

    /** The headings in their order, each once: a second “Price” is “Price (2)”, one without a name is called by its column. */
    public List<String> headings() {
        return headings;
    }

    /** The first rows below the heading, as they stand there, each as long as {@link #headings()}. */
    public List<List<String>> preview() {
        return preview;
    }

    /** What was taken for granted, as sentences: the character set, the sheet, the row of the heading. */
    public List<String> assumptions() {
        return assumptions;
    }

    /** A line of it as a word for people: “Line 7”, “Row 7”, “Product 7”. */
    public String place(int line) {
        return Text.of("intake.place." + format.word(), String.valueOf(line));
    }

    RowSource source() {
        return source;
    }

    Limits limits() {
        return limits;
    }

    char separator() {
        return separator;
    }

    int headingLine() {
        return headingLine;
    }
}
