package boughwright.ui;

import boughwright.needs.Trait;
import boughwright.house.Complaint;
import boughwright.house.HouseCheck;
import boughwright.house.LengthText;
import boughwright.house.NumberText;
import boughwright.measure.Units;
import boughwright.needs.HouseNumber;
import boughwright.needs.HouseWords;
import boughwright.text.Text;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.Input;
import com.vaadin.flow.component.html.NativeLabel;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.data.value.ValueChangeMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The numbers and words of one theme, each with what may be typed and what is live. */
final class NumbersPage extends HousePage {

    private final HouseEdits edits;
    private final ComplaintList complaints = new ComplaintList();
    private final Map<String, Component> fields = new HashMap<>();

    NumbersPage(HouseEdits edits, HouseNumber.Theme theme) {
        super("numbers-page");
        this.edits = edits;
        add(new H1(HouseCheck.pageTitle(theme.word())), soft(Text.of("house.page." + theme.word() + ".about")), complaints);
        Div list = new Div();
        list.addClassName("numbers");
        Arrays.stream(HouseNumber.values()).filter(n -> n.theme() == theme).forEach(n -> list.add(number(n)));
        add(list);
        Arrays.stream(HouseWords.values()).filter(w -> HouseCheck.page(w).equals(theme.word())).forEach(w -> add(words(w)));
    }

    private Div number(HouseNumber number) {
        Units units = edits.drafting().units();
        String live = LengthText.shown(edits.drafting().live().numbers().get(number), units);
        Input field = new Input(ValueChangeMode.ON_CHANGE);
        field.setId("number-" + number.word());
        field.setValue(LengthText.shown(edits.drafting().rules().numbers().getOrDefault(number, ""), units));
        Span was = new Span();
        was.addClassName("was");
        showLive(was, live, field.getValue());
        field.addValueChangeListener(e -> {
            if (e.isFromClient()) {
                String text = number.measure() == HouseNumber.Measure.LENGTH && LengthText.completed(e.getValue(), units).length() > 0
                        ? inches(e.getValue(), units, number) : e.getValue().strip();
                field.setValue(text);
                showLive(was, live, text);
                edits.cell(r -> r.withNumber(number, text));
            }
        });
        NativeLabel label = new NativeLabel(HouseCheck.name(number));
        label.setFor(field);
        Span range = new Span(Text.of("house.range", NumberText.said(number, number.least(), units), NumberText.said(number, number.most(), units)));
        range.addClassName("soft");
        Div row = new Div(label, field, range, was);
        row.addClassName("number-row");
        fields.put(HouseCheck.name(number), row);
        return row;
    }

    /** A bare number is inches for ribbon and pieces, feet for heights of trees; centimetres in shops that measure in metres. */
    private static String inches(String typed, Units units, HouseNumber number) {
        boolean small = number.most().doubleValue() <= 3;
        String plain = typed.strip();
        return units == Units.FEET && small && plain.matches("\\d{1,3}([.,]\\d{1,3})?") ? plain.replace(',', '.') + " in" : LengthText.completed(plain, units);
    }

    private static void showLive(Span was, String live, String now) {
        was.setText(live.equals(now) ? "" : Text.of("house.live-is", live));
    }

    private Div words(HouseWords list) {
        Div pills = new Div();
        pills.addClassNames("choice-row", "chips");
        List<String> held = edits.drafting().rules().words().getOrDefault(list, List.of());
        for (String word : HouseCheck.vocabulary(list.trait())) {
            pills.add(Controls.pill(Trait.word(word), held.contains(word), () -> edits.page(r -> {
                List<String> changed = new ArrayList<>(r.words().getOrDefault(list, List.of()));
                if (!changed.remove(word)) {
                    changed.add(word);
                }
                return r.withWords(list, changed);
            })));
        }
        Paragraph name = new Paragraph(HouseCheck.name(list));
        name.addClassName("words-name");
        Div box = new Div(name, pills);
        box.addClassName("words-row");
        fields.put(HouseCheck.name(list), box);
        return box;
    }

    @Override
    void complained(List<Complaint> all) {
        complaints.show(all);
        fields.values().forEach(f -> f.removeClassNames("wrong", "doubtful"));
        for (Complaint complaint : all) {
            Component field = fields.get(complaint.column());
            if (field != null) {
                field.addClassNames(complaint.fault() ? "wrong" : "doubtful");
            }
        }
    }
}
