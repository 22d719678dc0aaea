package boughwright.layout;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.kit.OwnFirst;
import boughwright.needs.Adjustments;
import boughwright.needs.RibbonMeasures;
import boughwright.proposal.Outcome;
import boughwright.proposal.Proposal;
import boughwright.proposal.ProposalFixture;
import boughwright.proposal.SeededProposals;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * The facts of the trade on the layout of each of a thousand seeded briefs; common practice, no published source, but where one is
 * named. What must always hold is asserted of each; what a crowded tree may miss now and then is counted over all.
 */
class ThousandBriefsTest {

    private static final int BRIEFS = 1000;

    /** What one layout showed. */
    private record Seen(List<String> faults, int runs, int runsAcross, int zigzag, int zigzagKept, int balls, double alike, double alikeByChance) {
    }

    @Test
    void every_layout_keeps_to_the_facts_of_the_trade() {
        List<Seen> all = IntStream.rangeClosed(1, BRIEFS).parallel().mapToObj(ThousandBriefsTest::proposal).filter(p -> p != null)
                .map(ThousandBriefsTest::look).toList();
        // A quarter has a budget, and some of those are too small for any kit.
        assertThat(all).hasSizeGreaterThan(850);
        List<String> faults = all.stream().flatMap(s -> s.faults().stream()).toList();
        assertThat(faults.stream().limit(5)).as("the first of %s faults", faults.size()).isEmpty();

        double runs = all.stream().mapToInt(Seen::runs).sum();
        assertThat(all.stream().mapToInt(Seen::runsAcross).sum() / runs).as("runs that cross a cluster").isLessThan(0.10);
        double zigzag = all.stream().mapToInt(Seen::zigzag).sum();
        assertThat(all.stream().mapToInt(Seen::zigzagKept).sum() / zigzag).as("clusters on their side of the zigzag").isGreaterThan(0.95);
        double alike = all.stream().mapToDouble(s -> s.alike() * s.balls()).sum();
        double chance = all.stream().mapToDouble(s -> s.alikeByChance() * s.balls()).sum();
        assertThat(alike / chance).as("balls next to one of their own kind, over what chance would give").isLessThan(0.65);
    }

    private static Proposal proposal(int seed) {
        Outcome outcome = ProposalFixture.season().propose(SeededProposals.brief(seed), Adjustments.NONE, seed);
        return outcome instanceof Outcome.Made made ? made.proposal() : null;
    }

    private static Seen look(Proposal p) {
        List<String> faults = new ArrayList<>();
        Layout layout = p.layout();
        runs(p, faults);
        cuts(p, faults);
        pieces(p, faults);
        Measures m = layout.measures();
        if (m.largestEmptyDisc() > 1.6 * m.meanSpacing()) {
            fault(faults, p, "largest empty disc is " + m.largestEmptyDisc() / m.meanSpacing() + " of the mean spacing");
        }
        sides(p, faults);
        int[] zigzag = zigzag(p);
        Map<String, Long> balls = layout.pieces().stream().filter(q -> q.zone() == Zone.DEEP).collect(Collectors.groupingBy(Placement::sku, TreeMap::new,
                Collectors.counting()));
        double count = balls.values().stream().mapToLong(n -> n).sum();
        double chance = balls.size() < 2 ? 0 : balls.values().stream().mapToDouble(n -> n / count * (n - 1) / Math.max(1, count - 1)).sum();
        return new Seen(faults, layout.ribbonRuns().size(), m.runsAcross(), zigzag[0], zigzag[1], (int) count, m.alike(), chance);
    }

    private static void fault(List<String> faults, Proposal p, String words) {
        faults.add(SeededProposals.of(p) + ": " + words);
    }

    /** Two large loops at least between 8 in tails, drawn as long as they are cut, and beside the starts of the row above. */
    private static void runs(Proposal p, List<String> faults) {
        RibbonMeasures measures = p.needs().ribbon();
        for (RibbonRun run : p.layout().ribbonRuns()) {
            double parts = 2 * measures.tail() + run.loops() * measures.loop() + run.smallLoops() * measures.smallLoop()
                    + (run.bow().equals("none") ? 0 : 2 * measures.bowLoop());
            if (run.loops() < 2 || Math.abs(run.length() - parts) > 1e-9 || Math.abs(measures.tail() - 8 * 0.0254) > 1e-9) {
                fault(faults, p, run.id() + " is not two loops between two tails");
            }
            if (Math.abs(run.drawnLength() - run.length()) > 0.02 * run.length()) {
                fault(faults, p, run.id() + " is drawn " + run.drawnLength() + " m long and cut " + run.length());
            }
            // A small tree and a pencil have no room to start beside one another.
            if (p.brief().tree().height().feet() >= 5 && p.brief().tree().widestDiameter().metres() >= 0.4 * p.brief().tree().height().metres()) {
                startsAside(p, run, faults);
            }
        }
    }

