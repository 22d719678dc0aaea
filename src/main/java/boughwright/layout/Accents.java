package boughwright.layout;

import boughwright.catalogue.Product;
import boughwright.layout.GapFinder.Filled;
import boughwright.needs.AccentChoice;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Fills the gaps of a loaded tree from the largest down, each by its size, with what the accent ribbon still gives. */
final class Accents {

    /** @param stop why no more are filled */
    record Filling(List<Gap> gaps, List<RollCuts> cuts, GapStop stop) {
    }

    /** A loose accent ribbon fills about two thirds of the disc it is put into (common practice, no published source). */
    static final double FILLS = 0.66;

    private final Surface surface;
    private final Product ribbon;
    private final int rolls;
    private final List<AccentChoice> choices;
    private final List<Double> cut = new ArrayList<>();
    private final double[] left;

    Accents(Surface surface, Product ribbon, int rolls, List<AccentChoice> choices) {
        this.surface = surface;
        this.ribbon = ribbon;
        this.rolls = rolls;
        this.choices = choices;
        this.left = IntStream.range(0, rolls).mapToDouble(i -> ribbon.length().metres()).toArray();
    }

    /** @param most gaps that the house asks for */
    Filling fill(GapFinder finder, int most) {
        List<Gap> gaps = new ArrayList<>();
        double threshold = choices.stream().mapToDouble(AccentChoice::leastGap).min().orElseThrow();
        GapStop stop = GapStop.HOUSE_COUNT;
        while (gaps.size() < most) {
            GapFinder.Hole hole = finder.largest();
            if (hole.diameter() < threshold) {
                stop = GapStop.BELOW_THRESHOLD;
                break;
            }
            // The house's accent for the gap, or the largest smaller one for which there is ribbon left.
            List<AccentChoice> suiting = choices.stream().filter(a -> a.leastGap() <= hole.diameter())
                    .sorted(Comparator.comparingDouble((AccentChoice a) -> -a.leastGap())).toList();
            AccentChoice accent = suiting.stream().filter(a -> take(a.ribbon())).findFirst().orElse(null);
            if (accent == null) {
                stop = GapStop.RIBBON_USED_UP;
                break;
            }
            gaps.add(new Gap("accent-" + (gaps.size() + 1), surface.height(hole.place().slant()), Surface.clock(hole.place().angle()), hole.at(),
                    hole.diameter(), accent.kind(), accent.ribbon()));
            finder.fill(new Filled(hole.at(), FILLS * hole.diameter() / 2));
        }
        return new Filling(gaps, RollCuts.of(ribbon, rolls, 0, gaps.stream().map(g -> new RollCuts.Cut(g.ribbon(), g.id())).toList()), stop);
    }

    /** Takes a length off the first roll that has it; where none has, cuts all anew as well as can be and sees whether it fits then. */
    private boolean take(double length) {
        for (int i = 0; i < left.length; i++) {
            if (left[i] >= length - 1e-9) {
                left[i] -= length;
                cut.add(length);
                return true;
            }
        }
        double whole = ribbon.length().metres();
        double used = cut.stream().mapToDouble(l -> l).sum();
        if (length > whole || used + length > rolls * whole + 1e-9) {
            return false;
        }
        double[] all = Stream.concat(cut.stream(), Stream.of(length)).mapToDouble(l -> l).toArray();
        List<List<Integer>> cutting = CuttingStock.solve(all, whole).rolls();
        if (cutting.size() > rolls) {
            return false;
        }
        cut.add(length);
        for (int i = 0; i < left.length; i++) {
            left[i] = whole - (i < cutting.size() ? cutting.get(i).stream().mapToDouble(p -> all[p]).sum() : 0);
        }
        return true;
    }
}
