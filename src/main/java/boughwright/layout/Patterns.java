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
     * A zigzag down each face of the tree; a face is at most half of the tree, what one sees from one side. On a tree so wide for its
     * number of pieces that a leg from side to side would leave its middle bare, a leg has stops between.
     *
     * @param side +1 starts toward 3 o'clock, −1 toward 9 o'clock: two zigzags of opposite side cross
     * @param shift moves the whole zigzag down by so many of its own steps
     */
    static List<Wished> zigzag(Surface surface, int count, int side, double shift) {
        int faces = faces(surface);
        int stops = stops(surface, faces, count);
        List<Wished> places = new ArrayList<>(count);
        for (int i = 0; i < count; i++) {
            int face = i % faces;
            int step = i / faces;
            int steps = (count - face + faces - 1) / faces;
            double down = Math.min(1, Math.max(0, (step + 0.5 + shift) / (steps + shift)));
            // Between even steps of height and even steps of area: a zigzag one can follow, yet with more where the tree is wide.
            double slant = 0.5 * surface.slantAtShare(down) + 0.5 * surface.slantAtArea(down);
            places.add(new Wished(slant, surface.angleAt((face + 0.5 + side * swing(step, stops)) / faces)));
        }
        return places;
    }

    /** Pieces from one turn of a zigzag to the next, both turns counted, so that steps across and down are about alike. */
    private static int stops(Surface surface, int faces, int count) {
        double face = surface.area() / faces;
        double width = face / (surface.bottom() - surface.top());
        double apart = Math.sqrt(face / Math.max(1.0, count / (double) faces));
        return Math.max(2, (int) (width / apart));
    }

    /** How far across its face a step lies, as a share of the face from its middle. */
    private static double swing(int step, int stops) {
        if (stops == 2) {
            return (step % 2 == 0 ? 1 : -1) * (0.2 + 0.07 * (step % 3));
        }
        int legs = stops - 1;
        double along = (step % legs) / (double) legs;
        return 0.4 * (step / legs % 2 == 0 ? 1 - 2 * along : 2 * along - 1);
    }

    /**
     * Diagonals: lines that slant down and round the tree, the styles on lines of their own by turns. A line crosses the fall of
     * the branches at about half a right angle everywhere, as a logarithmic spiral does on a cone.
     *
     * @param style number of the style, from 0 up to {@code styles} − 1
     * @param all pieces of all styles
     */
    static List<Wished> diagonals(Surface surface, int count, int style, int styles, int all) {
        double apart = Math.sqrt(surface.area() / Math.max(1, all));
        double width = surface.area() / (surface.bottom() - surface.top());
        int lines = Math.max(1, (int) Math.round(width / apart / styles));
        // Radians about the trunk for each e-fold of slant.
        double swirl = surface.cone().slant() / surface.cone().radius();
        List<Wished> places = new ArrayList<>(count);
        for (int i = 0; i < count; i++) {
            int line = style + styles * (i % lines);
            double down = (i + (style + 0.5) / styles) / count;
            double slant = surface.slantAtArea(Math.min(1, down));
            double share = (line + 0.5) / (styles * lines) + swirl * Math.log(slant / surface.bottom()) / surface.sector();
            places.add(new Wished(slant, surface.angleAt(share - Math.floor(share))));
        }
        return places;
    }

    static int faces(Surface surface) {
        return Math.max(1, (int) Math.round(surface.sector() / Math.PI + 0.2));
    }
}
