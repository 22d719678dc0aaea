package boughwright.house;

import boughwright.brief.Look;
import boughwright.brief.Palette;
import boughwright.house.Complaint.Weight;
import boughwright.needs.HouseNumber;
import boughwright.needs.HouseNumber.Guard;
import boughwright.needs.HouseNumber.Measure;
import boughwright.needs.HouseWords;
import boughwright.rulebook.Asked;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;

/** Mistakes such as staff make, of every kind and at seeded places of the shipped house rules; the same seed gives the same mistakes. */
final class StaffMistakes {

    /**
     * One slip and where it must be told.
     *
     * @param pages the first is where it was made; complaints on any other of them have the same cause
     * @param tables likewise, by their headings
     * @param rows any of them will do: a gap or an overlap lies between two
     * @param columns likewise
     */
    record Mistake(String name, HouseRules rules, Weight weight, List<String> pages, List<String> tables, Set<Integer> rows, Set<String> columns) {

        boolean toldBy(Complaint complaint) {
            return complaint.weight() == weight && complaint.page().equals(pages.get(0)) && complaint.table().equals(tables.get(0))
                    && rows.contains(complaint.row()) && columns.contains(complaint.column());
        }

        boolean explains(Complaint complaint) {
            return pages.contains(complaint.page()) && tables.contains(complaint.table());
        }
    }

    private static final HouseRules SHIPPED = HouseFixture.shipped();
    private static final String FROM = Headings.column("from");
    private static final String TO = Headings.column("to");
    private static final String REASON = Headings.column("reason");
    private static final BigDecimal TWO_INCHES = new BigDecimal("0.166667");

    private final Random random;

    private StaffMistakes(long seed) {
        random = new Random(seed);
    }

    /** Every kind once, then every kind again elsewhere, until there are so many. */
    static List<Mistake> seeded(long seed, int count) {
        List<Supplier<Mistake>> kinds = new StaffMistakes(seed).kinds();
        List<Mistake> mistakes = new ArrayList<>();
        Set<String> names = new HashSet<>();
        for (int i = 0; mistakes.size() < count; i++) {
            Mistake mistake = kinds.get(i % kinds.size()).get();
            if (names.add(mistake.name())) {
                mistakes.add(mistake);
            }
        }
        return mistakes;
    }

    private List<Supplier<Mistake>> kinds() {
        return List.of(
                this::gapBelowARow, this::gapAboveARow, this::gapAtThreeFeet, this::gapAtTwentyFeet, this::overlapAbove, this::overlapBelow, this::rowTwice,
                this::rowDeleted, this::endsSwapped, this::heightUnreadable, this::heightNotSold, this::oneHeightOnly, this::edgeLeftOut, this::edgeTwice,
                this::numberUnreadable, this::numberMissing, this::numberBeyond, this::quantityFalls, this::factorFalls,
                this::wordUnknown, this::wordLeftOutOfFactor, this::wordLeftOutOfBase, this::factorRowDeleted, this::factorRowTwice, this::factorWordTwice,
                this::leastNotWhole, this::roundingUnknown, this::girthUnknown, this::sentenceBlank, this::sentenceLong, this::placeUnknown,
                this::pageMissing, this::tableMissing, this::pageNeverAsked, this::tableNeverAsked, this::columnNeverAsked, this::columnOfOtherWords,
                this::resultsOfOthers,
                this::pageWithoutName, this::noRows,
                this::laxerThanSafety, this::houseNumberBeyond, this::houseNumberNotWhole, this::pairOutOfOrder, this::sharesNotAHundred,
                this::tooManyVariedRuns,
                this::houseNumberUnreadable, this::houseNumberMissing, this::nothingForTaste,
                this::wordsEmpty, this::safetyWordGone, this::houseWordUnknown,
                this::lookWithoutPalette, this::lookWithoutTexture, this::lookWithoutFinish, this::lookWithoutName, this::lookWithoutSentence,
                this::lookTagTwice,
                this::lookTagUnreadable, this::lookTextureUnknown, this::paletteDeleted, this::noLooks, this::paletteTagTaken, this::paletteAlike);
    }

