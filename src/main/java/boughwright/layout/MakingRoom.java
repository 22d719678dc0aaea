package boughwright.layout;

import boughwright.layout.Patterns.Wished;
import boughwright.needs.Spot;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * What hands have moved: puts it where it was put, lets the others of its zone make room, and says what still clashes. What does
 * not overlap stays exactly where it was.
 */
final class MakingRoom {

    private final Surface surface;
    private final Map<String, Spot> moved;
    private final List<Clash> clashes = new ArrayList<>();

    MakingRoom(Surface surface, Map<String, Spot> moved) {
        this.surface = surface;
        this.moved = moved;
    }

    List<Clash> clashes() {
        return clashes;
    }

    /** @param zone everything that hangs in one zone */
    List<Hung> of(List<Hung> zone) {
        if (zone.stream().noneMatch(h -> moved.containsKey(h.id()))) {
            return zone;
        }
        List<Hung> put = zone.stream().map(this::put).toList();
        List<Wished> places = Spread.makeRoom(surface, put.stream().map(h -> new Spread.Disc(new Wished(h.slant(), h.angle()), h.depth(), h.radius(),
                Double.MAX_VALUE, moved.containsKey(h.id()))).toList());
        List<Hung> settled = new ArrayList<>();
        for (int i = 0; i < put.size(); i++) {
            settled.add(put.get(i).at(places.get(i).slant(), places.get(i).angle()));
        }
        clashes(settled);
        return settled;
    }

    private Hung put(Hung hung) {
        Spot spot = moved.get(hung.id());
        if (spot == null) {
            return hung;
        }
        double slant = surface.slantAtHeight(spot.height());
        return hung.at(slant, surface.within(slant, Surface.angle(spot.clock()), hung.radius()));
    }

    private void clashes(List<Hung> zone) {
        for (Hung hung : zone) {
            if (!moved.containsKey(hung.id())) {
                continue;
            }
            if (hung.slant() < hung.from() - 1e-9) {
                clashes.add(new Clash(hung.id(), "", Clash.Kind.TOO_HEAVY));
            }
            for (Hung other : zone) {
                // Of two that were both moved one says it.
                boolean said = moved.containsKey(other.id()) && other.id().compareTo(hung.id()) < 0;
                if (!other.id().equals(hung.id()) && !said
                        && hung.point(surface).distance(other.point(surface)) < hung.radius() + other.radius() - 1e-6) {
                    clashes.add(new Clash(hung.id(), other.id(), Clash.Kind.OVERLAP));
                }
            }
        }
    }
}
