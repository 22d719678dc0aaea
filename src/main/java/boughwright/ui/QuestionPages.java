package boughwright.ui;

import java.util.Arrays;
import boughwright.text.Language;
import boughwright.measure.Length;
import boughwright.brief.Abundance;
import boughwright.brief.Fullness;
import boughwright.brief.Look;
import boughwright.brief.Palette;
import boughwright.brief.SeenFrom;
import boughwright.brief.ShopChoices;
import boughwright.catalogue.Product;
import boughwright.proposal.Designer;
import boughwright.drawing.DressedTree;
import boughwright.measure.Money;
import boughwright.measure.Units;
import boughwright.text.Text;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;

/** What each question of the interview shows; answers go straight into {@link Answers}. */
final class QuestionPages {

    private static final List<String> HEIGHTS_FEET = List.of("6 ft 6 in", "7 ft 6 in", "9 ft", "12 ft");
    private static final List<String> HEIGHTS_METRES = List.of("2 m", "2.3 m", "2.7 m", "3.6 m");
    private static final List<String> HEIGHT_WORDS = List.of("small", "usual", "tall", "grand");
    private static final List<String> CEILINGS_FEET = List.of("8 ft", "9 ft", "10 ft", "14 ft");
    private static final List<String> CEILINGS_METRES = List.of("2.5 m", "2.8 m", "3.2 m", "4.5 m");
    private static final List<String> BUDGETS = List.of("250.00", "400.00", "650.00", "1000.00");
    private static final int MOST_FOUND = 8;

    private final Answers answers;
    private final Supplier<Designer> shop;
    private final Runnable changed;
    private final Consumer<String> lastYear;
    private final PaletteQuestion palette;
    private String search = "";

    /**
     * @param changed called after each answer, to draw the page anew
     * @param lastYear called with the code of a plan whose pieces are the customer's by now
     */
    QuestionPages(Answers answers, Supplier<Designer> shop, Runnable changed, Consumer<String> lastYear) {
        this.answers = answers;
        this.shop = shop;
        this.changed = changed;
        this.lastYear = lastYear;
        this.palette = new PaletteQuestion(answers, shop, this::answer);
    }

    /** The palette as it is answered by now. */
    Palette palette() {
        return palette.chosen();
    }

    Div page(Question question) {
        Div page = new Div();
        page.addClassName("page");
        switch (question) {
            case TREE -> tree(page);
            case SEEN_FROM -> seenFrom(page);
            case ROOM -> room(page);
            case HOUSEHOLD -> household(page);
            case LOOK -> look(page);
            case PALETTE -> palette.show(page);
            case ABUNDANCE -> abundance(page);
            case BUDGET -> budget(page);
            case OWNED -> owned(page);
        }
        return page;
    }

    private ShopChoices choices() {
        return shop.get().rulebook().choices();
    }

    private void answer(Runnable change) {
        change.run();
        changed.run();
    }

    private static Div cards(String kind) {
        Div cards = new Div();
        cards.addClassNames("cards", kind);
        return cards;
    }

    private static Div row(String heading) {
        Div row = new Div();
        row.addClassName("choice-row");
        if (!heading.isEmpty()) {
            row.add(new H2(heading));
        }
        return row;
    }

    private void tree(Div page) {
        Div cards = cards("four");
        List<String> heights = answers.units == Units.FEET ? HEIGHTS_FEET : HEIGHTS_METRES;
        for (int i = 0; i < heights.size(); i++) {
            String height = heights.get(i);
            cards.add(Controls.card(null, said(height), Text.of("interview.tree.height-words." + HEIGHT_WORDS.get(i)), same(height, answers.height),
                    () -> answer(() -> answers.height = height)));
        }
        Div sizes = row("");
        sizes.add(Controls.field("height", Text.of("interview.tree.other"), Text.of("interview.tree.other.example"), shown(answers.height),
                v -> answer(() -> answers.height = v)));
        sizes.add(Controls.field("diameter", Text.of("interview.tree.diameter"),
                answers.diameterRead().map(d -> Text.of("interview.tree.diameter.usual", d.show(answers.units))).orElse(""), shown(answers.diameter),
                v -> answer(() -> answers.diameter = v)));
        Div kind = row("");
        kind.add(Controls.pill(Text.of("interview.tree.real"), answers.real, () -> answer(() -> answers.real = !answers.real)));
        kind.add(Controls.pill(Text.of("interview.tree.lit"), answers.lit, () -> answer(() -> answers.lit = !answers.lit)));
        page.add(cards, sizes, kind);
    }