    // Heights

    private Mistake gapBelowARow() {
        Place at = ladder(1, 1);
        return at.heights("begins later", h -> new Heights(later(h.from()), h.above(), h.to(), h.upTo()), at.row, at.row + 1);
    }

    private Mistake gapAboveARow() {
        Place at = ladder(0, 2);
        return at.heights("ends earlier", h -> new Heights(h.from(), h.above(), earlier(h.to()), h.upTo()), at.row + 1, at.row + 2);
    }

    private Mistake gapAtThreeFeet() {
        Place at = ladder(0, 0).first();
        return at.heights("leaves out the smallest", h -> new Heights("3 ft 4 in", false, h.to(), h.upTo()), 1);
    }

    private Mistake gapAtTwentyFeet() {
        Place at = ladder(0, 0).last();
        return at.heights("leaves out the tallest", h -> new Heights(h.from(), h.above(), "19 ft", true), at.row + 1);
    }

    private Mistake overlapAbove() {
        Place at = ladder(0, 2);
        return at.heights("ends later", h -> new Heights(h.from(), h.above(), later(h.to()), h.upTo()), at.row + 1, at.row + 2);
    }

    private Mistake overlapBelow() {
        Place at = ladder(1, 1);
        return at.heights("begins earlier", h -> new Heights(earlier(h.from()), h.above(), h.to(), h.upTo()), at.row, at.row + 1);
    }

    private Mistake rowTwice() {
        Place at = ladder(0, 0);
        return at.grid("twice", g -> g.copy(at.row), Set.of(at.row + 1, at.row + 2), Set.of(FROM, TO));
    }

    private Mistake rowDeleted() {
        Place at = ladder(1, 1);
        return at.grid("deleted", g -> g.delete(at.row), Set.of(at.row, at.row + 1), Set.of(FROM, TO));
    }

    private Mistake endsSwapped() {
        Place at = ladder(0, 0);
        return at.row("ends swapped", r -> r.withHeights(new Heights(r.heights().to(), r.heights().above(), r.heights().from(), r.heights().upTo())), TO);
    }

    private Mistake heightUnreadable() {
        Place at = ladder(0, 0);
        String text = any("8 foots", "eight", "7 ft 14 in", "8–9 ft", "about 9 ft");
        return random.nextBoolean() ? at.row("from " + text, r -> r.withHeights(new Heights(text, false, r.heights().to(), r.heights().upTo())), FROM)
                : at.row("to " + text, r -> r.withHeights(new Heights(r.heights().from(), r.heights().above(), text, false)), TO);
    }

    private Mistake heightNotSold() {
        if (random.nextBoolean()) {
            String low = any("2 ft", "1 ft 6 in", "30 cm");
            return ladder(0, 0).first().row("from " + low, r -> r.withHeights(new Heights(low, false, r.heights().to(), r.heights().upTo())), FROM);
        }
        String beyond = any("21 ft", "25 ft", "300 in", "75 ft");
        return ladder(0, 0).last().row("to " + beyond, r -> r.withHeights(new Heights(r.heights().from(), r.heights().above(), beyond, true)), TO);
    }

    private Mistake oneHeightOnly() {
        Place at = ladder(0, 0);
        return random.nextBoolean() ? at.row("no from", r -> r.withHeights(new Heights("", false, r.heights().to(), r.heights().upTo())), FROM)
                : at.row("no to", r -> r.withHeights(new Heights(r.heights().from(), r.heights().above(), "", false)), TO);
    }

    private Mistake edgeLeftOut() {
        Place at = ladder(1, 1);
        return at.shipped().heights().above() ? edgeLeftOut()
                : at.heights("begins above", h -> new Heights(h.from(), true, h.to(), h.upTo()), at.row, at.row + 1);
    }

    private Mistake edgeTwice() {
        Place at = ladder(0, 2);
        return at.shipped().heights().upTo() ? edgeTwice()
                : at.heights("ends with it", h -> new Heights(h.from(), h.above(), h.to(), true), at.row + 1, at.row + 2);
    }

