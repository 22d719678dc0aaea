package boughwright.proposal;

import boughwright.brief.Brief;
import boughwright.brief.Palette;
import boughwright.kit.Conflict;
import boughwright.kit.Kit;
import boughwright.kit.KitLine;
import boughwright.layout.Gap;
import boughwright.layout.Layout;
import boughwright.layout.Placement;
import boughwright.layout.Point;
import boughwright.layout.RibbonRun;
import boughwright.layout.RollCuts;
import boughwright.measure.Length;
import boughwright.measure.Money;
import boughwright.needs.Adjustments;
import boughwright.needs.Need;
import boughwright.needs.Needs;
import boughwright.needs.Reason;
import boughwright.plan.Plan;
import boughwright.plan.Step;
import boughwright.rulebook.Edition;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;

/**
 * A proposal as JSON; docs/proposal.schema.json describes it.
 *
 * <p>Money is decimal text, lengths are metres to a tenth of a millimetre, the gap is a fraction. Fields come in one order, so
 * the same proposal gives the same bytes.
 */
public final class ProposalJson {

    private static final ObjectMapper JSON = new ObjectMapper();
    private static final DefaultPrettyPrinter PRINTER = printer();

    private ProposalJson() {
    }

    private static DefaultPrettyPrinter printer() {
        // The platform's own line ends would make the same proposal differ from machine to machine.
        DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
        DefaultPrettyPrinter printer = new DefaultPrettyPrinter();
        printer.indentObjectsWith(indenter);
        return printer;
    }

    /** Text with line breaks, ending in one. */
    public static String text(ObjectNode json) {
        try {
            return JSON.writer(PRINTER).writeValueAsString(json) + "\n";
        } catch (JsonProcessingException e) {
            throw new IllegalStateException(e);
        }
    }

    public static ObjectNode of(Proposal p) {
        ObjectNode root = head(p.edition(), p.brief(), p.adjustments(), p.needs());
        root.set("kit", kit(p.kit()));
        ArrayNode notes = root.putArray("notes");
        OwnNotes.of(p).forEach(notes::add);
        root.set("layout", layout(p.layout()));
        root.set("plan", plan(p.plan()));
        root.put("seed", p.seed());
        return root;
    }

    public static ObjectNode of(Outcome.NoKitFits none) {
        ObjectNode root = head(none.edition(), none.brief(), none.adjustments(), none.needs());
        root.set("conflict", conflict(none.conflict()));
        root.put("seed", none.seed());
        return root;
    }

    private static ObjectNode head(Edition edition, Brief brief, Adjustments adjustments, Needs needs) {
        ObjectNode root = JSON.createObjectNode();
        root.put("edition", edition.id());
        root.set("brief", brief(brief));
        if (!adjustments.none()) {
            root.set("adjustments", AdjustmentsJson.of(adjustments));
        }
        ArrayNode list = root.putArray("needs");
        needs.needs().forEach(n -> list.add(need(n)));
        return root;
    }

    private static ObjectNode brief(Brief brief) {
        ObjectNode node = JSON.createObjectNode();
        ObjectNode tree = node.putObject("tree");
        tree.put("height", length(brief.tree().height().metres()));
        tree.put("widestDiameter", length(brief.tree().widestDiameter().metres()));
        tree.put("fullness", brief.tree().fullness().word());
        tree.put("seenFrom", brief.tree().seenFrom().word());
        tree.put("lit", brief.tree().lit());
        tree.put("real", brief.tree().real());
        ObjectNode room = node.putObject("room");
        room.put("ceiling", brief.room().ceiling().map(Length::metres).map(ProposalJson::length).orElse(null));
        room.put("nearHeat", brief.room().nearHeat());
        ObjectNode household = node.putObject("household");
        household.put("toddlers", brief.household().toddlers());
        household.put("pets", brief.household().pets());
        node.put("look", brief.look().id());
        Palette palette = brief.palette();
        node.putObject("palette").put("id", palette.id()).put("main", palette.main().hex()).put("second", palette.second().hex())
                .put("spark", palette.spark().hex()).put("ground", palette.ground().hex());
        node.put("abundance", brief.abundance().word());
        node.put("budget", money(brief.budget()));
        ArrayNode owned = node.putArray("owned");
        brief.owned().forEach(o -> {
            ObjectNode entry = owned.addObject().put("sku", o.sku()).put("quantity", o.quantity());
            o.described().ifPresent(d -> entry.put("text", d.text()));
        });
        try {
            node.set("asGiven", JSON.readTree(brief.asGiven()));
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("the brief was read from this very text", e);
        }
        return node;
    }

