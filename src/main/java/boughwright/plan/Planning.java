package boughwright.plan;

import boughwright.brief.Brief;
import boughwright.kit.Kit;
import boughwright.kit.KitLine;
import boughwright.layout.Clash;
import boughwright.layout.Gap;
import boughwright.layout.Layout;
import boughwright.layout.Placement;
import boughwright.layout.RibbonRun;
import boughwright.layout.RollCuts;
import boughwright.measure.Length;
import boughwright.needs.Caution;
import boughwright.needs.Climb;
import boughwright.needs.Layer;
import boughwright.needs.Needs;
import boughwright.needs.Role;
import boughwright.plan.Step.StepPiece;
import boughwright.text.Text;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** Turns a layout into steps a person can follow, in the customer's units. */
public final class Planning {

    private final Brief brief;
    private final Needs needs;
    private final Kit kit;
    private final Layout layout;
    private final List<Step> steps = new ArrayList<>();

    private Planning(Brief brief, Needs needs, Kit kit, Layout layout) {
        this.brief = brief;
        this.needs = needs;
        this.kit = kit;
        this.layout = layout;
    }

    /** @param cautions what the house says of this tree and kit; a caution is added when the tree had no room for some pieces */
    public static Plan of(Brief brief, Needs needs, Kit kit, Layout layout, Climb climb, List<Caution> cautions) {
        Planning planning = new Planning(brief, needs, kit, layout);
        planning.lights();
        planning.topper();
        planning.ribbon();
        planning.florals();
        planning.ornaments();
        planning.accents();
        List<Caution> all = new ArrayList<>(cautions);
        if (!layout.unplaced().isEmpty()) {
            all.add(new Caution("no-room", Text.of("plan.caution.no-room", layout.unplaced().size()), Text.of("plan.caution.no-room.source")));
        }
        if (!layout.strained().isEmpty()) {
            all.add(new Caution("too-heavy", Text.of("plan.caution.too-heavy", planning.names(layout.strained())), Text.of("plan.caution.no-room.source")));
        }
        for (Clash clash : layout.clashes()) {
            all.add(new Caution("clash", Text.of("plan.clash." + clash.kind().word(), planning.thing(clash.id()), planning.thing(clash.other())),
                    Text.of("plan.clash.source")));
        }
        return new Plan(planning.steps, planning.steps.stream().mapToInt(Step::minutes).sum(), climb, ladder(climb), all);
    }

    private static String ladder(Climb climb) {
        if (climb.beyondLadder()) {
            return Text.of("plan.ladder.beyond");
        }
        return climb.ladderFeet() == 0 ? Text.of("plan.ladder.none") : Text.of("plan.ladder", climb.ladderFeet());
    }

    private String names(List<String> needIds) {
        return kit.lines().stream().filter(l -> needIds.contains(l.needId())).map(KitLine::name).distinct().collect(Collectors.joining(", "));
    }

    /** What an id of the layout stands for, in the words of the steps. */
    private String thing(String id) {
        if (id.isEmpty()) {
            return "";
        }
        String number = id.substring(id.lastIndexOf('-') + 1);
        if (id.startsWith("cluster-") || id.startsWith("run-")) {
            return Text.of("plan.thing." + id.substring(0, id.lastIndexOf('-')), number);
        }
        return layout.pieces().stream().filter(p -> p.id().equals(id)).flatMap(p -> kit.lines().stream().filter(l -> l.needId().equals(p.needId())))
                .map(l -> Text.of("plan.thing.piece", l.name(), number)).findFirst().orElse(id);
    }

    private void lights() {
        List<KitLine> lines = lines(Layer.LIGHTS, l -> true);
        int strings = count(lines);
        if (strings > 0) {
            add(Layer.LIGHTS, "lights", lines, List.of(), ids(p -> p.layer() == Layer.LIGHTS), List.of(), Pace.minutes(Pace.STRING_OF_LIGHTS, strings), strings);
        }
    }

    private void topper() {
        int groupings = needs.quantity(Layer.TOPPER, Role.GROUPING);
        List<KitLine> stems = lines(Layer.TOPPER, l -> !l.role().flower());
        List<KitLine> flowers = lines(Layer.TOPPER, l -> l.role().flower());
        if (!stems.isEmpty()) {
            add(Layer.TOPPER, "topper-stems", stems, List.of(), ids(p -> p.layer() == Layer.TOPPER && !p.role().flower()), List.of(), Pace.minutes(Pace.GROUPING * 0.6, Math.max(1, groupings)), groupings);
        }
        if (!flowers.isEmpty()) {
            add(Layer.TOPPER, "topper-flowers", flowers, places(p -> p.layer() == Layer.TOPPER && p.role().flower()),
                    ids(p -> p.layer() == Layer.TOPPER && p.role().flower()), List.of(), Pace.minutes(Pace.GROUPING * 0.4, Math.max(1, groupings)), count(flowers));
        }
    }