    // Numbers

    private Mistake numberUnreadable() {
        Place at = any(anyCell(), ladder(0, 0));
        String text = any("two", "2,5", "1/2", "-1", "1e3", "approx. 3");
        return at.row("number " + text, r -> r.withResult(0, text), at.result(0));
    }

    private Mistake numberMissing() {
        Place at = any(anyCell(), ladder(0, 0));
        return at.row("no number", r -> r.withResult(0, ""), at.result(0));
    }

    private Mistake numberBeyond() {
        return switch (random.nextInt(4)) {
            case 0 -> beyond(ladder(0, 0), 0, "25000");
            case 1 -> beyond(anyCell(), 0, "115");
            case 2 -> beyond(new Place("filler-balls", Grid.BASE, random.nextInt(8)), 0, "4.5");
            default -> beyond(policy(), 1, "1000000");
        };
    }

    private static Mistake beyond(Place at, int result, String text) {
        return at.row("number " + text, r -> r.withResult(result, text), at.result(result));
    }

    private Mistake quantityFalls() {
        Place at = ladder(1, 1);
        return at.mistake("falls", Weight.DOUBT, g -> g.change(at.row, r -> r.withResult(0, "0.1")), Set.of(at.row + 1), Set.of(at.result(0)));
    }

    private Mistake factorFalls() {
        Place at = anyFactor();
        return at.row == 0 ? factorFalls()
                : at.mistake("factor falls", Weight.DOUBT, g -> g.change(at.row, r -> r.withResult(0, "0.1")), Set.of(at.row + 1), Set.of(at.result(0)));
    }

    // Words

    private Mistake wordUnknown() {
        Place at = anyCell();
        return at.row("unknown word", r -> r.withChoice(0, List.of(any("bushy", "window", "Full", "opulent"))), at.column(0));
    }

    private Mistake wordLeftOutOfFactor() {
        Place at = new Place(any("topper-groupings", "accent-ribbon", "spray-styles", "filler-balls", "gap-accents"), "Fullness factor", 0);
        List<String> words = new ArrayList<>(at.shipped().choices().get(0));
        words.remove(random.nextInt(words.size()));
        return at.row("only " + words, r -> r.withChoice(0, words), at.column(0));
    }

    private Mistake wordLeftOutOfBase() {
        Place at = ladder(0, 0);
        int column = random.nextInt(3);
        List<String> words = new ArrayList<>(at.table().columns().get(column).choices());
        words.remove(random.nextInt(words.size()));
        return at.row("only " + words, r -> r.withChoice(column, words), at.column(column));
    }

    private Mistake factorRowDeleted() {
        Place at = anyFactor();
        return at.grid("deleted", g -> g.delete(at.row), Set.of(at.table().rows().size() - 1), Set.of(at.column(0)));
    }

    private Mistake factorRowTwice() {
        Place at = anyCell();
        return at.grid("twice", g -> g.copy(at.row), Set.of(at.row + 1, at.row + 2), Set.of(at.column(0)));
    }

    private Mistake factorWordTwice() {
        Place at = anyFactor();
        int other = (at.row + 1) % at.table().rows().size();
        return at.grid("word of row " + (other + 1), g -> g.change(at.row, r -> r.withChoice(0, g.rows().get(other).choices().get(0))),
                Set.of(Math.max(at.row, other) + 1), Set.of(at.column(0)));
    }

    // Rounding and sentences

    private Mistake leastNotWhole() {
        Place at = policy();
        return at.row("least 1.5", r -> r.withResult(1, "1.5"), at.result(1));
    }

    private Mistake roundingUnknown() {
        Place at = policy();
        String text = any("upwards", "", "off");
        return at.row("rounding " + text, r -> r.withResult(0, text), at.result(0));
    }

    private Mistake girthUnknown() {
        Place at = policy();
        String text = any("", "maybe");
        return at.row("girth " + text, r -> r.withResult(2, text), at.result(2));
    }

    private Mistake sentenceBlank() {
        return any(ladder(0, 0), anyCell(), policy()).row("no sentence", r -> r.withReason("  "), REASON);
    }

