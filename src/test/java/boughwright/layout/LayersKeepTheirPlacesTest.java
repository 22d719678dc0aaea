package boughwright.layout;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.brief.SeenFrom;
import boughwright.kit.OwnFirst;
import boughwright.needs.Layer;
import boughwright.needs.Role;
import boughwright.proposal.Proposal;
import boughwright.proposal.SeededProposals;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Where each layer goes: common practice, no published source. */
class LayersKeepTheirPlacesTest {

    private static List<Placement> in(Proposal p, Layer layer, Role role) {
        return p.layout().pieces().stream().filter(q -> q.layer() == layer && q.role() == role).toList();
    }

    private static double mean(List<Placement> pieces) {
        return pieces.stream().mapToDouble(Placement::height).average().orElseThrow();
    }

    @Test
    void balls_hide_deeper_than_every_other_layer_of_the_body() {
        for (Proposal p : SeededProposals.all()) {
            double deepest = p.layout().pieces().stream().filter(q -> q.zone() != Zone.CROWN && q.role() != Role.FILLER_BALL)
                    .mapToDouble(Placement::depth).min().orElseThrow();
            assertThat(in(p, Layer.ORNAMENTS, Role.FILLER_BALL)).as(SeededProposals.of(p))
                    .allSatisfy(ball -> assertThat(ball.depth()).isLessThan(deepest));
        }
    }

    @Test
    void feature_ornaments_hang_at_the_branch_tips() {
        for (Proposal p : SeededProposals.all()) {
            assertThat(in(p, Layer.ORNAMENTS, Role.FEATURE_ORNAMENT)).as(SeededProposals.of(p))
                    .allSatisfy(feature -> assertThat(feature.depth()).isEqualTo(1));
        }
    }

    @Test
    void larger_balls_sit_lower_on_average() {
        for (Proposal p : SeededProposals.all()) {
            Map<Double, List<Placement>> bySize = in(p, Layer.ORNAMENTS, Role.FILLER_BALL).stream()
                    .collect(Collectors.groupingBy(Placement::radius, TreeMap::new, Collectors.toList()));
            List<List<Placement>> sizes = bySize.values().stream().filter(l -> l.size() >= 4).toList();
            for (int i = 1; i < sizes.size(); i++) {
                assertThat(mean(sizes.get(i))).as("%s: balls of radius %s", SeededProposals.of(p), sizes.get(i).get(0).radius())
                        .isLessThan(mean(sizes.get(i - 1)));
            }
        }
    }

    @Test
    void larger_features_hang_lower_on_average() {
        for (Proposal p : SeededProposals.all()) {
            List<Placement> smaller = p.layout().pieces().stream().filter(q -> q.needId().endsWith("/smaller")).toList();
            List<Placement> larger = p.layout().pieces().stream().filter(q -> q.needId().endsWith("/larger")).toList();
            // On a very small tree a long piece hangs higher than it would, clear of the floor.
            if (!smaller.isEmpty() && !larger.isEmpty() && p.brief().tree().height().feet() >= 4) {
                assertThat(mean(larger)).as(SeededProposals.of(p)).isLessThan(mean(smaller));
            }
        }
    }

    @Test
    void the_topper_is_above_the_body_and_its_flowers_are_at_its_base() {
        for (Proposal p : SeededProposals.all()) {
            double body = p.layout().pieces().stream().filter(q -> q.layer() == Layer.FLORALS).mapToDouble(Placement::height).max().orElseThrow();
            List<Placement> stems = in(p, Layer.TOPPER, Role.HEIGHT_STEM);
            List<Placement> flowers = in(p, Layer.TOPPER, Role.FACE_FLOWER);
            assertThat(mean(stems)).as(SeededProposals.of(p)).isGreaterThan(mean(in(p, Layer.TOPPER, Role.TEXTURE_STEM)));
            assertThat(mean(in(p, Layer.TOPPER, Role.TEXTURE_STEM))).as(SeededProposals.of(p)).isGreaterThan(mean(flowers));
            assertThat(mean(flowers)).as(SeededProposals.of(p)).isGreaterThan(body);
        }
    }

