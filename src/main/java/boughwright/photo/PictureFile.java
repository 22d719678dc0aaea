package boughwright.photo;

import java.awt.color.ColorSpace;
import java.awt.image.BufferedImage;
import java.awt.image.ColorConvertOp;
import java.awt.image.Raster;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Optional;
import java.util.concurrent.Semaphore;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.stream.MemoryCacheImageInputStream;

/**
 * Reads JPEG, PNG and GIF, the first picture of a file, small. Every limit is checked before anything is unpacked; what is unpacked is
 * thinned out on the way, so that a picture of any size costs little memory.
 */
final class PictureFile {

    /** As many pixels are looked at; more make no difference that one sees. */
    private static final int MOST_READ = 50_000;
    /** A JPEG whose passes complete each other is kept whole while it is unpacked, at 6 bytes a pixel and more. */
    private static final long MOST_KEPT = 25_000_000;
    /** One such at a time, so that many senders do not fill the memory together. */
    private static final Semaphore ONE_KEPT = new Semaphore(1);
    /** Cameras write one pass, or about ten; each may cost as much as the whole picture. */
    private static final int MOST_SCANS = 64;

    private final byte[] bytes;

    PictureFile(byte[] bytes) {
        this.bytes = bytes;
    }

    /** The picture, or why it is not read. */
    record Outcome(Optional<Pixels> pixels, Refusal refusal) {

        static Outcome refused(Refusal why) {
            return new Outcome(Optional.empty(), why);
        }
    }

    Outcome read() {
        if (bytes.length == 0) {
            return Outcome.refused(Refusal.EMPTY);
        }
        if (bytes.length > Photo.MOST_BYTES) {
            return Outcome.refused(Refusal.TOO_LARGE);
        }
        Optional<PictureKind> kind = PictureKind.of(bytes);
        if (kind.isEmpty()) {
            return Outcome.refused(Refusal.NO_PICTURE);
        }
        if (!kind.get().read()) {
            return Outcome.refused(Refusal.OTHER_KIND);
        }
        if (kind.get() == PictureKind.JPEG) {
            JpegMarkers markers = JpegMarkers.of(bytes);
            if (markers.components() == 4) {
                return Outcome.refused(Refusal.INKS);
            }
            if (!markers.whole() || markers.components() == 0 || markers.scans() > MOST_SCANS) {
                return Outcome.refused(Refusal.BROKEN);
            }
            if (markers.kept()) {
                ONE_KEPT.acquireUninterruptibly();
                try {
                    return unpacked(kind.get(), MOST_KEPT);
                } finally {
                    ONE_KEPT.release();
                }
            }
        }
        return unpacked(kind.get(), Photo.MOST_PIXELS);
    }

    private Outcome unpacked(PictureKind kind, long mostPixels) {
        ImageReader reader = ImageIO.getImageReadersByFormatName(kind.name()).next();
        // A file in memory needs no cache on disk.
        try (MemoryCacheImageInputStream in = new MemoryCacheImageInputStream(new ByteArrayInputStream(bytes))) {
            reader.setInput(in, true, true);
            int width = reader.getWidth(0);
            int height = reader.getHeight(0);
            if (width < 1 || height < 1) {
                return Outcome.refused(Refusal.BROKEN);
            }
            if (Math.max(width, height) > Photo.LONGEST_SIDE || (long) width * height > mostPixels) {
                return Outcome.refused(Refusal.TOO_MANY_PIXELS);
            }
            boolean[] cut = new boolean[1];
            reader.addIIOReadWarningListener((source, warning) -> cut[0] |= kind == PictureKind.GIF);
            ImageReadParam thin = reader.getDefaultReadParam();
            int step = step(width, height);
            thin.setSourceSubsampling(step, step, Math.min(step / 2, width - 1), Math.min(step / 2, height - 1));
            BufferedImage read = reader.read(0, thin);
            return cut[0] ? Outcome.refused(Refusal.BROKEN) : new Outcome(Optional.of(pixels(read)), null);
        } catch (IOException | RuntimeException broken) {
            // The JDK's readers answer contradictions in a file with either, by chance.
            return Outcome.refused(Refusal.BROKEN);
        } finally {
            reader.dispose();
        }
    }

    /** Every how manieth pixel of a row, and row, is read. */
    static int step(int width, int height) {
        int step = 1;
        while ((long) ((width + step - 1) / step) * ((height + step - 1) / step) > MOST_READ) {
            step++;
        }
        return step;
    }

    /** In sRGB, whichever colours the file is kept in; one without a profile is taken for sRGB. */
    private static Pixels pixels(BufferedImage picture) {
        int width = picture.getWidth();
        int height = picture.getHeight();
        ColorSpace space = picture.getColorModel().getColorSpace();
        if (space.getType() == ColorSpace.TYPE_GRAY) {
            return new Pixels(width, height, grey(picture));
        }
        BufferedImage plain = picture;
        if (!space.isCS_sRGB()) {
            plain = new BufferedImage(width, height, BufferedImage.TYPE_INT_ARGB);
            new ColorConvertOp(null).filter(picture, plain);
        }
        return new Pixels(width, height, plain.getRGB(0, 0, width, height, null, 0, width));
    }

    /** The JDK takes grey for linear in light, while files and browsers mean sRGB's grey. */
    private static int[] grey(BufferedImage picture) {
        Raster raster = picture.getRaster();
        int[] argb = new int[picture.getWidth() * picture.getHeight()];
        double scale = 255.0 / ((1 << picture.getColorModel().getComponentSize(0)) - 1);
        for (int i = 0; i < argb.length; i++) {
            int x = i % picture.getWidth();
            int y = i / picture.getWidth();
            int grey = (int) Math.round(scale * raster.getSample(x, y, 0));
            int alpha = raster.getNumBands() > 1 ? (int) Math.round(scale * raster.getSample(x, y, 1)) : 255;
            argb[i] = alpha << 24 | grey << 16 | grey << 8 | grey;
        }
        return argb;
    }
}