    private static ObjectNode need(Need need) {
        ObjectNode node = JSON.createObjectNode();
        node.put("id", need.id()).put("layer", need.layer().word()).put("role", need.role().word()).put("style", need.style())
                .put("quantity", need.quantity()).put("unit", need.unit().word());
        need.diameter().ifPresent(d -> node.put("diameter", length(d.metres())));
        if (need.changed()) {
            node.put("computed", need.computed());
        }
        node.set("reason", reason(need.reason()));
        return node;
    }

    private static ObjectNode reason(Reason reason) {
        return JSON.createObjectNode().put("rule", reason.rule()).put("row", reason.row()).put("text", reason.text());
    }

    private static ObjectNode kit(Kit kit) {
        ObjectNode node = JSON.createObjectNode();
        ArrayNode lines = node.putArray("lines");
        for (KitLine line : kit.lines()) {
            ObjectNode l = lines.addObject();
            l.put("need", line.needId()).put("sku", line.sku()).put("name", line.name()).put("layer", line.layer().word()).put("role", line.role().word())
                    .put("quantity", line.quantity()).put("packs", line.packs()).put("packSize", line.packSize())
                    .put("unitPrice", line.unitPrice().decimal()).put("price", line.price().decimal()).put("owned", line.owned())
                    .put("shelf", line.shelf());
            l.set("reason", reason(line.reason()));
        }
        node.put("total", kit.total().decimal());
        node.put("currency", kit.total().currency().getCurrencyCode());
        node.put("budget", money(kit.budget()));
        node.put("score", points(kit.score()));
        ArrayNode terms = node.putArray("terms");
        kit.terms().forEach(t -> terms.addObject().put("term", t.term().word()).put("value", points(t.value()))
                .put("weight", points(t.weight())).put("points", points(t.points())));
        node.put("bound", points(kit.bound()));
        node.put("gap", points(kit.gap()));
        return node;
    }

    private static ObjectNode layout(Layout layout) {
        ObjectNode node = JSON.createObjectNode();
        node.putObject("axes").put("origin", "floor at the trunk").put("x", "right of a viewer in front").put("y", "up").put("z", "toward that viewer")
                .put("clock", "read from above, 6 faces the viewer").put("depth", "0 trunk, 1 branch tips").put("unit", "metre");
        ArrayNode pieces = node.putArray("pieces");
        for (Placement p : layout.pieces()) {
            ObjectNode piece = pieces.addObject();
            piece.put("id", p.id()).put("need", p.needId()).put("sku", p.sku()).put("layer", p.layer().word()).put("role", p.role().word())
                    .put("zone", p.zone().word()).put("group", p.group()).put("height", length(p.height())).put("clock", length(p.clock()))
                    .put("depth", length(p.depth()));
            point(piece, p.at());
            piece.put("radius", length(p.radius()));
            p.foldAt().ifPresent(f -> piece.put("foldAt", length(f)));
        }
        ArrayNode bulbs = node.putArray("bulbs");
        layout.bulbs().forEach(b -> bulbs.add(point(JSON.createObjectNode(), b)));
        ArrayNode runs = node.putArray("ribbonRuns");
        for (RibbonRun run : layout.ribbonRuns()) {
            ObjectNode r = runs.addObject();
            r.put("id", run.id()).put("baseSku", run.baseSku()).put("overlaySku", run.overlaySku()).put("height", length(run.height()))
                    .put("clock", length(run.clock())).put("loops", run.loops()).put("smallLoops", run.smallLoops()).put("bow", run.bow())
                    .put("length", length(run.length())).put("drawnLength", length(run.drawnLength()));
            ArrayNode points = r.putArray("points");
            run.points().forEach(p -> points.add(point(JSON.createObjectNode(), p)));
        }
        ArrayNode cutList = node.putArray("cutList");
        for (RollCuts roll : layout.cutList()) {
            ObjectNode r = cutList.addObject();
            r.put("sku", roll.sku()).put("roll", roll.roll()).put("rollLength", length(roll.rollLength()));
            ArrayNode cuts = r.putArray("cuts");
            roll.cuts().forEach(c -> cuts.addObject().put("length", length(c.length())).put("for", c.purpose()));
            r.put("lost", length(roll.lost())).put("leftover", length(roll.leftover()));
        }
        ArrayNode gaps = node.putArray("gaps");
        for (Gap gap : layout.gaps()) {
            ObjectNode g = gaps.addObject();
            g.put("id", gap.id()).put("height", length(gap.height())).put("clock", length(gap.clock()));
            point(g, gap.at());
            g.put("diameter", length(gap.diameter())).put("accent", gap.accent().word()).put("ribbon", length(gap.ribbon()));
        }
        node.put("gapStop", layout.gapStop().word());
        ObjectNode measures = node.putObject("measures");
        measures.put("leastNeighbour", length(layout.measures().leastNeighbour()))
                .put("leastNeighbourShare", length(layout.measures().leastNeighbourShare()))
                .put("largestEmptyDisc", length(layout.measures().largestEmptyDisc())).put("meanSpacing", length(layout.measures().meanSpacing()))
                .put("alike", length(layout.measures().alike())).put("runsAcross", layout.measures().runsAcross());
        ObjectNode sides = measures.putObject("sides");
        layout.measures().sides().forEach((side, share) -> sides.put(side.word(), length(share)));
        ObjectNode coverage = measures.putObject("coverage");
        layout.measures().coverage().forEach((layer, share) -> coverage.put(layer.word(), length(share)));
        ArrayNode unplaced = node.putArray("unplaced");
        layout.unplaced().forEach(unplaced::add);
        layout.strained().forEach(node.putArray("strained")::add);
        ArrayNode clashes = node.putArray("clashes");
        layout.clashes().forEach(c -> clashes.addObject().put("id", c.id()).put("other", c.other()).put("kind", c.kind().word()));
        return node;
    }

