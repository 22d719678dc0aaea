package boughwright.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.catalogue.Product;
import boughwright.kit.KitLine;
import boughwright.needs.Adjustments;
import boughwright.needs.Role;
import boughwright.proposal.Proposal;
import boughwright.proposal.ProposalFixture;
import boughwright.proposal.SeededProposals;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.Test;

/** Every piece of a hundred kits has its place, and the place is on the tree. */
class PiecesAreOnTheTreeTest {

    @Test
    void every_piece_of_the_kit_is_placed_or_named_as_having_found_no_room() {
        for (Proposal p : SeededProposals.all()) {
            Map<String, Long> bought = new TreeMap<>(p.kit().lines().stream().filter(l -> !l.role().ribbon())
                    .collect(Collectors.toMap(KitLine::needId, l -> (long) l.quantity())));
            Map<String, Long> found = p.layout().pieces().stream().collect(Collectors.groupingBy(Placement::needId, TreeMap::new,
                    Collectors.counting()));
            p.layout().unplaced().forEach(need -> found.merge(need, 1L, Long::sum));
            assertThat(found).as(SeededProposals.of(p)).isEqualTo(bought);
        }
    }

    @Test
    void a_placed_piece_is_the_product_of_its_line() {
        for (Proposal p : SeededProposals.all()) {
            Map<String, KitLine> lines = p.kit().lines().stream().collect(Collectors.toMap(KitLine::needId, l -> l));
            assertThat(p.layout().pieces()).as(SeededProposals.of(p)).allSatisfy(piece -> {
                KitLine line = lines.get(piece.needId());
                assertThat(piece.sku()).isEqualTo(line.sku());
                assertThat(piece.role()).isEqualTo(line.role());
                assertThat(piece.layer()).isEqualTo(line.layer());
            });
            assertThat(p.layout().pieces()).extracting(Placement::id).doesNotHaveDuplicates();
        }
    }

    @Test
    void nearly_everything_finds_room_on_trees_of_ordinary_girth() {
        for (Proposal p : SeededProposals.all()) {
            double girth = p.brief().tree().widestDiameter().metres() / p.brief().tree().height().metres();
            if (girth >= 0.4) {
                assertThat(p.layout().unplaced().size()).as("without room: %s", SeededProposals.of(p))
                        .isLessThanOrEqualTo(p.layout().pieces().size() / 50);
            }
        }
    }

    @Test
    void flowers_that_find_no_room_on_a_small_tree_are_named_once_each_and_the_rest_are_placed() {
        Proposal p = ProposalFixture.made(ProposalFixture.season(), "{\"tree\":{\"height\":\"3 ft\",\"seenFrom\":\"corner\"}}",
                Adjustments.NONE.withQuantity("florals/single-flower", 150));
        long placed = p.layout().pieces().stream().filter(q -> q.role() == Role.SINGLE_FLOWER).count();
        assertThat(placed).isPositive();
        assertThat(p.layout().unplaced()).hasSize((int) (150 - placed)).isNotEmpty().containsOnly("florals/single-flower");
        assertThat(p.plan().cautions()).anySatisfy(c -> {
            assertThat(c.id()).isEqualTo("no-room");
            assertThat(c.text()).contains(String.valueOf(150 - placed));
        });
    }

    @Test
    void no_piece_is_outside_the_seen_sector() {
        for (Proposal p : SeededProposals.all()) {
            double half = Math.toRadians(p.brief().tree().seenFrom().degrees()) / 2 + 1e-9;
            assertThat(p.layout().pieces()).as(SeededProposals.of(p))
                    .allSatisfy(piece -> assertThat(Math.abs(TreeFixture.angle(piece.clock()))).as(piece.toString()).isLessThanOrEqualTo(half));
        }
    }

    @Test
    void no_piece_is_on_the_floor_or_above_the_tip() {
        for (Proposal p : SeededProposals.all()) {
            double tip = p.brief().tree().height().metres();
            assertThat(p.layout().pieces()).as(SeededProposals.of(p))
                    .allSatisfy(piece -> assertThat(piece.height()).as(piece.toString()).isBetween(0.07 * tip, tip));
            assertThat(p.layout().bulbs()).as(SeededProposals.of(p)).allSatisfy(bulb -> assertThat(bulb.y()).isBetween(0.07 * tip, tip));
        }
    }

    @Test
    void room_coordinates_say_the_same_as_height_clock_and_depth() {
        for (Proposal p : SeededProposals.all()) {
            for (Placement piece : p.layout().pieces()) {
                double out = piece.depth() * TreeFixture.radius(p, piece.height());
                double angle = TreeFixture.angle(piece.clock());
                String what = SeededProposals.of(p) + " " + piece;
                assertThat(piece.at().x()).as(what).isCloseTo(out * Math.sin(angle), within(1e-9));
                assertThat(piece.at().y()).as(what).isCloseTo(piece.height(), within(1e-9));
                assertThat(piece.at().z()).as(what).isCloseTo(out * Math.cos(angle), within(1e-9));
            }
        }
    }

    @Test
    void clock_positions_are_read_from_above_with_six_toward_the_viewer() {
        assertThat(Surface.clock(0)).isEqualTo(6);
        assertThat(Surface.clock(Math.PI / 2)).as("+x, to the viewer's right").isEqualTo(3);
        assertThat(Surface.clock(-Math.PI / 2)).isEqualTo(9);
        assertThat(Surface.clock(Math.PI)).isEqualTo(12);
        assertThat(Surface.clock(-Math.PI)).isEqualTo(12);
    }

    @Test
    void a_bulb_glows_for_every_lamp_of_every_string() {
        for (Proposal p : SeededProposals.all()) {
            int lamps = p.kit().lines().stream().filter(l -> l.role() == Role.LIGHT_STRING)
                    .mapToInt(l -> l.quantity() * product(l).lights().orElseThrow().bulbs()).sum();
            assertThat(p.layout().bulbs()).as(SeededProposals.of(p)).hasSize(lamps);
        }
    }

    @Test
    void the_way_through_a_tree_is_that_of_a_stem_followed_step_by_step() {
        Proposal p = ProposalFixture.made(ProposalFixture.season(), "{\"tree\":{\"height\":\"9 ft\"}}");
        Surface surface = new Surface(p.brief().tree());
        for (double height = 0.3; height < 2.4; height += 0.1) {
            assertThat(Stems.through(surface, surface.slantAtHeight(height))).as("at %s m", height).isCloseTo(TreeFixture.through(p, height), within(0.01));
        }
    }

    @Test
    void a_stem_longer_than_the_tree_is_deep_is_folded_to_less_than_that() {
        SoftAssertions softly = new SoftAssertions();
        for (Proposal p : SeededProposals.all()) {
            for (Placement piece : p.layout().pieces()) {
                if (piece.role().stem() && piece.zone() != Zone.CROWN) {
                    double deep = TreeFixture.through(p, piece.height());
                    double stem = ProposalFixture.season().catalogue().product(piece.sku()).orElseThrow().length().metres();
                    double reach = piece.foldAt().orElse(stem);
                    softly.assertThat(reach).as("%s %s", SeededProposals.of(p), piece).isLessThan(deep);
                }
            }
        }
        softly.assertAll();
    }

    private static Product product(KitLine line) {
        return ProposalFixture.season().catalogue().product(line.sku()).orElseThrow();
    }
}
