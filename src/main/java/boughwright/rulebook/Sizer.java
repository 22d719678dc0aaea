package boughwright.rulebook;

import boughwright.brief.Brief;
import boughwright.measure.Length;
import boughwright.needs.Adjustments;
import boughwright.needs.Layer;
import boughwright.needs.Need;
import boughwright.needs.Reason;
import boughwright.needs.Role;
import boughwright.needs.Unit;
import boughwright.text.Text;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Lists the needs of a brief, layer by layer, with what hands have changed. */
final class Sizer {

    /** Diameters of filler balls, as the table names them. */
    private static final Map<String, Length> BALLS = new LinkedHashMap<>();
    /** Drops of feature ornaments by the table's word for their size. */
    private static final Map<String, Length> FEATURES = new LinkedHashMap<>();

    static {
        for (int millimetres : new int[] {60, 80, 100, 120}) {
            BALLS.put(millimetres + " mm", Length.ofMillimetres(millimetres));
        }
        FEATURES.put("smaller", Length.ofMillimetres(100));
        FEATURES.put("larger", Length.ofMillimetres(170));
    }

    static final List<String> DIAMETERS = List.copyOf(BALLS.keySet());
    static final List<String> SIZES = List.copyOf(FEATURES.keySet());

    private final Sizing sizing;
    private final Brief brief;
    private final Adjustments adjustments;
    private final int faceFlowers;
    private final List<Need> needs = new ArrayList<>();

    private Sizer(Sizing sizing, Brief brief, Adjustments adjustments, int faceFlowers) {
        this.sizing = sizing;
        this.brief = brief;
        this.adjustments = adjustments;
        this.faceFlowers = faceFlowers;
    }

    /** @param faceFlowers in each grouping and each cluster, beside its two other stems */
    static List<Need> needs(Sizing sizing, Brief brief, Adjustments adjustments, int faceFlowers) {
        Sizer sizer = new Sizer(sizing, brief, adjustments, faceFlowers);
        sizer.lights();
        int groupings = sizer.whole(Layer.TOPPER, Role.GROUPING, Unit.GROUPING, sizing.size(Quantity.TOPPER_GROUPINGS, brief));
        sizer.stems(Layer.TOPPER, groupings, "need.stem.topper");
        sizer.ribbon();
        int clusters = sizer.whole(Layer.FLORALS, Role.CLUSTER, Unit.CLUSTER, sizing.size(Quantity.CLUSTERS, brief));
        sizer.stems(Layer.FLORALS, clusters, "need.stem.cluster");
        sizer.whole(Layer.FLORALS, Role.SINGLE_FLOWER, Unit.STEM, sizing.size(Quantity.SINGLE_FLOWERS, brief));
        sizer.sprays();
        sizer.ornaments();
        sizer.whole(Layer.ACCENTS, Role.GAP_ACCENT, Unit.ACCENT, sizing.size(Quantity.GAP_ACCENTS, brief));
        return List.copyOf(sizer.needs);
    }

    private void lights() {
        Sizing.Sized bulbs = sizing.size(Quantity.LIGHT_BULBS, brief);
        if (brief.tree().lit()) {
            bulbs = new Sizing.Sized(0, new Reason(bulbs.reason().rule(), bulbs.reason().row(), Text.of("need.lit")));
        }
        whole(Layer.LIGHTS, Role.LIGHT_STRING, Unit.BULB, bulbs);
    }

    private void ribbon() {
        Sizing.Sized body = sizing.size(Quantity.BODY_RIBBON, brief);
        whole(Layer.RIBBON, Role.BASE_RIBBON, Unit.ROLL, body);
        whole(Layer.RIBBON, Role.OVERLAY_RIBBON, Unit.ROLL, body);
        whole(Layer.RIBBON, Role.ACCENT_RIBBON, Unit.ROLL, sizing.size(Quantity.ACCENT_RIBBON, brief));
    }

    /** The stems of a grouping or a cluster: the same products in both, so their needs share slots. */
    private void stems(Layer layer, int groups, String reasonKey) {
        Need whole = needs.get(needs.size() - 1);
        Reason reason = new Reason(whole.reason().rule(), whole.reason().row(),
                Text.of(reasonKey, groups, whole.reason().text()));
        Sizing.Sized each = new Sizing.Sized(groups, reason);
        add(layer, Role.HEIGHT_STEM, "", 1, Unit.STEM, each, Optional.empty(), "height-stem");
        add(layer, Role.TEXTURE_STEM, "", 1, Unit.STEM, each, Optional.empty(), "texture-stem");
        for (int style = 1; style <= faceFlowers; style++) {
            add(layer, Role.FACE_FLOWER, "/" + style, style, Unit.STEM, each, Optional.empty(), "face-flower-" + style);
        }
    }

    private void sprays() {
        Sizing.Sized styles = sizing.size(Quantity.SPRAY_STYLES, brief);
        Sizing.Sized each = sizing.size(Quantity.SPRAYS, brief);
        Reason reason = new Reason(each.reason().rule(), each.reason().row(), each.reason().text() + " " + styles.reason().text());
        for (int style = 1; style <= styles.quantity(); style++) {
            add(Layer.FLORALS, Role.SPRAY, "/" + style, style, Unit.STEM, new Sizing.Sized(each.quantity(), reason), Optional.empty(), "");
        }
    }

    private void ornaments() {
        int style = 1;
        for (Map.Entry<String, Length> ball : BALLS.entrySet()) {
            Sizing.Sized sized = sizing.sizeBySurface(Quantity.FILLER_BALLS, brief, Map.of("diameter", ball.getKey()), ball.getValue());
            add(Layer.ORNAMENTS, Role.FILLER_BALL, "/" + ball.getKey().replace(" ", ""), style++, Unit.PIECE, sized, Optional.of(ball.getValue()), "");
        }
        style = 1;
        for (Map.Entry<String, Length> feature : FEATURES.entrySet()) {
            Sizing.Sized sized = sizing.size(Quantity.FEATURE_ORNAMENTS, brief, Map.of("size", feature.getKey()));
            add(Layer.ORNAMENTS, Role.FEATURE_ORNAMENT, "/" + feature.getKey(), style++, Unit.PIECE, sized, Optional.of(feature.getValue()), "");
        }
    }

    private int whole(Layer layer, Role role, Unit unit, Sizing.Sized sized) {
        return add(layer, role, "", 1, unit, sized, Optional.empty(), "");
    }

    /** @param slot the slot shared with other needs, or empty for one of its own */
    private int add(Layer layer, Role role, String suffix, int style, Unit unit, Sizing.Sized sized, Optional<Length> diameter, String slot) {
        String id = layer.word() + "/" + role.word() + suffix;
        boolean dropped = adjustments.dropped().contains(layer);
        int quantity = dropped ? 0 : adjustments.quantity(id).orElse(sized.quantity());
        Reason reason = dropped ? new Reason(sized.reason().rule(), sized.reason().row(), Text.of("need.dropped", sized.reason().text()))
                : quantity == sized.quantity() ? sized.reason() : new Reason(sized.reason().rule(), sized.reason().row(),
                        Text.of("need.changed", String.valueOf(sized.quantity()), sized.reason().text()));
        needs.add(new Need(id, slot.isEmpty() ? id : slot, layer, role, style, quantity, sized.quantity(), unit, diameter, reason));
        return quantity;
    }
}
