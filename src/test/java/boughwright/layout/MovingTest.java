package boughwright.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.needs.Spot;
import boughwright.proposal.Proposal;
import boughwright.proposal.ProposalFixture;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** What a hand moves: it stays where it was put, others make room, and whatever follows from the layout follows. */
class MovingTest {

    private final Proposal nine = ProposalFixture.made(ProposalFixture.season(), "{\"tree\":{\"height\":\"9 ft\",\"seenFrom\":\"wall\"}}");
    private final Moving moving = new Moving(nine.layout(), nine.brief());

    private Layout moved(Map<String, Spot> spots) {
        return Dressing.of(nine.brief(), nine.needs(), nine.kit(), nine.catalogue(), nine.seed(), spots);
    }

    private static Map<String, Point> places(Layout layout) {
        Map<String, Point> places = new LinkedHashMap<>();
        layout.pieces().forEach(p -> places.put(p.id(), p.at()));
        return places;
    }

    @Test
    void a_single_piece_lies_where_it_was_put_and_only_neighbours_of_its_zone_make_room() {
        Placement flower = nine.layout().pieces().stream().filter(p -> p.id().equals("single-flower-2")).findFirst().orElseThrow();
        Placement cluster = nine.layout().pieces().stream().filter(p -> p.group().equals("cluster-5")).findFirst().orElseThrow();
        Spot onto = new Spot(cluster.height() + 0.05, cluster.clock());

        Layout after = moved(Map.of("single-flower-2", onto));

        Placement there = after.pieces().stream().filter(p -> p.id().equals("single-flower-2")).findFirst().orElseThrow();
        assertThat(there.height()).isCloseTo(onto.height(), within(1e-9));
        assertThat(there.clock()).isCloseTo(onto.clock(), within(1e-9));
        Map<String, Point> before = places(nine.layout());
        List<Placement> stirred = after.pieces().stream().filter(p -> !p.at().equals(before.get(p.id()))).toList();
        assertThat(stirred).extracting(Placement::zone).containsOnly(flower.zone());
        assertThat(stirred.stream().map(p -> p.group().isEmpty() ? p.id() : p.group()).distinct()).contains("cluster-5").hasSizeLessThan(5);
        assertThat(after.clashes().stream().filter(c -> c.kind() == Clash.Kind.OVERLAP)).isEmpty();
        assertThat(overlaps(after)).isZero();
    }

    private static long overlaps(Layout layout) {
        List<Placement> outer = layout.pieces().stream().filter(p -> p.zone() == Zone.OUTER).toList();
        long overlaps = 0;
        for (Placement a : outer) {
            overlaps += outer.stream().filter(b -> a.id().compareTo(b.id()) < 0 && (a.group().isEmpty() || !a.group().equals(b.group())))
                    .filter(b -> a.at().distance(b.at()) < a.radius() + b.radius() - 1e-6).count();
        }
        return overlaps;
    }

    @Test
    void two_that_are_put_into_one_place_clash_and_the_plan_says_so() {
        Spot spot = new Spot(1.2, 6);
        Layout after = moved(Map.of("single-flower-1", spot, "cluster-2", spot));
        assertThat(after.clashes()).extracting(Clash::kind).contains(Clash.Kind.OVERLAP);
        Proposal told = ProposalFixture.season().rearranged(nine, nine.adjustments().withMoved("single-flower-1", spot).withMoved("cluster-2", spot));
        assertThat(told.plan().cautions()).anySatisfy(c -> assertThat(c.text()).contains("Cluster 2").contains("overlaps"));
        assertThat(told.kit()).isEqualTo(nine.kit());
    }

    @Test
    void a_cluster_moves_as_one_and_gaps_and_steps_follow() {
        Spot to = new Spot(0.9, 7.5);
        Proposal after = ProposalFixture.season().rearranged(nine, nine.adjustments().withMoved("cluster-3", to));
        Spot now = new Moving(after.layout(), after.brief()).spot("cluster-3").orElseThrow();
        assertThat(now.height()).isCloseTo(to.height(), within(1e-9));
        assertThat(now.clock()).isCloseTo(to.clock(), within(1e-9));
        assertThat(after.layout().ribbonRuns()).as("ribbon stays where it was").isEqualTo(nine.layout().ribbonRuns());
        assertThat(after.layout().gaps()).isNotEqualTo(nine.layout().gaps());
        assertThat(after.plan().steps()).isNotEqualTo(nine.plan().steps());
        for (RollCuts roll : after.layout().cutList()) {
            assertThat(roll.cuts().stream().mapToDouble(RollCuts.Cut::length).sum() + roll.lost() + roll.leftover()).isCloseTo(roll.rollLength(), within(1e-9));
        }
    }

    @Test
    void a_run_starts_where_it_was_put_with_its_length_unchanged() {
        RibbonRun run = nine.layout().ribbonRuns().get(4);
        Spot to = new Spot(run.height() - 0.2, run.clock() > 6 ? run.clock() - 1 : run.clock() + 1);
        RibbonRun after = moved(Map.of(run.id(), to)).ribbonRuns().get(4);
        assertThat(after.height()).isCloseTo(to.height(), within(1e-9));
        assertThat(after.clock()).isCloseTo(to.clock(), within(1e-9));
        assertThat(after.length()).isEqualTo(run.length());
        assertThat(after.drawnLength()).isCloseTo(run.length(), within(0.02 * run.length()));
    }

