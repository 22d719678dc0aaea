package boughwright.drawing;

import boughwright.brief.Fullness;
import boughwright.layout.Bough;
import boughwright.layout.Boughs;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;

/**
 * The boughs of one tree, grown in the round and therefore the same tree from every side: tiers of drooping branches,
 * each a spine with side sprigs and a tip. It is painted in two coats, one behind the pieces set deep in the tree and a
 * light one that tucks them in.
 */
final class Foliage {

    private static final int SHADES = 6;
    private static final String[] BODY = {"#0d2219", "#13301f", "#1b402b", "#245138", "#2f6446", "#3f7855"};
    private static final String[] LIT = {"#143021", "#1d432c", "#28573c", "#35694a", "#46805c", "#5c9672"};

    private record Leafing(double x, double y, double near, double turn, String sprig, int shade, int tier) { }

    private final TreeShape tree;
    private final Projection eye;
    private final Studio studio;
    private final Sprigs sprigs;
    private final double sprig;
    private final double[] tiers;
    private final long seed;
    private final List<Leafing> under = new ArrayList<>();
    private final List<Leafing> over = new ArrayList<>();
    private final Path wood = Path.coarse();

    Foliage(TreeShape tree, Projection eye, Studio studio, long seed) {
        this.tree = tree;
        this.eye = eye;
        this.studio = studio;
        this.seed = seed;
        Boughs boughs = Boughs.grow(tree.height(), tree.widestRadius(), tree.lowestBranch(), tree.fullness(), seed);
        sprig = boughs.sprig();
        sprigs = new Sprigs(studio, sprig * 1000, tree.fullness(), seed);
        tiers = boughs.tiers();
        grow(boughs.all());
    }

    /** Length of the longest sprig, metres. */
    double sprigLength() {
        return sprig;
    }

    private void grow(List<Bough> boughs) {
        SplittableRandom random = new SplittableRandom(seed ^ 0xb0a6L);
        for (Bough each : boughs) {
            bough(random.split(), each);
        }
        leader(random);
    }

    private void bough(SplittableRandom random, Bough bough) {
        double around = bough.around();
        double reach = bough.reach();
        double rootY = bough.root();
        double sin = Math.sin(around);
        double cos = Math.cos(around);
        double near = eye.near(sin, cos);
        if (near < -0.45) {
            return;
        }
        double grown = sprig * bough.size();
        double drop = rootY - bough.tip();
        int pairs = reach < sprig * 0.6 ? 1 : reach < sprig * 1.6 ? 2 : 3;
        if (tree.fullness() == Fullness.FULL && reach > sprig * 2) {
            pairs++;
        }
        wood.m(0, eye.y(rootY)).q(eye.x(sin * reach * 0.5, cos * reach * 0.5), eye.y(rootY - drop * 0.15),
                eye.x(sin * reach * 0.8, cos * reach * 0.8), eye.y(bough.tip() + drop * 0.26));
        for (int i = 0; i < pairs; i++) {
            double s = 1 - (i + 0.55) * Math.min(0.62 * grown / reach, 0.8 / pairs);
            double foot = Math.max(0, reach * s - grown * 0.5);
            double y = rootY - drop * Math.pow(s, 1.5);
            double turn = (random.nextDouble() - 0.5) * 0.36;
            set(random, bough.tier(), around, turn, foot, y, s, bough.size() * 0.9, Kind.FAN);
            if (i == 0 && random.nextDouble() < 0.6) {
                double spread = (random.nextBoolean() ? 1 : -1) * (0.5 + 0.4 * random.nextDouble());
                set(random, bough.tier(), around, spread, foot, y, s, bough.size() * 0.8, Kind.FRONT);
            }
        }
        double spread = (random.nextDouble() - 0.5) * 0.4;
        set(random, bough.tier(), around, spread, Math.max(0, reach - grown * 0.82), bough.tip() + drop * 0.12, 1, bough.size(), Kind.SINGLE);
        if (random.nextDouble() < 0.5) {
            set(random, bough.tier(), around, spread, Math.max(0, reach - grown * 0.7), bough.tip() + drop * 0.1, 1, bough.size() * 0.9, Kind.FRONT);
        }
    }

    private enum Kind { SINGLE, FAN, FRONT }

