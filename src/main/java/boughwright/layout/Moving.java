package boughwright.layout;

import boughwright.brief.Brief;
import boughwright.brief.TreeForm;
import boughwright.needs.Layer;
import boughwright.needs.Spot;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Where something comes to lie when a hand shifts it in a picture of the tree from one side. */
public final class Moving {

    private static final double EDGE = 0.9998;

    private final Layout layout;
    private final TreeForm form;

    public Moving(Layout layout, Brief brief) {
        this.layout = layout;
        this.form = brief.tree().form();
    }

    /** What can be moved: single pieces and clusters as they hang, then runs; not the bouquet at the tip, lights and accents. */
    public List<String> movable() {
        return Stream.concat(
                layout.pieces().stream().filter(p -> p.zone() != Zone.CROWN && p.layer() != Layer.LIGHTS)
                        .map(p -> p.group().isEmpty() ? p.id() : p.group()).distinct(),
                layout.ribbonRuns().stream().map(RibbonRun::id)).toList();
    }

    /** Where it is now; the middle of a cluster, the first pinch of a run. */
    public Optional<Spot> spot(String id) {
        Optional<RibbonRun> run = layout.ribbonRuns().stream().filter(r -> r.id().equals(id)).findFirst();
        if (run.isPresent()) {
            return Optional.of(new Spot(run.get().height(), run.get().clock()));
        }
        return Optional.ofNullable(layout.clusters().get(id))
                .or(() -> parts(id).stream().findFirst().map(p -> new Spot(p.height(), p.clock())));
    }

    /**
     * The place after a shift, on the same side of the tree as before: what faced the viewer still does. Beyond the silhouette it
     * stays on it; above the tip and below the lowest branches it stays between them.
     *
     * @param viewer where the viewer stands
     * @param right metres to the viewer's right
     * @param up metres
     */
    public Optional<Spot> shifted(String id, Side viewer, double right, double up) {
        return spot(id).map(now -> {
            double facing = Math.toRadians(switch (viewer) {
                case FRONT -> 0;
                case RIGHT -> 90;
                case BACK -> 180;
                case LEFT -> -90;
            });
            double height = Math.max(form.lowestBranch().metres(), Math.min(0.98 * form.height().metres(), now.height() + up));
            double depth = parts(id).stream().mapToDouble(Placement::depth).average().orElse(1);
            // A hand takes hold of a run anywhere on it, not where it starts, which may lie behind the tree.
            double held = middle(id).orElse(Surface.angle(now.clock()));
            double turned = Math.IEEEremainder(held - facing, 2 * Math.PI);
            double across = depth * form.radiusAt(now.height()) * Math.sin(turned) + right;
            // Just short of the silhouette, so that the next shift still knows the side.
            double share = Math.max(-EDGE, Math.min(EDGE, across / Math.max(0.02, depth * form.radiusAt(height))));
            boolean near = Math.abs(turned) <= Math.PI / 2;
            double after = near ? Math.asin(share) : Math.PI - Math.asin(share);
            return new Spot(height, Surface.clock(Surface.angle(now.clock()) + after - turned));
        });
    }

    /** Angle of the middle of a run. */
    private Optional<Double> middle(String id) {
        return layout.ribbonRuns().stream().filter(r -> r.id().equals(id)).findFirst().map(r -> Math.atan2(
                r.points().stream().mapToDouble(Point::x).average().orElse(0), r.points().stream().mapToDouble(Point::z).average().orElse(0)));
    }

    private List<Placement> parts(String id) {
        return layout.pieces().stream().filter(p -> (p.group().isEmpty() ? p.id() : p.group()).equals(id)).toList();
    }
}
