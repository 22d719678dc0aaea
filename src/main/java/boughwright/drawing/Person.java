package boughwright.drawing;

/** A standing person as a plain silhouette, 1.753 m (5 ft 9 in) tall, for scale. */
final class Person {

    static final double HEIGHT = 1.753;

    /** Right half of the coat from the nape to the hem, then the left: x to the right, y up, in mm from between the feet. */
    private static final double[][] COAT = {
        {28, 1508}, {52, 1478}, {120, 1448}, {172, 1424}, {203, 1372}, {222, 1268}, {236, 1130}, {239, 1010}, {231, 925},
        {205, 900}, {190, 925}, {186, 1010}, {172, 1110}, {166, 1040}, {184, 880}, {204, 690}, {206, 640}, {120, 622},
        {0, 618}, {-126, 624}, {-204, 645}, {-197, 720}, {-176, 880}, {-160, 1010}, {-156, 1085}, {-176, 1070}, {-204, 1010},
        {-236, 1035}, {-248, 1110}, {-234, 1220}, {-214, 1340}, {-196, 1392}, {-164, 1428}, {-114, 1450}, {-50, 1480},
        {-28, 1508}};

    private Person() { }

    /** Draws the person on the floor at x mm. */
    static void draw(Svg svg, Studio studio, double x) {
        String cloth = studio.tone("#77715f");
        String dark = studio.tone("#625d4e");
        svg.raw("<g transform=\"translate(").num(x).raw(" 0)\" aria-hidden=\"true\">");
        Shade.pool(svg, "#51492f", 0.04, 14, 4, 290, 38);
        Path legs = Path.coarse();
        leg(legs, 1);
        leg(legs, -1);
        svg.fill(dark, legs);
        Path coat = Path.coarse().m(COAT[0][0], -COAT[0][1]);
        double[][] flipped = new double[COAT.length][];
        for (int i = 0; i < COAT.length; i++) {
            flipped[i] = new double[] {COAT[i][0], -COAT[i][1]};
        }
        svg.fill(cloth, coat.through(flipped).z());
        svg.fill(cloth, Path.coarse().m(-38, -1580).l(38, -1580).l(40, -1480).l(-40, -1480).z());
        svg.fill(cloth, Path.coarse().ellipse(0, -1634, 80, 104));
        svg.fill(dark, Path.coarse().m(-84, -1618).c(-100, -1700, -62, -1753, 4, -1753).c(72, -1753, 100, -1702, 86, -1622)
                .c(84, -1600, 74, -1570, 62, -1556).c(76, -1610, 72, -1660, 40, -1690).c(4, -1672, -44, -1668, -66, -1678)
                .c(-74, -1640, -72, -1600, -64, -1560).c(-76, -1570, -82, -1596, -84, -1618).z());
        svg.fill(dark, Path.coarse().m(-66, -1497).c(-40, -1470, 36, -1466, 64, -1496).c(84, -1480, 80, -1440, 52, -1428)
                .c(10, -1412, -46, -1418, -66, -1440).c(-78, -1458, -80, -1482, -66, -1497).z()
                .m(26, -1440).l(66, -1432).l(84, -1230).l(40, -1222).z());
        svg.stroke(dark, 5, 0.8, Path.coarse().m(2, -1420).c(8, -1200, -6, -900, 4, -622).m(172, -1100).c(166, -1160, 158, -1220, 150,
                -1270)
                .m(-156, -1085).c(-150, -1150, -146, -1200, -140, -1260).m(-148, -1010).l(-92, -990));
        svg.raw("</g>");
    }

    private static void leg(Path path, int side) {
        double s = side;
        path.m(s * 14, -660).l(s * 138, -660).c(s * 136, -480, s * 122, -300, s * 112, -90).l(s * 116, -44)
                .c(s * 140, -32, s * 162, -18, s * 160, 0).l(s * 46, 0).c(s * 40, -20, s * 40, -60, s * 42, -92)
                .c(s * 34, -300, s * 20, -480, s * 14, -660).z();
    }
}