    /** Not straight under a start of the row just above; starts of one row differ in height by at most some 10 cm. */
    private static void startsAside(Proposal p, RibbonRun run, List<String> faults) {
        List<RibbonRun> above = p.layout().ribbonRuns().stream().filter(r -> r.height() - run.height() > 0.105).toList();
        double row = above.stream().mapToDouble(r -> r.height() - run.height()).min().orElse(0);
        for (RibbonRun other : above) {
            double aside = Math.abs(Math.IEEEremainder(TreeFixture.angle(run.clock()) - TreeFixture.angle(other.clock()), 2 * Math.PI))
                    * TreeFixture.radius(p, run.height());
            if (other.height() - run.height() < row + 0.05 && aside < 0.03) {
                fault(faults, p, run.id() + " starts straight under " + other.id() + ", " + aside + " m aside, " + (other.height() - run.height()) + " m below");
            }
        }
    }

    private static void cuts(Proposal p, List<String> faults) {
        for (RollCuts roll : p.layout().cutList()) {
            double cut = roll.cuts().stream().mapToDouble(RollCuts.Cut::length).sum();
            if (Math.abs(cut + roll.lost() + roll.leftover() - roll.rollLength()) > 1e-9 || roll.leftover() < 0) {
                fault(faults, p, "roll " + roll.roll() + " of " + roll.sku() + " does not add up");
            }
        }
    }

    /** Nothing of one zone overlaps; all hang in the seen sector, between floor and tip; a stem does not come out at the far side. */
    private static void pieces(Proposal p, List<String> faults) {
        double half = Math.toRadians(p.brief().tree().seenFrom().degrees()) / 2 + 1e-9;
        Map<Zone, List<Placement>> zones = p.layout().pieces().stream().filter(q -> q.zone() != Zone.CROWN).collect(Collectors.groupingBy(Placement::zone));
        for (List<Placement> zone : zones.values()) {
            List<Placement> byHeight = zone.stream().sorted((a, b) -> Double.compare(a.height(), b.height())).toList();
            double largest = zone.stream().mapToDouble(Placement::radius).max().orElse(0);
            for (int i = 0; i < byHeight.size(); i++) {
                Placement a = byHeight.get(i);
                for (int j = i + 1; j < byHeight.size() && byHeight.get(j).height() - a.height() < a.radius() + largest; j++) {
                    Placement b = byHeight.get(j);
                    boolean bound = !a.group().isEmpty() && a.group().equals(b.group());
                    if (!bound && a.at().distance(b.at()) < a.radius() + b.radius() - 1e-6) {
                        fault(faults, p, a.id() + " overlaps " + b.id());
                    }
                }
                if (Math.abs(TreeFixture.angle(a.clock())) > half) {
                    fault(faults, p, a.id() + " hangs where nobody sees it");
                }
                double stem = p.catalogue().product(a.sku()).orElseThrow().length().metres();
                if (a.role().stem() && a.foldAt().orElse(stem) > TreeFixture.through(p, a.height())) {
                    fault(faults, p, a.id() + " comes out at the far side");
                }
            }
        }
    }

    /** A corner tree spends everything toward the room; a round one a quarter on each side, as near as its number of pieces lets it. */
    private static void sides(Proposal p, List<String> faults) {
        Map<Side, Double> sides = p.layout().measures().sides();
        long body = p.layout().pieces().stream().filter(q -> q.zone() != Zone.CROWN).count();
        switch (p.brief().tree().seenFrom()) {
            case CORNER -> {
                // What hangs at the very edge may be counted to its side.
                if (sides.get(Side.FRONT) < 0.97) {
                    fault(faults, p, "a corner tree has " + sides);
                }
            }
            case WALL -> {
                if (sides.get(Side.BACK) > 1e-9 || body > 150 && Math.abs(sides.get(Side.LEFT) - sides.get(Side.RIGHT)) > 0.08) {
                    fault(faults, p, "a tree by the wall has " + sides);
                }
            }
            case ROUND -> {
                if (body > 150 && sides.values().stream().anyMatch(s -> Math.abs(s - 0.25) > 0.06)) {
                    fault(faults, p, "a round tree has " + sides);
                }
            }
            default -> { }
        }
    }

    private static int[] zigzag(Proposal p) {
        int[] seen = {0, 0};
        if (p.brief().tree().seenFrom().degrees() > 180) {
            return seen;
        }
        List<Placement> stems = p.layout().pieces().stream().filter(q -> OwnFirst.whole(q.needId()).equals("florals/height-stem")).toList();
        List<Patterns.Wished> wished = Patterns.zigzag(new Surface(p.brief().tree()), stems.size(), 1, 0);
        for (Placement stem : stems) {
            int number = Integer.parseInt(stem.group().substring("cluster-".length())) - 1;
            if (number < wished.size() && Math.abs(wished.get(number).angle()) > 0.1 * Math.toRadians(p.brief().tree().seenFrom().degrees())) {
                seen[0]++;
                seen[1] += wished.get(number).angle() * TreeFixture.angle(stem.clock()) > 0 ? 1 : 0;
            }
        }
        return seen;
    }
}