    private Mistake sentenceLong() {
        return any(ladder(0, 0), anyCell(), policy()).row("long sentence", r -> r.withReason("A tree like this one takes more. ".repeat(12)), REASON);
    }

    private Mistake placeUnknown() {
        String place = any("{hieght}", "{quantities}", "{}", "{height", "height}");
        return any(ladder(0, 0), anyCell()).row("place " + place, r -> r.withReason("A tree of " + place + " takes a few."), REASON);
    }

    // Pages and tables

    private Mistake pageMissing() {
        String topic = anyTopic();
        return onPage(topic + " missing", new HouseRules(SHIPPED.sheets().stream()
                .filter(s -> !s.topic().equals(topic)).toList(), SHIPPED.numbers(), SHIPPED.words(),
                SHIPPED.looks(), SHIPPED.palettes()), List.of(topic), 0, "");
    }

    private Mistake tableMissing() {
        String topic = anyTopic();
        String gone = any(Asked.tables());
        return inTables(topic + " without " + gone, topic, s -> new Sheet(s.topic(), s.title(), s.about(), s.grids().stream()
                .filter(g -> !g.name().equals(gone)).toList()),
                List.of(gone), "");
    }

    private Mistake pageNeverAsked() {
        String topic = anyTopic();
        return onPage(topic + " named wreaths", SHIPPED.changeSheet(topic, s -> new Sheet("wreaths", s.title(), s.about(), s.grids())), List.of("wreaths",
                topic), 0, "");
    }

    private Mistake tableNeverAsked() {
        String topic = anyTopic();
        String other = any("Base 2", "Garlands", "Height factor");
        return inTables(topic + " with " + other, topic, s -> s.change(Grid.BASE, g -> new Grid(other, g.byHeight(), g.columns(), g.results(), g.rows())),
                List.of(other, Grid.BASE), "");
    }

    private Mistake columnNeverAsked() {
        String topic = anyTopic();
        return inTables(topic + " asks for colour", topic, s -> s.change(Grid.BASE, g -> {
            List<Column> columns = new ArrayList<>(g.columns());
            columns.set(0, new Column("colour", List.of("red", "white")));
            return new Grid(g.name(), g.byHeight(), columns, g.results(), g.rows());
        }), List.of(Grid.BASE), "colour");
    }

    private Mistake columnOfOtherWords() {
        String topic = anyTopic();
        return inTables(topic + " asks with other words", topic, s -> s.change("Seen-from factor", g ->
                new Grid(g.name(), g.byHeight(), List.of(new Column("seen from", List.of("corner", "wall", "window", "round"))), g.results(), g.rows())),
                List.of("Seen-from factor"), Headings.column("seen from"));
    }

    private Mistake resultsOfOthers() {
        String topic = anyTopic();
        return inTables(topic + " without girth", topic, s -> s.change(Grid.POLICY, g -> new Grid(g.name(), g.byHeight(), g.columns(),
                g.results().subList(0, 2), g.rows())),
                List.of(Grid.POLICY), "");
    }

    private Mistake pageWithoutName() {
        String topic = anyTopic();
        return onPage(topic + " without name", SHIPPED.changeSheet(topic, s -> new Sheet(s.topic(), " ", s.about(), s.grids())), List.of(topic), 0, "");
    }

    private Mistake noRows() {
        String topic = anyTopic();
        String table = any(Asked.tables());
        return inTables(topic + " " + table + " empty", topic, s -> s.change(table, g -> new Grid(g.name(), g.byHeight(), g.columns(), g.results(), List.of())),
                List.of(table), "");
    }

    // House numbers and words

    private Mistake laxerThanSafety() {
        HouseNumber number = any(Arrays.stream(HouseNumber.values()).filter(n -> n.guard() != Guard.NONE).toList());
        BigDecimal lax = number.guard() == Guard.NOT_BELOW ? number.least().multiply(new BigDecimal("0.5")) : number.most().multiply(new BigDecimal("1.2"));
        return number(number, typed(number, lax));
    }