    /** A length that was written as files know it, or as the kiosk showed it, in the words of the language that is spoken; else as it was typed. */
    private String shown(String text) {
        return Length.read(text).filter(l -> Arrays.stream(Language.values()).anyMatch(each -> Text.in(each, () -> l.show(answers.units)).equals(text)))
                .map(l -> l.show(answers.units)).orElse(text);
    }

    /** One of the lengths that are offered. */
    private String said(String offered) {
        return Length.read(offered).orElseThrow().show(answers.units);
    }

    private static boolean same(String one, String other) {
        return Length.read(one).equals(Length.read(other));
    }

    private void seenFrom(Div page) {
        Div cards = cards("four");
        for (SeenFrom seen : SeenFrom.values()) {
            cards.add(Controls.card(Icons.seenFrom(seen), Text.of("seen-from." + seen.word()), Text.of("seen-from." + seen.word() + ".words"),
                    seen == answers.seenFrom, () -> answer(() -> answers.seenFrom = seen)));
        }
        Div full = row(Text.of("interview.fullness"));
        for (Fullness fullness : Fullness.values()) {
            full.add(Controls.pill(Text.of("fullness." + fullness.word()), fullness == answers.fullness,
                    () -> answer(() -> answers.fullness = fullness)));
        }
        page.add(cards, full);
    }

    private void room(Div page) {
        Div cards = cards("four");
        for (String ceiling : answers.units == Units.FEET ? CEILINGS_FEET : CEILINGS_METRES) {
            cards.add(Controls.card(null, said(ceiling), "", same(ceiling, answers.ceiling), () -> answer(() -> answers.ceiling = ceiling)));
        }
        cards.add(Controls.card(null, Text.of("interview.room.unknown"), Text.of("interview.room.unknown.words"), answers.ceiling.isEmpty(),
                () -> answer(() -> answers.ceiling = "")));
        Div other = row("");
        other.add(Controls.field("ceiling", Text.of("interview.room.other"), Text.of("interview.room.other.example"), shown(answers.ceiling),
                v -> answer(() -> answers.ceiling = v)));
        Div heat = row(Text.of("interview.heat"));
        heat.add(Controls.pill(Text.of("interview.heat.no"), !answers.nearHeat, () -> answer(() -> answers.nearHeat = false)));
        heat.add(Controls.pill(Text.of("interview.heat.yes"), answers.nearHeat, () -> answer(() -> answers.nearHeat = true)));
        page.add(cards, other, heat);
    }

    private void household(Div page) {
        Div cards = cards("two");
        cards.add(Controls.card(null, Text.of("interview.toddlers"), Text.of("interview.toddlers.words"), answers.toddlers,
                () -> answer(() -> answers.toddlers = !answers.toddlers)));
        cards.add(Controls.card(null, Text.of("interview.pets"), Text.of("interview.pets.words"), answers.pets,
                () -> answer(() -> answers.pets = !answers.pets)));
        cards.add(Controls.card(null, Text.of("interview.neither"), Text.of("interview.neither.words"), !answers.toddlers && !answers.pets,
                () -> answer(() -> {
                    answers.toddlers = false;
                    answers.pets = false;
                })));
        page.add(cards);
    }

    private void look(Div page) {
        Div cards = cards("looks");
        String chosen = answers.look.isEmpty() ? choices().looks().get(0).id() : answers.look;
        for (Look look : choices().looks()) {
            cards.add(Controls.card(Icons.palette(choices().palette(look.palette()).orElseThrow()), look.shownTitle(), look.shownBlurb(),
                    look.id().equals(chosen), () -> answer(() -> answers.look = look.id())));
        }
        page.add(cards);
    }

