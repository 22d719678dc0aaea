package boughwright.colour;

import boughwright.text.Text;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A colour in words: one of the 267 names of the ISCC–NBS system, such as "deep reddish brown", in American spelling.
 *
 * <p>K. L. Kelly, D. B. Judd, "Color: Universal Language and Dictionary of Names", NBS Special Publication 440, 1976, divides all colours
 * into 267 named blocks; K. L. Kelly, "Central notations for the revised ISCC-NBS color-name blocks", Journal of Research of the National
 * Bureau of Standards 61(5):427-431, 1958, gives the centre of each in Munsell notation. Both are works of the United States government.
 *
 * <p>Where the figures of {@code iscc-nbs.csv} come from: numbers, names and Munsell notations are Kelly's table of 1958, not seen in print but
 * in two transcriptions made independently (G. Davis in the R package munsellinterpol, P. Centore in his Munsell toolbox). These differ twice:
 * 11 vivid red is 5R 4/15 in one and 5R 4/1.5 in the other, which can only be a slip; 81 is "dark grayish yellow brown" in one and "dark
 * grayish yellowish brown" in the other, which goes with its neighbours. L*, a*, b* under D65 are reckoned from the notations by the Munsell
 * renotation of 1943 (made with munsell.js 1.1.6: interpolated, adapted from illuminant C by Bradford's method).
 *
 * <p>Other lists give an sRGB colour for each name (A. Jaffer's, in CPAN's Color::Library). They agree with Kelly's notations for most names
 * and clearly not for some: "deep yellowish pink" is an orange there, "deep greenish blue" as light as a middle grey.
 *
 * <p>62 of the centres are more colourful than sRGB can show. Such a name stands for the nearest colour that a screen has
 * ({@link Oklch#mapped}), so that it can be found at all.
 *
 * @param number 1..267, Kelly's
 * @param name the English one, as files and programs read it
 * @param munsell centre of the block as hue value/chroma, "9.8R 1.5/7.5", or N value/ for a neutral
 * @param colour centre of the block, or the nearest to it that sRGB can show
 */
public record ColourName(int number, String name, String munsell, Srgb colour) {

    private static final String FILE = "iscc-nbs.csv";

    /**
     * Lab chroma below which a colour is white, gray or black without a hue. The blocks of the neutrals reach to a Munsell chroma of 0.5 or more
     * (NBS SP 440, charts); that is a Lab chroma of 1.3 at the least, and 4.6 at the most, by the renotation.
     */
    private static final double NEUTRAL = 1.3;
    private static final int FIRST_NEUTRAL = 263;

    /** Of two that a name ends in, the longer first. */
    private static final List<String> HUES = List.of("orange yellow", "yellow green", "olive brown", "olive green", "olive gray", "olive black",
            "pink", "red", "orange", "brown", "yellow", "olive", "green", "blue", "violet", "purple", "white", "gray", "black");
    private static final List<String> TINGES = List.of("pinkish", "reddish", "brownish", "yellowish", "greenish", "bluish", "purplish");

    private static final List<ColourName> ALL = read();
    private static final Lab[] CENTRES = ALL.stream().map(n -> Lab.of(n.colour)).toArray(Lab[]::new);

    /** All 267 names in the order of their numbers. */
    public static List<ColourName> all() {
        return ALL;
    }

    /** @throws IllegalArgumentException unless the number is 1..267 */
    public static ColourName numbered(int number) {
        if (number < 1 || number > ALL.size()) {
            throw new IllegalArgumentException("Names are numbered from 1 to 267: " + number);
        }
        return ALL.get(number - 1);
    }

    /**
     * The name whose colour is nearest by CIEDE2000, the one with the lower number of two equally near. A colour as good as neutral (Lab chroma
     * below 1.3) is white, light gray, medium gray, dark gray or black: the centre of "greenish black" is darker than that of "black", so that the
     * nearest name alone would call pure black greenish.
     */
    public static ColourName of(Srgb colour) {
        Lab lab = Lab.of(colour);
        int nearest = lab.chroma() < NEUTRAL ? FIRST_NEUTRAL - 1 : 0;
        double least = lab.difference(CENTRES[nearest]);
        for (int i = nearest + 1; i < CENTRES.length; i++) {
            double difference = lab.difference(CENTRES[i]);
            if (difference < least) {
                least = difference;
                nearest = i;
            }
        }
        return ALL.get(nearest);
    }

    /**
     * The name in the language that is spoken. Each is put together of the same few words: how strong or light, towards which other hue, and
     * the hue itself, as "dark grayish / yellowish / brown".
     */
    public String shown() {
        String hue = HUES.stream().filter(h -> name.equals(h) || name.endsWith(" " + h)).findFirst().orElseThrow();
        String before = name.substring(0, name.length() - hue.length()).strip();
        String tinge = TINGES.stream().filter(t -> before.equals(t) || before.endsWith(" " + t)).findFirst().orElse("");
        String strength = before.substring(0, before.length() - tinge.length()).strip();
        String shown = word("hue", hue);
        if (!tinge.isEmpty()) {
            shown = Text.of("colour.both", word("tinge", tinge), shown);
        }
        return strength.isEmpty() ? shown : Text.of("colour.both", word("strength", strength), shown);
    }

    private static String word(String kind, String english) {
        return Text.of("colour." + kind + "." + english.replace(' ', '-'));
    }

    private static List<ColourName> read() {
        try (BufferedReader lines = new BufferedReader(new InputStreamReader(ColourName.class.getResourceAsStream(FILE), StandardCharsets.UTF_8))) {
            List<ColourName> names = lines.lines().skip(1).map(ColourName::row).toList();
            if (!IntStream.range(0, names.size()).allMatch(i -> names.get(i).number == i + 1) || names.size() != 267) {
                throw new IllegalStateException(FILE + " does not hold the names 1 to 267 in order");
            }
            return names;
        } catch (IOException e) {
            throw new UncheckedIOException(FILE, e);
        }
    }

    private static ColourName row(String line) {
        String[] cells = line.split(",");
        Lab centre = new Lab(Double.parseDouble(cells[3]), Double.parseDouble(cells[4]), Double.parseDouble(cells[5]));
        LinearRgb light = centre.toLinear();
        Srgb colour = light.inGamut() ? light.toSrgb() : Oklch.of(light).mapped();
        return new ColourName(Integer.parseInt(cells[0]), cells[1], cells[2], colour);
    }
}
