package boughwright.layout;

import boughwright.kit.KitLine;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * The bouquet at the tip: height stems straight down the pole, texture stems round them, flowers at the base in as many rows as it
 * takes for each to be seen, the lowest the fullest (common practice, no published source).
 */
final class Crown {

    /** One stem of it. @param number of its grouping, from 1 */
    record Stem(KitLine line, int number, double slant, double angle, double depth) {
    }

    /** The lowest flowers sit at this share of the topper's part of the slant, the highest no higher than that. */
    private static final double LOWEST = 0.84;
    private static final double HIGHEST = 0.3;

    private final Surface surface;
    private final Function<KitLine, Double> width;

    Crown(Surface surface, Function<KitLine, Double> width) {
        this.surface = surface;
        this.width = width;
    }

    /** @param depth of the ring, and {@code turn} of its start as a share of a step */
    List<Stem> ring(List<KitLine> lines, double slant, double depth, double turn) {
        List<Stem> stems = new ArrayList<>();
        int count = lines.stream().mapToInt(KitLine::quantity).sum();
        for (int style = 0; style < lines.size(); style++) {
            for (int i = 0; i < lines.get(style).quantity(); i++) {
                // Styles alternate round the pole, and every other piece sits a little lower.
                double share = (i * lines.size() + style + 0.5 + turn) / (count + 2 * turn);
                stems.add(new Stem(lines.get(style), i + 1, slant * ((i + style) % 2 == 0 ? 1 : 1.8), surface.angleAt(Math.min(1, share)), depth));
            }
        }
        return stems;
    }

    List<Stem> rows(List<KitLine> lines, double depth) {
        List<Stem> stems = new ArrayList<>();
        int count = lines.stream().mapToInt(KitLine::quantity).sum();
        if (count == 0) {
            return stems;
        }
        double across = lines.stream().mapToDouble(width::apply).max().orElseThrow();
        int[] rows = rows(count, across);
        List<double[]> places = new ArrayList<>();
        for (int row = 0; row < rows.length; row++) {
            double slant = slantOf(row, rows.length, across);
            for (int i = 0; i < rows[row]; i++) {
                double share = (i + (row % 2 == 0 ? 0.5 : rows[row] == 1 ? 0.42 : 0.25)) / rows[row];
                places.add(new double[] {slant, surface.angleAt(share)});
            }
        }
        int[] taken = new int[lines.size()];
        for (int i = 0; i < count; i++) {
            int style = next(lines, taken, i);
            taken[style]++;
            stems.add(new Stem(lines.get(style), taken[style], places.get(i)[0], places.get(i)[1], depth));
        }
        return stems;
    }

    /** Styles by turns, as long as there are flowers of each. */
    private static int next(List<KitLine> lines, int[] taken, int turn) {
        for (int i = 0; i < lines.size(); i++) {
            int style = (turn + i) % lines.size();
            if (taken[style] < lines.get(style).quantity()) {
                return style;
            }
        }
        throw new IllegalStateException("more places than flowers");
    }

    private double slantOf(int row, int rows, double across) {
        double step = Math.min(0.75 * across, (LOWEST - HIGHEST) * surface.top() / Math.max(1, rows - 1));
        return LOWEST * surface.top() - row * step;
    }

    /** Flowers in each row from the lowest up: as few rows as let each flower show two thirds of itself, filled in proportion. */
    private int[] rows(int count, double across) {
        int rows = 1;
        while (rows < 6 && room(rows, across) < count) {
            rows++;
        }
        rows = Math.min(rows, count);
        double all = room(rows, across);
        int[] each = new int[rows];
        int left = count;
        for (int row = rows - 1; row > 0; row--) {
            each[row] = Math.max(1, (int) Math.floor(count * fits(slantOf(row, rows, across), across) / all));
            left -= each[row];
        }
        each[0] = Math.max(1, left);
        return each;
    }

    private double room(int rows, double across) {
        double room = 0;
        for (int row = 0; row < rows; row++) {
            room += fits(slantOf(row, rows, across), across);
        }
        return room;
    }

    private double fits(double slant, double across) {
        return Math.max(1, surface.sector() * surface.radius(slant) / (0.66 * across));
    }
}
