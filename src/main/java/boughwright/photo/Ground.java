package boughwright.photo;

import boughwright.brief.Word;

/** What becomes of the background of a picture: kept, as in a room, or set aside, as behind a product. */
public enum Ground implements Word {
    KEEP, DROP
}
