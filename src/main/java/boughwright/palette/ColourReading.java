package boughwright.palette;

import boughwright.brief.Palette;
import boughwright.colour.ColourShare;
import boughwright.colour.Deficiency;
import boughwright.colour.HueTemplate;
import boughwright.colour.Lab;
import boughwright.colour.Match;
import boughwright.colour.Scheme;
import boughwright.needs.Demand;
import boughwright.text.Text;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;

/**
 * What is to be said of some colours that are seen together.
 *
 * @param tones as they were given
 * @param scheme by their shares
 * @param template in which their hues lie, or which they miss least
 * @param nearMisses pairs that seem meant to match and do not, those of which most is seen first
 * @param confusions pairs that some eyes take for one, by the deficiency in the order of {@link Deficiency#COMPLETE}, then as above
 */
public record ColourReading(List<Tone> tones, Scheme scheme, HueTemplate.Fit template, List<Pair> nearMisses, List<Confusion> confusions) {

    /** The words of a palette's colours, in their order. */
    public static final List<String> PARTS = List.of("main", "second", "spark", "ground");

    /** Of what second and ground take together, ground is a third (common practice, no published source). */
    private static final double GROUND_OF_SECOND = 1.0 / 3;

    public ColourReading {
        tones = List.copyOf(tones);
        nearMisses = List.copyOf(nearMisses);
        confusions = List.copyOf(confusions);
    }

    /** @param tones each with an id of its own */
    public static ColourReading of(List<Tone> tones) {
        List<ColourShare> shares = tones.stream().map(t -> new ColourShare(t.colour(), t.share())).toList();
        List<Pair> pairs = pairs(tones);
        List<Confusion> confusions = new ArrayList<>();
        for (Deficiency sight : Deficiency.COMPLETE) {
            Map<String, Lab> seen = new HashMap<>();
            tones.forEach(t -> seen.put(t.id(), Lab.of(sight.seen(t.colour()))));
            pairs.stream().map(p -> new Confusion(sight, p, seen.get(p.one().id()).difference(seen.get(p.other().id())))).filter(ColourReading::confused)
                    .forEach(confusions::add);
        }
        return new ColourReading(tones, Scheme.of(shares), HueTemplate.best(shares),
                pairs.stream().filter(p -> Match.of(p.difference()) == Match.NEAR_MISS).toList(), confusions);
    }

    /** The four colours of a palette by themselves, in the shares that are wanted of them. */
    public static ColourReading of(Palette palette, Demand.Shares wanted) {
        double ground = wanted.second() * GROUND_OF_SECOND;
        return of(tones(palette, wanted.main(), wanted.second() - ground, wanted.spark(), ground));
    }

    /** @param shares of main, second, spark, ground */
    static List<Tone> tones(Palette palette, double... shares) {
        List<Tone> tones = new ArrayList<>();
        for (int part = 0; part < PARTS.size(); part++) {
            tones.add(new Tone(PARTS.get(part), Text.of("palette." + PARTS.get(part)), palette.colours().get(part), shares[part], part));
        }
        return tones;
    }

    private static List<Pair> pairs(List<Tone> tones) {
        List<Pair> pairs = new ArrayList<>();
        for (int i = 0; i < tones.size(); i++) {
            for (int j = i + 1; j < tones.size(); j++) {
                pairs.add(new Pair(tones.get(i), tones.get(j), tones.get(i).lab().difference(tones.get(j).lab())));
            }
        }
        // Stable: equal pairs stay in the order of the tones.
        pairs.sort(Comparator.comparingDouble((Pair p) -> -p.weight()).thenComparingDouble(Pair::difference));
        return pairs;
    }

    /** Plainly two before, no longer so, and less than half as far apart: what was hardly two to begin with is nobody's loss. */
    private static boolean confused(Confusion confusion) {
        double whole = confusion.pair().difference();
        return Match.of(whole) == Match.APART && Match.of(confusion.seen()) != Match.APART && confusion.seen() <= whole / 2;
    }

    /** Pairs that pass for one: what products may well be, and the colours of a palette hardly. */
    public List<Pair> alike() {
        return pairs(tones).stream().filter(p -> Match.of(p.difference()) == Match.ALIKE).toList();
    }

    /** The first few, each colour in one of them only: mending one pair often mends the others of the same colour. */
    public List<Pair> worst(int most) {
        return apart(nearMisses, p -> p, most);
    }

    /** As {@link #worst}, of what some eyes take for one. */
    public List<Confusion> confusions(Deficiency sight, int most) {
        return apart(confusions.stream().filter(c -> c.sight().equals(sight)).toList(), Confusion::pair, most);
    }

    private static <T> List<T> apart(List<T> all, Function<T, Pair> pair, int most) {
        List<T> chosen = new ArrayList<>();
        Set<String> taken = new HashSet<>();
        for (T each : all) {
            Pair its = pair.apply(each);
            if (chosen.size() < most && !taken.contains(its.one().id()) && !taken.contains(its.other().id())) {
                taken.add(its.one().id());
                taken.add(its.other().id());
                chosen.add(each);
            }
        }
        return chosen;
    }
}
