package boughwright.athome;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.layout.Gap;
import boughwright.layout.Placement;
import boughwright.layout.RibbonRun;
import boughwright.plan.HowTo;
import boughwright.plan.Step;
import boughwright.proposal.Proposal;
import boughwright.proposal.ProposalFixture;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.xml.sax.InputSource;

class AtHomePageTest {

    private static final ObjectMapper JSON = new ObjectMapper();

    private final Proposal nine = ProposalFixture.made(ProposalFixture.season(), "{\"tree\":{\"height\":\"9 ft\",\"seenFrom\":\"wall\"}}");
    private final String html = AtHomePage.html(nine, "kelp-4-moss", "KELP 4 MOSS");

    private JsonNode data() throws Exception {
        String start = "<script type=\"application/json\" id=\"plan\">";
        String text = html.substring(html.indexOf(start) + start.length());
        return JSON.readTree(text.substring(0, text.indexOf("</script>")));
    }

    @Test
    void the_page_holds_every_step_of_the_plan_in_order_with_its_pieces_and_places() throws Exception {
        JsonNode steps = data().get("steps");
        assertThat(steps).hasSize(nine.plan().steps().size());
        for (int i = 0; i < steps.size(); i++) {
            Step step = nine.plan().steps().get(i);
            assertThat(steps.get(i).get("title").textValue()).isEqualTo(step.title());
            assertThat(steps.get(i).get("places")).hasSize(step.places().size());
            assertThat(steps.get(i).get("pieces")).hasSize(step.pieces().size());
            assertThat(steps.get(i).get("minutes").intValue()).isEqualTo(step.minutes());
        }
    }

    @Test
    void every_thing_on_the_tree_is_put_up_by_exactly_one_step() {
        List<String> placed = new ArrayList<>(nine.plan().steps().stream().flatMap(s -> s.placed().stream()).toList());
        List<String> all = Stream.of(nine.layout().pieces().stream().map(Placement::id), nine.layout().ribbonRuns().stream().map(RibbonRun::id),
                nine.layout().gaps().stream().map(Gap::id)).flatMap(s -> s).toList();
        assertThat(placed).containsExactlyInAnyOrderElementsOf(all);
    }

    @Test
    void each_place_of_a_step_leads_to_what_hangs_there_and_a_cluster_to_its_four_stems() throws Exception {
        Proposal round = ProposalFixture.made(ProposalFixture.season(), "{\"tree\":{\"height\":\"9 ft\",\"seenFrom\":\"round\"}}");
        String text = AtHomePage.html(round, "kelp-4-moss", "KELP 4 MOSS");
        String start = "<script type=\"application/json\" id=\"plan\">";
        text = text.substring(text.indexOf(start) + start.length());
        int clusters = 0;
        for (JsonNode step : JSON.readTree(text.substring(0, text.indexOf("</script>"))).get("steps")) {
            if (step.get("at").size() > 0) {
                assertThat(step.get("at")).as(step.get("title").textValue()).hasSameSizeAs(step.get("places"));
                for (JsonNode ids : step.get("at")) {
                    clusters += ids.size() == 4 ? 1 : 0;
                }
            }
        }
        assertThat(clusters).isEqualTo(round.layout().clusters().size());
    }

    @Test
    void a_copy_to_keep_reaches_for_nothing_at_all() {
        String copy = AtHomePage.copy(nine, "kelp-4-moss", "KELP 4 MOSS").replaceAll("xmlns(:xlink)?=\\\\?\"http://www.w3.org/[0-9a-z/]+", "");
        assertThat(copy).doesNotContain("/lib/").doesNotContain("http://").doesNotContain("https://");
    }

    @Test
    void it_needs_nothing_from_elsewhere_but_the_fonts_that_it_can_do_without() {
        String rest = html.replaceAll("url\\(/lib/fonts/[a-z-]+\\.woff2\\)", "").replaceAll("href=\"/lib/boughwright.svg\"", "")
                .replaceAll("xmlns(:xlink)?=\\\\?\"http://www.w3.org/[0-9a-z/]+", "");
        assertThat(rest).doesNotContain("http://").doesNotContain("https://").doesNotContain("src=").doesNotContain("@import").doesNotContain("{{");
    }

