package boughwright.drawing;

/**
 * Knows for each form which hand draws it, in which units, and so shares one definition among all like pieces: balls and
 * flowers are drawn 100 units across and scaled, everything else is drawn in mm.
 */
final class Pieces {

    private static final int SPRAY_VARIANTS = 2;

    private final Studio studio;
    private final Ornaments ornaments;
    private final Flowers flowers;
    private final Sprays sprays;
    private final Bows bows;
    private final Lights lights;

    Pieces(Studio studio) {
        this.studio = studio;
        ornaments = new Ornaments(studio);
        flowers = new Flowers(studio);
        sprays = new Sprays(studio);
        bows = new Bows(studio);
        lights = new Lights(studio);
    }

    /** True when the definition is 100 units across and has to be scaled. */
    static boolean unit(Form form) {
        return form == Form.BALL || form.hold() == Form.Hold.FACES;
    }

    /** Visible length in mm, with the form's usual proportion where the product tells none. */
    static double length(Form form, double widthMm, double lengthMm) {
        if (lengthMm > 0) {
            return lengthMm;
        }
        return switch (form.hold()) {
            case HANGS, PERCHES -> Ornaments.usualHeight(form, widthMm);
            case GROWS -> widthMm * 2.4;
            case TIED -> Math.max(200, widthMm * 2.6);
            case CENTRE, FACES -> widthMm;
        };
    }

    /** The id of the definition for such a piece; the choice among variants of a spray falls to the caller's number. */
    String shape(Form form, Surface surface, String colour, String second, double widthM, double lengthM, int choice) {
        double width = Math.round(widthM * 1000);
        double length = Math.round(length(form, width, lengthM * 1000));
        int variant = form.hold() == Form.Hold.GROWS ? studio.dimmed() ? 0 : Math.floorMod(choice, SPRAY_VARIANTS) : 0;
        String size = unit(form) ? "" : width + "x" + length;
        String key = form + "|" + surface + colour + second + size + '|' + variant;
        return studio.shape(key, svg -> {
            switch (form.hold()) {
                case CENTRE -> {
                    if (form == Form.LIGHT) {
                        lights.bulb(svg, colour, width);
                    } else {
                        ornaments.ball(svg, surface, colour, second);
                    }
                }
                case HANGS -> ornaments.hanging(svg, form, surface, colour, second, width, length);
                case PERCHES -> ornaments.bird(svg, surface, colour, second, width);
                case FACES -> flowers.draw(svg, form, surface, colour, second);
                case GROWS -> sprays.draw(svg, form, surface, colour, second, length, width, variant);
                case TIED -> bows.draw(svg, form, surface, colour, second, width, length);
            }
        });
    }

    String halo(String colour) {
        return studio.shape("halo" + colour, svg -> lights.halo(svg, colour));
    }
}
