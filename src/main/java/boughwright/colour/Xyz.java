package boughwright.colour;

/**
 * CIE 1931 XYZ relative to D65, its white having Y = 1.
 *
 * <p>Matrices of the CSS Color Module Level 4 (sample code for color conversions): the sRGB primaries of IEC 61966-2-1 with the white
 * at x 0.3127, y 0.3290, worked out in fractions.
 *
 * @param x about 0..0.9505 for what sRGB shows
 * @param y luminance, 0..1
 * @param z about 0..1.0891
 */
public record Xyz(double x, double y, double z) {

    public static Xyz of(Srgb colour) {
        return of(LinearRgb.of(colour));
    }

    public static Xyz of(LinearRgb colour) {
        double r = colour.r();
        double g = colour.g();
        double b = colour.b();
        return new Xyz(
                506752.0 / 1228815 * r + 87881.0 / 245763 * g + 12673.0 / 70218 * b,
                87098.0 / 409605 * r + 175762.0 / 245763 * g + 12673.0 / 175545 * b,
                7918.0 / 409605 * r + 87881.0 / 737289 * g + 1001167.0 / 1053270 * b);
    }

    public LinearRgb toLinear() {
        return new LinearRgb(
                12831.0 / 3959 * x - 329.0 / 214 * y - 1974.0 / 3959 * z,
                -851781.0 / 878810 * x + 1648619.0 / 878810 * y + 36519.0 / 878810 * z,
                705.0 / 12673 * x - 2585.0 / 12673 * y + 705.0 / 667 * z);
    }
}
