package boughwright.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.needs.RibbonMeasures;
import boughwright.proposal.Proposal;
import boughwright.proposal.ProposalFixture;
import boughwright.proposal.SeededProposals;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** How runs of ribbon are laid: common practice, no published source. */
class RibbonRunsTest {

    @Test
    void every_run_has_at_least_two_large_loops_and_its_length_is_that_of_its_parts() {
        for (Proposal p : SeededProposals.all()) {
            RibbonMeasures m = p.needs().ribbon();
            for (RibbonRun run : p.layout().ribbonRuns()) {
                assertThat(run.loops()).as(SeededProposals.of(p)).isGreaterThanOrEqualTo(2);
                double parts = 2 * m.tail() + run.loops() * m.loop() + run.smallLoops() * m.smallLoop()
                        + (run.bow().equals("none") ? 0 : 2 * m.bowLoop());
                assertThat(run.length()).as("%s %s", SeededProposals.of(p), run.id()).isCloseTo(parts, within(1e-9));
            }
        }
    }

    @Test
    void tails_are_eight_inches_and_a_large_loop_of_a_tall_tree_takes_twenty_four() {
        for (Proposal p : SeededProposals.all()) {
            assertThat(p.needs().ribbon().tail()).isCloseTo(8 * 0.0254, within(1e-9));
            if (p.brief().tree().height().feet() >= 5) {
                assertThat(p.needs().ribbon().loop()).isCloseTo(24 * 0.0254, within(1e-9));
            }
        }
    }

    @Test
    void the_drawn_line_is_as_long_as_the_ribbon_that_is_cut() {
        for (Proposal p : SeededProposals.all()) {
            for (RibbonRun run : p.layout().ribbonRuns()) {
                double drawn = 0;
                for (int i = 1; i < run.points().size(); i++) {
                    drawn += run.points().get(i).distance(run.points().get(i - 1));
                }
                assertThat(drawn).as("%s %s", SeededProposals.of(p), run.id()).isCloseTo(run.length(), within(0.02 * run.length()));
            }
        }
    }

    @Test
    void the_first_run_alone_begins_with_a_bow_just_under_the_topper() {
        for (Proposal p : SeededProposals.all()) {
            List<RibbonRun> runs = p.layout().ribbonRuns();
            assertThat(runs).as(SeededProposals.of(p)).isNotEmpty();
            assertThat(runs.get(0).bow()).as(SeededProposals.of(p)).isEqualTo("start");
            assertThat(runs.subList(1, runs.size())).as(SeededProposals.of(p)).noneMatch(r -> r.bow().equals("start"));
            double topper = p.layout().pieces().stream().filter(q -> q.zone() == Zone.CROWN).mapToDouble(Placement::height).min().orElseThrow();
            assertThat(topper - runs.get(0).height()).as(SeededProposals.of(p)).isBetween(0.0, 0.3);
            assertThat(runs).as(SeededProposals.of(p)).allSatisfy(r -> assertThat(r.height()).isLessThanOrEqualTo(runs.get(0).height() + 1e-9));
        }
    }

    @Test
    void no_run_starts_straight_under_one_of_the_row_above() {
        List<String> under = new ArrayList<>();
        for (Proposal p : treesWithRoom()) {
            List<List<RibbonRun>> rows = rows(p.layout().ribbonRuns());
            for (int row = 1; row < rows.size(); row++) {
                for (RibbonRun run : rows.get(row)) {
                    for (RibbonRun above : rows.get(row - 1)) {
                        double aside = Math.abs(Math.IEEEremainder(TreeFixture.angle(run.clock()) - TreeFixture.angle(above.clock()), 2 * Math.PI))
                                * TreeFixture.radius(p, run.height());
                        if (aside < 0.05) {
                            under.add(SeededProposals.of(p) + ": " + run.id() + " starts " + aside + " m beside " + above.id());
                        }
                    }
                }
            }
        }
        assertThat(under.stream().limit(3)).as("the first of %s", under.size()).isEmpty();
    }

