package boughwright.plan;

import boughwright.layout.Gap;
import boughwright.layout.Layout;
import boughwright.layout.Placement;
import boughwright.layout.RibbonRun;
import boughwright.layout.Zone;
import boughwright.measure.Length;
import boughwright.measure.Units;
import boughwright.needs.Spot;
import boughwright.text.Text;
import java.util.Optional;

/** Where something hangs, in words: how high, at which hour, how deep. */
public final class Whereabouts {

    private final Units units;

    public Whereabouts(Units units) {
        this.units = units;
    }

    public String of(Placement piece) {
        return of(piece.zone(), piece.height(), piece.clock());
    }

    /** Where a run starts. */
    public String of(RibbonRun run) {
        return Text.of("scene.where.run", place(run.height(), run.clock()));
    }

    public String of(Gap gap) {
        return Text.of("scene.where.gap", place(gap.height(), gap.clock()));
    }

    /** Of a piece, a cluster, a run or an accent by its id; empty when the layout has no such thing. */
    public Optional<String> of(Layout layout, String id) {
        return layout.pieces().stream().filter(p -> p.id().equals(id)).findFirst().map(this::of)
                .or(() -> Optional.ofNullable(layout.clusters().get(id)).map(this::ofCluster))
                .or(() -> layout.ribbonRuns().stream().filter(r -> r.id().equals(id)).findFirst().map(this::of))
                .or(() -> layout.gaps().stream().filter(g -> g.id().equals(id)).findFirst().map(this::of));
    }

    private String ofCluster(Spot middle) {
        return of(Zone.OUTER, middle.height(), middle.clock());
    }

    private String of(Zone zone, double height, double clock) {
        return Text.of("scene.where." + zone.word(), place(height, clock));
    }

    private String place(double height, double clock) {
        return Text.of("plan.place", new Length(height).show(units), Planning.clock(clock));
    }
}
