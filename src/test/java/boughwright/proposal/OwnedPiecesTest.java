package boughwright.proposal;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.brief.OwnPieces;
import boughwright.brief.Owned;
import boughwright.kit.KitLine;
import boughwright.needs.Adjustments;
import boughwright.needs.Layer;
import boughwright.needs.Role;
import boughwright.text.Language;
import boughwright.text.Text;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** What the customer has counts first, is placed with the rest, costs nothing, and is flagged where it fights the palette. */
class OwnedPiecesTest {

    private static Proposal with(String... texts) {
        String owned = List.of(texts).stream().map(t -> "{\"text\":\"" + t + "\"}").collect(Collectors.joining(","));
        return ProposalFixture.made(ProposalFixture.season(), "{\"tree\":{\"height\":\"9 ft\"},\"owned\":[" + owned + "]}");
    }

    private static List<KitLine> own(Proposal p) {
        return p.kit().lines().stream().filter(l -> l.sku().startsWith("own-")).toList();
    }

    @Test
    void described_balls_fill_a_part_of_their_size_and_the_rest_is_bought() {
        Proposal none = with();
        Proposal p = with("12 matte red 80 mm balls");
        assertThat(own(p)).hasSize(1);
        assertThat(own(p).get(0).quantity()).isEqualTo(12);
        assertThat(own(p).get(0).owned()).isEqualTo(12);
        assertThat(own(p).get(0).price().amount()).isZero();
        int before = none.kit().line("ornaments/filler-ball/80mm").orElseThrow().quantity();
        assertThat(p.kit().line("ornaments/filler-ball/80mm").map(KitLine::quantity).orElse(0)).isEqualTo(before - 12);
        assertThat(p.layout().pieces().stream().filter(q -> q.sku().equals("own-1"))).hasSize(12);
        assertThat(own(p).get(0).reason().text()).startsWith("12 of your own");
    }

    @Test
    void a_trees_worth_of_lights_is_what_the_house_would_put_on_that_tree() {
        Proposal five = ProposalFixture.made(ProposalFixture.season(), "{\"tree\":{\"height\":\"5 ft\"}}");
        int bulbs = five.needs().need("lights/light-string").orElseThrow().quantity();
        Proposal p = with("a 5 ft tree's worth of warm white lights");
        assertThat(own(p)).hasSize(1);
        assertThat(own(p).get(0).quantity()).isEqualTo(bulbs / 100);
        assertThat(p.layout().bulbs()).hasSize(p.kit().lines().stream().filter(l -> l.layer() == Layer.LIGHTS)
                .mapToInt(l -> l.quantity() * p.product(l).lights().orElseThrow().bulbs()).sum());
    }

    @Test
    void own_flowers_go_into_the_first_clusters_and_the_bought_ones_into_the_next() {
        Proposal p = with("4 cream roses");
        assertThat(own(p)).isNotEmpty();
        assertThat(own(p).stream().mapToInt(KitLine::quantity).sum()).isEqualTo(4);
        assertThat(p.layout().pieces().stream().filter(q -> q.sku().equals("own-1"))).hasSize(4);
    }

    @Test
    void a_product_of_the_shop_that_cannot_be_added_to_is_used_as_far_as_it_goes() {
        var season = ProposalFixture.season();
        var out = season.catalogue().inRole(Role.SPRAY).stream().filter(p -> p.stock() == 0).findFirst();
        out.ifPresent(product -> {
            Proposal p = ProposalFixture.made(season, "{\"tree\":{\"height\":\"9 ft\"},\"owned\":[{\"sku\":\"" + product.sku() + "\",\"quantity\":4}]}");
            assertThat(p.kit().lines().stream().filter(l -> l.sku().equals(product.sku())).mapToInt(KitLine::owned).sum()).isEqualTo(4);
        });
    }

    @Test
    void what_fights_the_palette_and_what_finds_no_place_is_told() {
        Proposal p = with("12 matte blue 80 mm balls", "9 gold glass 70 mm balls", "400 copper 60 mm balls");
        assertThat(OwnNotes.of(p)).anySatisfy(n -> assertThat(n).contains("12 matte blue 80 mm balls", "far from"))
                .anySatisfy(n -> assertThat(n).contains("9 gold glass 70 mm balls", "no place"))
                .anySatisfy(n -> assertThat(n).contains("400 copper 60 mm balls", "stay in the box"));
    }