    private static ObjectNode point(ObjectNode node, Point point) {
        return node.put("x", length(point.x())).put("y", length(point.y())).put("z", length(point.z()));
    }

    private static ObjectNode plan(Plan plan) {
        ObjectNode node = JSON.createObjectNode();
        ArrayNode steps = node.putArray("steps");
        for (Step step : plan.steps()) {
            ObjectNode s = steps.addObject();
            s.put("number", step.number()).put("layer", step.layer().word()).put("title", step.title()).put("text", step.text());
            ArrayNode pieces = s.putArray("pieces");
            step.pieces().forEach(p -> pieces.addObject().put("sku", p.sku()).put("name", p.name()).put("quantity", p.quantity()));
            ArrayNode places = s.putArray("places");
            step.places().forEach(places::add);
            step.placed().forEach(s.putArray("placed")::add);
            ArrayNode howTo = s.putArray("howTo");
            step.howTo().forEach(h -> howTo.add(h.word()));
            s.put("minutes", step.minutes());
        }
        node.put("minutes", plan.minutes());
        node.putObject("ladder").put("feet", plan.climb().ladderFeet()).put("professional", plan.climb().beyondLadder()).put("text", plan.ladder());
        ArrayNode cautions = node.putArray("cautions");
        plan.cautions().forEach(c -> cautions.addObject().put("id", c.id()).put("text", c.text()).put("source", c.source()));
        return node;
    }

    private static ObjectNode conflict(Conflict conflict) {
        ObjectNode node = JSON.createObjectNode();
        ArrayNode wishes = node.putArray("wishes");
        conflict.wishes().forEach(w -> wishes.addObject().put("id", w.id()).put("text", w.text()));
        ArrayNode shortages = node.putArray("shortages");
        conflict.shortages().forEach(shortages::add);
        ArrayNode waysOut = node.putArray("waysOut");
        for (Conflict.WayOut way : conflict.waysOut()) {
            ObjectNode w = waysOut.addObject();
            ArrayNode steps = w.putArray("steps");
            way.steps().forEach(step -> {
                ObjectNode one = steps.addObject().put("wish", step.wish());
                step.instead().ifPresent(i -> one.put("instead", i));
            });
            w.put("text", way.text()).put("total", way.total().decimal());
        }
        return node;
    }

    private static String money(Optional<Money> money) {
        return money.map(Money::decimal).orElse(null);
    }

    private static BigDecimal length(double value) {
        return rounded(value, 4);
    }

    private static BigDecimal points(double value) {
        return rounded(value, 6);
    }

    private static BigDecimal rounded(double value, int decimals) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP).stripTrailingZeros();
        return rounded.scale() < 0 ? rounded.setScale(0) : rounded;
    }
}