    @Test
    void it_shows_the_sides_on_which_something_hangs() {
        assertThat(html).contains("data-view=\"front\"").contains("data-view=\"left\"").contains("data-view=\"right\"").doesNotContain("data-view=\"back\"");
        String corner = AtHomePage.html(ProposalFixture.made(ProposalFixture.season(), "{\"tree\":{\"height\":\"7.5 ft\",\"seenFrom\":\"corner\"}}"), "a-2-b", "A 2 B");
        assertThat(corner).contains("data-view=\"front\"").doesNotContain("data-view=\"left\"");
    }

    @Test
    void names_in_it_are_text_and_never_markup() throws Exception {
        assertThat(AtHomePage.html(nine, "kelp-4-moss", "<b onclick=\"x\">")).contains("&lt;b onclick=&quot;x&quot;&gt;").doesNotContain("<b onclick");
        assertThat(html.substring(html.indexOf("id=\"plan\""))).doesNotContain("</svg></script>");
    }

    @Test
    void the_same_proposal_gives_the_same_page() {
        assertThat(AtHomePage.html(nine, "kelp-4-moss", "KELP 4 MOSS")).isEqualTo(html);
    }

    @ParameterizedTest
    @EnumSource(HowTo.class)
    void each_knack_has_words_and_a_drawing_without_script_and_with_ids_of_its_own(HowTo howTo) throws Exception {
        String svg = AtHomePage.drawing(howTo);
        var document = DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(svg)));
        var all = document.getElementsByTagName("*");
        for (int i = 0; i < all.getLength(); i++) {
            var element = (org.w3c.dom.Element) all.item(i);
            assertThat(element.getTagName()).isNotIn("script", "style", "image", "foreignObject");
            if (element.hasAttribute("id")) {
                assertThat(element.getAttribute("id")).startsWith(howTo.word());
            }
        }
        assertThat(document.getDocumentElement().getAttribute("viewBox")).isEqualTo("0 0 720 260");
        assertThat(AtHomePage.words(howTo)).isNotBlank();
    }

    @Test
    void a_step_that_folds_winds_or_ties_shows_how() {
        assertThat(nine.plan().steps().stream().flatMap(s -> s.howTo().stream()).distinct().toList())
                .contains(HowTo.TWO_LOOP_BOW, HowTo.LOOP_WITH_TWIST, HowTo.FISHTAIL_CUT, HowTo.BIND_CLUSTER, HowTo.WIND_CORD, HowTo.TUCK_BALLS);
    }

    @Test
    void the_scene_to_turn_is_that_of_the_flat_pictures() throws Exception {
        JsonNode scene = JSON.readTree(SceneJson.of(nine));
        TreeSet<String> ids = new TreeSet<>();
        scene.get("pieces").forEach(p -> ids.add(p.get("id").textValue()));
        scene.get("ribbons").forEach(p -> ids.add(p.get("id").textValue()));
        nine.layout().pieces().stream().filter(p -> !p.layer().word().equals("lights")).forEach(p -> assertThat(ids).contains(p.id()));
        nine.layout().ribbonRuns().forEach(r -> assertThat(ids).contains(r.id()));
        nine.layout().gaps().forEach(g -> assertThat(ids).contains(g.id()));
        for (JsonNode piece : scene.get("pieces")) {
            Placement placement = nine.layout().pieces().stream().filter(p -> p.id().equals(piece.get("id").textValue())).findFirst().orElse(null);
            if (placement != null) {
                assertThat(piece.get("x").doubleValue()).isCloseTo(placement.at().x(), org.assertj.core.api.Assertions.within(0.0001));
                assertThat(piece.get("where").textValue()).isNotBlank();
            }
        }
        assertThat(scene.get("boughs").size()).isGreaterThan(100);
        assertThat(SceneJson.of(nine)).isEqualTo(SceneJson.of(nine));
    }
}