    /** On a tree below five feet the top is too narrow to keep the starts apart. The four usual heights come as well. */
    private static List<Proposal> treesWithRoom() {
        List<Proposal> proposals = new ArrayList<>(SeededProposals.all().stream().filter(p -> p.brief().tree().height().feet() >= 5).toList());
        for (String feet : new String[] {"5", "6", "6.5", "7.5", "9", "12"}) {
            proposals.add(ProposalFixture.made(ProposalFixture.season(), "{\"tree\":{\"height\":\"" + feet + " ft\"}}"));
        }
        return proposals;
    }

    @Test
    void the_first_bow_faces_the_viewer() {
        for (Proposal p : treesWithRoom()) {
            assertThat(p.layout().ribbonRuns().get(0).clock()).as(SeededProposals.of(p)).isBetween(5.5, 6.5);
        }
    }

    /** Runs by rows: starts of one row differ in height by at most 10 cm, and rows are further apart than that. */
    private static List<List<RibbonRun>> rows(List<RibbonRun> runs) {
        List<List<RibbonRun>> rows = new ArrayList<>();
        double lowest = Double.MAX_VALUE;
        for (RibbonRun run : runs.stream().sorted((a, b) -> Double.compare(b.height(), a.height())).toList()) {
            if (lowest - run.height() > 0.105) {
                rows.add(new ArrayList<>());
            }
            rows.get(rows.size() - 1).add(run);
            lowest = run.height();
        }
        return rows;
    }

    @Test
    void no_two_runs_start_at_the_same_place() {
        List<String> same = new ArrayList<>();
        for (Proposal p : treesWithRoom()) {
            List<RibbonRun> runs = p.layout().ribbonRuns();
            for (int i = 0; i < runs.size(); i++) {
                for (int j = i + 1; j < runs.size(); j++) {
                    double aside = Math.abs(Math.IEEEremainder(TreeFixture.angle(runs.get(i).clock()) - TreeFixture.angle(runs.get(j).clock()),
                            2 * Math.PI))
                            * TreeFixture.radius(p, runs.get(i).height());
                    if (Math.hypot(aside, runs.get(i).height() - runs.get(j).height()) < 0.05) {
                        same.add(SeededProposals.of(p) + ": " + runs.get(i).id() + " and " + runs.get(j).id());
                    }
                }
            }
        }
        assertThat(same.stream().limit(3)).as("the first of %s", same.size()).isEmpty();
    }

    @Test
    void every_run_starts_within_the_seen_sector_and_stays_above_the_floor() {
        for (Proposal p : SeededProposals.all()) {
            double half = Math.toRadians(p.brief().tree().seenFrom().degrees()) / 2 + 1e-9;
            for (RibbonRun run : p.layout().ribbonRuns()) {
                assertThat(Math.abs(TreeFixture.angle(run.clock()))).as("%s %s", SeededProposals.of(p), run.id()).isLessThanOrEqualTo(half);
                assertThat(run.points()).as("%s %s", SeededProposals.of(p), run.id()).allSatisfy(point -> assertThat(point.y()).isGreaterThan(0));
            }
        }
    }

    @Test
    void runs_name_the_two_ribbons_of_the_kit() {
        for (Proposal p : SeededProposals.all()) {
            String base = p.kit().lines().stream().filter(l -> l.needId().equals("ribbon/base-ribbon")).findFirst().orElseThrow().sku();
            String overlay = p.kit().lines().stream().filter(l -> l.needId().equals("ribbon/overlay-ribbon")).findFirst().orElseThrow().sku();
            assertThat(p.layout().ribbonRuns()).as(SeededProposals.of(p)).allSatisfy(run -> {
                assertThat(run.baseSku()).isEqualTo(base);
                assertThat(run.overlaySku()).isEqualTo(overlay);
            });
        }
    }
}
