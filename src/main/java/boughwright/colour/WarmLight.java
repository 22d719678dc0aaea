package boughwright.colour;

/**
 * How colours look by lamplight to somebody whose eye has only partly got used to it, shown on a screen that is seen in daylight.
 *
 * <p>Two steps, both with the cone responses of the Bradford transform (K. M. Lam, thesis, University of Bradford, 1985; the matrix as
 * B. Lindbloom and CSS Color 4 print it). First the lamp: each cone gets as much more or less light as the lamp's white gives it over
 * daylight's (D65). Then the eye makes up for that by the degree D of CIECAM02 (N. Moroney, M. D. Fairchild, R. W. G. Hunt, C. Li,
 * M. R. Luo, T. Newman, "The CIECAM02 Color Appearance Model", IS&amp;T/SID Tenth Color Imaging Conference, 2002). Together a cone's
 * gain is D + (1 − D) · lamp / daylight: with D = 1 nothing changes, with D = 0 all of the lamp's colour is seen. Real dyes under real
 * lamps differ from this; a white piece of paper does not.
 *
 * <p>The light is dimmed until white fits the screen, so that no light colour is cut off in its red.
 *
 * @param kelvin temperature of the lamp, in which it is a black body; 1667 to 4000
 * @param adaptation the degree D, 0 the eye expects daylight .. 1 the lamp's white is white
 */
public record WarmLight(double kelvin, double adaptation) implements Sight {

    /** CIECAM02's factor for a dim surround. */
    private static final double DIM = 0.9;
    /** Lux in a living room in the evening (common practice, no published source). */
    private static final double EVENING = 60;
    /** CIECAM02 takes the adapting field to be a fifth as bright as white; a white that scatters evenly has E/π cd/m². */
    private static final double ADAPTED = adaptation(DIM, 0.2 * EVENING / Math.PI);

    /** A warm white lamp of 2700 K in a living room in the evening. */
    public static final WarmLight LAMP = new WarmLight(2700, ADAPTED);
    /** The warmest that is sold for candle-shaped lamps, 2200 K, in the same room; a flame itself is near 1900 K. */
    public static final WarmLight CANDLE = new WarmLight(2200, ADAPTED);

    private static final LightMatrix BRADFORD = LightMatrix.of(0.8951, 0.2664, -0.1614, -0.7502, 1.7135, 0.0367, 0.0389, -0.0685, 1.0296);
    private static final LightMatrix FROM_CONES = BRADFORD.inverse();
    /** Linear sRGB to XYZ, as in {@link Lab}. */
    private static final LightMatrix TO_XYZ = LightMatrix.of(0.4124564, 0.3575761, 0.1804375, 0.2126729, 0.7151522, 0.0721750, 0.0193339, 0.1191920, 0.9503041);
    private static final LightMatrix FROM_XYZ = TO_XYZ.inverse();

    /** @throws IllegalArgumentException when temperature or degree is out of range */
    public WarmLight {
        if (!(kelvin >= 1667 && kelvin <= 4000)) {
            throw new IllegalArgumentException("warm light has 1667 K to 4000 K, not " + kelvin);
        }
        if (!(adaptation >= 0 && adaptation <= 1)) {
            throw new IllegalArgumentException("adaptation runs from 0 to 1: " + adaptation);
        }
    }

    /**
     * The degree of adaptation D of CIECAM02.
     *
     * @param surround its factor F: 1 average, 0.9 dim, 0.8 dark
     * @param luminance of the adapting field, cd/m²
     */
    static double adaptation(double surround, double luminance) {
        return surround * (1 - Math.exp(-(luminance + 42) / 92) / 3.6);
    }

    /**
     * XYZ of a black body's white with Y = 1: the cubic fits to its locus by B. Kim, S. Woo, D. Cho and others, "Design of Advanced Color
     * Temperature Control System for HDTV Applications", Journal of the Korean Physical Society 41(6), 2002, within 0.001 in x and y.
     *
     * @param kelvin 1667 to 4000
     */
    static double[] white(double kelvin) {
        double t = 1000 / kelvin;
        double x = ((-0.2661239 * t - 0.2343589) * t + 0.8776956) * t + 0.179910;
        double y = kelvin <= 2222
                ? ((-1.1063814 * x - 1.34811020) * x + 2.18555832) * x - 0.20219683
                : ((-0.9549476 * x - 1.37418593) * x + 2.09137015) * x - 0.16748867;
        return new double[] {x / y, 1, (1 - x - y) / y};
    }

    /** XYZ under one white to the XYZ that looks the same under another to an eye which is adapted to each. */
    static LightMatrix bradford(double[] from, double[] to) {
        double[] before = BRADFORD.times(from[0], from[1], from[2]);
        double[] after = BRADFORD.times(to[0], to[1], to[2]);
        return FROM_CONES.times(LightMatrix.diagonal(after[0] / before[0], after[1] / before[1], after[2] / before[2])).times(BRADFORD);
    }

    @Override
    public double[] matrix() {
        double[] daylight = TO_XYZ.times(1, 1, 1);
        LightMatrix lamp = bradford(daylight, white(kelvin)).toward(LightMatrix.diagonal(1, 1, 1), adaptation);
        LightMatrix onLight = FROM_XYZ.times(lamp).times(TO_XYZ);
        double[] paper = onLight.times(1, 1, 1);
        return onLight.scaled(1 / Math.max(paper[0], Math.max(paper[1], paper[2]))).rows();
    }
}
