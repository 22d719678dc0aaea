package boughwright.intake;

/**
 * How much a file may ask of the shop's machine. Each limit that is met is a refusal, or for a single cell a fault, that names it.
 *
 * @param fileBytes size of the file
 * @param rows rows, entries or lines below the heading that are not blank
 * @param columns columns of the file that hold anything
 * @param cellCharacters characters in one cell; a longer cell is a fault of its row
 * @param unpackedBytes of an XLSX, all that is read of it, unpacked
 * @param packRatio of an XLSX, unpacked to packed size of one part, beyond its first million bytes
 * @param packedParts of an XLSX, files within it
 * @param jsonDepth of a JSON, objects and lists within one another
 */
public record Limits(long fileBytes, int rows, int columns, int cellCharacters, long unpackedBytes, int packRatio, int packedParts, int jsonDepth) {

    /**
     * 50 MB, 200,000 rows, 200 columns, 5,000 characters; 400 MB unpacked, 100 to 1, 5,000 parts; 32 deep. The ratio is the one that Apache
     * POI's {@code ZipSecureFile} refuses (0.01); a season of 20,000 rows packs at about 10 to 1.
     */
    public static final Limits DEFAULT = new Limits(50_000_000, 200_000, 200, 5_000, 400_000_000, 100, 5_000, 32);

    /** The longest text that is kept while reading, in characters; a cell above this is no longer a cell, and the file is refused. */
    static final int LONGEST_TEXT = 1_000_000;
}
