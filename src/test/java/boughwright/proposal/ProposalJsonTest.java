package boughwright.proposal;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.kit.KitSolver;
import boughwright.needs.Adjustments;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** The proposal as other programs read it. */
class ProposalJsonTest {

    private static final String NINE_FEET = "{\"tree\":{\"height\":\"9 ft\"},\"budget\":\"1200.00\"}";

    private static String text(Designer designer, String brief) {
        return ProposalJson.text(ProposalJson.of(ProposalFixture.made(designer, brief)));
    }

    private static JsonNode nineFeet() {
        try {
            return new ObjectMapper().readTree(text(ProposalFixture.season(), NINE_FEET));
        } catch (JsonProcessingException unreadable) {
            throw new AssertionError(unreadable);
        }
    }

    private static List<String> names(JsonNode node) {
        List<String> names = new ArrayList<>();
        node.fieldNames().forEachRemaining(names::add);
        return names;
    }

    @Test
    void the_same_brief_gives_the_same_bytes_twice() {
        assertThat(text(ProposalFixture.season(), NINE_FEET)).isEqualTo(text(ProposalFixture.season(), NINE_FEET));
    }

    @Test
    void a_rulebook_and_catalogue_opened_anew_give_the_same_bytes() {
        Designer anew = new Designer(ProposalFixture.openRulebook(), ProposalFixture.catalogue(ProposalFixture.text("season.csv")),
                new KitSolver());
        assertThat(text(anew, NINE_FEET)).isEqualTo(text(ProposalFixture.season(), NINE_FEET));
        String small = "{\"tree\":{\"height\":\"7.5 ft\",\"seenFrom\":\"bay\"},\"abundance\":\"restrained\",\"household\":{\"toddlers\":true}}";
        assertThat(text(anew, small)).isEqualTo(text(ProposalFixture.season(), small));
    }

    @Test
    void a_proposal_has_its_steps_in_the_order_in_which_they_follow() {
        JsonNode json = nineFeet();
        assertThat(names(json)).containsExactly("edition", "brief", "needs", "kit", "notes", "layout", "plan", "seed");
        assertThat(names(json.get("kit"))).contains("lines", "total", "budget", "score", "terms", "bound", "gap");
        assertThat(names(json.get("layout"))).contains("pieces", "ribbonRuns", "cutList", "gaps", "measures");
        assertThat(names(json.get("plan"))).containsExactly("steps", "minutes", "ladder", "cautions");
        assertThat(json.get("edition").textValue()).isEqualTo("winter-26");
        assertThat(json.get("seed").longValue()).isEqualTo(Designer.SEED);
    }

    @Test
    void a_need_a_line_a_piece_and_a_step_have_their_fields() {
        JsonNode json = nineFeet();
        assertThat(names(json.get("needs").get(0))).contains("id", "layer", "role", "style", "quantity", "unit", "reason");
        assertThat(names(json.get("needs").get(0).get("reason"))).containsExactly("rule", "row", "text");
        assertThat(names(json.at("/kit/lines/0"))).contains("need", "sku", "name", "quantity", "packs", "packSize", "unitPrice", "price",
                "owned", "reason");
        assertThat(names(json.at("/kit/terms/0"))).containsExactly("term", "value", "weight", "points");
        assertThat(names(json.at("/layout/pieces/0"))).contains("id", "need", "sku", "layer", "role", "zone", "height", "clock", "depth", "x",
                "y", "z", "radius");
        assertThat(names(json.at("/layout/ribbonRuns/0"))).contains("id", "baseSku", "overlaySku", "height", "clock", "loops", "bow", "length",
                "points");
        assertThat(names(json.at("/layout/cutList/0"))).containsExactly("sku", "roll", "rollLength", "cuts", "lost", "leftover");
        assertThat(names(json.at("/layout/gaps/0"))).contains("id", "height", "clock", "diameter", "accent", "ribbon");
        assertThat(names(json.at("/plan/steps/0"))).containsExactly("number", "layer", "title", "text", "pieces", "places", "placed",
                "howTo", "minutes");
    }

