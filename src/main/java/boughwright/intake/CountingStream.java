package boughwright.intake;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;

/** Knows how many bytes have passed. */
class CountingStream extends FilterInputStream {

    private long bytes;

    CountingStream(InputStream in) {
        super(in);
    }

    long bytes() {
        return bytes;
    }

    /** Called after each piece that has passed. */
    void passed(int count) throws IOException {
        bytes += count;
    }

    @Override
    public int read() throws IOException {
        int value = in.read();
        if (value >= 0) {
            passed(1);
        }
        return value;
    }

    @Override
    public int read(byte[] into, int from, int count) throws IOException {
        int read = in.read(into, from, count);
        if (read > 0) {
            passed(read);
        }
        return read;
    }

    @Override
    public boolean markSupported() {
        return false;
    }
}
