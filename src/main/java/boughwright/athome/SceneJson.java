package boughwright.athome;

import boughwright.drawing.Band;
import boughwright.drawing.DressedTree;
import boughwright.drawing.Scene;
import boughwright.drawing.Sprite;
import boughwright.layout.Bough;
import boughwright.layout.Boughs;
import boughwright.plan.Whereabouts;
import boughwright.proposal.Proposal;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;

/**
 * The dressed tree as a browser draws it in three dimensions: the same scene of which the flat pictures are made, in metres, with axes
 * as of {@link boughwright.layout.Point}. The same proposal gives the same bytes.
 */
public final class SceneJson {

    private static final ObjectMapper JSON = new ObjectMapper();

    private final Proposal proposal;
    private final Map<String, String> where = new HashMap<>();

    private SceneJson(Proposal proposal) {
        this.proposal = proposal;
        Whereabouts words = new Whereabouts(proposal.brief().units());
        proposal.layout().pieces().forEach(p -> where.put(p.id(), words.of(p)));
        proposal.layout().ribbonRuns().forEach(r -> where.put(r.id(), words.of(r)));
        proposal.layout().gaps().forEach(g -> where.put(g.id(), words.of(g)));
    }

    public static String of(Proposal proposal) {
        return new SceneJson(proposal).write().toString();
    }

    private ObjectNode write() {
        Scene scene = DressedTree.scene(proposal.brief(), proposal.kit(), proposal.layout(), proposal.catalogue());
        ObjectNode node = JSON.createObjectNode();
        node.putObject("tree").put("height", short4(scene.tree().height())).put("widestRadius", short4(scene.tree().widestRadius()))
                .put("lowestBranch", short4(scene.tree().lowestBranch())).put("fullness", scene.tree().fullness().word());
        Boughs boughs = Boughs.grow(scene.tree().height(), scene.tree().widestRadius(), scene.tree().lowestBranch(), scene.tree().fullness(), scene.seed());
        node.put("sprig", short4(boughs.sprig()));
        ArrayNode list = node.putArray("boughs");
        for (Bough b : boughs.all()) {
            list.addArray().add(b.tier()).add(short4(b.around())).add(short4(b.reach())).add(short4(b.tip())).add(short4(b.root())).add(short4(b.size()));
        }
        ArrayNode pieces = node.putArray("pieces");
        scene.sprites().forEach(s -> piece(pieces.addObject(), s));
        ArrayNode ribbons = node.putArray("ribbons");
        scene.bands().forEach(b -> ribbon(ribbons.addObject(), b));
        return node;
    }

    private void piece(ObjectNode node, Sprite s) {
        node.put("id", s.id()).put("unit", s.unit()).put("title", s.title()).put("where", where.getOrDefault(s.id(), "")).put("layer", s.layer())
                .put("role", s.role()).put("form", word(s.form())).put("finish", word(s.surface())).put("colour", s.colour()).put("second", s.secondColour())
                .put("width", short4(s.width())).put("length", short4(s.length())).put("x", short4(s.x())).put("y", short4(s.y())).put("z", short4(s.z()))
                .put("depth", short4(s.depth())).put("lean", short4(s.lean()));
    }

    private void ribbon(ObjectNode node, Band b) {
        node.put("id", b.id()).put("title", b.title()).put("where", where.getOrDefault(b.id(), "")).put("layer", b.layer())
                .put("width", short4(b.baseWidth())).put("colour", b.baseColour()).put("overWidth", short4(b.overlayWidth()))
                .put("overColour", b.overlayColour()).put("pattern", word(b.pattern()));
        ArrayNode points = node.putArray("points");
        for (double[] p : b.points()) {
            points.addArray().add(short4(p[0])).add(short4(p[1])).add(short4(p[2]));
        }
    }

    private static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** To a tenth of a millimetre, with no more digits than that takes. */
    private static BigDecimal short4(double value) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(4, RoundingMode.HALF_UP).stripTrailingZeros();
        return rounded.scale() < 0 ? rounded.setScale(0) : rounded;
    }
}
