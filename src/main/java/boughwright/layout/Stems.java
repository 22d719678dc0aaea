package boughwright.layout;

import boughwright.brief.Brief;
import boughwright.catalogue.Product;
import boughwright.measure.Length;
import boughwright.needs.Layer;
import boughwright.needs.Role;
import java.util.OptionalDouble;

/** How much of a stem is seen once it is set (common practice, no published source). */
public final class Stems {

    private static final double HEIGHT_SHOWN = 0.55;
    private static final double TEXTURE_SHOWN = 0.5;
    private static final double BODY_SHOWN = 0.42;
    /** A topper's stems stand out by at most this share of the tree's height. */
    private static final double TOPPER_MOST = 0.16;
    /** What is left between stems and ceiling when they are pushed down for it, and the least that then shows, metres. */
    private static final double AIR = 0.05;
    private static final double LEAST = 0.12;

    /** A stem goes in downward, so many degrees below level, which is how branches hold it. */
    private static final double SLOPE = Math.toRadians(20);
    /** A stem is folded when it would reach farther than this share of its way through the tree, to the second share of it. */
    private static final double FOLD_FROM = 0.9;
    private static final double FOLD_TO = 0.75;

    private Stems() {
    }

    /**
     * Metres from where a stem enters the tree to where it would come out at the far side, straight through the trunk's axis: level
     * through a cone 2·r; downward by a slope σ, 2·r ÷ (cos σ − k·sin σ) with k the cone's radius over its height, since the tree
     * widens below (the ray's meeting with the cone, worked out). Where it would come out beneath the lowest branches before that
     * the stem is set level.
     */
    static double through(Surface surface, double slant) {
        double k = surface.cone().radius() / surface.cone().height();
        double sloped = 2 * surface.radius(slant) / (Math.cos(SLOPE) - k * Math.sin(SLOPE));
        double toBottom = (surface.cone().height() - surface.cone().dropAt(slant)) / Math.sin(SLOPE);
        return toBottom < sloped ? 2 * surface.radius(slant) : sloped;
    }

    /** Where a stem is folded so that it does not come out at the far side, metres from its head; empty when it need not be. */
    static OptionalDouble fold(double length, Surface surface, double slant) {
        double deep = through(surface, slant);
        return length > FOLD_FROM * deep ? OptionalDouble.of(FOLD_TO * deep) : OptionalDouble.empty();
    }

    /** Metres that show when nothing is in the way. */
    static double usual(Layer layer, Role role, Product product, Brief brief) {
        double length = product.length().metres();
        if (layer == Layer.TOPPER) {
            return Math.min(TOPPER_MOST * brief.tree().height().metres(), (role == Role.HEIGHT_STEM ? HEIGHT_SHOWN : TEXTURE_SHOWN) * length);
        }
        return Math.min(BODY_SHOWN * brief.tree().form().widestRadius().metres(), BODY_SHOWN * length);
    }

    /** Metres that show: a topper's stems are pushed further down where the ceiling would be in their way. */
    public static double shown(Placement stem, Product product, Brief brief) {
        double usual = usual(stem.layer(), stem.role(), product, brief);
        if (stem.layer() != Layer.TOPPER || brief.room().ceiling().isEmpty()) {
            return usual;
        }
        double room = brief.room().ceiling().map(Length::metres).orElseThrow() - stem.height() - AIR;
        return Math.min(usual, Math.max(LEAST, room));
    }

    /** How high a topper's stem would stand when nothing is in the way, metres above the floor. */
    public static double top(Placement stem, Product product, Brief brief) {
        return stem.height() + usual(stem.layer(), stem.role(), product, brief);
    }
}