    @Test
    void a_run_that_is_nudged_goes_as_it_went_before_and_only_it_moves() {
        RibbonRun run = nine.layout().ribbonRuns().get(5);
        Spot to = moving.shifted(run.id(), Side.FRONT, 0.05, 0).orElseThrow();
        Layout after = moved(Map.of(run.id(), to));
        for (RibbonRun other : after.ribbonRuns()) {
            if (!other.id().equals(run.id())) {
                assertThat(other).isEqualTo(nine.layout().ribbonRuns().get(Integer.parseInt(other.id().substring(4)) - 1));
            }
        }
        RibbonRun there = after.ribbonRuns().get(5);
        double before = run.points().stream().mapToDouble(Point::x).average().orElseThrow();
        double now = there.points().stream().mapToDouble(Point::x).average().orElseThrow();
        assertThat(now - before).as("its middle, to the right").isBetween(0.02, 0.08);
    }

    @Test
    void there_and_back_again_ends_where_it_began() {
        for (String id : List.of("cluster-4", "single-flower-1", "run-4")) {
            Layout layout = nine.layout();
            Map<String, Spot> spots = Map.of();
            for (double by : new double[] {0.05, 0.05, -0.05, -0.05}) {
                spots = Map.of(id, new Moving(layout, nine.brief()).shifted(id, Side.FRONT, by, 0).orElseThrow());
                layout = moved(spots);
            }
            Spot began = moving.spot(id).orElseThrow();
            assertThat(spots.get(id).height()).as(id).isCloseTo(began.height(), within(1e-6));
            assertThat(spots.get(id).clock()).as(id).isCloseTo(began.clock(), within(0.05));
        }
    }

    @Test
    void a_heavy_feature_at_the_very_top_is_told() {
        Placement heavy = nine.layout().pieces().stream().filter(p -> p.zone() == Zone.TIP)
                .max(java.util.Comparator.comparingDouble(p -> Bearing.weight(nine.catalogue().product(p.sku()).orElseThrow()))).orElseThrow();
        Layout after = moved(Map.of(heavy.id(), new Spot(2.3, 6)));
        assertThat(after.clashes()).contains(new Clash(heavy.id(), "", Clash.Kind.TOO_HEAVY));
    }

    @Test
    void ids_that_are_not_there_and_no_moves_change_nothing() {
        assertThat(moved(Map.of("spray-9-400", new Spot(1, 6)))).isEqualTo(nine.layout());
        assertThat(moved(Map.of())).isEqualTo(nine.layout());
    }

    @Test
    void a_shift_in_a_picture_goes_as_far_as_the_hand_on_every_side_that_sees_the_piece() {
        for (Side side : List.of(Side.FRONT, Side.LEFT, Side.RIGHT)) {
            String id = nine.layout().pieces().stream().filter(p -> p.zone() == Zone.DEEP && Side.of(p.clock()) == side).findFirst().orElseThrow().id();
            Placement piece = nine.layout().pieces().stream().filter(p -> p.id().equals(id)).findFirst().orElseThrow();
            double before = right(piece.at(), side);
            double by = before > 0 ? -0.04 : 0.04;
            Spot to = moving.shifted(id, side, by, 0.06).orElseThrow();
            assertThat(to.height()).isCloseTo(piece.height() + 0.06, within(1e-9));
            double radius = piece.depth() * TreeFixture.radius(nine, to.height());
            double angle = TreeFixture.angle(to.clock());
            assertThat(right(new Point(radius * Math.sin(angle), to.height(), radius * Math.cos(angle)), side)).as("%s", side)
                    .isCloseTo(before + by, within(1e-9));
        }
    }

    private static double right(Point p, Side side) {
        return switch (side) {
            case FRONT -> p.x();
            case LEFT -> p.z();
            case RIGHT -> -p.z();
            case BACK -> -p.x();
        };
    }

    @Test
    void beyond_the_silhouette_a_shift_ends_on_it() {
        Spot to = moving.shifted("cluster-4", Side.FRONT, 5, 0).orElseThrow();
        assertThat(to.clock()).isCloseTo(3, within(0.05));
    }

    @Test
    void what_can_be_moved_is_each_piece_of_the_body_each_cluster_and_each_run_once() {
        List<String> movable = moving.movable();
        assertThat(movable).doesNotHaveDuplicates().contains("cluster-1", "run-1", "single-flower-1");
        assertThat(movable.stream().filter(id -> id.startsWith("topper") || id.startsWith("light"))).isEmpty();
        long body = nine.layout().pieces().stream().filter(p -> p.zone() != Zone.CROWN && p.group().isEmpty()).map(Placement::id)
                .filter(id -> !id.startsWith("light")).collect(Collectors.counting());
        long clusters = nine.layout().pieces().stream().map(Placement::group).filter(g -> g.startsWith("cluster-")).distinct().count();
        assertThat(movable).hasSize((int) (body + clusters) + nine.layout().ribbonRuns().size());
    }
}
