package boughwright.photo;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.SplittableRandom;
import java.util.function.Consumer;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;

/** Pictures drawn for tests, with known colours and shares; lit, with noise, as files of each kind. */
public final class Drawn {

    private Drawn() {
    }

    /** @param ground null for a transparent one */
    public static BufferedImage picture(int width, int height, Color ground, Consumer<Graphics2D> draw) {
        BufferedImage picture = new BufferedImage(width, height, ground == null ? BufferedImage.TYPE_INT_ARGB : BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = picture.createGraphics();
        pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        if (ground != null) {
            pen.setColor(ground);
            pen.fillRect(0, 0, width, height);
        }
        draw.accept(pen);
        pen.dispose();
        return picture;
    }

    /** Noise of a sensor: each part of each pixel moved by a normal amount, 8-bit steps. */
    public static BufferedImage noisy(BufferedImage picture, double deviation, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int y = 0; y < picture.getHeight(); y++) {
            for (int x = 0; x < picture.getWidth(); x++) {
                int argb = picture.getRGB(x, y);
                int out = argb & 0xFF000000;
                for (int shift = 16; shift >= 0; shift -= 8) {
                    long part = Math.round((argb >> shift & 255) + deviation * normal(random));
                    out |= (int) Math.max(0, Math.min(255, part)) << shift;
                }
                picture.setRGB(x, y, out);
            }
        }
        return picture;
    }

    /** The sum of twelve even draws (Irwin-Hall), near enough to normal. */
    private static double normal(SplittableRandom random) {
        double sum = -6;
        for (int i = 0; i < 12; i++) {
            sum += random.nextDouble();
        }
        return sum;
    }

    /**
     * A ball lit from the upper left: Lambert's law with some light from all round, and Phong's highlight.
     *
     * @param gloss strength of the highlight, 0..1; 0 for none
     * @param sharp Phong's exponent
     */
    public static void ball(BufferedImage picture, int cx, int cy, int r, Color colour, double gloss, double sharp) {
        double[] light = {-0.4, -0.5, 0.768};
        for (int y = -r; y <= r; y++) {
            for (int x = -r; x <= r; x++) {
                double nx = (double) x / r;
                double ny = (double) y / r;
                double flat = nx * nx + ny * ny;
                if (flat > 1) {
                    continue;
                }
                double nz = Math.sqrt(1 - flat);
                double lambert = Math.max(0, nx * light[0] + ny * light[1] + nz * light[2]);
                double back = 2 * lambert * nz - light[2];
                double spot = gloss * Math.pow(Math.max(0, back), sharp);
                double lit = 0.35 + 0.65 * lambert;
                int rgb = part(colour.getRed(), lit, spot) << 16 | part(colour.getGreen(), lit, spot) << 8 | part(colour.getBlue(), lit, spot);
                picture.setRGB(cx + x, cy + y, 0xFF000000 | rgb);
            }
        }
    }

    private static int part(int srgb, double lit, double spot) {
        double v = srgb / 255.0;
        double linear = (v <= 0.04045 ? v / 12.92 : Math.pow((v + 0.055) / 1.055, 2.4)) * lit + spot;
        double out = linear <= 0.0031308 ? 12.92 * linear : 1.055 * Math.pow(linear, 1 / 2.4) - 0.055;
        return (int) Math.round(255 * Math.max(0, Math.min(1, out)));
    }

    /** A wall in failing light, a floor, a sofa, a red cushion and a plant, with noise. */
    public static BufferedImage room(int width, int height) {
        BufferedImage room = picture(width, height, new Color(0xd8, 0xcf, 0xbd), pen -> {
            pen.scale(width / 1000.0, height / 750.0);
            pen.setPaint(new java.awt.GradientPaint(0, 0, new Color(0xe4, 0xdc, 0xca), 1000, 0, new Color(0xb9, 0xb0, 0x9d)));
            pen.fillRect(0, 0, 1000, 520);
            pen.setColor(new Color(0x7a, 0x55, 0x36));
            pen.fillRect(0, 520, 1000, 230);
            pen.setColor(new Color(0x2f, 0x4f, 0x63));
            pen.fillRoundRect(150, 330, 520, 270, 60, 60);
            pen.setColor(new Color(0xb3, 0x2a, 0x2e));
            pen.fillRoundRect(430, 380, 130, 110, 40, 40);
            pen.setColor(new Color(0x2b, 0x24, 0x20));
            pen.fillRect(760, 420, 120, 200);
            pen.setColor(new Color(0x3f, 0x6b, 0x3a));
            pen.fillOval(740, 250, 160, 190);
        });
        return noisy(room, 5, 3);
    }

    public static byte[] png(BufferedImage picture) {
        return file(picture, "png");
    }

    public static byte[] file(BufferedImage picture, String kind) {
        try {
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            if (!ImageIO.write(picture, kind, out)) {
                throw new IllegalStateException("not written as " + kind);
            }
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** @param quality 0..1 */
    public static byte[] jpeg(BufferedImage picture, double quality, boolean progressive) {
        ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (var to = ImageIO.createImageOutputStream(out)) {
            writer.setOutput(to);
            ImageWriteParam how = writer.getDefaultWriteParam();
            how.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
            how.setCompressionQuality((float) quality);
            how.setProgressiveMode(progressive ? ImageWriteParam.MODE_DEFAULT : ImageWriteParam.MODE_DISABLED);
            writer.write(null, new IIOImage(picture, null, null), how);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } finally {
            writer.dispose();
        }
        return out.toByteArray();
    }
}