    @Test
    void a_cluster_is_one_of_each_of_the_four_stems() {
        for (Proposal p : SeededProposals.all()) {
            Map<String, List<Placement>> clusters = p.layout().pieces().stream().filter(q -> q.group().startsWith("cluster-"))
                    .collect(Collectors.groupingBy(Placement::group, LinkedHashMap::new, Collectors.toList()));
            int wanted = p.needs().quantity(Layer.FLORALS, Role.CLUSTER);
            long without = p.layout().unplaced().stream().filter(n -> OwnFirst.whole(n).equals("florals/height-stem")).count();
            assertThat(clusters.size()).as(SeededProposals.of(p)).isEqualTo(wanted - (int) without);
            assertThat(clusters.values()).as(SeededProposals.of(p)).allSatisfy(stems -> assertThat(stems).extracting(q -> OwnFirst.whole(q.needId()))
                    .containsExactlyInAnyOrder("florals/height-stem", "florals/texture-stem", "florals/face-flower/1", "florals/face-flower/2"));
        }
    }

    @Test
    void clusters_zigzag_down_a_tree_that_shows_one_face_and_single_flowers_cross_them() {
        for (SeenFrom side : List.of(SeenFrom.CORNER, SeenFrom.WALL)) {
            for (double feet : new double[] {6.5, 7.5, 9, 12}) {
                Surface surface = TreeFixture.surface(feet, side);
                List<Double> clusters = angles(Patterns.zigzag(surface, (int) feet, 1, 0));
                List<Double> flowers = angles(Patterns.zigzag(surface, (int) feet, -1, 0.35));
                for (int i = 0; i < clusters.size(); i++) {
                    assertThat(Math.signum(clusters.get(i))).as("step %s", i).isEqualTo(i % 2 == 0 ? 1 : -1);
                    assertThat(Math.signum(flowers.get(i))).as("flower %s", i).isEqualTo(i % 2 == 0 ? -1 : 1);
                }
            }
        }
    }

    private static List<Double> angles(List<Patterns.Wished> places) {
        return places.stream().map(Patterns.Wished::angle).toList();
    }

    @Test
    void placed_clusters_keep_to_the_side_of_the_zigzag_that_they_were_meant_for() {
        int kept = 0;
        int all = 0;
        for (Proposal p : SeededProposals.all()) {
            if (p.brief().tree().seenFrom().degrees() > 180) {
                continue;
            }
            List<Placement> stems = p.layout().pieces().stream().filter(q -> OwnFirst.whole(q.needId()).equals("florals/height-stem")).toList();
            List<Double> wished = angles(Patterns.zigzag(new Surface(p.brief().tree()), p.needs().quantity(Layer.FLORALS, Role.CLUSTER), 1, 0));
            for (Placement stem : stems) {
                double wish = wished.get(Integer.parseInt(stem.group().substring("cluster-".length())) - 1);
                if (Math.abs(wish) > 0.1 * Math.toRadians(p.brief().tree().seenFrom().degrees())) {
                    all++;
                    kept += wish * TreeFixture.angle(stem.clock()) > 0 ? 1 : 0;
                }
            }
        }
        // A cluster that had to make room for another may stray; nineteen in twenty keep the zigzag.
        assertThat(all).isGreaterThan(200);
        assertThat(kept / (double) all).isGreaterThan(0.95);
    }

    @Test
    void a_zigzag_of_many_pieces_on_a_wide_tree_goes_from_edge_to_edge_and_back_with_stops_between() {
        List<Double> across = angles(Patterns.zigzag(TreeFixture.surface(12, SeenFrom.WALL), 40, 1, 0));
        int turns = 0;
        for (int i = 2; i < across.size(); i++) {
            double before = across.get(i - 1) - across.get(i - 2);
            double after = across.get(i) - across.get(i - 1);
            assertThat(after).as("step %s", i).isNotZero();
            turns += before * after < 0 ? 1 : 0;
        }
        assertThat(turns).isBetween(6, 19);
        assertThat(across.stream().mapToDouble(a -> a).max().orElseThrow()).isGreaterThan(1);
        assertThat(across.stream().mapToDouble(a -> a).min().orElseThrow()).isLessThan(-1);
    }

    @Test
    void the_measures_of_a_layout_speak_of_its_own_pieces() {
        for (Proposal p : SeededProposals.all()) {
            Measures measures = p.layout().measures();
            assertThat(measures.coverage()).as(SeededProposals.of(p)).containsOnlyKeys(Layer.values());
            assertThat(measures.leastNeighbourShare()).as(SeededProposals.of(p)).isBetween(0.0, 1.0);
            assertThat(measures.largestEmptyDisc()).as(SeededProposals.of(p)).isBetween(0.0, 0.6);
        }
    }
}
