package boughwright.intake;

import java.io.IOException;

/** The rows of a file in one format, in one pass. */
interface RowSource {

    /** Takes one row at a time. */
    @FunctionalInterface
    interface Sink {

        /**
         * @param bytes of the file read so far, about
         * @return false to stop
         */
        boolean row(SourceRow row, long bytes) throws RefusedFile;
    }

    /**
     * Hands over every row that is not blank, the heading with them, until there are no more or the sink has enough.
     *
     * @throws RefusedFile when the file is not as its format demands, or meets a limit
     * @throws IOException when the disk fails
     */
    void each(Sink sink) throws IOException, RefusedFile;
}
