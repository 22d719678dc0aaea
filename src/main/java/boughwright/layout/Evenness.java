package boughwright.layout;

import boughwright.needs.Layer;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** Measures how evenly a finished layout is spread. */
final class Evenness {

    private final Surface surface;
    private final List<Placement> pieces;
    private final List<Hung> hung;

    Evenness(Surface surface, List<Placement> pieces, List<Hung> hung) {
        this.surface = surface;
        this.pieces = pieces;
        this.hung = hung;
    }

    Measures measures(double largestEmptyDisc, Map<Layer, Double> coverage, List<RibbonRun> runs, int accents) {
        List<Point> front = hung.stream().filter(h -> h.zone() == Zone.OUTER || h.zone() == Zone.TIP).map(h -> h.point(surface)).toList();
        double least = least(front);
        int body = (int) hung.stream().filter(this::seen).count() + runs.size() + accents;
        return new Measures(least, front.size() > 1 ? least / densest(front.size()) : 0, largestEmptyDisc, body == 0 ? 0 : densest(body), coverage,
                sides(), alike(), across(runs));
    }

    private boolean seen(Hung h) {
        return h.parts().get(0).line().layer() != Layer.LIGHTS;
    }

    /** Distance of neighbours in the densest packing of so many equal discs on the dressed surface (hexagonal, Thue). */
    private double densest(int count) {
        return Math.sqrt(2 * surface.area() / (Math.sqrt(3) * count));
    }

    private static double least(List<Point> points) {
        double least = Double.MAX_VALUE;
        int[][] near = Neighbours.of(points, 1);
        for (int i = 0; i < near.length; i++) {
            for (int other : near[i]) {
                least = Math.min(least, points.get(i).distance(points.get(other)));
            }
        }
        return points.size() > 1 ? least : 0;
    }

    private Map<Side, Double> sides() {
        Map<Side, Double> sides = new EnumMap<>(Side.class);
        for (Side side : Side.values()) {
            sides.put(side, 0.0);
        }
        List<Placement> body = pieces.stream().filter(p -> p.zone() != Zone.CROWN && p.layer() != Layer.LIGHTS).toList();
        body.forEach(p -> sides.merge(Side.of(p.clock()), 1.0 / body.size(), Double::sum));
        return sides;
    }

    /** Of filler balls: flowers of a cluster stand together by design, sprays of one style in a line, and features are often all of one kind. */
    private double alike() {
        List<Hung> balls = hung.stream().filter(h -> h.zone() == Zone.DEEP).toList();
        if (balls.size() < 2 || balls.stream().map(Evenness::sku).distinct().count() < 2) {
            return 0;
        }
        int[][] near = Neighbours.of(balls.stream().map(h -> h.point(surface)).toList(), 1);
        int alike = 0;
        for (int i = 0; i < near.length; i++) {
            alike += sku(balls.get(i)).equals(sku(balls.get(near[i][0]))) ? 1 : 0;
        }
        return alike / (double) balls.size();
    }

    private static String sku(Hung h) {
        return h.parts().get(0).line().sku();
    }

    private int across(List<RibbonRun> runs) {
        List<Hung> clusters = hung.stream().filter(Hung::cluster).toList();
        return (int) runs.stream().filter(r -> clusters.stream().anyMatch(c -> RunWays.crosses(surface, r.points(), c))).count();
    }
}
