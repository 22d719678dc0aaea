package boughwright.layout;

import boughwright.brief.Fullness;
import boughwright.brief.Taper;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/**
 * The boughs of one tree in tiers, grown in the round from its height, girth, lowest branch, fullness and taper: the same tree from
 * every side, in every picture. Lengths in metres, axes as of {@link Point}. The same arguments grow the same tree.
 *
 * <p>Distances of tiers and boughs are chosen to look like the fullness they stand for (common practice, no published source).
 */
public final class Boughs {

    /** Needles reach beyond the boughs that bear them; the tree's radius is to the needles. */
    private static final double BOUGH_SHARE = 0.9;

    private final double height;
    private final double widestRadius;
    private final double lowest;
    private final Fullness fullness;
    private final double sprig;
    private final double[] tiers;
    private final List<Bough> boughs = new ArrayList<>();

    private Boughs(double height, double widestRadius, double lowest, Fullness fullness, long seed) {
        this.height = height;
        this.widestRadius = widestRadius;
        this.lowest = lowest;
        this.fullness = fullness;
        this.sprig = 0.205 * Math.pow((height - lowest) / 2.52, 0.78);
        this.tiers = tierHeights();
        grow(new SplittableRandom(seed));
    }

    /**
     * @param height floor to tip
     * @param widestRadius at the lowest branches
     * @param lowest height of the lowest branches
     */
    public static Boughs grow(double height, double widestRadius, double lowest, Fullness fullness, long seed) {
        return new Boughs(height, widestRadius, lowest, fullness, seed);
    }

    /** From the lowest tier up. */
    public List<Bough> all() {
        return List.copyOf(boughs);
    }

    /** Heights of the tiers' tips, lowest first; they draw together where the boughs grow short. */
    public double[] tiers() {
        return tiers.clone();
    }

    /** Length of the longest sprig. */
    public double sprig() {
        return sprig;
    }

    private double radiusAt(double y) {
        return widestRadius * Math.max(0, Math.min(1, (height - y) / (height - lowest)));
    }

    private double[] tierHeights() {
        double spacing = switch (fullness) {
            case SPARSE -> 1.1;
            case MEDIUM -> 0.9;
            case FULL -> 0.77;
        };
        List<Double> heights = new ArrayList<>();
        double y = lowest + 0.1 * sprig;
        while (y < height - 0.62 * sprig) {
            heights.add(y);
            y += sprig * spacing * youth(radiusAt(y));
        }
        return heights.stream().mapToDouble(Double::doubleValue).toArray();
    }

    /** How long a sprig grows on a tree as thick as the radius, as a share of the longest. */
    private double youth(double radius) {
        return Math.max(0.36, Math.min(1, 0.16 + radius * 1.02 / sprig));
    }

    private void grow(SplittableRandom random) {
        double loose = switch (fullness) {
            case SPARSE -> 0.2;
            case MEDIUM -> 0.1;
            case FULL -> 0.06;
        };
        double apart = switch (fullness) {
            case SPARSE -> 0.98;
            case MEDIUM -> 0.7;
            case FULL -> 0.68;
        };
        double ledge = fullness == Fullness.FULL ? 0.035 : 0.06;
        double hang = Taper.of(2 * widestRadius / height).droop();
        for (int tier = 0; tier < tiers.length; tier++) {
            double radius = BOUGH_SHARE * radiusAt(tiers[tier]);
            double size = youth(radius);
            // Every second tier stands back a little and lies in shade, which reads as storeys of boughs.
            double storey = tier % 2 == 0 ? 1 + ledge : 1 - ledge;
            int count = Math.max(7, (int) Math.ceil(2 * Math.PI * radius / (sprig * apart * size)));
            double start = random.nextDouble() * 2 * Math.PI;
            for (int b = 0; b < count; b++) {
                double around = start + 2 * Math.PI * (b + 0.5 * (random.nextDouble() - 0.5)) / count;
                double reach = radius * storey * (1 + loose * 2 * (random.nextDouble() - 0.62)) + sprig * 0.1 * size;
                double lift = (random.nextDouble() - 0.5) * sprig * 0.32 * size;
                double tip = Math.max(lowest * 0.7, tiers[tier] + lift);
                double droop = hang * (0.1 * sprig + 0.3 * reach) * Math.min(1, reach / sprig);
                boughs.add(new Bough(tier, around, reach, tip, Math.min(tip + droop, height - 0.05), size));
            }
        }
    }
}
