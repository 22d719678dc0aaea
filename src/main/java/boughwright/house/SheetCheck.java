package boughwright.house;

import boughwright.house.Complaint.Weight;
import boughwright.measure.Length;
import boughwright.measure.Units;
import boughwright.rulebook.Asked;
import boughwright.rulebook.DmnCompilation;
import boughwright.rulebook.DmnCompiler;
import boughwright.rulebook.Growing;
import boughwright.rulebook.NumberInterval;
import boughwright.rulebook.RulebookFault;
import boughwright.text.Text;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Checks one sheet: every cell by itself; then, when all can be read, the tables as wholes by the decision engine, which finds gaps and
 * overlaps; then whether a quantity falls where it should rise. Gives the same list for the same sheet.
 */
final class SheetCheck {

    /** A longer list of gaps helps nobody. */
    private static final int MOST_OF_A_KIND = 25;
    private static final int MOST_ROWS = 600;
    private static final int LONGEST_REASON = 300;
    private static final BigDecimal MOST_PIECES = BigDecimal.valueOf(20_000);
    private static final BigDecimal MOST_TIMES = BigDecimal.TEN;
    /** A place with its braces, or a brace that has lost its other. */
    private static final Pattern PLACE = Pattern.compile("\\{[^{}]*}|[{}]");
    private static final Set<String> PLACES = Set.of("{height}", "{quantity}", "{share}");
    private static final Pattern UNWRITABLE = Pattern.compile("[\\p{Cc}\\p{Cn}\\p{Cs}]");

    private final Sheet sheet;
    private final Units units;
    private final List<Complaint> complaints = new ArrayList<>();

    private SheetCheck(Sheet sheet, Units units) {
        this.sheet = sheet;
        this.units = units;
    }

    /** @param units in which heights are told */
    static List<Complaint> of(Sheet sheet, Units units) {
        SheetCheck check = new SheetCheck(sheet, units);
        check.shape();
        if (check.complaints.isEmpty()) {
            sheet.grids().forEach(check::cells);
        }
        if (check.complaints.isEmpty()) {
            check.tables();
            sheet.grids().forEach(check::falls);
        }
        return List.copyOf(check.complaints);
    }

    /** What is asked must be there, and what is there must be asked. */
    private void shape() {
        if (!Asked.topics().contains(sheet.topic())) {
            fault("", 0, "", Text.of("house.unreached.sheet", String.join(", ", Asked.topics())));
            return;
        }
        if (sheet.title().isBlank() || UNWRITABLE.matcher(sheet.title() + sheet.about()).find()) {
            fault("", 0, "", Text.of("house.sheet.title"));
        }
        Set<String> seen = new LinkedHashSet<>();
        for (Grid grid : sheet.grids()) {
            if (!Asked.tables().contains(grid.name()) || !seen.add(grid.name())) {
                fault(grid.name(), 0, "", Text.of("house.unreached.grid", String.join(", ", Asked.tables())));
                continue;
            }
            Map<String, List<String>> asked = Asked.words(sheet.topic(), grid.name());
            for (Column column : grid.columns()) {
                if (!asked.getOrDefault(column.name(), List.of()).equals(column.choices())) {
                    fault(grid.name(), 0, Headings.column(column.name()), Text.of("house.unreached.column", column.name(),
                            asked.containsKey(column.name()) ? String.join(", ", asked.get(column.name())) : String.join(", ", asked.keySet())));
                }
            }
            List<String> results = grid.results().stream().map(Result::name).toList();
            if (!results.equals(Asked.results(grid.name()))) {
                fault(grid.name(), 0, "", Text.of("house.sheet.results", String.join(", ", Asked.results(grid.name()))));
            }
        }
        Asked.tables().stream().filter(t -> !seen.contains(t)).forEach(t -> fault(t, 0, "", Text.of("house.sheet.missing")));
    }

