package boughwright.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.colour.Deficiency;
import boughwright.colour.HueTemplate;
import boughwright.colour.Oklab;
import boughwright.colour.Srgb;
import boughwright.colour.WarmLight;
import boughwright.palette.Tone;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

class ColourDrawingsTest {

    private static final List<Tone> MEMBERS = List.of(member("main", "#a3202e", 0.6, 0), member("second", "#f3ead9", 0.21, 1), member("spark", "#c79a3a", 0.1, 2),
            member("ground", "#24402f", 0.0, 3));

    private static Tone member(String name, String hex, double share, int part) {
        return new Tone(name, name, Srgb.read(hex).orElseThrow(), share, part);
    }

    private static List<Tone> products(int many, Random random) {
        List<Tone> products = new ArrayList<>();
        for (int i = 0; i < many; i++) {
            products.add(new Tone("slot/" + i, "Product with quite a long name <" + i + ">, matte, 4 in",
                    new Srgb(random.nextInt(256), random.nextInt(256), random.nextInt(256)), 1.0 / many, 0));
        }
        return products;
    }

    private static Document xml(String svg) throws Exception {
        return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)));
    }

    private static List<Element> all(Document document, String name) {
        NodeList found = document.getElementsByTagName(name);
        List<Element> elements = new ArrayList<>();
        for (int i = 0; i < found.getLength(); i++) {
            elements.add((Element) found.item(i));
        }
        return elements;
    }

    private static double number(Element element, String name) {
        return Double.parseDouble(element.getAttribute(name));
    }

    @Test
    void each_drawing_says_what_it_is_and_what_it_shows() throws Exception {
        List<Tone> products = products(17, new Random(1));
        for (String svg : List.of(new HueRing(MEMBERS, products, HueTemplate.V.sectors()).labelled("ring", "A ring", "What it shows"),
                new HueRing(MEMBERS, List.of(), List.of()).small("small", "A ring", "What it shows"),
                LightnessLadder.svg(MEMBERS, products, "ladder", "A ladder", "What it shows"),
                ShareBars.svg(List.of(new ShareBars.Bar("one", List.of(new ShareBars.Part(new Srgb(1, 2, 3), 1)))), "bars", "Bars", "What they show"))) {
            Element root = xml(svg).getDocumentElement();
            assertThat(root.getAttribute("role")).isEqualTo("img");
            String[] labels = root.getAttribute("aria-labelledby").split(" ");
            assertThat(labels).hasSize(2);
            assertThat(svg).contains("<title id=\"" + labels[0] + "\">", "<desc id=\"" + labels[1] + "\">What ");
        }
    }

    @Test
    void a_colour_stands_on_the_ring_at_its_hue_and_as_far_out_as_it_is_strong() throws Exception {
        Document ring = xml(new HueRing(List.of(MEMBERS.get(0)), List.of(), List.of()).labelled("ring", "t", "d"));
        Element dot = all(ring, "ellipse").stream().filter(e -> e.getAttribute("fill").equals("#a3202e")).findFirst().orElseThrow();
        Oklab lab = Oklab.of(new Srgb(0xa3, 0x20, 0x2e));
        double x = number(dot, "cx") - 190;
        double y = 150 - number(dot, "cy");
        assertThat((Math.toDegrees(Math.atan2(y, x)) + 360) % 360).isCloseTo(lab.hue(), within(0.2));
        assertThat(Math.hypot(x, y) / 118).isCloseTo(lab.chroma() / 0.17, within(0.01));
    }

    @Test
    void the_larger_share_has_the_larger_dot_and_a_colour_that_is_missing_is_dashed() throws Exception {
        Document ring = xml(new HueRing(MEMBERS, List.of(), List.of()).labelled("ring", "t", "d"));
        List<Double> sizes = MEMBERS.stream().map(m -> all(ring, "ellipse").stream().filter(e -> e.getAttribute("fill").equals(m.colour().hex())).findFirst().orElseThrow())
                .map(e -> number(e, "rx")).toList();
        assertThat(sizes).isSortedAccordingTo((a, b) -> Double.compare(b, a));
        assertThat(all(ring, "circle").stream().filter(c -> c.hasAttribute("stroke-dasharray"))).hasSize(1);
    }

    /** OKLCH of the band, as CSS Color 4 would have it: lightness and chroma are the same all round. */
    @Test
    void the_band_of_hues_is_of_one_lightness_and_chroma() throws Exception {
        Document ring = xml(new HueRing(List.of(), List.of(), List.of()).labelled("ring", "t", "d"));
        List<Oklab> band = all(ring, "path").stream().map(p -> Oklab.of(Srgb.read(p.getAttribute("fill")).orElseThrow())).toList();
        assertThat(band).hasSize(72).allSatisfy(colour -> {
            assertThat(colour.l()).isCloseTo(0.76, within(0.006));
            assertThat(colour.chroma()).isCloseTo(0.115, within(0.006));
        });
        assertThat(band.get(0).hue()).isCloseTo(2.5, within(1.5));
        assertThat(band.get(18).hue()).isCloseTo(92.5, within(1.5));
    }

    @Test
    void names_beside_ring_and_ladder_never_overlap_whatever_the_colours() throws Exception {
        Random random = new Random(5);
        for (int i = 0; i < 200; i++) {
            List<Tone> members = MEMBERS.stream().map(m -> new Tone(m.id(), m.name(), new Srgb(random.nextInt(256), random.nextInt(256), random.nextInt(256)), 0.25, m.part()))
                    .toList();
            // The ring's two lines of a name stand 15 apart and are one block of 27.
            apart(xml(new HueRing(members, List.of(), List.of()).labelled("ring", "t", "d")), 14.5, 380, 300);
            apart(xml(LightnessLadder.svg(members, products(random.nextInt(26), random), "ladder", "t", "d")), 14, 380, 350);
        }
    }

    /** Words that begin at one edge stand at least so far below one another, and inside the drawing. */
    private static void apart(Document drawing, double step, double width, double height) {
        List<Element> words = all(drawing, "text");
        for (String anchor : List.of("start", "end")) {
            List<Double> lines = words.stream().filter(w -> w.getAttribute("text-anchor").equals(anchor)).map(w -> number(w, "y")).sorted().toList();
            for (int i = 1; i < lines.size(); i++) {
                assertThat(lines.get(i) - lines.get(i - 1)).isGreaterThanOrEqualTo(step);
            }
        }
        assertThat(words).allSatisfy(w -> {
            assertThat(number(w, "y")).isBetween(9.0, height - 2);
            double wide = w.getTextContent().length() * 12.5 * 0.56;
            double x = number(w, "x");
            assertThat(w.getAttribute("text-anchor").equals("start") ? x + wide : x).isLessThanOrEqualTo(width + 14);
        });
    }

    @Test
    void lines_of_words_keep_their_order_their_distance_and_their_bounds() {
        Random random = new Random(9);
        for (int i = 0; i < 500; i++) {
            double[] wanted = random.doubles(random.nextInt(20), 0, 300).toArray();
            double[] places = Chart.spread(wanted, 15, 10, 320);
            Integer[] order = new Integer[wanted.length];
            Arrays.setAll(order, n -> n);
            Arrays.sort(order, (a, b) -> Double.compare(wanted[a], wanted[b]));
            for (int n = 0; n < order.length; n++) {
                assertThat(places[order[n]]).isBetween(10 - 1e-9, 320 + 1e-9);
                if (n > 0) {
                    assertThat(places[order[n]] - places[order[n - 1]]).isGreaterThanOrEqualTo(Math.min(15, 310.0 / (order.length - 1)) - 1e-9);
                }
            }
        }
        assertThat(Chart.spread(new double[] {50, 200}, 15, 10, 320)).containsExactly(50, 200);
        assertThat(Chart.spread(new double[] {100, 100}, 20, 10, 320)).containsExactly(90, 110);
        assertThat(Chart.spread(new double[] {5}, 20, 10, 320)).containsExactly(10);
    }

    @Test
    void a_filter_carries_the_very_matrix_of_its_sight_on_linear_light() throws Exception {
        Document filters = xml(SightFilters.svg(Map.of("seen", Deficiency.DEUTERANOPIA)));
        Element filter = all(filters, "filter").get(0);
        assertThat(filter.getAttribute("color-interpolation-filters")).isEqualTo("linearRGB");
        double[] values = Arrays.stream(all(filters, "feColorMatrix").get(0).getAttribute("values").strip().split("\\s+")).mapToDouble(Double::parseDouble).toArray();
        assertThat(values).hasSize(20);
        double[] matrix = Deficiency.DEUTERANOPIA.matrix();
        for (int row = 0; row < 3; row++) {
            assertThat(Arrays.copyOfRange(values, 5 * row, 5 * row + 3)).containsExactly(Arrays.copyOfRange(matrix, 3 * row, 3 * row + 3), within(1e-6));
            assertThat(values[5 * row + 3]).isZero();
            assertThat(values[5 * row + 4]).isZero();
        }
        assertThat(Arrays.copyOfRange(values, 15, 20)).containsExactly(0, 0, 0, 1, 0);
        assertThat(SightFilters.svg(Map.of("lamp", WarmLight.LAMP))).contains("id=\"lamp\"");
    }

    @Test
    void numbers_in_the_bars_are_readable_on_their_colours() throws Exception {
        for (String hex : List.of("#1f2f55", "#efe4cf", "#a3202e", "#6f8f7c", "#777777")) {
            Srgb colour = Srgb.read(hex).orElseThrow();
            assertThat(Srgb.read(Chart.readable(colour)).orElseThrow().contrast(colour)).isGreaterThan(3.4);
        }
        Document bars = xml(ShareBars.svg(List.of(new ShareBars.Bar("here", List.of(new ShareBars.Part(new Srgb(0, 0, 0), 0.97), new ShareBars.Part(new Srgb(255, 0, 0), 0.03)))),
                "bars", "t", "d"));
        assertThat(all(bars, "text").stream().map(Element::getTextContent)).containsExactly("here", "97");
        assertThat(all(bars, "rect").stream().mapToDouble(r -> number(r, "width")).sum()).isCloseTo(378, within(0.3));
    }
}
