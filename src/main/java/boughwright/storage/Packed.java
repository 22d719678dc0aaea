package boughwright.storage;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.zip.GZIPInputStream;
import java.util.zip.GZIPOutputStream;

/**
 * Long texts that repeat themselves, packed for a column of text: UTF-8, gzip (RFC 1952), Base64 (RFC 4648). The same text always gives
 * the same packing.
 */
public final class Packed {

    private Packed() {
    }

    public static String of(String text) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (GZIPOutputStream out = new GZIPOutputStream(bytes)) {
            out.write(text.getBytes(StandardCharsets.UTF_8));
        } catch (IOException impossible) {
            throw new IllegalStateException("a text at hand could not be packed", impossible);
        }
        return Base64.getEncoder().encodeToString(bytes.toByteArray());
    }

    /** @throws IOException when it was not packed here, or is damaged */
    public static String open(String packed) throws IOException {
        byte[] bytes;
        try {
            bytes = Base64.getDecoder().decode(packed);
        } catch (IllegalArgumentException e) {
            throw new IOException("not Base64", e);
        }
        try (GZIPInputStream in = new GZIPInputStream(new ByteArrayInputStream(bytes))) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