    private void cells(Grid grid) {
        if (grid.rows().isEmpty()) {
            fault(grid.name(), 0, "", Text.of("house.grid.empty"));
        } else if (grid.rows().size() > MOST_ROWS) {
            fault(grid.name(), 0, "", Text.of("house.grid.long", MOST_ROWS));
        }
        for (int i = 0; i < grid.rows().size(); i++) {
            GridRow row = grid.rows().get(i);
            if (row.choices().size() != grid.columns().size() || row.results().size() != grid.results().size()) {
                fault(grid.name(), i + 1, "", Text.of("house.row.cells"));
                continue;
            }
            heights(grid, row, i + 1);
            for (int c = 0; c < grid.columns().size(); c++) {
                Column column = grid.columns().get(c);
                for (String word : row.choices().get(c)) {
                    if (!column.choices().contains(word)) {
                        fault(grid.name(), i + 1, Headings.column(column.name()), Text.of("house.cell.word", word, String.join(", ", column.choices())));
                    }
                }
            }
            for (int c = 0; c < grid.results().size(); c++) {
                result(grid, grid.results().get(c), row.results().get(c), i + 1);
            }
            reason(grid, row, i + 1);
        }
    }

    private void heights(Grid grid, GridRow row, int number) {
        Heights heights = row.heights();
        if (heights.any()) {
            return;
        }
        Optional<BigDecimal> from = end(grid, number, "from", heights.from());
        Optional<BigDecimal> to = end(grid, number, "to", heights.to());
        if (from.isPresent() && to.isPresent() && heights.interval().isEmpty()) {
            fault(grid.name(), number, Headings.column("to"), Text.of("house.cell.order", heights.to(), heights.from()));
        }
    }

    private Optional<BigDecimal> end(Grid grid, int number, String column, String text) {
        if (text.isEmpty()) {
            fault(grid.name(), number, Headings.column(column), Text.of("house.cell.height-missing"));
            return Optional.empty();
        }
        Optional<BigDecimal> feet = Heights.feet(text);
        if (feet.isEmpty()) {
            fault(grid.name(), number, Headings.column(column), Text.of("house.cell.height", text));
        } else if (!Heights.ALLOWED.contains(feet.get())) {
            fault(grid.name(), number, Headings.column(column), Text.of("house.cell.height-beyond", text, shown(Heights.ALLOWED.from()), shown(Heights.ALLOWED.to())));
            return Optional.empty();
        }
        return feet;
    }

    private void result(Grid grid, Result result, String text, int number) {
        String column = Headings.result(sheet, grid, result);
        switch (result.kind()) {
            case NUMBER -> {
                Optional<BigDecimal> value = NumberText.plain(text);
                BigDecimal most = grid.name().equals(Grid.BASE) ? Asked.bySurface(sheet.topic()) ? BigDecimal.ONE : MOST_PIECES
                        : grid.name().equals(Grid.POLICY) ? MOST_PIECES : MOST_TIMES;
                if (text.isEmpty()) {
                    fault(grid.name(), number, column, Text.of("house.cell.number-missing"));
                } else if (value.isEmpty()) {
                    fault(grid.name(), number, column, Text.of("house.cell.number", text));
                } else if (value.get().compareTo(most) > 0) {
                    fault(grid.name(), number, column, Text.of("house.cell.number-beyond", text, NumberInterval.plain(most)));
                } else if (result.name().equals("least") && value.get().stripTrailingZeros().scale() > 0) {
                    fault(grid.name(), number, column, Text.of("house.cell.whole", text));
                } else if (text.contains(",")) {
                    fault(grid.name(), number, column, Text.of("house.cell.point", text, text.replace(',', '.')));
                }
            }
            case WORD -> {
                if (text.isEmpty()) {
                    fault(grid.name(), number, column, Text.of("house.cell.word-missing", String.join(", ", result.choices())));
                } else if (!result.choices().contains(text)) {
                    fault(grid.name(), number, column, Text.of("house.cell.word", text, String.join(", ", result.choices())));
                }
            }
            case YES_OR_NO -> {
                if (text.isEmpty()) {
                    fault(grid.name(), number, column, Text.of("house.cell.word-missing", Text.of("house.yes") + ", " + Text.of("house.no")));
                } else if (!text.equals("true") && !text.equals("false")) {
                    fault(grid.name(), number, column, Text.of("house.cell.yes-or-no", text));
                }
            }
        }
    }

    private void reason(Grid grid, GridRow row, int number) {
        String column = Headings.column("reason");
        if (row.reason().isBlank()) {
            fault(grid.name(), number, column, Text.of("house.cell.reason-missing"));
        } else if (row.reason().length() > LONGEST_REASON) {
            fault(grid.name(), number, column, Text.of("house.cell.reason-long", LONGEST_REASON));
        } else if (UNWRITABLE.matcher(row.reason()).find()) {
            fault(grid.name(), number, column, Text.of("house.cell.reason-signs"));
        }
        Matcher places = PLACE.matcher(row.reason());
        while (places.find()) {
            if (!PLACES.contains(places.group())) {
                fault(grid.name(), number, column, Text.of("house.cell.place", places.group(), "{height}", "{quantity}", "{share}"));
            }
        }
    }

