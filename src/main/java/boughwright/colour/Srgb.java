package boughwright.colour;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * A colour as products carry it: 8-bit sRGB (IEC 61966-2-1).
 *
 * @param red 0..255
 * @param green 0..255
 * @param blue 0..255
 */
public record Srgb(int red, int green, int blue) {

    private static final Pattern HEX = Pattern.compile("#[0-9a-fA-F]{6}");

    private static final double[] LINEAR = new double[256];

    static {
        Arrays.setAll(LINEAR, part -> {
            double v = part / 255.0;
            return v <= 0.04045 ? v / 12.92 : Math.pow((v + 0.055) / 1.055, 2.4);
        });
    }

    public Srgb {
        if ((red | green | blue) < 0 || red > 255 || green > 255 || blue > 255) {
            throw new IllegalArgumentException("sRGB parts run from 0 to 255: " + red + ", " + green + ", " + blue);
        }
    }

    /** Reads {@code #rrggbb}; empty for any other text. */
    public static Optional<Srgb> read(String text) {
        if (text == null || !HEX.matcher(text).matches()) {
            return Optional.empty();
        }
        int rgb = Integer.parseInt(text.substring(1), 16);
        return Optional.of(new Srgb(rgb >> 16 & 255, rgb >> 8 & 255, rgb & 255));
    }

    /** Lower-case {@code #rrggbb}. */
    public String hex() {
        return String.format(Locale.ROOT, "#%02x%02x%02x", red, green, blue);
    }

    /** One 8-bit part made linear in light, 0..1, by the sRGB transfer function. */
    static double linear(int part) {
        return LINEAR[part];
    }

    /** The nearest 8-bit part to an intensity linear in light; what lies outside 0..1 goes to the nearer end. The inverse of {@link #linear}. */
    static int part(double linear) {
        double v = linear <= 0.0031308 ? 12.92 * linear : 1.055 * Math.pow(linear, 1 / 2.4) - 0.055;
        return (int) Math.round(255 * Math.max(0, Math.min(1, v)));
    }

    /** Relative luminance 0..1 as WCAG 2.2 defines it. */
    public double luminance() {
        return 0.2126 * linear(red) + 0.7152 * linear(green) + 0.0722 * linear(blue);
    }

    /** Contrast ratio of WCAG 2.2, 1..21; the same whichever colour comes first. */
    public double contrast(Srgb other) {
        double a = luminance() + 0.05;
        double b = other.luminance() + 0.05;
        return Math.max(a, b) / Math.min(a, b);
    }
}
