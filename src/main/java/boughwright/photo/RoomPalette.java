package boughwright.photo;

import boughwright.brief.Palette;
import boughwright.colour.Oklab;
import boughwright.colour.Oklch;
import boughwright.colour.Srgb;
import boughwright.text.Text;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Draws a palette from the colours of a photo.
 *
 * <ul>
 * <li>Ground is the darkest colour, when it is dark and not the only one.
 * <li>Main is the largest colourful one of the rest, or else the largest.
 * <li>Spark is the most colourful one of the rest that has a small share.
 * <li>Second is the largest one of the rest.
 * </ul>
 *
 * What the photo lacks is filled in OKLCH: ground is main's hue, deep and nearly grey; second is main's hue, nearly white, or beside a light main
 * half as light; spark is the hue opposite main's, clear and of middle lightness, and beside a grey main the hue of brass. Colours beyond sRGB lose chroma.
 * Which hue goes with which is taste; common practice, no published source.
 *
 * @param palette as {@link Palette#OWN}
 * @param seen for main, second, spark and ground whether the photo has it
 */
public record RoomPalette(Palette palette, List<Boolean> seen) {

    /** Oklab chroma from which on one calls a colour by its hue, and from which on it can be a spark. */
    private static final double COLOURFUL = 0.05;
    private static final double SPARKLING = 0.08;
    /** Oklab lightness. */
    private static final double DARK = 0.45;
    private static final double SMALL = 0.15;

    private static final double DEEP = 0.26;
    private static final double NEARLY_GREY = 0.04;
    private static final double LIGHT = 0.7;
    private static final double NEARLY_WHITE = 0.9;
    private static final double HALF_LIGHT = 0.48;
    private static final double PALE = 0.3;
    private static final double CLEAR = 0.7;
    private static final double BRIGHT = 0.13;
    private static final double BRASS = 78;

    public RoomPalette {
        seen = List.copyOf(seen);
    }

    /** @throws IllegalArgumentException when there is no colour */
    public static RoomPalette of(List<PhotoColour> colours) {
        if (colours.isEmpty()) {
            throw new IllegalArgumentException("a palette needs at least one colour");
        }
        List<PhotoColour> left = new ArrayList<>(colours);
        Optional<Srgb> ground = take(left, left.size() < 2 ? Optional.empty()
                : left.stream().min(Comparator.comparingDouble(RoomPalette::lightness)).filter(c -> lightness(c) <= DARK));
        Srgb main = take(left, largest(left.stream().filter(c -> chroma(c) >= COLOURFUL).toList()).or(() -> largest(left))).orElseThrow();
        Optional<Srgb> spark = take(left, left.stream().filter(c -> c.share() <= SMALL && chroma(c) >= SPARKLING)
                .max(Comparator.comparingDouble(RoomPalette::chroma)));
        Optional<Srgb> second = take(left, largest(left));
        Oklab from = Oklab.of(main);
        return new RoomPalette(Palette.own(main, second.orElseGet(() -> second(from)),
                spark.orElseGet(() -> spark(from)), ground.orElseGet(() -> ground(from))),
                List.of(true, second.isPresent(), spark.isPresent(), ground.isPresent()));
    }

    /** Of main, second, spark and ground those that the photo lacks. */
    public List<String> filled() {
        List<String> roles = List.of("main", "second", "spark", "ground");
        return IntStream.range(0, roles.size()).filter(i -> !seen.get(i)).mapToObj(roles::get).toList();
    }

    private static Optional<Srgb> take(List<PhotoColour> from, Optional<PhotoColour> chosen) {
        chosen.ifPresent(from::remove);
        return chosen.map(PhotoColour::colour);
    }

    private static Optional<PhotoColour> largest(List<PhotoColour> colours) {
        return colours.stream().max(Comparator.comparingDouble(PhotoColour::share));
    }

    private static double chroma(PhotoColour colour) {
        return Oklab.of(colour.colour()).chroma();
    }

    private static double lightness(PhotoColour colour) {
        return Oklab.of(colour.colour()).l();
    }

    private static Srgb second(Oklab main) {
        boolean light = main.l() > LIGHT;
        return new Oklch(light ? HALF_LIGHT : NEARLY_WHITE, light ? main.chroma() : PALE * main.chroma(), main.hue()).mapped();
    }

    private static Srgb spark(Oklab main) {
        return new Oklch(CLEAR, BRIGHT, main.chroma() < NEARLY_GREY ? BRASS : main.hue() + 180).mapped();
    }

    private static Srgb ground(Oklab main) {
        return new Oklch(DEEP, Math.min(NEARLY_GREY, main.chroma()), main.hue()).mapped();
    }
}
