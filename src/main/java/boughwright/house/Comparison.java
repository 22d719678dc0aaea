package boughwright.house;

import boughwright.brief.Look;
import boughwright.brief.Palette;
import boughwright.measure.Units;
import boughwright.needs.HouseNumber;
import boughwright.needs.HouseWords;
import boughwright.text.Text;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/** What differs between two editions or between an edition and a draft, row by row, in the order of the pages. */
public final class Comparison {

    private final Units units;
    private final List<Change> changes = new ArrayList<>();

    private Comparison(Units units) {
        this.units = units;
    }

    public static List<Change> of(HouseRules before, HouseRules after, Units units) {
        Comparison comparison = new Comparison(units);
        Set<String> topics = new LinkedHashSet<>();
        before.sheets().forEach(s -> topics.add(s.topic()));
        after.sheets().forEach(s -> topics.add(s.topic()));
        topics.forEach(topic -> comparison.sheets(before.sheet(topic), after.sheet(topic)));
        comparison.numbers(before, after);
        comparison.words(before, after);
        comparison.order(HouseCheck.LOOKS, before.looks().stream().map(Look::title).toList(), after.looks().stream().map(Look::title).toList());
        comparison.entries(HouseCheck.LOOKS, byId(before.looks(), Look::id), byId(after.looks(), Look::id), Comparison::facts);
        comparison.order(HouseCheck.PALETTES, before.palettes().stream().map(Palette::title).toList(), after.palettes().stream().map(Palette::title).toList());
        comparison.entries(HouseCheck.PALETTES, byId(before.palettes(), Palette::id), byId(after.palettes(), Palette::id), Comparison::facts);
        return List.copyOf(comparison.changes);
    }

    private void sheets(Optional<Sheet> before, Optional<Sheet> after) {
        Sheet any = after.or(() -> before).orElseThrow();
        Set<String> grids = new LinkedHashSet<>();
        before.ifPresent(s -> s.grids().forEach(g -> grids.add(g.name())));
        after.ifPresent(s -> s.grids().forEach(g -> grids.add(g.name())));
        if (before.isPresent() && after.isPresent()) {
            changed(new Change(any.topic(), any.title(), "", 0, Text.of("house.column.title"), before.get().title(), after.get().title()));
            changed(new Change(any.topic(), any.title(), "", 0, Text.of("house.column.about"), before.get().about(), after.get().about()));
        }
        for (String name : grids) {
            grids(any, before.flatMap(s -> s.grid(name)), after.flatMap(s -> s.grid(name)));
        }
    }

    private void grids(Sheet sheet, Optional<Grid> before, Optional<Grid> after) {
        List<GridRow> was = before.map(Grid::rows).orElse(List.of());
        List<GridRow> is = after.map(Grid::rows).orElse(List.of());
        Grid grid = after.or(() -> before).orElseThrow();
        int[] partner = partners(was, is);
        Set<Integer> met = new LinkedHashSet<>();
        for (int i = 0; i < is.size(); i++) {
            if (partner[i] < 0) {
                changes.add(new Change(sheet.topic(), sheet.title(), Headings.grid(grid.name()), i + 1, "", "", words(grid, is.get(i))));
            } else {
                met.add(partner[i]);
                rows(sheet, grid, i + 1, was.get(partner[i]), is.get(i));
            }
        }
        for (int i = 0; i < was.size(); i++) {
            if (!met.contains(i)) {
                changes.add(new Change(sheet.topic(), sheet.title(), Headings.grid(grid.name()), i + 1, "", words(grid, was.get(i)), ""));
            }
        }
    }

    /** For each row now the row that it was: the same row, else one about the same trees, else the next that is left over. */
    private static int[] partners(List<GridRow> was, List<GridRow> is) {
        int[] partner = new int[is.size()];
        java.util.Arrays.fill(partner, -1);
        Set<Integer> free = new LinkedHashSet<>();
        for (int i = 0; i < was.size(); i++) {
            free.add(i);
        }
        match(was, is, partner, free, row -> row);
        match(was, is, partner, free, row -> List.of(row.heights(), row.choices()));
        match(was, is, partner, free, row -> List.of(row.heights().from(), row.choices()));
        match(was, is, partner, free, row -> List.of(row.heights().to(), row.choices()));
        int left = (int) java.util.Arrays.stream(partner).filter(p -> p < 0).count();
        // As many rows as before, so those without a partner have changed; else they are new.
        if (left == free.size()) {
            match(was, is, partner, free, row -> "");
        }
        return partner;
    }

    private static void match(List<GridRow> was, List<GridRow> is, int[] partner, Set<Integer> free, Function<GridRow, Object> key) {
        for (int i = 0; i < is.size(); i++) {
            if (partner[i] < 0) {
                Object wanted = key.apply(is.get(i));
                Optional<Integer> found = free.stream().filter(f -> key.apply(was.get(f)).equals(wanted)).findFirst();
                if (found.isPresent()) {
                    partner[i] = found.get();
                    free.remove(found.get());
                }
            }
        }
    }

    private void rows(Sheet sheet, Grid grid, int number, GridRow was, GridRow is) {
        String table = Headings.grid(grid.name());
        changed(new Change(sheet.topic(), sheet.title(), table, number, Headings.column("from"), from(was), from(is)));
        changed(new Change(sheet.topic(), sheet.title(), table, number, Headings.column("to"), to(was), to(is)));
        for (int c = 0; c < Math.min(grid.columns().size(), Math.min(was.choices().size(), is.choices().size())); c++) {
            changed(new Change(sheet.topic(), sheet.title(), table, number, Headings.column(grid.columns().get(c).name()), choice(was, c), choice(is, c)));
        }
        for (int c = 0; c < Math.min(grid.results().size(), Math.min(was.results().size(), is.results().size())); c++) {
            changed(new Change(sheet.topic(), sheet.title(), table, number, Headings.result(sheet, grid, grid.results().get(c)), result(grid, was, c), result(grid, is, c)));
        }
        changed(new Change(sheet.topic(), sheet.title(), table, number, Headings.column("reason"), was.reason(), is.reason()));
    }

