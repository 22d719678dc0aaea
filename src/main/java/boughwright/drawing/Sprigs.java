package boughwright.drawing;

import boughwright.brief.Fullness;

import java.util.SplittableRandom;

/**
 * The needled twigs that all foliage is set from: a few shapes in three lengths, drawn once, placed by the hundred. A
 * sprig lies along +x from its foot; the group that places it gives the stroke (body) and the fill (lit needles).
 */
final class Sprigs {

    static final int SHAPES = 4;
    private static final double[] LENGTHS = {1, 0.78, 0.56, 0.38};
    private static final int[] SPLAYS = {16, 34, 50};

    private final Studio studio;
    private final String[][] ids = new String[LENGTHS.length][SHAPES];

    /**
     * @param length   of the longest sprig, mm
     * @param fullness sets how thickly the needles stand
     */
    Sprigs(Studio studio, double length, Fullness fullness, long seed) {
        this.studio = studio;
        SplittableRandom random = new SplittableRandom(seed ^ 0x5eed1eafL);
        int needles = switch (fullness) {
            case SPARSE -> 10;
            case MEDIUM -> 12;
            case FULL -> 14;
        };
        for (int size = 0; size < LENGTHS.length; size++) {
            for (int shape = 0; shape < SHAPES; shape++) {
                SplittableRandom own = random.split();
                double l = length * LENGTHS[size];
                int count = Math.max(6, (int) Math.round(needles * (0.4 + 0.6 * LENGTHS[size])));
                ids[size][shape] = studio.shape("sprig" + size + '.' + shape, svg -> draw(svg, l, count, own));
            }
        }
    }

    /** The id of the sprig whose length is nearest the given share of the longest. */
    String id(double share, int shape) {
        return ids[size(share)][Math.floorMod(shape, SHAPES)];
    }

    /** The id of two sprigs from one foot, spread wide [0, 1] to either side of +x. */
    String fan(double share, double wide, int shape) {
        int size = size(share);
        int splay = SPLAYS[(int) Math.max(0, Math.min(SPLAYS.length - 1, Math.round(wide * (SPLAYS.length - 1))))];
        int kind = Math.floorMod(shape, 2);
        return studio.shape("fan" + size + '.' + splay + '.' + kind, svg -> {
            twig(svg, ids[size][kind], -splay);
            twig(svg, ids[size][kind + 2], splay + 6);
        });
    }

    private static void twig(Svg svg, String id, int degrees) {
        svg.raw("<use xlink:href=\"#").raw(id).raw("\" transform=\"rotate(").num(degrees).raw(")\"/>");
    }

    private static int size(double share) {
        return share > 0.88 ? 0 : share > 0.66 ? 1 : share > 0.46 ? 2 : 3;
    }

    private static void draw(Svg svg, double length, int needles, SplittableRandom random) {
        Path body = Path.coarse();
        Path lit = Path.coarse();
        double bend = (random.nextDouble() - 0.5) * 0.16 * length;
        body.m(0, 0).q(length * 0.5, bend, length * 0.93, bend * 0.6);
        for (int side = -1; side <= 1; side += 2) {
            for (int i = 0; i < needles; i++) {
                double t = (i + 0.3 + 0.6 * random.nextDouble()) / needles;
                double x = length * (0.04 + 0.9 * t);
                double y = 2 * bend * t * (1 - t) + bend * 0.6 * t * t;
                double reach = length * (0.19 + 0.13 * Math.sin(Math.PI * (0.18 + 0.72 * t)))
                        * (0.82 + 0.36 * random.nextDouble());
                double angle = side * (0.98 - 0.5 * t + 0.3 * (random.nextDouble() - 0.5));
                double dx = Math.cos(angle) * reach;
                double dy = Math.sin(angle) * reach;
                if (side < 0 && i % 3 != 0 || side > 0 && i % 4 == 0) {
                    double half = length * 0.014;
                    double nx = -Math.sin(angle) * half;
                    double ny = Math.cos(angle) * half;
                    lit.m(x - nx, y - ny).l(x + dx, y + dy).l(x + nx, y + ny).z();
                } else {
                    body.m(x, y).l(x + dx, y + dy);
                }
            }
        }
        body.m(length * 0.88, bend * 0.66).l(length * 1.06, bend * 0.5);
        svg.raw("<path fill=\"none\" d=\"").raw(body.d()).raw("\"/><path stroke=\"none\" d=\"").raw(lit.d()).raw("\"/>");
    }
}