    private void ribbon() {
        List<RibbonRun> runs = layout.ribbonRuns();
        if (runs.isEmpty()) {
            return;
        }
        List<KitLine> body = lines(Layer.RIBBON, l -> l.role() != Role.ACCENT_RIBBON);
        add(Layer.RIBBON, "ribbon-cut", body, cuts(body), List.of(), List.of(), Pace.minutes(Pace.CUT_RUN, runs.size()),
                runs.size(), length(needs.ribbon().tail()));
        List<String> places = new ArrayList<>();
        for (int i = 0; i < runs.size(); i++) {
            RibbonRun run = runs.get(i);
            String shape = Text.of("plan.run.bow-" + run.bow() + (run.smallLoops() > 0 ? ".small" : ""));
            places.add(Text.of("plan.place.run", i + 1, place(run.height(), run.clock()), shape));
        }
        add(Layer.RIBBON, "ribbon-lay", body, places, runs.stream().map(RibbonRun::id).toList(), List.of(HowTo.LOOP_WITH_TWIST, HowTo.TWO_LOOP_BOW), Pace.minutes(Pace.LAY_RUN, runs.size()), runs.size(),
                length(needs.ribbon().loop()));
    }

    private List<String> cuts(List<KitLine> body) {
        List<String> lines = new ArrayList<>();
        for (KitLine ribbon : body) {
            for (RollCuts roll : layout.cutList()) {
                if (roll.sku().equals(ribbon.sku()) && !roll.cuts().isEmpty()) {
                    Map<String, Integer> same = new LinkedHashMap<>();
                    roll.cuts().forEach(c -> same.merge(length(c.length()), 1, Integer::sum));
                    List<String> parts = same.entrySet().stream().map(e -> Text.of("plan.cut", e.getValue(), e.getKey())).toList();
                    lines.add(Text.of("plan.place.roll", ribbon.name(), roll.roll(), String.join(", ", parts), length(roll.leftover())));
                }
            }
        }
        return lines;
    }

    private void florals() {
        List<KitLine> cluster = lines(Layer.FLORALS, l -> l.role() != Role.SINGLE_FLOWER && l.role() != Role.SPRAY);
        int clusters = needs.quantity(Layer.FLORALS, Role.CLUSTER);
        if (!cluster.isEmpty()) {
            add(Layer.FLORALS, "cluster-bind", cluster, List.of(), List.of(), List.of(HowTo.BIND_CLUSTER), Pace.minutes(Pace.BIND_CLUSTER, Math.max(1, clusters)), clusters);
            Predicate<Placement> bound = p -> p.group().startsWith("cluster-");
            add(Layer.FLORALS, "cluster-set", List.of(), clusterPlaces(), ids(bound), folding(bound), Pace.minutes(Pace.SET_CLUSTER, Math.max(1, clusters)), clusters);
        }
        List<KitLine> singles = lines(Layer.FLORALS, l -> l.role() == Role.SINGLE_FLOWER);
        if (!singles.isEmpty()) {
            Predicate<Placement> single = p -> p.role() == Role.SINGLE_FLOWER;
            add(Layer.FLORALS, "single-flowers", singles, places(single), ids(single), folding(single),
                    Pace.minutes(Pace.STEM, count(singles)), count(singles));
        }
        for (KitLine spray : lines(Layer.FLORALS, l -> l.role() == Role.SPRAY)) {
            Predicate<Placement> these = p -> p.needId().equals(spray.needId());
            add(Layer.FLORALS, "spray", List.of(spray), places(these), ids(these), folding(these),
                    Pace.minutes(Pace.STEM, spray.quantity()), spray.quantity(), spray.name());
        }
    }

    private List<String> clusterPlaces() {
        Map<String, Placement> firsts = new LinkedHashMap<>();
        layout.pieces().stream().filter(p -> p.group().startsWith("cluster-")).forEach(p -> firsts.putIfAbsent(p.group(), p));
        List<String> places = new ArrayList<>();
        int number = 1;
        for (Map.Entry<String, Placement> first : firsts.entrySet()) {
            Placement at = first.getValue();
            String fold = layout.pieces().stream().filter(p -> p.group().equals(first.getKey()) && p.foldAt().isPresent())
                    .map(p -> Text.of("plan.fold", length(p.foldAt().getAsDouble()))).findFirst().orElse("");
            places.add(Text.of("plan.place.numbered", number++, place(at.height(), at.clock())) + fold);
        }
        return places;
    }

