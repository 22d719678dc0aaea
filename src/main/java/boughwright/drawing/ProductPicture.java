package boughwright.drawing;

/** A little picture of one product on a transparent ground, for lists. */
public final class ProductPicture {

    private ProductPicture() { }

    /**
     * One product as a list shows it.
     *
     * @param title        said by a screen reader
     * @param form         its shape
     * @param surface      its finish
     * @param colour       {@code #rrggbb}
     * @param secondColour {@code #rrggbb} or null
     * @param width        as in {@link Sprite}, metres
     * @param length       as in {@link Sprite}, metres, 0 for the usual proportion
     * @param idPrefix     letters and digits before every id
     */
    public record Product(String title, Form form, Surface surface, String colour, String secondColour, double width,
                          double length, String idPrefix) {

        public Product {
            Tint.check(colour);
        }
    }

    /**
     * One ribbon as a list shows it: a loop and a tail of it.
     *
     * @param title   said by a screen reader
     * @param colour  {@code #rrggbb}
     * @param pattern woven or printed on it
     * @param width   metres
     */
    public record Ribbon(String title, String colour, RibbonPattern pattern, double width, String idPrefix) {

        public Ribbon {
            Tint.check(colour);
        }
    }

    /** A square picture of the product, px wide. Lights are shown as a short string of five. */
    public static String swatch(Product product, int px) {
        Studio studio = new Studio(product.idPrefix(), false);
        Svg svg = new Svg(6000);
        double width = product.width() * 1000;
        Form form = product.form();
        if (form == Form.LIGHT) {
            string(svg, studio, product.colour());
            return frame(svg, studio, new double[] {-70, -70, 140, 140}, px, product.title(), product.idPrefix());
        }
        double length = Pieces.length(form, width, product.length() * 1000);
        if (form.hold() == Form.Hold.GROWS) {
            // A long stem in a small square would be a thread: the head is shown, fuller than it is long.
            width = Math.max(width, length * 0.5);
        }
        String id = new Pieces(studio).shape(form, product.surface(), product.colour(), product.secondColour(), width / 1000,
                length / 1000, 1);
        svg.raw("<use xlink:href=\"#").raw(id).raw("\"");
        double[] box = box(form, width, length);
        if (form.hold() == Form.Hold.GROWS) {
            svg.raw(" transform=\"rotate(16)\"");
        }
        svg.raw("/>");
        return frame(svg, studio, box, px, product.title(), product.idPrefix());
    }

    /** A square picture of a ribbon, px wide. */
    public static String swatch(Ribbon ribbon, int px) {
        Studio studio = new Studio(ribbon.idPrefix(), false);
        Svg svg = new Svg(6000);
        Roll.draw(svg, studio, ribbon);
        return frame(svg, studio, new double[] {-530, -530, 1060, 1060}, px, ribbon.title(), ribbon.idPrefix());
    }

    private static double[] box(Form form, double width, double length) {
        double cord = Ornaments.cord(width);
        return switch (form.hold()) {
            case CENTRE, FACES -> new double[] {-58, -58, 118, 118};
            case HANGS -> square(0, (cord + length) / 2, Math.max(width * 1.1, cord + length) * 1.06);
            case PERCHES -> square(0, -width * 0.3, width * 1.1);
            case GROWS -> square(length * 0.17, -length * 0.47, length * 1.12);
            case TIED -> switch (form) {
                case TAILS -> square(0, length * 0.45, length * 1.2);
                case ONE_LOOP_BOW -> square(0, length * 0.16, length * 1.75);
                default -> square(0, length * 0.34, Math.max(length * 1.45, Math.max(width * 1.75, length * 0.62) * 2.2));
            };
        };
    }

    private static double[] square(double cx, double cy, double side) {
        return new double[] {cx - side / 2, cy - side / 2, side, side};
    }

    private static void string(Svg svg, Studio studio, String colour) {
        svg.raw("<g stroke-linecap=\"round\">").stroke("#2d5b43", 3, Path.fine().m(-62, -22).c(-40, 30, -12, 34, 4, 0).c(18, -30, 40, -26,
                62, 20)).raw("</g>");
        double[][] at = {{-50, -4, -12}, {-26, 19, 8}, {2, 3, -28}, {24, -18, 10}, {48, -4, 24}};
        Lights lights = new Lights(studio);
        String bulb = studio.shape("loose", s -> lights.loose(s, colour));
        for (double[] p : at) {
            svg.raw("<use xlink:href=\"#").raw(bulb).raw("\" transform=\"translate(").num(p[0]).raw(" ").num(p[1]).raw(") rotate(")
                    .num(p[2]).raw(")\"/>");
        }
    }

    private static String frame(Svg svg, Studio studio, double[] box, int px, String title, String prefix) {
        return Frame.of(box, px, prefix, title, null, studio, svg);
    }
}
