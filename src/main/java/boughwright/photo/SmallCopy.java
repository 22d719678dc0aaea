package boughwright.photo;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Optional;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageInputStream;
import javax.imageio.stream.ImageOutputStream;

/**
 * A picture written anew, small enough for a page: nothing of what the camera wrote beside it (place, time, maker) goes along. What is
 * transparent becomes white.
 */
public final class SmallCopy {

    /** Pixels of the longer side, at most. */
    public static final int LONGEST_SIDE = 800;

    private static final float QUALITY = 0.85f;

    private SmallCopy() {
    }

    /** A JPEG; empty for what {@link Photo#read} refuses. */
    public static Optional<byte[]> jpeg(byte[] picture) {
        if (!(Photo.read(picture, Ground.KEEP, Photo.FEWEST_COLOURS) instanceof PhotoReading.Read)) {
            return Optional.empty();
        }
        try {
            return Optional.of(written(small(read(picture))));
        } catch (IOException | RuntimeException broken) {
            return Optional.empty();
        }
    }

    /** Thinned out while it is unpacked to at least the size that is wanted. */
    private static BufferedImage read(byte[] picture) throws IOException {
        try (ImageInputStream in = ImageIO.createImageInputStream(new ByteArrayInputStream(picture))) {
            ImageReader reader = ImageIO.getImageReaders(in).next();
            reader.setInput(in, true, true);
            int step = Math.max(1, Math.max(reader.getWidth(0), reader.getHeight(0)) / (2 * LONGEST_SIDE));
            ImageReadParam thin = reader.getDefaultReadParam();
            thin.setSourceSubsampling(step, step, 0, 0);
            try {
                return reader.read(0, thin);
            } finally {
                reader.dispose();
            }
        }
    }

    private static BufferedImage small(BufferedImage image) {
        double scale = Math.min(1, (double) LONGEST_SIDE / Math.max(image.getWidth(), image.getHeight()));
        int width = Math.max(1, (int) Math.round(image.getWidth() * scale));
        int height = Math.max(1, (int) Math.round(image.getHeight() * scale));
        BufferedImage small = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = small.createGraphics();
        pen.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        pen.drawImage(image, 0, 0, width, height, Color.WHITE, null);
        pen.dispose();
        return small;
    }

    private static byte[] written(BufferedImage image) throws IOException {
        ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ImageOutputStream out = ImageIO.createImageOutputStream(bytes)) {
            writer.setOutput(out);
            ImageWriteParam quality = writer.getDefaultWriteParam();
            quality.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
            quality.setCompressionQuality(QUALITY);
            writer.write(null, new IIOImage(image, null, null), quality);
        } finally {
            writer.dispose();
        }
        return bytes.toByteArray();
    }
}