    private void tables() {
        DmnCompilation compiled = new DmnCompiler().compile(Map.of(sheet.file(), SheetWriter.dmn(sheet)));
        if (compiled instanceof DmnCompilation.Faulty faulty) {
            faulty.faults().stream().limit(MOST_OF_A_KIND).forEach(this::told);
            if (faulty.faults().size() > MOST_OF_A_KIND) {
                fault("", 0, "", Text.of("house.more", faulty.faults().size() - MOST_OF_A_KIND));
            }
        }
    }

    /** An engine's fault in the words of the grid. */
    private void told(RulebookFault fault) {
        Grid grid = sheet.grid(fault.part()).orElse(null);
        if (grid == null || fault.box().isEmpty()) {
            fault(fault.part(), fault.rows().isEmpty() ? 0 : fault.rows().get(0), "", fault.message());
            return;
        }
        RulebookFault.Box box = fault.box().get();
        Optional<NumberInterval> heights = Optional.ofNullable(box.numbers().get("height"));
        if (box.gap()) {
            gap(grid, box, heights);
        } else {
            List<Integer> rows = fault.rows();
            String column = heights.filter(h -> !everyHeight(h)).map(h -> Headings.column("from")).orElseGet(() -> columnMeant(grid, box));
            fault(grid.name(), rows.get(rows.size() - 1), column, Text.of("house.overlap", listed(rows), rows.size(), trees(grid, box)));
        }
    }

    private void gap(Grid grid, RulebookFault.Box box, Optional<NumberInterval> heights) {
        List<Integer> all = IntStream.range(0, grid.rows().size()).boxed().toList();
        List<Integer> matching = all.stream().filter(i -> missed(grid, grid.rows().get(i), box).isEmpty()).toList();
        // A row that speaks of more than the gap would overlap others if it were stretched, so it is offered last.
        if (beside(grid, box, heights, matching.stream().filter(i -> within(grid, grid.rows().get(i), box)).toList())) {
            return;
        }
        Optional<Integer> lacking = heights.flatMap(gap -> all.stream().filter(i -> !grid.rows().get(i).heights().any() && ends(grid, i).covers(gap)
                && leavesOut(grid, grid.rows().get(i), box)).findFirst());
        if (lacking.isPresent()) {
            String column = grid.columns().get(missed(grid, grid.rows().get(lacking.get()), box).get(0)).name();
            fault(grid.name(), lacking.get() + 1, Headings.column(column), Text.of("house.gap.words", trees(grid, box),
                    String.join(", ", box.words().get(column)), String.valueOf(lacking.get() + 1)));
        } else if (!beside(grid, box, heights, matching)) {
            fault(grid.name(), grid.rows().size(), columnMeant(grid, box), Text.of("house.gap.alone", trees(grid, box)));
        }
    }

    /** Tells of the gap at the row that ends before it or at the one that begins after it; false when there is neither. */
    private boolean beside(Grid grid, RulebookFault.Box box, Optional<NumberInterval> heights, List<Integer> rows) {
        Optional<Integer> before = heights.flatMap(gap -> rows.stream().filter(i -> ends(grid, i).to().compareTo(gap.from()) == 0
                && !(ends(grid, i).toIncluded() && gap.fromIncluded()) && !grid.rows().get(i).heights().any()).findFirst());
        Optional<Integer> after = heights.flatMap(gap -> rows.stream().filter(i -> ends(grid, i).from().compareTo(gap.to()) == 0
                && !(ends(grid, i).fromIncluded() && gap.toIncluded()) && !grid.rows().get(i).heights().any()).findFirst());
        String what = trees(grid, box);
        if (before.isPresent() && after.isPresent()) {
            fault(grid.name(), before.get() + 1, Headings.column("to"), Text.of("house.gap.between", String.valueOf(before.get() + 1), String.valueOf(after.get() + 1),
                    what, edge(heights.get().to(), heights.get().toIncluded() ? "with" : "at"),
                    edge(heights.get().from(), heights.get().fromIncluded() ? "at" : "above")));
        } else if (before.isPresent()) {
            fault(grid.name(), before.get() + 1, Headings.column("to"), Text.of("house.gap.after", String.valueOf(before.get() + 1), what, shown(heights.get().to())));
        } else if (after.isPresent()) {
            fault(grid.name(), after.get() + 1, Headings.column("from"), Text.of("house.gap.before", String.valueOf(after.get() + 1), what, shown(heights.get().from())));
        }
        return before.isPresent() || after.isPresent();
    }

