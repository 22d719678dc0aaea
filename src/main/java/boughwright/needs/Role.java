package boughwright.needs;

import boughwright.brief.Word;

/** What a piece does in its layer. */
public enum Role implements Word {
    LIGHT_STRING, GROUPING, HEIGHT_STEM, TEXTURE_STEM, FACE_FLOWER, BASE_RIBBON, OVERLAY_RIBBON, ACCENT_RIBBON, CLUSTER,
    SINGLE_FLOWER, SPRAY, FILLER_BALL, FEATURE_ORNAMENT, GAP_ACCENT;

    /** False for what is made of other pieces: a grouping and a cluster of stems, an accent of ribbon. */
    public boolean bought() {
        return this != GROUPING && this != CLUSTER && this != GAP_ACCENT;
    }

    public boolean ribbon() {
        return this == BASE_RIBBON || this == OVERLAY_RIBBON || this == ACCENT_RIBBON;
    }

    public boolean stem() {
        return this == HEIGHT_STEM || this == TEXTURE_STEM || this == FACE_FLOWER || this == SINGLE_FLOWER || this == SPRAY;
    }

    public boolean flower() {
        return this == FACE_FLOWER || this == SINGLE_FLOWER;
    }
}