    /** One sprig or fan whose foot lies at the radius, turned in the plane of its bough by the spread. */
    private void set(SplittableRandom random, int tier, double around, double spread, double radius, double y,
                     double along, double size, Kind kind) {
        double side = eye.right(Math.sin(around), Math.cos(around));
        double near = eye.near(Math.sin(around), Math.cos(around));
        if (kind == Kind.FRONT && near < -0.05) {
            return;
        }
        double heading = around + spread;
        double young = 1 - Math.min(1, tree.radiusAt(y) / (sprig * 1.5));
        double dx = eye.right(Math.sin(heading), Math.cos(heading));
        double dy = 0.34 + 0.3 * Math.max(0, near) + 0.16 * (random.nextDouble() - 0.5) - (tier == 0 ? 0.12 : 0) - 1.05 * young;
        double shown = Math.min(1, Math.max(0.62, Math.hypot(dx, dy) * 1.05)) * size;
        double turn = Math.toDegrees(Math.atan2(dy, dx));
        double light = 1.35 + 2.6 * (along - 0.5) + 0.75 * near - 0.85 * side - 0.35 * Math.abs(side)
                + 1.3 * (random.nextDouble() - 0.5) - (near < 0 ? 1.4 : 0) + (tier % 2 == 0 ? 0.3 : -0.75);
        int shade = (int) Math.max(0, Math.min(SHADES - 2, Math.round(light)));
        int shape = random.nextInt(Sprigs.SHAPES);
        double x = eye.x(Math.sin(around) * radius, Math.cos(around) * radius);
        if (kind == Kind.FRONT) {
            double forth = sprig * size * (0.1 + 0.2 * random.nextDouble()) * 1000;
            over.add(new Leafing(x + forth * dx, eye.y(y) + forth * dy * 0.6, near, turn + 30 * (random.nextDouble() - 0.5),
                    sprigs.id(shown, shape), Math.min(SHADES - 1, shade + 1), tier));
            return;
        }
        String id = kind == Kind.FAN ? sprigs.fan(shown, Math.max(0, near), shape) : sprigs.id(shown, shape);
        under.add(new Leafing(x, eye.y(y), near, turn, id, shade, tier));
    }

    /** The upright shoots at the tip: one straight leader and shorter ones that lean from its foot. */
    private void leader(SplittableRandom random) {
        double y = tree.height();
        for (int i : new int[] {0, 4, 1, 3, 2}) {
            double off = (i - 2) / 2.0;
            double turn = -90 + off * 44 + 8 * (random.nextDouble() - 0.5);
            double size = i == 2 ? 0.78 : 0.38;
            under.add(new Leafing(0, eye.y(y - sprig * (i == 2 ? 0.82 : 0.66 + 0.1 * Math.abs(off))), 1, turn, sprigs.id(size, i),
                    3 - Math.abs(i - 2) / 2, tiers.length));
        }
    }

    /** Behind the deep pieces: the shaded inside, the wood, then every bough from the lowest tier to the highest. */
    void paintUnder(Svg svg) {
        inside(svg);
        svg.raw("<g fill=\"none\" stroke-linecap=\"round\">");
        svg.stroke(studio.tone("#3a2a20"), sprig * 55, tree.fullness() == Fullness.SPARSE ? 0.9 : 0.5, wood).raw("</g>");
        coat(svg, under, true);
    }

    /** Over the deep pieces: single sprigs at the tips, and one over the brow of each piece given as {x, y, radius} mm. */
    void paintOver(Svg svg, List<double[]> tucked) {
        List<Leafing> all = new ArrayList<>(over);
        all.removeIf(leaf -> covers(leaf, tucked));
        SplittableRandom random = new SplittableRandom(seed ^ 0x7ac5L);
        for (double[] piece : tucked) {
            for (int i = 0; i < 2; i++) {
                double side = i == 0 ? -1 : 1;
                double x = piece[0] + side * piece[2] * (0.85 + 0.4 * random.nextDouble());
                double y = piece[1] - piece[2] * (1.1 + 0.8 * random.nextDouble()) - sprig * 60;
                double turn = 90 - side * 8 + side * 26 * random.nextDouble();
                all.add(new Leafing(x, y, 0.5, turn, sprigs.id(0.4, random.nextInt(9)), 2 + random.nextInt(2), tierAt(-piece[1] / 1000)));
            }
        }
        coat(svg, all, false);
    }

    private int tierAt(double y) {
        int at = Arrays.binarySearch(tiers, y);
        return at >= 0 ? at : Math.max(0, -at - 2);
    }