    private Mistake houseNumberBeyond() {
        HouseNumber number = any(HouseNumber.values());
        return number.guard() == Guard.NOT_ABOVE ? houseNumberBeyond() : number(number, typed(number, number.most().multiply(BigDecimal.valueOf(2))));
    }

    private Mistake houseNumberNotWhole() {
        return number(any(Arrays.stream(HouseNumber.values()).filter(n -> n.measure() == Measure.COUNT).toList()), "1.5");
    }

    private Mistake pairOutOfOrder() {
        return switch (random.nextInt(6)) {
            case 0 -> onNumber(HouseNumber.TALL_TOPPER_LEAST, "205 cm", HouseNumber.TALL_TOPPER_MOST);
            case 1 -> onNumber(HouseNumber.LOW_TOPPER_MOST, "25 cm", HouseNumber.LOW_TOPPER_MOST);
            case 2 -> onNumber(HouseNumber.SINGLE_FLOWER_MOST, "3 in", HouseNumber.SINGLE_FLOWER_MOST);
            case 3 -> onNumber(HouseNumber.ONE_LOOP_GAP, "16.5 cm", HouseNumber.TWO_LOOP_GAP);
            case 4 -> onNumber(HouseNumber.SMALL_LOOP, "2 ft 1 in", HouseNumber.LOOP);
            default -> onNumber(HouseNumber.SMALL_TREE_LOOP, "8 in", HouseNumber.SMALL_TREE_LOOP);
        };
    }

    private Mistake sharesNotAHundred() {
        return onNumber(any(HouseNumber.MAIN_SHARE, HouseNumber.SECOND_SHARE, HouseNumber.SPARK_SHARE), any("5", "25", "70"), HouseNumber.SPARK_SHARE);
    }

    private Mistake tooManyVariedRuns() {
        return onNumber(any(HouseNumber.RUNS_WITH_END_BOW, HouseNumber.RUNS_WITH_SMALL_LOOP), any("9", "12"), HouseNumber.RUNS_WITH_END_BOW);
    }

    private Mistake houseNumberUnreadable() {
        return number(any(HouseNumber.values()), any("many", "8 inchs", "1/2"));
    }

    private Mistake houseNumberMissing() {
        return number(any(HouseNumber.values()), "");
    }

    private Mistake nothingForTaste() {
        return onPage("taste weighs nothing", SHIPPED.withNumber(HouseNumber.SCORE_LOOK_FIT, "0").withNumber(HouseNumber.SCORE_PALETTE_FIT, "0"),
                List.of(HouseNumber.Theme.SCORE.word()), 0, HouseCheck.name(HouseNumber.SCORE_LOOK_FIT));
    }

    private Mistake wordsEmpty() {
        HouseWords list = any(HouseWords.values());
        return words("none", list, List.of());
    }

    private Mistake safetyWordGone() {
        HouseWords list = any(HouseWords.NEVER_WITH_PETS, HouseWords.NEVER_WITH_TODDLERS);
        List<String> held = new ArrayList<>(SHIPPED.words().get(list));
        String gone = held.remove(random.nextInt(held.size()));
        return words("without " + gone, list, held);
    }

    private Mistake houseWordUnknown() {
        HouseWords list = any(HouseWords.values());
        List<String> held = new ArrayList<>(SHIPPED.words().get(list));
        held.add("fluffy");
        return words("fluffy", list, held);
    }

    private static Mistake words(String what, HouseWords list, List<String> held) {
        return onPage(list.word() + ": " + what, SHIPPED.withWords(list, held), List.of(HouseCheck.page(list)), 0, HouseCheck.name(list));
    }

    // Looks and palettes

    private Mistake lookWithoutPalette() {
        return look("palette", l -> new Look(l.id(), l.title(), l.blurb(), "", l.textures(), l.finishes()));
    }

    private Mistake lookWithoutTexture() {
        return look("textures", l -> new Look(l.id(), l.title(), l.blurb(), l.palette(), List.of(), l.finishes()));
    }

