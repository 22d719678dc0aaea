package boughwright.drawing;

/** Arithmetic on {@code #rrggbb} colours. Mixing is linear in sRGB, which is what the eye of a painter expects here. */
final class Tint {

    private static final char[] HEX = "0123456789abcdef".toCharArray();

    private Tint() { }

    static void check(String colour) {
        if (colour == null || colour.length() != 7 || colour.charAt(0) != '#') {
            throw new IllegalArgumentException("a colour is #rrggbb, not " + colour);
        }
        for (int i = 1; i < 7; i++) {
            if (Character.digit(colour.charAt(i), 16) < 0) {
                throw new IllegalArgumentException("a colour is #rrggbb, not " + colour);
            }
        }
    }

    /** The share in [0, 1] of the way from one colour to another. */
    static String mix(String from, String to, double share) {
        double t = Math.max(0, Math.min(1, share));
        char[] out = new char[7];
        out[0] = '#';
        for (int i = 0; i < 3; i++) {
            double v = channel(from, i) * (1 - t) + channel(to, i) * t;
            int n = (int) Math.round(v);
            out[1 + 2 * i] = HEX[n >> 4];
            out[2 + 2 * i] = HEX[n & 15];
        }
        return new String(out);
    }

    static String lighter(String colour, double share) {
        return mix(colour, "#fffaf0", share);
    }

    /** Darkens toward a deep, saturated shade of the colour itself, so that shadows stay lively and cream turns brown. */
    static String darker(String colour, double share) {
        double strongest = Math.max(1, Math.max(channel(colour, 0), Math.max(channel(colour, 1), channel(colour, 2))));
        char[] shade = new char[7];
        shade[0] = '#';
        for (int i = 0; i < 3; i++) {
            double purity = channel(colour, i) / strongest;
            int n = (int) Math.round((i == 0 ? 12 : 8) + 46 * Math.pow(purity, 4) * strongest / 255);
            shade[1 + 2 * i] = HEX[n >> 4];
            shade[2 + 2 * i] = HEX[n & 15];
        }
        return mix(colour, new String(shade), share);
    }

    /** Lightness in [0, 1], Rec. 601 weights on the coded values. */
    static double light(String colour) {
        return (0.299 * channel(colour, 0) + 0.587 * channel(colour, 1) + 0.114 * channel(colour, 2)) / 255;
    }

    private static int channel(String colour, int i) {
        return Character.digit(colour.charAt(1 + 2 * i), 16) * 16 + Character.digit(colour.charAt(2 + 2 * i), 16);
    }
}
