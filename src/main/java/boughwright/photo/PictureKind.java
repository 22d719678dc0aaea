package boughwright.photo;

import java.nio.charset.StandardCharsets;
import java.util.Optional;

/** Kinds of picture, told by how a file begins and never by its name. */
enum PictureKind {
    JPEG, PNG, GIF, WEBP, HEIF, TIFF, BMP, JPEG_XL, SVG;

    private static final int LOOKED_AT = 512;

    /** Whether it is read here. */
    boolean read() {
        return this == JPEG || this == PNG || this == GIF;
    }

    /** Empty for what is no picture. */
    static Optional<PictureKind> of(byte[] bytes) {
        String head = new String(bytes, 0, Math.min(LOOKED_AT, bytes.length), StandardCharsets.ISO_8859_1);
        if (head.startsWith("\u00FF\u00D8\u00FF")) {
            return Optional.of(JPEG);
        }
        if (head.startsWith("\u0089PNG\r\n\u001A\n")) {
            return Optional.of(PNG);
        }
        if (head.startsWith("GIF87a") || head.startsWith("GIF89a")) {
            return Optional.of(GIF);
        }
        if (head.startsWith("RIFF") && head.startsWith("WEBP", 8)) {
            return Optional.of(WEBP);
        }
        if (head.startsWith("ftyp", 4) && head.substring(8).matches("(?s)(heic|heix|hevc|heim|heis|mif1|msf1|avif|avis).*")) {
            return Optional.of(HEIF);
        }
        if (head.startsWith("II*\u0000") || head.startsWith("MM\u0000*")) {
            return Optional.of(TIFF);
        }
        if (head.startsWith("BM")) {
            return Optional.of(BMP);
        }
        if (head.startsWith("\u00FF\n") || head.startsWith("JXL ", 4)) {
            return Optional.of(JPEG_XL);
        }
        return head.contains("<svg") ? Optional.of(SVG) : Optional.empty();
    }
}
