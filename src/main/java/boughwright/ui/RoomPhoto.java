package boughwright.ui;

import boughwright.photo.Ground;
import boughwright.photo.Photo;
import boughwright.photo.PhotoColours;
import boughwright.photo.PhotoReading;
import boughwright.photo.RoomPalette;
import java.util.Optional;

/**
 * What a customer's photo has told: its colours, with its background and without, and nothing else of it. Knows no screen. May be read on one thread
 * and asked on another.
 */
final class RoomPhoto {

    /** Less background than that is not worth a choice; share of the picture. */
    private static final double SOME = 0.05;

    /**
     * @param whole with the background
     * @param thing without it
     */
    private record Colours(PhotoColours whole, PhotoColours thing) {
    }

    private volatile Optional<Colours> seen = Optional.empty();
    private volatile String refusal = "";
    private boolean alone;

    /** Looks at a picture; one that is refused leaves the colours of the one before. */
    void look(byte[] picture) {
        PhotoReading whole = Photo.read(picture, Ground.KEEP, Photo.MOST_COLOURS);
        if (whole instanceof PhotoReading.Refused refused) {
            refusal = refused.why().sentence();
            return;
        }
        PhotoReading thing = Photo.read(picture, Ground.DROP, Photo.MOST_COLOURS);
        seen = Optional.of(new Colours(((PhotoReading.Read) whole).colours(), ((PhotoReading.Read) thing).colours()));
        refusal = "";
    }

    /** Why the last picture was not read; empty when it was, or when there was none. */
    String refusal() {
        return refusal;
    }

    /** Empty until a picture was read. */
    Optional<PhotoColours> colours() {
        return seen.map(s -> alone && hasBackground() ? s.thing : s.whole);
    }

    /** Empty until a picture was read. */
    Optional<RoomPalette> palette() {
        return colours().map(c -> RoomPalette.of(c.colours()));
    }

    boolean hasBackground() {
        return seen.filter(s -> s.thing.setAside() > SOME).isPresent();
    }

    /** Whether the background counts, of this picture and those to come. */
    void leaveBackground(boolean out) {
        alone = out;
    }

    boolean leavesBackground() {
        return alone;
    }
}
