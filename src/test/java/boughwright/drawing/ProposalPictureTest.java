package boughwright.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.KioskFixture;
import boughwright.layout.Placement;
import boughwright.layout.Zone;
import boughwright.needs.Adjustments;
import boughwright.needs.Layer;
import boughwright.proposal.Designer;
import boughwright.proposal.Outcome;
import boughwright.proposal.Proposal;
import java.io.StringReader;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

class ProposalPictureTest {

    private final Proposal proposal = made("{\"tree\": {\"height\": \"9 ft\"}}");
    private final ProposalPicture picture = picture(proposal);

    private static Proposal made(String brief) {
        return ((Outcome.Made) KioskFixture.designer().propose(brief, Adjustments.NONE, Designer.SEED)).proposal();
    }

    private static ProposalPicture picture(Proposal p) {
        return new ProposalPicture(p.brief(), p.kit(), p.layout(), KioskFixture.designer().catalogue());
    }

    private static Document read(String svg) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
        return factory.newDocumentBuilder().parse(new InputSource(new StringReader(svg)));
    }

    private static List<Element> groups(Document svg, String attribute) {
        NodeList all = svg.getElementsByTagName("g");
        return java.util.stream.IntStream.range(0, all.getLength()).mapToObj(i -> (Element) all.item(i)).filter(g -> g.hasAttribute(attribute)).toList();
    }

    @Test
    void the_picture_is_svg_with_a_title_and_a_description_for_screen_readers() throws Exception {
        Document svg = read(picture.svg(View.FRONT));

        assertThat(svg.getDocumentElement().getTagName()).isEqualTo("svg");
        assertThat(svg.getDocumentElement().getAttribute("role")).isEqualTo("img");
        assertThat(svg.getElementsByTagName("title").item(0).getTextContent()).contains("9 ft", "Woodland");
        assertThat(svg.getElementsByTagName("desc").item(0).getTextContent()).contains("drawn to scale");
    }

    @Test
    void every_piece_that_faces_the_viewer_is_drawn_in_its_layer() throws Exception {
        Document svg = read(picture.svg(View.FRONT));
        Set<String> drawn = groups(svg, "data-piece").stream().map(g -> g.getAttribute("data-piece")).collect(Collectors.toSet());

        List<String> facing = proposal.layout().pieces().stream()
                .filter(p -> p.layer() != Layer.LIGHTS && p.zone() != Zone.CROWN && p.at().z() > 0.05).map(Placement::id).toList();
        assertThat(drawn).containsAll(facing);
        assertThat(groups(svg, "data-layer").stream().map(g -> g.getAttribute("data-layer")).distinct())
                .contains("lights", "topper", "ribbon", "florals", "ornaments", "accents");
    }

    @Test
    void from_behind_a_tree_against_a_wall_shows_hardly_any_of_its_pieces() throws Exception {
        int front = groups(read(picture.svg(View.FRONT)), "data-piece").size();
        int back = groups(read(picture.svg(View.BACK)), "data-piece").size();

        assertThat(back).isLessThan(front / 3);
    }

    @Test
    void ids_are_unique_and_two_pictures_on_one_page_do_not_share_any() {
        Set<String> front = ids(picture.svg(View.FRONT));
        Set<String> left = ids(picture.svg(View.LEFT));

        assertThat(front).isNotEmpty().doesNotContainAnyElementsOf(left);
    }

    private static Set<String> ids(String svg) {
        Set<String> ids = new HashSet<>();
        java.util.regex.Matcher found = java.util.regex.Pattern.compile("\\bid=\"([^\"]+)\"").matcher(svg);
        while (found.find()) {
            assertThat(ids.add(found.group(1))).as(found.group(1)).isTrue();
        }
        return ids;
    }

    @Test
    void the_picture_is_to_scale() throws Exception {
        // One unit is a millimetre: from the tip of the tree to the floor the ruler spans 9 ft.
        Proposal small = made("{\"tree\": {\"height\": \"4 ft\"}}");
        double tall = height(read(picture.svg(View.FRONT)));
        double low = height(read(picture(small).svg(View.FRONT)));

        assertThat(tall).isBetween(2743.0, 2743 * 1.35);
        assertThat(low).isBetween(1219.0, 1219 * 1.5);
    }

    private static double height(Document svg) {
        return Double.parseDouble(svg.getDocumentElement().getAttribute("viewBox").split("[ ,]+")[3]);
    }

    @Test
    void the_same_proposal_gives_the_same_picture_and_nothing_outside_is_referred_to() {
        String svg = picture.svg(View.FRONT);

        assertThat(picture(proposal).svg(View.FRONT)).isEqualTo(svg);
        assertThat(svg).doesNotContain("<script").doesNotContain("NaN").doesNotContain("href=\"http");
        assertThat(svg.length()).isLessThan(450_000);
    }

    @Test
    void names_from_a_catalogue_cannot_break_out_of_the_picture() throws Exception {
        Sprite sprite = new Sprite("p1", "p1", "Ball <b onclick=\"x\"> & \"co\"", "ornaments", "filler-ball", Form.BALL, Surface.GLITTER, "#aa3344", null, 0.08, 0,
                0.1, 1, 0.3, 1, 0);
        Scene scene = new Scene(TreeShape.of(2, 1.1, boughwright.brief.Fullness.FULL), List.of(sprite), List.of(), 3);

        Document svg = read(TreePicture.svg(scene, View.FRONT, Options.plain("a <title>", "d & d")));

        assertThat(svg.getElementsByTagName("title").item(0).getTextContent()).isEqualTo("a <title>");
        assertThat(svg.getElementsByTagName("b").getLength()).isZero();
    }

    @Test
    void every_form_in_every_finish_has_its_own_little_picture() throws Exception {
        Set<String> pictures = new HashSet<>();
        for (Form form : Form.values()) {
            for (Surface surface : Surface.values()) {
                String svg = ProductPicture.swatch(new ProductPicture.Product("p", form, surface, "#b5713a", "#efe4cf", 0.1, 0.3, "s"), 48);
                read(svg);
                pictures.add(svg);
            }
        }
        assertThat(pictures).hasSizeGreaterThan(Form.values().length * 3);
    }

    @Test
    void the_room_is_drawn_with_ceiling_and_person_and_an_outline_while_the_height_is_unknown() throws Exception {
        TreeShape tree = TreeShape.of(2.743, 1.575, boughwright.brief.Fullness.MEDIUM);
        String known = RoomPicture.svg(tree, 3.048, RoomPicture.Room.of("ceiling 10 ft", "5 ft 9 in", "a tree"));
        String unknown = RoomPicture.svg(tree, null, RoomPicture.Room.of("", "5 ft 9 in", "a tree").withTreeKnown(false));

        read(unknown);
        assertThat(read(known).getDocumentElement().getTextContent()).contains("ceiling 10 ft", "5 ft 9 in");
        assertThat(unknown).isNotEqualTo(known).doesNotContain("ceiling");
    }
}
