package boughwright.layout;

import boughwright.brief.SeenFrom;
import boughwright.drawing.ProposalPicture;
import boughwright.drawing.View;
import boughwright.proposal.Proposal;
import boughwright.proposal.ProposalFixture;
import boughwright.proposal.SeededProposals;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** Prints how fast and how even layouts are on this machine; run on demand, for docs/performance.md. */
public final class LayoutMeasurements {

    private LayoutMeasurements() {
    }

    public static void main(String[] args) {
        System.out.println("processors " + Runtime.getRuntime().availableProcessors() + ", java " + System.getProperty("java.version"));
        Proposal nine = tree(9, "lavish");
        Proposal twenty = tree(20, "lavish");
        time("layout, 9 ft lavish, round, " + nine.layout().pieces().size() + " pieces", 60, 100, () -> again(nine));
        time("layout, 20 ft lavish, round, " + twenty.layout().pieces().size() + " pieces", 12, 40, () -> again(twenty));
        ProposalPicture picture = new ProposalPicture(nine.brief(), nine.kit(), nine.layout(), nine.catalogue());
        time("front picture, 9 ft lavish, round", 60, 100, () -> picture.svg(View.FRONT));
        System.out.printf(Locale.ROOT, "its size: %.0f KB%n", picture.svg(View.FRONT).length() / 1000.0);
        time("picture from above, 9 ft lavish, round", 60, 100, () -> picture.svg(View.ABOVE));
        curve();
        evenness();
        quality();
    }

    private static Proposal tree(double feet, String abundance) {
        return ProposalFixture.made(ProposalFixture.season(), String.format(Locale.ROOT,
                "{\"tree\":{\"height\":\"%.1f ft\",\"fullness\":\"full\",\"seenFrom\":\"round\"},\"abundance\":\"%s\"}", feet, abundance));
    }

    private static Layout again(Proposal p) {
        return Dressing.of(p.brief(), p.needs(), p.kit(), p.catalogue(), p.seed());
    }

    private static double time(String what, int warmUp, int runs, Runnable work) {
        for (int i = 0; i < warmUp; i++) {
            work.run();
        }
        double[] millis = new double[runs];
        for (int i = 0; i < runs; i++) {
            long start = System.nanoTime();
            work.run();
            millis[i] = (System.nanoTime() - start) / 1e6;
        }
        Arrays.sort(millis);
        System.out.printf(Locale.ROOT, "%s: median %.1f ms, p95 %.1f ms (%d runs)%n", what, millis[runs / 2], millis[(int) Math.ceil(runs * 0.95) - 1], runs);
        return millis[runs / 2];
    }

    /** How cost grows with the number of pieces, over trees of growing height. */
    private static void curve() {
        System.out.println("pieces, median ms, and that over n·log2 n in µs:");
        for (double feet : new double[] {5, 7.5, 9, 12, 15, 18, 20}) {
            Proposal p = tree(feet, "lavish");
            int n = p.layout().pieces().size();
            double median = time("  " + feet + " ft, " + n + " pieces", 12, 24, () -> again(p));
            System.out.printf(Locale.ROOT, "  %d: %.1f ms, %.2f µs%n", n, median, 1000 * median / (n * Math.log(n) / Math.log(2)));
        }
    }

    private static void evenness() {
        System.out.println("least neighbour of equal pieces over the hexagonal bound, 50 to 1,000 pieces, trees of 4, 9 and 20 ft: least and mean");
        for (SeenFrom side : SeenFrom.values()) {
            double least = 1;
            double sum = 0;
            int all = 0;
            double spiral = 1;
            for (double feet : new double[] {4, 9, 20}) {
                Surface surface = TreeFixture.surface(feet, side);
                for (int count = 50; count <= 1000; count += 50) {
                    List<Patterns.Wished> plain = Patterns.spiral(surface, count, 0.5);
                    double share = share(surface, Spread.of(surface, plain.stream().map(w -> Spread.Disc.free(w, 1, 0.001)).toList()));
                    least = Math.min(least, share);
                    spiral = Math.min(spiral, share(surface, plain));
                    sum += share;
                    all++;
                }
            }
            System.out.printf(Locale.ROOT, "  %s: %.3f, %.3f; the spiral alone at least %.3f%n", side, least, sum / all, spiral);
        }
    }

    private static double share(Surface surface, List<Patterns.Wished> places) {
        List<Point> points = new ArrayList<>();
        places.forEach(w -> points.add(surface.point(w.slant(), w.angle(), 1)));
        int[][] near = Neighbours.of(points, 1);
        double least = Double.MAX_VALUE;
        for (int i = 0; i < near.length; i++) {
            least = Math.min(least, points.get(i).distance(points.get(near[i][0])));
        }
        return least / Math.sqrt(2 * surface.area() / (Math.sqrt(3) * places.size()));
    }

    private static void quality() {
        List<Layout> all = SeededProposals.all().stream().map(LayoutMeasurements::again).toList();
        double[] empty = all.stream().mapToDouble(l -> l.measures().largestEmptyDisc() / l.measures().meanSpacing()).sorted().toArray();
        double[] alike = all.stream().mapToDouble(l -> l.measures().alike()).sorted().toArray();
        int runs = all.stream().mapToInt(l -> l.ribbonRuns().size()).sum();
        System.out.printf(Locale.ROOT, "100 seeded briefs: %d pieces, %d unplaced, %d of %d runs cross a cluster%n",
                all.stream().mapToInt(l -> l.pieces().size()).sum(), all.stream().mapToInt(l -> l.unplaced().size()).sum(),
                all.stream().mapToInt(l -> l.measures().runsAcross()).sum(), runs);
        System.out.printf(Locale.ROOT, "largest empty disc over the mean spacing: median %.2f, most %.2f%n", empty[empty.length / 2], empty[empty.length - 1]);
        System.out.printf(Locale.ROOT, "filler balls next to one of their kind: median %.2f, p95 %.2f%n", alike[alike.length / 2], alike[(int) (alike.length * 0.95)]);
        for (GapStop stop : GapStop.values()) {
            System.out.printf(Locale.ROOT, "gaps end by %s: %d%n", stop.word(), all.stream().filter(l -> l.gapStop() == stop).count());
        }
    }
}
