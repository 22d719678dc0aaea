package boughwright.kit;

import boughwright.needs.Need;

/**
 * How much of what is seen a need takes, whichever product fills it, so that the palette's shares stay linear in the choice.
 *
 * <p>Areas of one piece in m² by the usual size of its role (common practice, no published source): a flower head of 16 cm, a
 * spray of 8 × 16 cm of which a third is air, a roll of which half is folded away; a filler ball sits deep and half hidden.
 */
final class VisibleArea {

    private VisibleArea() {
    }

    static double of(Need need) {
        double one = switch (need.role()) {
            case HEIGHT_STEM -> 0.014;
            case TEXTURE_STEM -> 0.010;
            case SPRAY -> 0.0085;
            case FACE_FLOWER, SINGLE_FLOWER -> 0.020;
            case BASE_RIBBON -> 9.144 * 0.100 * 0.25;
            case OVERLAY_RIBBON -> 9.144 * 0.0635 * 0.5;
            case ACCENT_RIBBON -> 9.144 * 0.038 * 0.5;
            case FILLER_BALL -> 0.5 * disc(need);
            case FEATURE_ORNAMENT -> 0.5 * disc(need);
            case LIGHT_STRING, GROUPING, CLUSTER, GAP_ACCENT -> 0;
        };
        return one * need.quantity();
    }

    private static double disc(Need need) {
        double diameter = need.diameter().orElseThrow().metres();
        return Math.PI / 4 * diameter * diameter;
    }
}