    @Test
    void money_is_decimal_text_with_two_places_and_the_total_is_the_sum_of_the_prices() {
        JsonNode kit = nineFeet().get("kit");
        BigDecimal sum = BigDecimal.ZERO;
        for (JsonNode line : kit.get("lines")) {
            assertThat(line.get("price").isTextual()).isTrue();
            assertThat(line.get("price").textValue()).matches("\\d+\\.\\d{2}");
            assertThat(line.get("unitPrice").textValue()).matches("\\d+\\.\\d{2}");
            assertThat(new BigDecimal(line.get("unitPrice").textValue()).multiply(line.get("packs").decimalValue()))
                    .isEqualByComparingTo(line.get("price").textValue());
            sum = sum.add(new BigDecimal(line.get("price").textValue()));
        }
        assertThat(kit.get("total").textValue()).isEqualTo(sum.toPlainString());
        assertThat(kit.get("budget").textValue()).isEqualTo("1200.00");
        assertThat(kit.get("currency").textValue()).isEqualTo("USD");
    }

    @Test
    void a_kit_without_a_budget_says_null() {
        JsonNode kit = ProposalJson.of(ProposalFixture.made(ProposalFixture.season(), "{\"tree\":{\"height\":\"6 ft\"}}")).get("kit");
        assertThat(kit.get("budget").isNull()).isTrue();
    }

    @Test
    void lengths_are_numbers_in_metres() {
        JsonNode json = nineFeet();
        // 9 ft of 0.3048 m.
        assertThat(json.at("/brief/tree/height").decimalValue()).isEqualByComparingTo("2.7432");
        json.at("/layout/pieces").forEach(piece -> {
            for (String field : new String[] {"height", "clock", "depth", "x", "y", "z", "radius"}) {
                assertThat(piece.get(field).isNumber()).as(field).isTrue();
            }
        });
        json.at("/layout/cutList").forEach(roll -> assertThat(roll.get("rollLength").isNumber()).isTrue());
    }

    @Test
    void the_score_adds_up_from_its_terms_in_the_file_too() {
        JsonNode kit = nineFeet().get("kit");
        double sum = 0;
        for (JsonNode term : kit.get("terms")) {
            sum += term.get("points").doubleValue();
        }
        assertThat(Math.abs(sum - kit.get("score").doubleValue())).isLessThan(1e-4);
        assertThat(kit.get("bound").doubleValue()).isGreaterThanOrEqualTo(kit.get("score").doubleValue());
        assertThat(kit.get("gap").doubleValue()).isBetween(0.0, 0.02);
    }

    @Test
    void a_medium_tree_of_nine_feet_against_a_wall_has_the_needs_of_the_trade() {
        // Common practice, no published source.
        Map<String, Integer> needs = new TreeMap<>();
        nineFeet().get("needs").forEach(n -> needs.put(n.get("id").textValue(), n.get("quantity").intValue()));
        assertThat(needs).containsEntry("topper/grouping", 3).containsEntry("topper/height-stem", 3).containsEntry("topper/texture-stem", 3)
                .containsEntry("topper/face-flower/1", 3).containsEntry("topper/face-flower/2", 3).containsEntry("ribbon/base-ribbon", 3)
                .containsEntry("ribbon/overlay-ribbon", 3).containsEntry("florals/cluster", 9).containsEntry("florals/height-stem", 9)
                .containsEntry("florals/spray/1", 9);
    }

    @Test
    void what_a_hand_changed_is_in_the_file_with_what_the_rulebook_had_computed() {
        JsonNode json = ProposalJson.of(ProposalFixture.made(ProposalFixture.season(), NINE_FEET,
                Adjustments.NONE.withQuantity("florals/spray/1", 12)));
        assertThat(json.at("/adjustments/quantities").get("florals/spray/1").intValue()).isEqualTo(12);
        json.get("needs").forEach(n -> {
            if (n.get("id").textValue().equals("florals/spray/1")) {
                assertThat(n.get("quantity").intValue()).isEqualTo(12);
                assertThat(n.get("computed").intValue()).isEqualTo(9);
            }
        });
    }

    @Test
    void a_conflict_is_told_with_its_ways_out() {
        Outcome outcome = ProposalFixture.season().propose("{\"tree\":{\"height\":\"9 ft\"},\"budget\":\"60.00\"}", Adjustments.NONE, Designer.SEED);
        JsonNode json = ProposalJson.of((Outcome.NoKitFits) outcome);
        assertThat(names(json)).containsExactly("edition", "brief", "needs", "conflict", "seed");
        assertThat(json.at("/conflict/wishes/0/id").textValue()).isEqualTo("budget");
        assertThat(json.at("/conflict/waysOut/0/steps/0/wish").textValue()).isEqualTo("budget");
        assertThat(json.at("/conflict/waysOut/0/total").textValue()).matches("\\d+\\.\\d{2}");
    }
}