    private void abundance(Div page) {
        Div cards = cards("three");
        int[] dots = {7, 16, 34};
        for (Abundance abundance : Abundance.values()) {
            cards.add(Controls.card(Icons.abundance(dots[abundance.ordinal()]), Text.of("abundance." + abundance.word()),
                    Text.of("abundance." + abundance.word() + ".words"), abundance == answers.abundance,
                    () -> answer(() -> answers.abundance = abundance)));
        }
        page.add(cards);
    }

    private void budget(Div page) {
        Div cards = cards("four");
        for (String budget : BUDGETS) {
            cards.add(Controls.card(null, Money.read(budget, choices().currency()).orElseThrow().show(), "", budget.equals(answers.budget),
                    () -> answer(() -> answers.budget = budget)));
        }
        cards.add(Controls.card(null, Text.of("interview.budget.none"), Text.of("interview.budget.none.words"), answers.budget.isEmpty(),
                () -> answer(() -> answers.budget = "")));
        Div other = row("");
        other.add(Controls.field("budget", Text.of("interview.budget.other", choices().currency().getCurrencyCode()),
                Text.of("interview.budget.other.example"), answers.budget, v -> answer(() -> answers.budget = Amounts.plain(v))));
        page.add(cards, other);
    }

    private void owned(Div page) {
        Div list = new Div();
        list.addClassName("owned-list");
        answers.owned.forEach((sku, quantity) -> list.add(ownedRow(sku, quantity)));
        Div find = row("");
        find.add(Controls.field("search", Text.of("interview.owned.search"), Text.of("interview.owned.search.example"), search,
                v -> answer(() -> search = v)));
        Div found = cards("two");
        found.addClassName("found");
        if (!search.isBlank()) {
            String wanted = search.toLowerCase(Locale.ROOT);
            List<Product> products = shop.get().catalogue().products().stream()
                    .filter(p -> p.name().toLowerCase(Locale.ROOT).contains(wanted) || p.sku().equalsIgnoreCase(wanted) || p.gtin().equals(wanted))
                    .limit(MOST_FOUND).toList();
            for (Product product : products) {
                found.add(Controls.card(swatch(product), product.name(), product.sku(), answers.owned.containsKey(product.sku()),
                        () -> answer(() -> answers.owned.merge(product.sku(), product.pack(), Integer::sum))));
            }
            if (products.isEmpty()) {
                found.add(Controls.words(Text.of("interview.owned.nothing", search), "soft"));
            }
        }
        Div other = row("");
        other.add(Controls.field("owned-words", Text.of("interview.owned.words"), Text.of("interview.owned.words.example"), "", this::ownInWords),
                Controls.field("owned-last", Text.of("interview.owned.last"), Text.of("interview.owned.last.example"), "", lastYear));
        Div inWords = new Div();
        inWords.addClassNames("choice-row");
        answers.ownedInWords.forEach(text -> inWords.add(Controls.pill(Text.of("interview.owned.remove", text), false,
                () -> answer(() -> answers.ownedInWords.remove(text)))));
        page.add(find, found, list, other, inWords);
    }

    private void ownInWords(String text) {
        if (!text.isBlank()) {
            answer(() -> answers.ownedInWords.add(text));
        }
    }

    private static Div swatch(Product product) {
        Div swatch = Controls.drawn(DressedTree.swatch(product, 40));
        swatch.addClassName("swatch");
        return swatch;
    }

    private Div ownedRow(String sku, int quantity) {
        // A product may have left the catalogue since the answer was kept.
        Optional<Product> product = shop.get().catalogue().product(sku);
        String name = product.map(Product::name).orElse(sku);
        Div row = new Div(product.map(QuestionPages::swatch).orElseGet(Div::new), Controls.words(name, "line-name"));
        row.add(new Stepper(quantity, name, to -> answer(() -> {
            if (to <= 0) {
                answers.owned.remove(sku);
            } else {
                answers.owned.put(sku, to);
            }
        })));
        row.addClassName("line");
        return row;
    }
}
