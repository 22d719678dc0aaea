package boughwright.colour;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * What a set of colours is as a scheme, in the words of decorators.
 *
 * <p>Chroma (OKLCH) tells colours from neutrals, shares tell what counts, and hues are put onto the wheel of painters, where they form
 * groups. All thresholds are common practice, no published source. A remark, not a judgement: no kind is better than another.
 *
 * @param groups of the hues that count, the largest share first; none for {@link Kind#NEUTRAL}
 */
public record Scheme(Kind kind, List<Group> groups) {

    public enum Kind {
        /** Less than {@link #SLIVER} of it has a hue. */
        NEUTRAL,
        /** At most {@link #SPARK} of it has a hue, or hues. */
        NEUTRAL_WITH_SPARK,
        /** All hues within a twelfth of the wheel, 30°. */
        ONE_HUE,
        /** All hues within a quarter of the wheel, 90°. */
        NEIGHBOURS,
        /** Two groups that face one another within 30°. */
        OPPOSITES,
        /** Two groups, neither neighbours nor facing one another. */
        TWO_APART,
        /** Three groups, each at least 90° from the others. */
        THREE_APART,
        /** Anything else. */
        MANY
    }

    /**
     * Hues that lie together.
     *
     * @param part of the wheel's twelve in which its middle lies: 0 red, 1 orange-red, 2 orange, 3 amber, 4 yellow, 5 yellow-green, 6 green,
     *     7 blue-green, 8 blue, 9 indigo, 10 violet, 11 purple
     * @param parts in which its hues lie, along the wheel
     * @param share of everything, 0..1
     */
    public record Group(int part, List<Integer> parts, double share) {

        public Group {
            parts = List.copyOf(parts);
        }
    }

    /** Chroma of OKLCH below which a colour counts as neutral; pale ones need more before one sees a hue in them. */
    static final double NEUTRAL_CHROMA = 0.04;
    static final double PALE_CHROMA = 0.06;
    static final double PALE = 0.85;
    /** A share that nobody notices. */
    static final double SLIVER = 0.03;
    /** The most that a spark takes: twice and a half of the tenth that palettes give it. */
    static final double SPARK = 0.25;
    private static final double ONE = 30;
    private static final double NEAR = 90;
    private static final double FACING = 150;
    /** A gap in the hues at which one group ends. */
    private static final double GAP = 45;
    /** Hues that spread over more are no single group. */
    private static final double WIDEST_GROUP = 60;

    public Scheme {
        groups = List.copyOf(groups);
    }

    /** A hue on the wheel, with its share of everything and its say in where its group lies. */
    private record Hue(double position, double share, double say) {
    }

    /** @param colours in any order; the answer does not depend on it */
    public static Scheme of(List<ColourShare> colours) {
        double whole = colours.stream().mapToDouble(ColourShare::share).sum();
        if (whole <= 0) {
            return new Scheme(Kind.NEUTRAL, List.of());
        }
        List<Hue> hues = new ArrayList<>();
        for (ColourShare colour : colours) {
            Oklab lab = Oklab.of(colour.colour());
            if (!neutral(lab) && colour.share() > 0) {
                hues.add(new Hue(PaintersWheel.position(lab.hue()), colour.share() / whole, colour.share() * lab.chroma()));
            }
        }
        double coloured = hues.stream().mapToDouble(Hue::share).sum();
        if (coloured < SLIVER) {
            return new Scheme(Kind.NEUTRAL, List.of());
        }
        hues.sort(Comparator.comparingDouble(Hue::position).thenComparingDouble(Hue::share).thenComparingDouble(Hue::say));
        List<List<Hue>> groups = groups(hues);
        // A sliver of another hue is no part of the scheme, unless slivers are all there is.
        if (groups.stream().anyMatch(g -> share(g) >= SLIVER)) {
            groups = groups.stream().filter(g -> share(g) >= SLIVER).toList();
        }
        List<Group> told = groups.stream().sorted(Comparator.comparingDouble((List<Hue> g) -> -share(g)).thenComparingDouble(Scheme::middle))
                .map(g -> new Group(PaintersWheel.part(middle(g)), g.stream().map(h -> PaintersWheel.part(h.position())).distinct().toList(), share(g)))
                .toList();
        return new Scheme(coloured <= SPARK ? Kind.NEUTRAL_WITH_SPARK : kind(groups), told);
    }

    /** Whether one sees no hue in it. */
    static boolean neutral(Oklab colour) {
        return colour.chroma() < (colour.l() > PALE ? PALE_CHROMA : NEUTRAL_CHROMA);
    }

    private static Kind kind(List<List<Hue>> groups) {
        double spread = spread(groups.stream().flatMap(List::stream).toList());
        if (spread <= NEAR) {
            return spread <= ONE ? Kind.ONE_HUE : Kind.NEIGHBOURS;
        }
        if (groups.stream().anyMatch(g -> spread(g) > WIDEST_GROUP)) {
            return Kind.MANY;
        }
        List<Double> middles = groups.stream().map(Scheme::middle).toList();
        double least = 180;
        for (int i = 0; i < middles.size(); i++) {
            for (int j = i + 1; j < middles.size(); j++) {
                least = Math.min(least, PaintersWheel.apart(middles.get(i), middles.get(j)));
            }
        }
        return switch (groups.size()) {
            case 2 -> least >= FACING ? Kind.OPPOSITES : Kind.TWO_APART;
            case 3 -> least >= NEAR ? Kind.THREE_APART : Kind.MANY;
            default -> Kind.MANY;
        };
    }

    /** Parted where the sorted hues leave a gap. */
    private static List<List<Hue>> groups(List<Hue> sorted) {
        int start = 0;
        for (int i = 0; i < sorted.size(); i++) {
            if (gapBefore(sorted, i) > gapBefore(sorted, start)) {
                start = i;
            }
        }
        List<List<Hue>> groups = new ArrayList<>();
        for (int n = 0; n < sorted.size(); n++) {
            int i = (start + n) % sorted.size();
            if (n == 0 || gapBefore(sorted, i) > GAP) {
                groups.add(new ArrayList<>());
            }
            groups.get(groups.size() - 1).add(sorted.get(i));
        }
        return groups;
    }

    private static double gapBefore(List<Hue> sorted, int i) {
        double before = sorted.get((i + sorted.size() - 1) % sorted.size()).position();
        double gap = sorted.get(i).position() - before;
        return i == 0 ? gap + 360 : gap;
    }

    /** The shortest arc that holds all of them, degrees. */
    private static double spread(List<Hue> hues) {
        List<Hue> sorted = hues.stream().sorted(Comparator.comparingDouble(Hue::position)).toList();
        double widest = 0;
        for (int i = 0; i < sorted.size(); i++) {
            widest = Math.max(widest, gapBefore(sorted, i));
        }
        return 360 - widest;
    }

    private static double share(List<Hue> group) {
        return group.stream().mapToDouble(Hue::share).sum();
    }

    /** Mean direction, in which strong colours say more than dull ones. */
    private static double middle(List<Hue> group) {
        double x = 0;
        double y = 0;
        for (Hue hue : group) {
            x += hue.say() * Math.cos(Math.toRadians(hue.position()));
            y += hue.say() * Math.sin(Math.toRadians(hue.position()));
        }
        double degrees = Math.toDegrees(Math.atan2(y, x));
        return degrees < 0 ? degrees + 360 : degrees;
    }
}
