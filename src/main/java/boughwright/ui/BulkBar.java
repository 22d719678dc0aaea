package boughwright.ui;

import boughwright.needs.Trait;
import boughwright.brief.Word;
import boughwright.catalogue.Traits.Family;
import boughwright.catalogue.Traits.Finish;
import boughwright.catalogue.Traits.Level;
import boughwright.catalogue.Traits.Texture;
import boughwright.shelf.Shelf;
import boughwright.text.Text;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Input;
import com.vaadin.flow.component.html.NativeButton;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.data.value.ValueChangeMode;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;

/** What is done to all ticked products at once. */
final class BulkBar extends Div {

    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    /** What can be done to many. */
    private enum Deed implements Word { LEVEL, PRICE_BY, STOCK, SHELF, LOOK_ADD, LOOK_REMOVE, FAMILY, TEXTURE, FINISH, OFF }

    private final ShelfDesk desk;
    private final Shelf shelf;
    private final Map<String, String> looks;
    private final TreeSet<String> chosen;
    private final Supplier<List<String>> allFound;
    private final Runnable refresh;
    private final Span count = new Span();
    private final Div value = new Div();
    private final NativeButton all;
    private final NativeButton go;
    private Deed deed = Deed.LEVEL;
    private String typed = "";
    private boolean sure;

    BulkBar(ShelfDesk desk, Shelf shelf, Map<String, String> looks, TreeSet<String> chosen, Supplier<List<String>> allFound, Runnable refresh) {
        this.desk = desk;
        this.shelf = shelf;
        this.looks = looks;
        this.chosen = chosen;
        this.allFound = allFound;
        this.refresh = refresh;
        this.all = Controls.link("", () -> {
            chosen.addAll(allFound.get());
            refresh.run();
        });
        this.go = Controls.button("", "strong", this::apply);
        addClassName("bulk");
        getElement().setAttribute("role", "group");
        getElement().setAttribute("aria-label", Text.of("shelf.bulk"));
        count.addClassName("bulk-count");
        value.addClassName("bulk-value");
        NativeButton none = Controls.link(Text.of("shelf.bulk.none"), () -> {
            chosen.clear();
            refresh.run();
        });
        Map<String, String> deeds = new LinkedHashMap<>();
        Arrays.stream(Deed.values()).forEach(d -> deeds.put(d.word(), Text.of("shelf.bulk." + d.word())));
        Div counted = new Div(count, all, none);
        counted.addClassName("bulk-counted");
        add(counted, Controls.select("bulk-deed", Text.of("shelf.bulk.what"), deeds, deed.word(), w -> {
            deed = Word.read(Deed.class, w).orElseThrow();
            drawValue();
            follow();
        }), value, go);
        drawValue();
        follow();
    }

    private void drawValue() {
        value.removeAll();
        typed = "";
        sure = false;
        switch (deed) {
            case LEVEL -> value.add(words(Level.class));
            case FAMILY -> value.add(words(Family.class));
            case TEXTURE -> value.add(words(Texture.class));
            case FINISH -> value.add(words(Finish.class));
            case LOOK_ADD, LOOK_REMOVE -> value.add(choice(looks));
            case PRICE_BY, STOCK, SHELF -> value.add(typed());
            case OFF -> value.add(Controls.words(Text.of("shelf.bulk.off.words"), "soft"));
        }
    }

    private <W extends Enum<W> & Word> Component words(Class<W> choices) {
        Map<String, String> options = new LinkedHashMap<>();
        Word.words(choices).forEach(w -> options.put(w, Trait.word(w)));
        return choice(options);
    }

    private Component choice(Map<String, String> options) {
        typed = options.keySet().iterator().next();
        return Controls.select("bulk-value", Text.of("shelf.bulk.to"), options, typed, w -> typed = w);
    }

    private Component typed() {
        Input input = new Input(ValueChangeMode.EAGER);
        input.setPlaceholder(Text.of("shelf.bulk." + deed.word() + ".example"));
        input.addValueChangeListener(e -> typed = e.getValue().strip());
        return Controls.labelled("bulk-value", Text.of("shelf.bulk.to"), input);
    }

    /** Shows how many are ticked. */
    void follow() {
        int found = allFound.get().size();
        count.setText(Text.of("shelf.bulk.count", chosen.size()));
        all.setText(Text.of("shelf.bulk.all", found));
        go.setText(Text.of(deed == Deed.OFF ? sure ? "shelf.bulk.off.sure" : "shelf.bulk.off.go" : "shelf.bulk.go", chosen.size()));
        setVisible(!chosen.isEmpty());
    }

    private void apply() {
        if (desk.gone()) {
            return;
        }
        List<String> skus = new ArrayList<>(chosen);
        if (deed == Deed.OFF) {
            if (!sure) {
                sure = true;
                follow();
                return;
            }
            done(shelf.takeOff(skus, desk.author()));
            return;
        }
        Optional<UnaryOperator<String>> change = change();
        if (change.isEmpty()) {
            desk.tell(Text.of("shelf.bulk." + deed.word() + ".mend"), false);
            return;
        }
        String column = switch (deed) {
            case LOOK_ADD, LOOK_REMOVE -> "looks";
            case PRICE_BY -> "price";
            default -> deed.word();
        };
        done(shelf.editAll(skus, column, change.get(), desk.author()));
    }

    private void done(Shelf.Outcome outcome) {
        if (desk.told(outcome).isEmpty()) {
            refresh.run();
        }
    }

    private Optional<UnaryOperator<String>> change() {
        return switch (deed) {
            case PRICE_BY -> percent(typed).map(p -> was -> dearer(was, p));
            case LOOK_ADD -> Optional.of(was -> with(was, typed, true));
            case LOOK_REMOVE -> Optional.of(was -> with(was, typed, false));
            default -> typed.isEmpty() ? Optional.empty() : Optional.of(was -> typed);
        };
    }

    /** {@code 5}, {@code +5 %}, {@code -12.5%}: at least −90, at most 900. */
    static Optional<BigDecimal> percent(String text) {
        String bare = text.replace('−', '-').replaceAll("[\\s%]", "");
        if (!bare.matches("[+-]?\\d{1,3}([.,]\\d{1,2})?")) {
            return Optional.empty();
        }
        BigDecimal percent = new BigDecimal(bare.replace(',', '.'));
        return percent.signum() == 0 || percent.compareTo(BigDecimal.valueOf(-90)) < 0 || percent.compareTo(BigDecimal.valueOf(900)) > 0
                ? Optional.empty() : Optional.of(percent);
    }

    /** To the price's own number of decimals. */
    static String dearer(String price, BigDecimal percent) {
        BigDecimal was = new BigDecimal(price);
        return was.multiply(HUNDRED.add(percent)).divide(HUNDRED, was.scale(), RoundingMode.HALF_UP).toPlainString();
    }

    private static String with(String looks, String look, boolean there) {
        SortedSet<String> all = new TreeSet<>(looks.isBlank() ? List.of() : List.of(looks.split("\\s+")));
        if (there) {
            all.add(look);
        } else {
            all.remove(look);
        }
        return String.join(" ", all);
    }
}