    private static NumberInterval ends(Grid grid, int row) {
        return grid.rows().get(row).heights().interval().orElseThrow();
    }

    private String edge(BigDecimal feet, String how) {
        return Text.of("house.edge." + how, shown(feet));
    }

    /** The columns in which the row has none of the words that are meant. */
    private static List<Integer> missed(Grid grid, GridRow row, RulebookFault.Box box) {
        return IntStream.range(0, grid.columns().size()).filter(c -> {
            List<String> meant = box.words().getOrDefault(grid.columns().get(c).name(), List.of());
            List<String> words = row.choices().get(c);
            return !meant.isEmpty() && !words.isEmpty() && words.stream().noneMatch(meant::contains);
        }).boxed().toList();
    }

    /** Whether somebody seems to have left the words that are meant out of one column of the row, which has several or all others. */
    private static boolean leavesOut(Grid grid, GridRow row, RulebookFault.Box box) {
        List<Integer> missed = missed(grid, row, box);
        if (missed.size() != 1) {
            return false;
        }
        Column column = grid.columns().get(missed.get(0));
        int words = row.choices().get(missed.get(0)).size();
        return words > 1 || words + box.words().get(column.name()).size() == column.choices().size();
    }

    /** Whether the row has no other words than those that are meant. */
    private static boolean within(Grid grid, GridRow row, RulebookFault.Box box) {
        return IntStream.range(0, grid.columns().size()).allMatch(c -> {
            List<String> choices = grid.columns().get(c).choices();
            List<String> meant = box.words().getOrDefault(grid.columns().get(c).name(), choices);
            return meant.isEmpty() || meant.containsAll(row.choices().get(c).isEmpty() ? choices : row.choices().get(c));
        });
    }

    /** Heading of the first column that tells what is meant from all else. */
    private static String columnMeant(Grid grid, RulebookFault.Box box) {
        return grid.columns().stream().filter(c -> narrows(c, box)).findFirst().or(() -> grid.byHeight() ? Optional.empty() : grid.columns().stream().findFirst())
                .map(c -> Headings.column(c.name())).orElseGet(() -> Headings.column("from"));
    }

    private static boolean narrows(Column column, RulebookFault.Box box) {
        List<String> meant = box.words().getOrDefault(column.name(), List.of());
        return !meant.isEmpty() && meant.size() < column.choices().size();
    }

    private static boolean everyHeight(NumberInterval heights) {
        return heights.from().compareTo(Heights.ALLOWED.from()) <= 0 && heights.to().compareTo(Heights.ALLOWED.to()) >= 0;
    }

    /** {@code trees from 11 ft to below 11 ft 6 in (fullness full)}. */
    private String trees(Grid grid, RulebookFault.Box box) {
        NumberInterval heights = box.numbers().getOrDefault("height", Heights.ALLOWED);
        String trees = everyHeight(heights) ? Text.of("house.trees.all")
                : heights.from().compareTo(heights.to()) == 0 ? Text.of("house.trees.single", shown(heights.from()))
                : Text.of("house.trees." + (heights.fromIncluded() ? "from-" : "above-") + (heights.toIncluded() ? "to" : "below"),
                        shown(heights.from()), shown(heights.to()));
        String words = grid.columns().stream().filter(c -> narrows(c, box)).map(c -> Headings.column(c.name()) + " " + String.join(", ", box.words().get(c.name())))
                .collect(Collectors.joining("; "));
        return words.isEmpty() ? trees : Text.of("house.trees.words", trees, words);
    }