    private void ornaments() {
        List<KitLine> balls = lines(Layer.ORNAMENTS, l -> l.role() == Role.FILLER_BALL);
        if (!balls.isEmpty()) {
            add(Layer.ORNAMENTS, "filler-balls", balls, bands(balls), ids(p -> p.role() == Role.FILLER_BALL), List.of(HowTo.TUCK_BALLS),
                    Pace.minutes(Pace.FILLER, count(balls)), count(balls));
        }
        List<KitLine> features = lines(Layer.ORNAMENTS, l -> l.role() == Role.FEATURE_ORNAMENT);
        if (!features.isEmpty()) {
            Predicate<Placement> feature = p -> p.role() == Role.FEATURE_ORNAMENT;
            add(Layer.ORNAMENTS, "features", features, places(feature), ids(feature), List.of(HowTo.WIND_CORD),
                    Pace.minutes(Pace.FEATURE, count(features)), count(features));
        }
    }

    /** Balls are too many to name each place: how many of each go into the lower, the middle and the upper third. */
    private List<String> bands(List<KitLine> balls) {
        double third = brief.tree().height().metres() / 3;
        List<String> lines = new ArrayList<>();
        for (KitLine ball : balls) {
            int[] counts = new int[3];
            layout.pieces().stream().filter(p -> p.needId().equals(ball.needId())).forEach(p -> counts[Math.min(2, (int) (p.height() / third))]++);
            lines.add(Text.of("plan.place.bands", ball.name(), counts[0], counts[1], counts[2]));
        }
        return lines;
    }

    private void accents() {
        List<Gap> gaps = layout.gaps();
        List<KitLine> ribbon = lines(Layer.RIBBON, l -> l.role() == Role.ACCENT_RIBBON);
        if (gaps.isEmpty()) {
            if (!ribbon.isEmpty()) {
                add(Layer.ACCENTS, "accents-none", ribbon, List.of(), List.of(), List.of(), Pace.minutes(Pace.ACCENT, 1));
            }
            return;
        }
        List<String> places = new ArrayList<>();
        for (int i = 0; i < gaps.size(); i++) {
            Gap gap = gaps.get(i);
            places.add(Text.of("plan.place.accent", i + 1, place(gap.height(), gap.clock()),
                    Text.of("accent." + gap.accent().word()), length(gap.ribbon())));
        }
        add(Layer.ACCENTS, "accents", ribbon, places, gaps.stream().map(Gap::id).toList(), List.of(HowTo.TWO_LOOP_BOW, HowTo.FISHTAIL_CUT),
                Pace.minutes(Pace.ACCENT, gaps.size()), gaps.size(), Text.of("plan.accents.stop." + layout.gapStop().word()));
    }

    private List<KitLine> lines(Layer layer, Predicate<KitLine> which) {
        return kit.lines().stream().filter(l -> l.layer() == layer && l.quantity() > 0).filter(which).toList();
    }

    private static int count(List<KitLine> lines) {
        return lines.stream().mapToInt(KitLine::quantity).sum();
    }

    private List<String> places(Predicate<Placement> which) {
        List<String> places = new ArrayList<>();
        layout.pieces().stream().filter(which).forEach(p -> {
            String fold = p.foldAt().isPresent() ? Text.of("plan.fold", length(p.foldAt().getAsDouble())) : "";
            places.add(Text.of("plan.place.numbered", places.size() + 1, place(p.height(), p.clock())) + fold);
        });
        return places;
    }

    private List<String> ids(Predicate<Placement> which) {
        return layout.pieces().stream().filter(which).map(Placement::id).toList();
    }

    private List<HowTo> folding(Predicate<Placement> which) {
        return layout.pieces().stream().filter(which).anyMatch(p -> p.foldAt().isPresent()) ? List.of(HowTo.FOLD_STEM) : List.of();
    }

    private String place(double height, double clock) {
        return Text.of("plan.place", length(height), clock(clock));
    }

    private String length(double metres) {
        return new Length(metres).show(brief.units());
    }

    /** To the nearest half hour, as one reads a clock face: 4 o'clock, half past 4. */
    static String clock(double clock) {
        int halves = (int) Math.round(clock * 2);
        int hour = halves / 2 == 0 ? 12 : halves / 2;
        return Text.of(halves % 2 == 0 ? "plan.clock.hour" : "plan.clock.half", hour);
    }

    private void add(Layer layer, String key, List<KitLine> lines, List<String> places, List<String> placed, List<HowTo> howTo, int minutes,
            Object... arguments) {
        List<StepPiece> pieces = lines.stream().map(l -> new StepPiece(l.sku(), l.name(), l.quantity())).toList();
        steps.add(new Step(steps.size() + 1, layer, Text.of("plan.step." + key + ".title", arguments), Text.of("plan.step." + key, arguments),
                pieces, places, placed, howTo, minutes));
    }
}
