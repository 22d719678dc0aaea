package boughwright.drawing;

import boughwright.brief.Palette;
import boughwright.brief.Word;
import boughwright.needs.Layer;
import boughwright.needs.Role;
import java.util.ArrayList;
import java.util.List;

/**
 * A first impression of a palette: the customer's tree with balls, flowers, sprays and ribbon in the four colours and no product of any
 * shop. Of ten pieces five have the main colour, three the second, one is the spark and one the ground, deep within the branches; the ribbon is of
 * main with second on it. Equal arguments give equal text.
 */
public final class PaletteTree {

    private static final int PIECES = 130;
    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;
    /** Runs of ribbon seen from the front, loops of each, points of each loop. */
    private static final int RUNS = 4;
    private static final int LOOPS = 5;
    private static final int STEPS = 12;
    /** Pieces are sized for a tree of this height, metres, and grow with it, so that the impression is the same. */
    private static final double USUAL = 2.3;
    private static final double WIDTH = 400;
    private static final long SEED = 3;

    /** What each of ten neighbours on the spiral is. */
    private enum Piece {
        MAIN_BALL, SECOND_FLOWER, MAIN_SMALL, MAIN_DROP, SECOND_BALL, MAIN_SATIN, SPARK_SPRAY, MAIN_BALL_AGAIN, SECOND_SMALL, GROUND_BALL
    }

    private final TreeShape tree;
    private final double size;
    private final String main;
    private final String second;
    private final String spark;
    private final String ground;
    private final List<Sprite> sprites = new ArrayList<>();

    private PaletteTree(TreeShape tree, Palette palette) {
        this.tree = tree;
        this.size = tree.height() / USUAL;
        main = palette.main().hex();
        second = palette.second().hex();
        spark = palette.spark().hex();
        ground = palette.ground().hex();
    }

    /** From the front, on a transparent ground, to be shown about 400 px wide. */
    public static String svg(TreeShape tree, Palette palette, String title, String description) {
        return TreePicture.svg(scene(tree, palette), View.FRONT,
                Options.plain(title, description).withRuler(Ruler.NONE, "").withGround(false, true).withWidth(WIDTH).withIdPrefix("pt"));
    }

    static Scene scene(TreeShape tree, Palette palette) {
        PaletteTree dressed = new PaletteTree(tree, palette);
        dressed.pieces();
        dressed.topper();
        return new Scene(tree, dressed.sprites, dressed.ribbon(), SEED);
    }

    private void pieces() {
        for (int i = 0; i < PIECES; i++) {
            double down = 0.1 + 0.88 * Math.sqrt((i + 0.5) / PIECES);
            double y = tree.height() - down * (tree.height() - tree.lowestBranch());
            double angle = 2 * Math.PI * (i * GOLDEN % 1);
            switch (Piece.values()[i % Piece.values().length]) {
                case MAIN_BALL -> hang(i, Form.BALL, Surface.SHINY, main, 0.115, y, angle, 0.8);
                case MAIN_BALL_AGAIN -> hang(i, Form.BALL, Surface.MATTE, main, 0.11, y, angle, 0.8);
                case MAIN_SMALL -> hang(i, Form.BALL, Surface.METALLIC, main, 0.07, y, angle, 0.95);
                case MAIN_SATIN -> hang(i, Form.BALL, Surface.SATIN, main, 0.085, y, angle, 0.9);
                case MAIN_DROP -> hang(i, Form.DROP, Surface.GLITTER, main, 0.06, y, angle, 1);
                case SECOND_BALL -> hang(i, Form.BALL, Surface.SHINY, second, 0.09, y, angle, 0.85);
                case SECOND_SMALL -> hang(i, Form.BALL, Surface.GLITTER, second, 0.07, y, angle, 0.95);
                case SECOND_FLOWER -> put(i, Layer.FLORALS, Role.SINGLE_FLOWER, Form.OPEN_FLOWER, Surface.MATTE, second, spark, 0.19, 0, y, angle, 1);
                case SPARK_SPRAY -> put(i, Layer.FLORALS, Role.SPRAY, Form.BERRY_SPRAY, Surface.SHINY, spark, null, 0.12, 0.24, y, angle, 1);
                case GROUND_BALL -> hang(i, Form.BALL, Surface.MATTE, ground, 0.11, y, angle, 0.6);
            }
        }
    }

    private void hang(int id, Form form, Surface surface, String colour, double width, double y, double angle, double depth) {
        put(id, Layer.ORNAMENTS, Role.FILLER_BALL, form, surface, colour, null, width, 0, y, angle, depth);
    }

    private void put(int id, Layer layer, Word role, Form form, Surface surface, String colour, String other, double width, double length, double y, double angle,
            double depth) {
        double out = depth * tree.radiusAt(y);
        sprites.add(new Sprite("piece-" + id, "", "", layer.word(), role.word(), form, surface, colour, other, size * width, size * length, out * Math.sin(angle), y,
                out * Math.cos(angle), depth, 0));
    }

    private void topper() {
        double tip = tree.height() - 0.04 * size;
        for (int stem = 0; stem < 5; stem++) {
            sprites.add(new Sprite("stem-" + stem, "", "", Layer.TOPPER.word(), Role.HEIGHT_STEM.word(), stem % 2 == 0 ? Form.BERRY_SPRAY : Form.LEAF_SPRAY,
                    Surface.SHINY, stem % 2 == 0 ? spark : main, null, 0.13 * size, 0.34 * size, 0, tip, 0, 1, 0.38 * (stem - 2)));
        }
        for (int side = -1; side <= 1; side += 2) {
            sprites.add(new Sprite("face-" + side, "", "", Layer.TOPPER.word(), Role.FACE_FLOWER.word(), Form.OPEN_FLOWER, Surface.MATTE, second, spark, 0.18 * size,
                    0, 0.08 * size * side, tip - 0.06 * size, 0.06 * size, 1, 0));
        }
    }

    /** Runs that wind down from left to right across the front, each loop standing out from the branches and lower in its middle. */
    private List<Band> ribbon() {
        List<Band> bands = new ArrayList<>();
        double crown = tree.height() - tree.lowestBranch();
        for (int run = 0; run < RUNS; run++) {
            List<double[]> points = new ArrayList<>();
            double from = 0.14 + 0.21 * run;
            for (int step = 0; step <= LOOPS * STEPS; step++) {
                double way = (double) step / (LOOPS * STEPS);
                double loop = Math.abs(Math.sin(Math.PI * way * LOOPS));
                double y = tree.height() - crown * Math.min(0.97, from + 0.2 * way) - 0.04 * size * loop;
                double out = 0.95 * tree.radiusAt(y) + 0.09 * size * loop;
                double angle = (run % 2 == 0 ? 1 : -1) * Math.PI * (way - 0.5) * 1.1;
                points.add(new double[] {out * Math.sin(angle), y, out * Math.cos(angle)});
            }
            bands.add(new Band("run-" + run, "", Layer.RIBBON.word(), points, 0.1 * size, main, 0.04 * size, second, RibbonPattern.STRIPE));
        }
        return bands;
    }
}
