package boughwright.photo;

import boughwright.catalogue.Traits.Finish;
import boughwright.colour.Oklab;
import boughwright.colour.Oklch;
import boughwright.colour.Srgb;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What a product's surface does with light, as far as one photo shows it.
 *
 * <p>A highlight is the lamp itself, thrown back: much lighter than the product, nearly without chroma or of its hue, small, in few patches, and fading
 * into the colour about it, where a printed spot would have an edge. Common experience of pictures; no published source for the sizes.
 */
final class Gloss {

    private static final double LIGHTER = 0.12;
    private static final double PALER = 0.85;
    private static final double NEUTRAL = 0.03;
    private static final double TURN = 45;
    private static final double LARGEST = 0.2;
    /** Step at its rim over its difference from the product; one pixel of blur about a printed spot leaves a half. */
    private static final double FADES = 0.35;
    /** So many patches hold most of a highlight; a print's spots are many. */
    private static final int PATCHES = 4;
    private static final double MOST = 0.6;

    /** A fleck of glitter is so much lighter than every neighbour, and so large a share are flecks. */
    private static final double FLECK = 0.1;
    private static final double GLITTERS = 0.03;
    /** From the darkest to the lightest twentieth of one hue: metal mirrors a whole room. */
    private static final double MIRRORS = 0.4;
    /** Lightest hundredth above the middle. */
    private static final double GLEAMS = 0.22;
    private static final double SHEEN = 0.14;
    /** A highlight that is larger is soft. */
    private static final double LARGEST_SHARP = 0.06;
    private static final double LEAST_HIGHLIGHT = 0.003;

    private final Field field;

    Gloss(Field field) {
        this.field = field;
    }

    /** Those of the groups, the largest first, that are light thrown back by the largest. */
    List<Group> highlights(List<Group> groups) {
        Oklab base = groups.get(0).colour();
        double all = groups.stream().mapToDouble(Group::weight).sum();
        List<Group> found = new ArrayList<>();
        for (Group group : groups) {
            Oklab colour = group.colour();
            if (group.weight() <= LARGEST * all && colour.l() >= base.l() + LIGHTER && pale(colour, base)
                    && field.step(group::has, p -> !group.has(p), 1) <= FADES * colour.difference(base) && inFewPatches(group)) {
                found.add(group);
            }
        }
        return found;
    }

    private static boolean pale(Oklab colour, Oklab base) {
        if (colour.chroma() > Math.max(NEUTRAL, PALER * base.chroma())) {
            return false;
        }
        double apart = Math.abs(colour.hue() - base.hue());
        return colour.chroma() <= NEUTRAL || base.chroma() <= NEUTRAL || Math.min(apart, 360 - apart) <= TURN;
    }

    private boolean inFewPatches(Group group) {
        boolean[] met = new boolean[field.seen().length];
        List<Integer> patches = new ArrayList<>();
        for (int pixel = 0; pixel < met.length; pixel++) {
            if (!met[pixel] && group.has(field.of()[pixel])) {
                patches.add(patch(group, met, pixel));
            }
        }
        patches.sort(Comparator.reverseOrder());
        return patches.stream().limit(PATCHES).mapToInt(p -> p).sum() >= MOST * group.weight();
    }

    private int patch(Group group, boolean[] met, int from) {
        ArrayDeque<Integer> next = new ArrayDeque<>(List.of(from));
        met[from] = true;
        int size = 0;
        while (!next.isEmpty()) {
            size++;
            for (int to : field.about(next.remove())) {
                if (to >= 0 && !met[to] && group.has(field.of()[to])) {
                    met[to] = true;
                    next.add(to);
                }
            }
        }
        return size;
    }

    /**
     * @param base the product's largest group
     * @param thrownBack its highlights
     */
    FinishHint hint(Group base, List<Group> thrownBack) {
        double all = Arrays.stream(field.of()).filter(p -> p >= 0).count();
        double share = thrownBack.stream().mapToDouble(Group::weight).sum() / all;
        Optional<Srgb> highlight = thrownBack.stream().max(Comparator.comparingDouble(g -> g.colour().l())).map(g -> Oklch.of(g.colour()).mapped());
        double[] lights = lightness(base, thrownBack);
        double range = at(lights, 0.95) - at(lights, 0.05);
        double above = at(lights, 0.99) - at(lights, 0.5);
        Finish finish;
        if (flecks() >= GLITTERS) {
            finish = Finish.GLITTER;
        } else if (range >= MIRRORS) {
            finish = Finish.METALLIC;
        } else if (share >= LEAST_HIGHLIGHT) {
            finish = share <= LARGEST_SHARP ? Finish.SHINY : Finish.SATIN;
        } else {
            finish = above >= GLEAMS ? Finish.SHINY : above >= SHEEN ? Finish.SATIN : Finish.MATTE;
        }
        return new FinishHint(finish, highlight, share);
    }

    /** Lightness of each pixel of the largest group and of its highlights, ascending. */
    private double[] lightness(Group base, List<Group> thrownBack) {
        double[] lights = new double[field.seen().length];
        int count = 0;
        for (int pixel = 0; pixel < lights.length; pixel++) {
            int point = field.of()[pixel];
            if (base.has(point) || thrownBack.stream().anyMatch(g -> g.has(point))) {
                lights[count++] = field.seen()[pixel].l();
            }
        }
        double[] sorted = Arrays.copyOf(lights, count);
        Arrays.sort(sorted);
        return sorted;
    }

    private static double at(double[] sorted, double share) {
        return sorted[(int) (share * (sorted.length - 1))];
    }

    /** Share of pixels that are lighter than all that are about them by far; those at the product's edge do not count. */
    private double flecks() {
        int inside = 0;
        int flecks = 0;
        for (int pixel = 0; pixel < field.seen().length; pixel++) {
            if (field.of()[pixel] < 0) {
                continue;
            }
            double lightest = 0;
            for (int to : field.about(pixel)) {
                lightest = Math.max(lightest, to < 0 || field.of()[to] < 0 ? Double.POSITIVE_INFINITY : field.seen()[to].l());
            }
            if (Double.isFinite(lightest)) {
                inside++;
                flecks += field.seen()[pixel].l() >= lightest + FLECK ? 1 : 0;
            }
        }
        return inside == 0 ? 0 : (double) flecks / inside;
    }
}
