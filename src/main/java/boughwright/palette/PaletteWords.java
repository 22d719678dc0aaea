package boughwright.palette;

import boughwright.colour.ColourShare;
import boughwright.colour.HueTemplate;
import boughwright.colour.Match;
import boughwright.colour.Scheme;
import boughwright.text.Text;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** What a reading says, in sentences. */
public final class PaletteWords {

    private PaletteWords() {
    }

    /** What the colours are as a scheme. */
    public static String of(Scheme scheme) {
        // Neighbours are told one by one; elsewhere each group has one name.
        List<String> hues = scheme.groups().stream().flatMap(g -> scheme.kind() == Scheme.Kind.NEIGHBOURS ? g.parts().stream() : Stream.of(g.part()))
                .distinct().map(PaletteWords::hue).toList();
        return Text.of("palette.scheme." + word(scheme.kind()), Text.list(hues), hues.isEmpty() ? "" : hues.get(0), hues.size() < 2 ? "" : hues.get(1));
    }

    /** In which hue template they lie; nothing to say of neutrals. */
    public static Optional<String> of(HueTemplate.Fit fit) {
        if (fit.template() == HueTemplate.N) {
            return Optional.empty();
        }
        return Optional.of(Text.of(fit.fits() ? "palette.template.fits" : "palette.template.misses", Text.of("palette.template." + word(fit.template())),
                fit.template().letter()));
    }

    /** Two colours that nearly match, and what to do. */
    public static String nearMiss(Pair pair) {
        return sentence("palette.near-miss", named(pair.one(), pair.other()), named(pair.other(), pair.one()), within(pair.difference()));
    }

    /** Two colours that pass for one for everybody. */
    public static String alike(Pair pair) {
        return sentence("palette.one", named(pair.one(), pair.other()), named(pair.other(), pair.one()), tenths(pair.difference()));
    }

    /** Two colours that some eyes take for one. */
    public static String of(Confusion confusion) {
        return sentence(confusion.alike() ? "palette.alike" : "palette.close", named(confusion.pair().one(), confusion.pair().other()),
                named(confusion.pair().other(), confusion.pair().one()),
                tenths(confusion.pair().difference()), tenths(confusion.seen()));
    }

    /** A product shortly where that tells it from the one beside it. */
    private static String named(Tone tone, Tone beside) {
        return named(tone, tone.shortName().equals(beside.shortName()) ? tone.name() : tone.shortName());
    }

    /** A palette's colour by what it does and its hue, a product by its name. */
    public static String named(Tone tone) {
        return named(tone, tone.name());
    }

    private static String named(Tone tone, String name) {
        if (!ColourReading.PARTS.contains(tone.id())) {
            return Text.of("palette.product", name);
        }
        return Scheme.of(List.of(new ColourShare(tone.colour(), 1))).groups().stream().findFirst()
                .map(g -> Text.of("palette.member", tone.name(), hue(g.part()))).orElse(tone.name());
    }

    private static String sentence(String key, Object... words) {
        String sentence = Text.of(key, words);
        return Text.sentence(sentence);
    }

    /** A difference as people read it: one decimal. */
    public static String tenths(double difference) {
        return Text.number(difference, 1);
    }

    /** As {@link #tenths}, but never rounded onto the bounds of a near miss, which the same sentence names. */
    private static String within(double difference) {
        return tenths(Math.max(Match.ALIKE_UP_TO + 0.1, Math.min(Match.APART_FROM - 0.1, difference)));
    }

    /** Whole percents. */
    public static String percent(double share) {
        return String.valueOf(Math.round(100 * share));
    }

    /** The hue of a twelfth of the painters' wheel. */
    private static String hue(int part) {
        return Text.of("palette.hue." + part);
    }

    private static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
