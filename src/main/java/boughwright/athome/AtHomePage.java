package boughwright.athome;

import boughwright.drawing.DressedTree;
import boughwright.drawing.ProposalPicture;
import boughwright.drawing.View;
import boughwright.layout.Placement;
import boughwright.layout.Side;
import boughwright.needs.Layer;
import boughwright.plan.HowTo;
import boughwright.plan.Step;
import boughwright.proposal.Proposal;
import boughwright.text.Language;
import boughwright.text.Text;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * The plan as one page for a phone: a step at a time, its pieces picked out on a drawing of what is already up. Style, script, drawings
 * and words are all in it, but for the fonts, so that it works without a connection once it is loaded, and from a saved copy. The same proposal and
 * code give the same text.
 */
public final class AtHomePage {

    private static final ObjectMapper JSON = new ObjectMapper();
    private static final int SWATCH = 44;
    private static final List<String> WORDS = List.of("step-of", "minutes-left", "none-left", "done", "undone", "on", "back", "start", "all-done", "all-done.text", "take",
            "where", "how", "care", "keep-lit", "save", "view", "front", "left", "right", "back-side", "again", "shown-alone", "progress");

    private final Proposal proposal;
    private final String code;
    private final String spoken;

    private AtHomePage(Proposal proposal, String code, String spoken) {
        this.proposal = proposal;
        this.code = code;
        this.spoken = spoken;
    }

    /**
     * @param code of the consultation, under which the phone keeps how far its owner has come
     * @param spoken the same as it is said
     */
    public static String html(Proposal proposal, String code, String spoken) {
        return new AtHomePage(proposal, code, spoken).write();
    }

    /** The same for a file of its own, which reaches for nothing else. */
    public static String copy(Proposal proposal, String code, String spoken) {
        return html(proposal, code, spoken).replaceAll("@font-face [^\n]*\n", "").replace("<link rel=\"icon\" href=\"/lib/boughwright.svg\">\n", "");
    }

    /** In place of a plan that is not there, or not any more. */
    public static String sorry() {
        return resource("sorry.html").replace("{{lang}}", Language.now().tag()).replace("{{brand}}", escaped(Text.of("brand"))).replace("{{title}}", escaped(Text.of("athome.sorry.title")))
                .replace("{{text}}", escaped(Text.of("athome.sorry"))).replace("{{style}}", resource("page.css"));
    }

    /** The digest by which a content security policy knows the page's one script: {@code sha256-} and Base64. */
    public static String scriptDigest() {
        return Script.DIGEST;
    }

    private static final class Script {

        private static final String DIGEST = digest();

        private static String digest() {
            try {
                byte[] digest = java.security.MessageDigest.getInstance("SHA-256").digest(resource("page.js").getBytes(java.nio.charset.StandardCharsets.UTF_8));
                return "sha256-" + java.util.Base64.getEncoder().encodeToString(digest);
            } catch (java.security.NoSuchAlgorithmException impossible) {
                throw new IllegalStateException("every Java knows SHA-256", impossible);
            }
        }
    }

    private String write() {
        return resource("page.html")
                .replace("{{title}}", escaped(Text.of("athome.title", proposal.brief().tree().height().show(proposal.brief().units()))))
                .replace("{{lang}}", Language.now().tag())
                .replace("{{shop}}", escaped(proposal.edition().shop()))
                .replace("{{brand}}", escaped(Text.of("brand")))
                .replace("{{code}}", escaped(spoken))
                .replace("{{noscript}}", escaped(Text.of("athome.noscript")))
                .replace("{{loading}}", escaped(Text.of("athome.loading")))
                .replace("{{style}}", resource("page.css"))
                .replace("{{pictures}}", pictures())
                .replace("{{howto}}", howTo())
                .replace("{{data}}", data().toString().replace("</", "<\\/"))
                .replace("{{script}}", resource("page.js"));
    }

