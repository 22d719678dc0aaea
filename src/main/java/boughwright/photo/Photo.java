package boughwright.photo;

import boughwright.colour.Oklab;
import boughwright.colour.Srgb;

/**
 * Reads the dominant colours out of a picture of a product or of a room.
 *
 * <p>JPEG, PNG and GIF, in sRGB or with a profile of their own; how a picture is turned does not matter. Equal bytes give equal answers.
 * Nothing is kept.
 */
public final class Photo {

    /** Largest file; a tablet's photo has a tenth of it. */
    public static final long MOST_BYTES = 25_000_000;
    /** Largest picture, width times height. */
    public static final long MOST_PIXELS = 80_000_000;
    /** Pixels of the longer side. */
    public static final int LONGEST_SIDE = 20_000;
    public static final int FEWEST_COLOURS = 2;
    public static final int MOST_COLOURS = 5;

    private Photo() {
    }

    /**
     * @param most colours, {@link #FEWEST_COLOURS} to {@link #MOST_COLOURS}; a picture that has fewer gives fewer
     * @throws IllegalArgumentException when {@code most} lies outside
     */
    public static PhotoReading read(byte[] picture, Ground ground, int most) {
        if (most < FEWEST_COLOURS || most > MOST_COLOURS) {
            throw new IllegalArgumentException("colours from a photo: " + FEWEST_COLOURS + " to " + MOST_COLOURS + ", not " + most);
        }
        PictureFile.Outcome file = new PictureFile(picture).read();
        if (file.pixels().isEmpty()) {
            return new PhotoReading.Refused(file.refusal());
        }
        Pixels pixels = file.pixels().get();
        Oklab[] seen = oklab(pixels);
        boolean[] aside = new boolean[seen.length];
        int left = 0;
        for (int i = 0; i < seen.length; i++) {
            aside[i] = seen[i] == null;
            left += aside[i] ? 0 : 1;
        }
        if (left == 0) {
            return new PhotoReading.Refused(Refusal.CLEAR);
        }
        if (ground == Ground.DROP) {
            aside = Background.of(seen, pixels.width(), pixels.height());
        }
        return new PhotoReading.Read(new DominantColours(seen, pixels, aside).find(ground, most));
    }

    /** Null where the picture is transparent. */
    private static Oklab[] oklab(Pixels pixels) {
        Oklab[] seen = new Oklab[pixels.count()];
        int lastColour = 0;
        Oklab last = null;
        for (int i = 0; i < seen.length; i++) {
            if (pixels.transparent(i)) {
                continue;
            }
            int rgb = pixels.argb()[i] & 0xFFFFFF;
            if (last == null || rgb != lastColour) {
                last = Oklab.of(new Srgb(rgb >> 16, rgb >> 8 & 255, rgb & 255));
                lastColour = rgb;
            }
            seen[i] = last;
        }
        return seen;
    }
}
