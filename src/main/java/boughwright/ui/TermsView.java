package boughwright.ui;

import boughwright.counter.ShopTerms;
import boughwright.counter.Terms;
import boughwright.quote.Tax;
import boughwright.text.Text;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Input;
import com.vaadin.flow.component.html.Main;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.data.value.ValueChangeMode;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.Route;
import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Where the manager sets the shop's terms: tax, how long quotes and holds last, how long customers are remembered. */
@Route(TermsView.ROUTE)
class TermsView extends DeskScreen implements BeforeEnterObserver {

    static final String ROUTE = "terms";
    private static final int LONGEST_NAME = 30;

    private final ShopTerms terms;
    private final Map<Terms.Number, Input> numbers = new EnumMap<>(Terms.Number.class);
    private Input name;
    private Input percent;
    private String within;
    private String basis;
    private String rounding;

    TermsView(StaffDoor door, ShopTerms terms) {
        super("terms", StaffPlace.TERMS, door);
        this.terms = terms;
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        open();
    }

    @Override
    void draw(Main main) {
        Terms now = terms.now();
        name = input(now.tax().name());
        percent = input(Text.number(now.tax().percent()));
        within = String.valueOf(now.tax().within());
        basis = now.tax().basis().name();
        rounding = now.tax().rounding().name();
        Div tax = new Div(Controls.labelled("tax-name", Text.of("terms.tax.name"), name), Controls.labelled("tax-percent", Text.of("terms.tax.percent"), percent),
                Controls.select("tax-within", Text.of("terms.tax.within"), options("terms.tax.within.", "false", "true"), within, v -> within = v),
                Controls.select("tax-basis", Text.of("terms.tax.basis"), options("terms.tax.basis.", names(Tax.Basis.values())), basis, v -> basis = v),
                Controls.select("tax-rounding", Text.of("terms.tax.rounding"), options("terms.tax.rounding.", names(Tax.Rounding.values())), rounding, v -> rounding = v));
        tax.addClassName("fields");
        main.add(new H1(Text.of("terms.head")), new Paragraph(Text.of("terms.words")), notice(), panel("terms.tax", "terms.tax.words", tax));
        main.add(panel("terms.times", "terms.times.words", fields(List.of(Terms.Number.QUOTE_DAYS, Terms.Number.HOLD_HOURS, Terms.Number.WARN_MINUTES,
                Terms.Number.ALONE_MINUTES, Terms.Number.LINK_DAYS), now)));
        main.add(panel("terms.keep", "terms.keep.words", fields(List.of(Terms.Number.KEEP_COLLECTED_DAYS, Terms.Number.KEEP_OTHER_DAYS), now)));
        main.add(Controls.button(Text.of("terms.save"), "strong", this::keep));
    }

    private static Section panel(String head, String words, Div fields) {
        Section section = new Section(new H2(Text.of(head)), new Paragraph(Text.of(words)), fields);
        section.addClassName("panel");
        return section;
    }

    private Div fields(List<Terms.Number> which, Terms now) {
        Div fields = new Div();
        fields.addClassName("fields");
        for (Terms.Number each : which) {
            Input input = input(String.valueOf(now.number(each)));
            input.getElement().setAttribute("inputmode", "numeric");
            numbers.put(each, input);
            fields.add(Controls.labelled("terms-" + word(each), Text.of("terms." + word(each)), input));
        }
        return fields;
    }

    private static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static String[] names(Enum<?>[] values) {
        return java.util.Arrays.stream(values).map(Enum::name).toArray(String[]::new);
    }

    private static Map<String, String> options(String key, String... values) {
        Map<String, String> options = new LinkedHashMap<>();
        for (String value : values) {
            options.put(value, Text.of(key + value.toLowerCase(Locale.ROOT).replace('_', '-')));
        }
        return options;
    }

    private static Input input(String value) {
        Input input = new Input(ValueChangeMode.ON_CHANGE);
        input.setValue(value);
        input.getElement().setAttribute("autocomplete", "off");
        return input;
    }

    private void keep() {
        if (gone()) {
            return;
        }
        Optional<BigDecimal> rate = rate();
        if (rate.isEmpty()) {
            refuse(Text.of("terms.tax.percent.bad"));
            return;
        }
        if (rate.get().signum() > 0 && name.getValue().isBlank() || name.getValue().strip().length() > LONGEST_NAME) {
            refuse(Text.of("terms.tax.name.bad", LONGEST_NAME));
            return;
        }
        Map<Terms.Number, Integer> values = new EnumMap<>(Terms.Number.class);
        for (Map.Entry<Terms.Number, Input> each : numbers.entrySet()) {
            String typed = each.getValue().getValue().strip();
            if (!typed.matches("\\d{1,5}") || !each.getKey().takes(Integer.parseInt(typed))) {
                refuse(Text.of("terms.number.bad", Text.of("terms." + word(each.getKey())), each.getKey().least(), each.getKey().most()));
                return;
            }
            values.put(each.getKey(), Integer.parseInt(typed));
        }
        Terms next = new Terms(new Tax(name.getValue().strip(), rate.get(), Boolean.parseBoolean(within), Tax.Basis.valueOf(basis), Tax.Rounding.valueOf(rounding)), values);
        terms.change(next, person().name());
        tell(Text.of("terms.saved"), true);
        again();
        scrollToTop();
    }

    /** A percentage as people type it, with a point or a comma. */
    private Optional<BigDecimal> rate() {
        String typed = percent.getValue().strip().replaceAll("\\s*%$", "").replace(',', '.');
        if (typed.isEmpty()) {
            return Optional.of(BigDecimal.ZERO);
        }
        return typed.matches("\\d{1,2}(\\.\\d{1,4})?") ? Optional.of(new BigDecimal(typed)) : Optional.empty();
    }

    /** What was typed stays, to be mended. */
    private void refuse(String words) {
        tell(words, false);
        scrollToTop();
    }
}