    /** The sides on which anything hangs, the front first. */
    private List<View> views() {
        Map<Side, Double> sides = proposal.layout().measures().sides();
        List<View> views = new ArrayList<>(List.of(View.FRONT));
        for (Map.Entry<View, Side> each : List.of(Map.entry(View.LEFT, Side.LEFT), Map.entry(View.RIGHT, Side.RIGHT), Map.entry(View.BACK, Side.BACK))) {
            if (sides.getOrDefault(each.getValue(), 0.0) > 0.02) {
                views.add(each.getKey());
            }
        }
        return views;
    }

    private String pictures() {
        ProposalPicture picture = new ProposalPicture(proposal.brief(), proposal.kit(), proposal.layout(), proposal.catalogue());
        StringBuilder out = new StringBuilder();
        for (View view : views()) {
            out.append("<template data-view=\"").append(view.name().toLowerCase(Locale.ROOT)).append("\">").append(picture.onScreen(view, false))
                    .append("</template>\n");
        }
        return out.toString();
    }

    private String howTo() {
        StringBuilder out = new StringBuilder();
        used().forEach(h -> out.append("<template data-howto=\"").append(h.word()).append("\">").append(drawing(h)).append("</template>\n"));
        return out.toString();
    }

    private Set<HowTo> used() {
        Set<HowTo> used = new TreeSet<>();
        proposal.plan().steps().forEach(s -> used.addAll(s.howTo()));
        return used;
    }

    /** The drawing of a knack as SVG text without a title; its words are {@link #words}. */
    public static String drawing(HowTo howTo) {
        return resource("howto/" + howTo.word() + ".svg");
    }

    public static String words(HowTo howTo) {
        return Text.of("howto." + howTo.word());
    }

    private ObjectNode data() {
        ObjectNode node = JSON.createObjectNode();
        node.put("code", code).put("ladder", proposal.plan().ladder());
        ObjectNode words = node.putObject("words");
        WORDS.forEach(w -> words.put(w, Text.of("athome." + w, "{0}", "{1}")));
        ObjectNode knacks = node.putObject("howTo");
        for (HowTo howTo : used()) {
            knacks.putObject(howTo.word()).put("title", Text.of("howto." + howTo.word() + ".title")).put("text", words(howTo));
        }
        ArrayNode cautions = node.putArray("cautions");
        proposal.plan().cautions().forEach(c -> cautions.add(c.text()));
        ArrayNode steps = node.putArray("steps");
        proposal.plan().steps().forEach(s -> step(steps.addObject(), s));
        return node;
    }

    private void step(ObjectNode node, Step step) {
        node.put("title", step.title()).put("text", step.text()).put("minutes", step.minutes()).put("lights", step.layer() == Layer.LIGHTS);
        ArrayNode pieces = node.putArray("pieces");
        step.pieces().forEach(p -> pieces.addObject().put("name", p.name()).put("quantity", p.quantity())
                .put("picture", proposal.catalogue().product(p.sku()).map(q -> DressedTree.swatch(q, SWATCH)).orElse("")));
        step.places().forEach(node.putArray("places")::add);
        step.placed().forEach(node.putArray("placed")::add);
        ArrayNode at = node.putArray("at");
        at(step).forEach(ids -> ids.forEach(at.addArray()::add));
        ArrayNode howTo = node.putArray("howTo");
        step.howTo().forEach(h -> howTo.add(h.word()));
    }

    /** What hangs at each place of a step: one thing, or the stems of a cluster; nothing where places are not of single things. */
    private List<List<String>> at(Step step) {
        if (step.places().size() == step.placed().size()) {
            return step.placed().stream().map(List::of).toList();
        }
        Map<String, String> groups = proposal.layout().pieces().stream().filter(p -> !p.group().isEmpty())
                .collect(Collectors.toMap(Placement::id, Placement::group));
        Map<String, List<String>> byGroup = new LinkedHashMap<>();
        step.placed().forEach(id -> byGroup.computeIfAbsent(groups.getOrDefault(id, ""), g -> new ArrayList<>()).add(id));
        return byGroup.size() == step.places().size() ? List.copyOf(byGroup.values()) : List.of();
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;").replace("\"", "&quot;");
    }

    private static String resource(String name) {
        try (InputStream in = AtHomePage.class.getResourceAsStream(name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