    private Mistake lookWithoutFinish() {
        return look("finishes", l -> new Look(l.id(), l.title(), l.blurb(), l.palette(), l.textures(), List.of()));
    }

    private Mistake lookWithoutName() {
        return look("title", l -> new Look(l.id(), "", l.blurb(), l.palette(), l.textures(), l.finishes()));
    }

    private Mistake lookWithoutSentence() {
        return look("blurb", l -> new Look(l.id(), l.title(), " ", l.palette(), l.textures(), l.finishes()));
    }

    private Mistake lookTagUnreadable() {
        return look("tag", l -> new Look(l.title() + "!", l.title(), l.blurb(), l.palette(), l.textures(), l.finishes()));
    }

    private Mistake lookTextureUnknown() {
        return look("textures", l -> new Look(l.id(), l.title(), l.blurb(), l.palette(), List.of("velvet", "furry"), l.finishes()));
    }

    private Mistake lookTagTwice() {
        List<Look> looks = new ArrayList<>(SHIPPED.looks());
        looks.add(looks.get(random.nextInt(looks.size())));
        return onPage("look twice", SHIPPED.withLooks(looks), List.of(HouseCheck.LOOKS), looks.size(), Headings.column("tag"));
    }

    private Mistake paletteDeleted() {
        int row = random.nextInt(SHIPPED.looks().size());
        String gone = SHIPPED.looks().get(row).palette();
        return onPage(gone + " deleted", SHIPPED.withPalettes(SHIPPED.palettes().stream().filter(p -> !p.id().equals(gone)).toList()),
                List.of(HouseCheck.LOOKS), row + 1, Headings.column("palette"));
    }

    private Mistake noLooks() {
        return onPage("no looks", SHIPPED.withLooks(List.of()), List.of(HouseCheck.LOOKS), 0, "");
    }

    private Mistake look(String column, UnaryOperator<Look> change) {
        int row = random.nextInt(SHIPPED.looks().size());
        List<Look> looks = new ArrayList<>(SHIPPED.looks());
        looks.set(row, change.apply(looks.get(row)));
        return onPage("look " + (row + 1) + " is " + looks.get(row), SHIPPED.withLooks(looks), List.of(HouseCheck.LOOKS), row + 1, Headings.column(column));
    }

    private Mistake paletteTagTaken() {
        // One more than there are, so that no look loses its palette.
        List<Palette> palettes = new ArrayList<>(SHIPPED.palettes());
        Palette like = palettes.get(1);
        palettes.add(new Palette(any(palettes.get(0).id(), Palette.OWN), "New", like.main(), like.second(), like.spark(), like.ground()));
        return onPage("palette tag " + palettes.get(palettes.size() - 1).id() + " taken", SHIPPED.withPalettes(palettes), List.of(HouseCheck.PALETTES),
                palettes.size(), Headings.column("tag"));
    }

    private Mistake paletteAlike() {
        int row = random.nextInt(SHIPPED.palettes().size());
        Palette palette = SHIPPED.palettes().get(row);
        return palette(row, "second", new Palette(palette.id(), palette.title(), palette.main(), palette.main(), palette.spark(), palette.ground()),
                Weight.DOUBT);
    }

    private static Mistake palette(int row, String column, Palette other, Weight weight) {
        List<Palette> palettes = new ArrayList<>(SHIPPED.palettes());
        palettes.set(row, other);
        return new Mistake("palette " + (row + 1) + " is " + other, SHIPPED.withPalettes(palettes), weight, List.of(HouseCheck.PALETTES), List.of(""),
                Set.of(row + 1), Set.of(Headings.column(column)));
    }

    // Places

    private record Place(String topic, String grid, int row) {

        Grid table() {
            return SHIPPED.sheet(topic).orElseThrow().grid(grid).orElseThrow();
        }

        GridRow shipped() {
            return table().rows().get(row);
        }

        Place first() {
            return new Place(topic, grid, 0);
        }

        Place last() {
            return new Place(topic, grid, table().rows().size() - 1);
        }

        String column(int column) {
            return Headings.column(table().columns().get(column).name());
        }

