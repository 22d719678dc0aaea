package boughwright.intake;

/** Told now and then how far a reading has come, from the thread that reads. */
@FunctionalInterface
public interface Progress {

    /** Goes on to the end and tells nobody. */
    Progress SILENT = (rows, bytes, ofBytes) -> true;

    /**
     * @param rows read so far
     * @param bytes of the file read so far; of an XLSX, of its packed sheet, about
     * @param ofBytes what {@code bytes} ends at
     * @return false to stop; the reading ends in {@link Delivery.Cancelled}
     */
    boolean at(int rows, long bytes, long ofBytes);
}