    /** Numbers that fall as trees grow, or as they are fuller, seen from more sides or dressed more lavishly: a doubt, no fault. */
    private void falls(Grid grid) {
        boolean base = grid.name().equals(Grid.BASE);
        boolean factor = !base && !grid.name().equals(Grid.POLICY);
        if (complaints.stream().anyMatch(c -> c.table().equals(Headings.grid(grid.name())))) {
            return;
        }
        String column = Headings.result(sheet, grid, grid.results().get(0));
        if (base) {
            Set<String> told = new LinkedHashSet<>();
            for (List<String> words : combinations(grid)) {
                List<Integer> rows = IntStream.range(0, grid.rows().size()).filter(i -> answers(grid, grid.rows().get(i), words)).boxed()
                        .sorted(Comparator.comparing(i -> ends(grid, i).from())).toList();
                for (int i = 1; i < rows.size(); i++) {
                    double before = value(grid, rows.get(i - 1), ends(grid, rows.get(i - 1)).to());
                    double after = value(grid, rows.get(i), ends(grid, rows.get(i)).from());
                    if (after < before - 1e-9 && told.add(rows.get(i - 1) + " " + rows.get(i))) {
                        doubt(grid.name(), rows.get(i) + 1, column, Text.of("house.falls", String.valueOf(rows.get(i) + 1), round(after), String.valueOf(rows.get(i - 1) + 1),
                                round(before), grid.rows().get(rows.get(i)).results().get(0)));
                    }
                }
            }
        } else if (factor && grid.columns().size() == 1) {
            List<String> choices = grid.columns().get(0).choices();
            for (int i = 1; i < choices.size(); i++) {
                int before = rowOf(grid, choices.get(i - 1));
                int after = rowOf(grid, choices.get(i));
                if (new BigDecimal(grid.rows().get(after).results().get(0)).compareTo(new BigDecimal(grid.rows().get(before).results().get(0))) < 0) {
                    doubt(grid.name(), after + 1, column, Text.of("house.falls.word", choices.get(i), grid.rows().get(after).results().get(0), choices.get(i - 1),
                            grid.rows().get(before).results().get(0)));
                }
            }
        }
    }

    private static int rowOf(Grid grid, String word) {
        return IntStream.range(0, grid.rows().size()).filter(i -> answers(grid, grid.rows().get(i), List.of(word))).findFirst().orElseThrow();
    }

    private static String round(double value) {
        return NumberInterval.plain(BigDecimal.valueOf(value).setScale(4, java.math.RoundingMode.HALF_UP));
    }

    private static double value(Grid grid, int row, BigDecimal feet) {
        GridRow written = grid.rows().get(row);
        BigDecimal amount = new BigDecimal(written.results().get(0));
        return written.growing() ? new Growing(amount, ends(grid, row).from()).at(feet.doubleValue()) : amount.doubleValue();
    }

    static boolean answers(Grid grid, GridRow row, List<String> words) {
        for (int c = 0; c < grid.columns().size(); c++) {
            if (!row.choices().get(c).isEmpty() && !row.choices().get(c).contains(words.get(c))) {
                return false;
            }
        }
        return true;
    }

    /** Every combination of the words that some row tells apart. */
    private static List<List<String>> combinations(Grid grid) {
        List<List<String>> all = List.of(List.of());
        for (int c = 0; c < grid.columns().size(); c++) {
            int column = c;
            boolean told = grid.rows().stream().anyMatch(r -> !r.choices().get(column).isEmpty());
            List<String> words = told ? grid.columns().get(c).choices() : grid.columns().get(c).choices().subList(0, 1);
            all = all.stream().flatMap(before -> words.stream().map(w -> {
                List<String> more = new ArrayList<>(before);
                more.add(w);
                return List.copyOf(more);
            })).toList();
        }
        return all;
    }

    private String shown(BigDecimal feet) {
        return LengthText.said(Length.ofFeet(feet.doubleValue()), units);
    }

    private static String listed(List<Integer> rows) {
        List<String> some = rows.stream().limit(6).map(String::valueOf).toList();
        return rows.size() > 6 ? String.join(", ", some) + " …" : String.join(", ", some.subList(0, some.size() - 1)) + Text.of("house.and") + some.get(some.size() - 1);
    }

    private void fault(String grid, int row, String column, String message) {
        add(Weight.FAULT, grid, row, column, message);
    }

    private void doubt(String grid, int row, String column, String message) {
        add(Weight.DOUBT, grid, row, column, message);
    }

    private void add(Weight weight, String grid, int row, String column, String message) {
        complaints.add(new Complaint(weight, sheet.topic(), sheet.title(), grid.isEmpty() ? "" : Headings.grid(grid), row, column, message));
    }
}