        String result(int result) {
            return Headings.result(SHIPPED.sheet(topic).orElseThrow(), table(), table().results().get(result));
        }

        Mistake heights(String what, UnaryOperator<Heights> change, Integer... rows) {
            return grid(what, g -> g.change(row, r -> r.withHeights(change.apply(r.heights()))), Set.of(rows), Set.of(FROM, TO));
        }

        Mistake row(String what, UnaryOperator<GridRow> change, String column) {
            return grid(what, g -> g.change(row, change), Set.of(row + 1), Set.of(column));
        }

        Mistake grid(String what, UnaryOperator<Grid> change, Set<Integer> rows, Set<String> columns) {
            return mistake(what, Weight.FAULT, change, rows, columns);
        }

        Mistake mistake(String what, Weight weight, UnaryOperator<Grid> change, Set<Integer> rows, Set<String> columns) {
            return new Mistake(topic + ", " + grid + ", row " + (row + 1) + ": " + what, SHIPPED.changeGrid(topic, grid, change), weight, List.of(topic),
                    List.of(Headings.grid(grid)), rows, columns);
        }
    }

    /** A row of a table whose rows are told apart by height alone, so many rows away from its ends. */
    private Place ladder(int fromStart, int fromEnd) {
        List<String> topics = SHIPPED.sheets().stream().filter(s -> {
            List<GridRow> rows = s.grid(Grid.BASE).orElseThrow().rows();
            return rows.size() > 4 && rows.stream().allMatch(r -> r.choices().stream().allMatch(List::isEmpty));
        }).map(Sheet::topic).toList();
        String topic = any(topics);
        int rows = SHIPPED.sheet(topic).orElseThrow().grid(Grid.BASE).orElseThrow().rows().size();
        return new Place(topic, Grid.BASE, fromStart + random.nextInt(rows - fromStart - fromEnd));
    }

    /** A row of a factor that tells every word apart. */
    private Place anyFactor() {
        Place at = anyCell();
        return at.table().rows().size() == at.table().columns().get(0).choices().size() ? at : anyFactor();
    }

    private Place anyCell() {
        Place table = new Place(anyTopic(), any("Fullness factor", "Seen-from factor", "Abundance factor"), 0);
        return new Place(table.topic(), table.grid(), random.nextInt(table.table().rows().size()));
    }

    private Place policy() {
        return new Place(anyTopic(), Grid.POLICY, 0);
    }

    private String anyTopic() {
        return any(Asked.topics());
    }

    private static Mistake inTables(String what, String topic, UnaryOperator<Sheet> change, List<String> tables, String column) {
        return new Mistake(what, SHIPPED.changeSheet(topic, change), Weight.FAULT, List.of(topic), tables.stream().map(Headings::grid).toList(), Set.of(0),
                Set.of(column));
    }

    private static Mistake onPage(String what, HouseRules rules, List<String> pages, int row, String column) {
        return new Mistake(what, rules, Weight.FAULT, pages, List.of(""), Set.of(row), Set.of(column));
    }

    private static Mistake number(HouseNumber number, String text) {
        return onNumber(number, text, number);
    }

    private static Mistake onNumber(HouseNumber changed, String text, HouseNumber told) {
        return onPage(changed.word() + ": " + text, SHIPPED.withNumber(changed, text), List.of(told.theme().word()), 0, HouseCheck.name(told));
    }

    private static String typed(HouseNumber number, BigDecimal value) {
        return number.measure() == Measure.LENGTH ? value.movePointRight(2).stripTrailingZeros().toPlainString() + " cm"
                : value.stripTrailingZeros().toPlainString();
    }

    private static String later(String height) {
        return LengthText.ofFeet(Heights.feet(height).orElseThrow().add(TWO_INCHES));
    }

    private static String earlier(String height) {
        return LengthText.ofFeet(Heights.feet(height).orElseThrow().subtract(TWO_INCHES));
    }

    @SafeVarargs
    private <T> T any(T... among) {
        return among[random.nextInt(among.length)];
    }

    private <T> T any(List<T> among) {
        return among.get(random.nextInt(among.size()));
    }
}