    private void changed(Change change) {
        if (!change.before().equals(change.after())) {
            changes.add(change.before().isEmpty() || change.after().isEmpty()
                    ? new Change(change.page(), change.title(), change.table(), change.row(), change.column(), dash(change.before()), dash(change.after())) : change);
        }
    }

    private static String dash(String text) {
        return text.isEmpty() ? "–" : text;
    }

    private String from(GridRow row) {
        return row.heights().any() ? Text.of("house.any") : (row.heights().above() ? Text.of("house.above") + " " : "") + LengthText.shown(row.heights().from(), units);
    }

    private String to(GridRow row) {
        return row.heights().any() ? Text.of("house.any") : LengthText.shown(row.heights().to(), units) + (row.heights().upTo() ? " " + Text.of("house.included") : "");
    }

    private static String choice(GridRow row, int column) {
        return row.choices().get(column).isEmpty() ? Text.of("house.any") : String.join(", ", row.choices().get(column));
    }

    private static String result(Grid grid, GridRow row, int column) {
        String text = row.results().get(column);
        if (grid.results().get(column).kind() == Result.Kind.YES_OR_NO) {
            return text.isEmpty() ? "" : Text.of("house." + (text.equals("true") ? "yes" : "no"));
        }
        return column == 0 && row.growing() ? Text.of("house.growing", text) : text;
    }

    private String words(Grid grid, GridRow row) {
        List<String> words = new ArrayList<>();
        if (grid.byHeight()) {
            words.add(from(row) + " … " + to(row));
        }
        for (int c = 0; c < grid.columns().size(); c++) {
            if (!row.choices().get(c).isEmpty()) {
                words.add(choice(row, c));
            }
        }
        for (int c = 0; c < grid.results().size(); c++) {
            words.add(result(grid, row, c));
        }
        return String.join(", ", words);
    }

    private void numbers(HouseRules before, HouseRules after) {
        for (HouseNumber number : HouseNumber.values()) {
            String was = LengthText.shown(before.numbers().getOrDefault(number, ""), units);
            String is = LengthText.shown(after.numbers().getOrDefault(number, ""), units);
            String page = number.theme().word();
            changed(new Change(page, HouseCheck.pageTitle(page), "", 0, HouseCheck.name(number), was, is));
        }
    }

    private void words(HouseRules before, HouseRules after) {
        for (HouseWords list : HouseWords.values()) {
            String page = HouseCheck.page(list);
            changed(new Change(page, HouseCheck.pageTitle(page), "", 0, HouseCheck.name(list),
                    String.join(", ", before.words().getOrDefault(list, List.of()).stream().sorted().toList()),
                    String.join(", ", after.words().getOrDefault(list, List.of()).stream().sorted().toList())));
        }
    }

    private static <T> Map<String, T> byId(List<T> entries, Function<T, String> id) {
        Map<String, T> byId = new LinkedHashMap<>();
        entries.forEach(e -> byId.putIfAbsent(id.apply(e), e));
        return byId;
    }

    /** Customers see looks and palettes in their order, unlike rows: the same ones in another are a change. */
    private void order(String page, List<String> before, List<String> after) {
        if (before.stream().sorted().toList().equals(after.stream().sorted().toList())) {
            changed(new Change(page, HouseCheck.pageTitle(page), "", 0, Text.of("house.change.order"), String.join(", ", before), String.join(", ", after)));
        }
    }

    private <T> void entries(String page, Map<String, T> before, Map<String, T> after, Function<T, Map<String, String>> facts) {
        Set<String> ids = new LinkedHashSet<>(before.keySet());
        ids.addAll(after.keySet());
        for (String id : ids) {
            Map<String, String> was = before.containsKey(id) ? facts.apply(before.get(id)) : Map.of();
            Map<String, String> is = after.containsKey(id) ? facts.apply(after.get(id)) : Map.of();
            if (was.isEmpty() || is.isEmpty()) {
                changes.add(new Change(page, HouseCheck.pageTitle(page), "", 0, "", was.getOrDefault("title", ""), is.getOrDefault("title", "")));
                continue;
            }
            is.forEach((name, value) -> changed(new Change(page, HouseCheck.pageTitle(page), "", 0,
                    Text.of("house.change.of", is.get("title"), Text.of("house.column." + name)), Objects.toString(was.get(name), ""), value)));
        }
    }

    private static Map<String, String> facts(Look look) {
        Map<String, String> facts = new LinkedHashMap<>();
        facts.put("title", look.title());
        facts.put("blurb", look.blurb());
        facts.put("palette", look.palette());
        facts.put("textures", String.join(", ", look.textures()));
        facts.put("finishes", String.join(", ", look.finishes()));
        return facts;
    }

    private static Map<String, String> facts(Palette palette) {
        Map<String, String> facts = new LinkedHashMap<>();
        facts.put("title", palette.title());
        facts.put("main", palette.main().hex());
        facts.put("second", palette.second().hex());
        facts.put("spark", palette.spark().hex());
        facts.put("ground", palette.ground().hex());
        return facts;
    }
}
