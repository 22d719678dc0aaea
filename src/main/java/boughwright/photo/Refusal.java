package boughwright.photo;

import boughwright.brief.Word;
import boughwright.text.Text;

/** Why a picture is not read. */
public enum Refusal implements Word {
    EMPTY,
    /** More bytes than {@link Photo#MOST_BYTES}. */
    TOO_LARGE,
    /** Text, or anything else that is no picture. */
    NO_PICTURE,
    /** A picture of a kind that is not read here: WebP, HEIC, TIFF and the like. */
    OTHER_KIND,
    /** Kept in the four printing inks. */
    INKS,
    /** More pixels, or a longer side, than is read; told by the header, before anything is unpacked. */
    TOO_MANY_PIXELS,
    /** Ends early, or contradicts itself. */
    BROKEN,
    /** Every pixel is transparent. */
    CLEAR;

    /** What is wrong and how to mend it, for whoever sent the picture. */
    public String sentence() {
        return switch (this) {
            case TOO_LARGE -> Text.of("photo.refused.too-large", Photo.MOST_BYTES / 1_000_000);
            case TOO_MANY_PIXELS -> Text.of("photo.refused.too-many-pixels", Photo.MOST_PIXELS / 1_000_000, String.valueOf(Photo.LONGEST_SIDE));
            default -> Text.of("photo.refused." + word());
        };
    }
}
