package boughwright.layout;

import java.util.ArrayList;
import java.util.List;

/** Where pieces would like to be, before they make room for one another. All positions are on the dressed {@link Surface}. */
final class Patterns {

    /** 1/φ: successive multiples of it fill a circle most evenly; as an angle, the golden angle of 137.5°. */
    static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

    /** A wished place: slant in metres, angle in radians. */
    record Wished(double slant, double angle) {
    }

    private Patterns() {
    }

    /**
     * A golden-angle spiral whose steps are equal in area, from the top down: the most even simple spread over a cone.
     *
     * @param turn start of the spiral as a share of the sector, so that two spreads do not coincide
     */
    static List<Wished> spiral(Surface surface, int count, double turn) {
        List<Wished> places = new ArrayList<>(count);
        for (int i = 0; i < count; i++) {
            double share = turn + i * GOLDEN;
            places.add(new Wished(surface.slantAtArea((i + 0.5) / count), surface.angleAt(share - Math.floor(share))));
        }
        return places;
    }

    /**
     * A zigzag down each face of the tree; a face is at most half of the tree, what one sees from one side.
     *
     * @param side +1 starts toward 3 o'clock, −1 toward 9 o'clock: two zigzags of opposite side cross
     * @param shift moves the whole zigzag down by so many of its own steps
     */
    static List<Wished> zigzag(Surface surface, int count, int side, double shift) {
        int faces = faces(surface);
        List<Wished> places = new ArrayList<>(count);
        for (int i = 0; i < count; i++) {
            int face = i % faces;
            int step = i / faces;
            int steps = (count - face + faces - 1) / faces;
            double down = Math.min(1, Math.max(0, (step + 0.5 + shift) / (steps + shift)));
            // Between even steps of height and even steps of area: a zigzag one can follow, yet with more where the tree is wide.
            double slant = 0.5 * surface.slantAtShare(down) + 0.5 * surface.slantAtArea(down);
            double swing = (step % 2 == 0 ? side : -side) * (0.2 + 0.07 * (step % 3));
            places.add(new Wished(slant, surface.angleAt((face + 0.5 + swing) / faces)));
        }
        return places;
    }

    /**
     * Diagonals: each style runs down the tree in slanted lines, the styles side by side.
     *
     * @param style number of the style, from 0 up to {@code styles} − 1
     */
    static List<Wished> diagonals(Surface surface, int count, int style, int styles) {
        List<Wished> places = new ArrayList<>(count);
        double turns = 1.5 * faces(surface);
        for (int i = 0; i < count; i++) {
            double down = (i + (style + 0.5) / styles) / count;
            double share = style / (double) styles + turns * down;
            places.add(new Wished(surface.slantAtArea(Math.min(1, down)), surface.angleAt(0.04 + 0.92 * (share - Math.floor(share)))));
        }
        return places;
    }

    static int faces(Surface surface) {
        return Math.max(1, (int) Math.round(surface.sector() / Math.PI + 0.2));
    }
}