    /** True when the sprig would hide more than the rim of one of the pieces {x, y, radius}. */
    private boolean covers(Leafing leaf, List<double[]> pieces) {
        double mid = sprig * 420;
        double x = leaf.x + Math.cos(Math.toRadians(leaf.turn)) * mid;
        double y = leaf.y + Math.sin(Math.toRadians(leaf.turn)) * mid;
        for (double[] piece : pieces) {
            if (Math.hypot(piece[0] - x, piece[1] - y) < piece[2] + sprig * 290) {
                return true;
            }
        }
        return false;
    }

    private void coat(Svg svg, List<Leafing> leaves, boolean shadows) {
        List<List<Leafing>> bins = new ArrayList<>();
        for (int i = 0; i <= tiers.length * SHADES + SHADES; i++) {
            bins.add(new ArrayList<>());
        }
        for (Leafing leaf : leaves) {
            bins.get(leaf.tier * SHADES + leaf.shade).add(leaf);
        }
        double line = sprig * 1000 * 0.026;
        svg.raw("<g stroke-linecap=\"round\"").attr("stroke-width", line).raw(">");
        for (int tier = 0; tier <= tiers.length; tier++) {
            if (shadows && tier > 0) {
                shadow(svg, bins, tier);
            }
            for (int shade = 0; shade < SHADES; shade++) {
                List<Leafing> bin = bins.get(tier * SHADES + shade);
                if (bin.isEmpty()) {
                    continue;
                }
                svg.raw("<g stroke=\"").raw(studio.tone(BODY[shade])).raw("\" fill=\"").raw(studio.tone(LIT[shade])).raw("\">");
                for (Leafing leaf : bin) {
                    use(svg, leaf, 0, 0);
                }
                svg.raw("</g>");
            }
        }
        svg.raw("</g>");
    }

    /** What the tips of a tier throw on the tier below: the same sprigs, dark and a little lower. */
    private void shadow(Svg svg, List<List<Leafing>> bins, int tier) {
        svg.raw("<g stroke=\"").raw(studio.tone(BODY[0])).raw("\" fill=\"").raw(studio.tone(BODY[0])).raw("\">");
        for (int shade = SHADES - 3; shade < SHADES; shade++) {
            int nth = 0;
            for (Leafing leaf : bins.get(tier * SHADES + shade)) {
                if (leaf.near > 0.1 && nth++ % 2 == 0) {
                    use(svg, leaf, sprig * 90, sprig * 280);
                }
            }
        }
        svg.raw("</g>");
    }

    private void use(Svg svg, Leafing leaf, double dx, double dy) {
        svg.raw("<use xlink:href=\"#").raw(leaf.sprig).raw("\" transform=\"translate(");
        svg.builder().append(Math.round(leaf.x + dx)).append(' ').append(Math.round(leaf.y + dy)).append(") rotate(")
                .append(Math.round(leaf.turn)).append(")\"/>");
    }

    /** The dark heart of the tree, ragged at the edge; a sparse tree shows its trunk instead. */
    private void inside(Svg svg) {
        if (tree.fullness() == Fullness.SPARSE) {
            return;
        }
        double fill = tree.fullness() == Fullness.MEDIUM ? 0.84 : 0.92;
        SplittableRandom random = new SplittableRandom(seed ^ 0x1d5L);
        double low = tree.lowestBranch();
        double crown = tree.height() - low;
        int teeth = tiers.length * 3;
        Path edge = Path.coarse().m(0, eye.y(low + crown * 0.95));
        for (int side = 1; side >= -1; side -= 2) {
            for (int i = 0; i <= teeth; i++) {
                double at = side > 0 ? 1 - (double) i / teeth : (double) i / teeth;
                double y = low + crown * (0.03 + at * 0.9);
                double cone = tree.radiusAt(y);
                double r = cone * fill * Math.min(1, 0.25 + cone / (sprig * 3)) * (0.88 + 0.16 * random.nextDouble());
                edge.l(side * 1000 * r * 0.86, eye.y(y)).l(side * 1000 * r, eye.y(y - sprig * 0.22));
            }
        }
        edge.z();
        double half = tree.widestRadius() * 900;
        String dark = studio.tone("#0c1f16");
        String soft = studio.tone("#14301f");
        svg.fill(studio.linear(-half, 0, half, 0, Stop.of(0, soft), Stop.of(0.45, dark), Stop.of(1, dark)), edge);
    }
}
