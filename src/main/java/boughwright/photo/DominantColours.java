package boughwright.photo;

import boughwright.colour.Lab;
import boughwright.colour.Oklab;
import boughwright.colour.Oklch;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;

/**
 * Finds the few colours that a picture is made of.
 *
 * <ol>
 * <li>Pixels are gathered in {@link Bins} and grouped by {@link KMeans} for every number of groups from 2 to 8. Taken is the largest number whose
 * silhouette is within 0.05 of the best: a group too many is joined again in the next step, a group too few hides a colour.
 * <li>Groups are joined that one does not tell apart, CIEDE2000 below 8; and those that are one colour in light and in shade: less light scales all
 * of Oklab alike, so both lie on one ray from black, and where they meet one fades into the other.
 * <li>Of a product, what a glossy surface throws back is told apart, see {@link Gloss}; and its colours are those of the lighter half of each group, since
 * its shaded side says more of the lamp than of the product.
 * <li>Of more colours than asked for those stay that one would miss most, by share times how colourful they are; what has less than 1 % is left out, and
 * the shares of the rest are brought to 1.
 * </ol>
 *
 * Numbers without a source were tried on drawn pictures with noise and JPEG's traces.
 */
final class DominantColours {

    /** The same whatever the picture; any other would do as well. */
    private static final long SEED = 20_261_125;
    private static final int MOST_GROUPS = 8;
    private static final int RUNS = 3;
    private static final double AS_GOOD = 0.05;
    /** Upper end of what reads as a near miss between two pieces: light falls more unevenly than that within one photo. */
    private static final double SAME = 8;
    /** How far apart a/L and b/L of one colour may be. */
    private static final double RAY = 0.07;
    /** Oklab lightness in the shade over that in the light; its cube is the share of light that is left. */
    private static final double DARKEST_SHADE = 0.4;
    /** Step where two groups meet over the difference between them; at an edge it is near 1. */
    private static final double FADES = 0.5;
    /** Share of the smaller group that must lie beside the larger one. */
    private static final double MEETS = 0.02;
    private static final double LEAST_SHARE = 0.01;
    /** Added to chroma, so that a large grey counts beside a small colour. */
    private static final double GREY = 0.04;

    private final Bins bins;
    private final Field field;
    private final double setAside;

    DominantColours(Oklab[] seen, Pixels pixels, boolean[] aside) {
        bins = Bins.of(seen, pixels, aside);
        field = new Field(seen, bins.of(), pixels.width());
        int out = 0;
        for (boolean a : aside) {
            out += a ? 1 : 0;
        }
        setAside = (double) out / aside.length;
    }

    PhotoColours find(Ground ground, int most) {
        List<Group> groups = joined(groups());
        groups.sort(Comparator.comparingDouble(Group::weight).reversed());
        Optional<FinishHint> finish = Optional.empty();
        if (ground == Ground.DROP) {
            Gloss gloss = new Gloss(field);
            List<Group> thrownBack = gloss.highlights(groups);
            finish = Optional.of(gloss.hint(groups.get(0), thrownBack));
            groups.removeAll(thrownBack);
        }
        double all = groups.stream().mapToDouble(Group::weight).sum();
        List<Group> kept = groups.stream().filter(g -> g.weight() >= LEAST_SHARE * all)
                .sorted(Comparator.comparingDouble(DominantColours::missed).reversed()).limit(most)
                .sorted(Comparator.comparingDouble(Group::weight).reversed()).toList();
        double sum = kept.stream().mapToDouble(Group::weight).sum();
        return new PhotoColours(kept.stream().map(g -> new PhotoColour(Oklch.of(ground == Ground.DROP ? g.lit(bins) : g.colour()).mapped(), g.weight() / sum)).toList(),
                finish, setAside);
    }

    private static double missed(Group group) {
        return group.weight() * (GREY + group.colour().chroma());
    }

    private List<Group> groups() {
        SplittableRandom random = new SplittableRandom(SEED);
        KMeans taken = null;
        List<KMeans> tried = new ArrayList<>();
        double best = 0;
        for (int k = 2; k <= MOST_GROUPS && (taken == null || taken.centres().length == k - 1); k++) {
            taken = KMeans.best(bins.points(), bins.weights(), k, RUNS, random.split());
            tried.add(taken);
            best = Math.max(best, taken.silhouette(bins.points(), bins.weights()));
        }
        for (KMeans grouping : tried) {
            if (grouping.silhouette(bins.points(), bins.weights()) >= best - AS_GOOD) {
                taken = grouping;
            }
        }
        List<List<Integer>> points = new ArrayList<>();
        for (int c = 0; c < taken.centres().length; c++) {
            points.add(new ArrayList<>());
        }
        for (int p = 0; p < taken.of().length; p++) {
            points.get(taken.of()[p]).add(p);
        }
        return points.stream().filter(p -> !p.isEmpty()).map(p -> new Group(bins, p)).toList();
    }

    /** The two nearest that are one colour become one, until there are none. */
    private List<Group> joined(List<Group> groups) {
        List<Group> left = new ArrayList<>(groups);
        while (true) {
            double least = Double.POSITIVE_INFINITY;
            int first = -1;
            int second = -1;
            for (int i = 0; i < left.size(); i++) {
                for (int j = i + 1; j < left.size(); j++) {
                    double difference = lab(left.get(i)).difference(lab(left.get(j)));
                    if (difference < least && (difference < SAME || shade(left.get(i), left.get(j)))) {
                        least = difference;
                        first = i;
                        second = j;
                    }
                }
            }
            if (first < 0) {
                return left;
            }
            Group joined = left.get(first).and(bins, left.remove(second));
            left.set(first, joined);
        }
    }

    private static Lab lab(Group group) {
        return Lab.of(Oklch.of(group.colour()).mapped());
    }

    private boolean shade(Group one, Group other) {
        boolean firstLighter = one.colour().l() >= other.colour().l();
        Oklab light = firstLighter ? one.colour() : other.colour();
        Oklab dark = firstLighter ? other.colour() : one.colour();
        if (dark.l() <= 0 || dark.l() < DARKEST_SHADE * light.l()
                || Math.hypot(light.a() / light.l() - dark.a() / dark.l(), light.b() / light.l() - dark.b() / dark.l()) > RAY) {
            return false;
        }
        int least = (int) (MEETS * Math.min(one.weight(), other.weight()));
        return field.step(one::has, other::has, least) <= FADES * light.difference(dark);
    }
}