    @Test
    void next_year_starts_from_what_was_bought() {
        Proposal first = with("12 matte red 80 mm balls");
        List<Owned> bought = Bought.by(first);
        assertThat(bought).anySatisfy(o -> assertThat(o.sku()).isEqualTo("own-1"));
        Proposal next = ((Outcome.Made) ProposalFixture.season().propose(first.brief().withOwned(bought), Adjustments.NONE, 1)).proposal();
        assertThat(next.kit().total().amount()).as("the same tree again costs nothing, or next to it")
                .isLessThan(first.kit().total().amount().movePointLeft(1));
    }

    @Test
    void the_same_words_in_other_forms_are_understood() {
        for (String text : List.of("24 matte red 80 mm balls", "a dozen white poinsettias", "two dozen shiny gold baubles", "3 strings of warm white lights",
                "200 cool white lights", "half a dozen silver stars", "5 green fern sprays", "2 rolls of burgundy ribbon", "a 2.1 m tree’s worth of gold balls")) {
            assertThat(ProposalFixture.brief("{\"tree\":{\"height\":\"9 ft\"},\"owned\":[{\"text\":\"" + text + "\"}]}").owned()).as(text).hasSize(1);
        }
    }

    private static Owned described(String text) {
        List<Owned> owned = ProposalFixture.brief("{\"tree\":{\"height\":\"9 ft\"},\"owned\":[{\"text\":\"" + text + "\"}]}").owned();
        assertThat(owned).as(text).hasSize(1);
        return owned.get(0);
    }

    @Test
    void german_and_spanish_words_mean_what_the_english_ones_mean() {
        String[][] same = {
            {"24 matte red 80 mm balls", "24 matte rote Kugeln, 80 mm", "24 bolas rojas mates de 80 mm"},
            {"24 matte red 80 mm balls", "24 matte, rote 80-mm-Kugeln", "24 bolas mates rojas de 8 cm"},
            {"a dozen white roses", "ein Dutzend weiße Rosen", "una docena de rosas blancas"},
            {"12 pink baubles", "zwölf rosa Christbaumkugeln", "doce bolas rosas"},
            {"two dozen shiny gold balls", "zwei Dutzend glänzende goldene Kugeln", "dos docenas de bolas doradas brillantes"},
            {"3 strings of warm white lights", "3 Lichterketten, warmweiß", "3 guirnaldas de luces blanco cálido"},
            {"200 cool white lights", "200 kaltweiße Lichter", "200 luces blanco frío"},
            {"half a dozen silver stars", "ein halbes Dutzend silberner Sterne", "media docena de estrellas plateadas"},
            {"5 green fern sprays", "5 grüne Farnzweige", "5 ramas verdes de helecho"},
            {"2 rolls of burgundy ribbon", "2 Rollen weinrotes Samtband", "2 rollos de cinta burdeos"},
            {"a 2.1 m tree’s worth of gold balls", "goldene Kugeln für einen Baum von 2,1 m", "bolas doradas para un árbol de 2,1 m"},
            {"a 2.1 m tree’s worth of gold balls", "genug goldene Kugeln für einen 2,1-m-Baum", "bastantes bolas doradas para un árbol de 2,1 m de alto"},
        };
        for (String[] row : same) {
            OwnPieces english = described(row[0]).described().orElseThrow();
            for (String other : List.of(row[1], row[2])) {
                assertThat(described(other).described().orElseThrow()).as(other).usingRecursiveComparison().ignoringFields("text").isEqualTo(english);
            }
        }
    }

    @Test
    void the_example_of_each_language_is_understood() {
        for (Language language : Language.values()) {
            described(Text.in(language, () -> Text.of("interview.owned.words.example")));
        }
    }

    @Test
    void words_that_say_too_little_are_sent_back_with_an_example() {
        for (String text : List.of("some balls", "red balls", "24 red things", "", "24 balls", "a 90 ft tree's worth of red balls", "99999 red balls",
                "rote Kugeln", "24 rote Dinge", "goldene Kugeln für einen Baum von 30 m", "unas bolas rojas", "24 bolas")) {
            Outcome outcome = ProposalFixture.season().propose("{\"tree\":{\"height\":\"9 ft\"},\"owned\":[{\"text\":\"" + text + "\"}]}", Adjustments.NONE, 1);
            assertThat(outcome).as(text).isInstanceOf(Outcome.BadBrief.class);
            assertThat(((Outcome.BadBrief) outcome).faults().get(0).field()).isEqualTo("owned[0].text");
        }
    }
}
