package boughwright.ui;

import boughwright.needs.Trait;
import boughwright.brief.Word;
import boughwright.catalogue.CatalogueFault;
import boughwright.catalogue.Traits.Family;
import boughwright.catalogue.Traits.Finish;
import boughwright.catalogue.Traits.Level;
import boughwright.catalogue.Traits.Material;
import boughwright.catalogue.Traits.Pattern;
import boughwright.catalogue.Traits.Safety;
import boughwright.catalogue.Traits.Shape;
import boughwright.catalogue.Traits.Texture;
import boughwright.catalogue.Traits.Weave;
import boughwright.colour.ColourName;
import boughwright.colour.Srgb;
import boughwright.needs.Role;
import boughwright.text.Text;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Input;
import com.vaadin.flow.component.html.NativeButton;
import com.vaadin.flow.component.html.NativeLabel;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.data.value.ValueChangeMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiConsumer;

/** All that is said of one product, cell by cell, in groups. What is wrong with a cell stands below it. */
final class ProductForm extends Div {

    private final Map<String, String> cells;
    private final Map<String, String> looks;
    private final BiConsumer<String, String> changed;
    private final Map<String, Div> boxes = new HashMap<>();
    private final Map<String, Paragraph> told = new HashMap<>();

    /**
     * @param cells by column; the form keeps to them
     * @param fixed columns that cannot be changed
     * @param changed is given column and text
     */
    ProductForm(Map<String, String> cells, Map<String, String> looks, Set<String> fixed, BiConsumer<String, String> changed) {
        this.cells = new HashMap<>(cells);
        this.looks = looks;
        this.changed = changed;
        addClassName("product-form");
        group("what", typed("name", fixed), typed("sku", fixed), typed("gtin", fixed), typed("brand", fixed),
                several("roles", Arrays.stream(Role.values()).filter(Role::bought).map(Role::word).toList(), "role."),
                one("shape", Word.words(Shape.class), false), one("texture", Word.words(Texture.class), false), one("finish", Word.words(Finish.class), false),
                one("material", Word.words(Material.class), false), one("pattern", Word.words(Pattern.class), true), one("weave", Word.words(Weave.class), true));
        group("colour", one("family", Word.words(Family.class), false), colour("colour"), colour("second_colour"));
        group("size", typed("width_mm", fixed), typed("length_mm", fixed), typed("pack", fixed), typed("bulbs", fixed), typed("watts", fixed), typed("max_run", fixed));
        group("selling", typed("price", fixed), one("level", Word.words(Level.class), false), typed("stock", fixed), typed("shelf", fixed),
                several("looks", List.copyOf(looks.keySet()), ""), several("safety", Word.words(Safety.class), ""));
    }

    private void group(String name, Component... fields) {
        Div grid = new Div(fields);
        grid.addClassName("form-fields");
        Div group = new Div(new H2(Text.of("shelf.form." + name)), grid);
        group.addClassName("section");
        add(group);
    }

    private Div field(String column, Div box) {
        Paragraph fault = new Paragraph();
        fault.addClassName("cell-fault");
        box.add(fault);
        boxes.put(column, box);
        told.put(column, fault);
        return box;
    }

    private static String id(String column) {
        return "product-" + column.replace('_', '-');
    }

    private void say(String column, String text) {
        cells.put(column, text);
        changed.accept(column, text);
    }

    private Div typed(String column, Set<String> fixed) {
        Input input = new Input(ValueChangeMode.ON_CHANGE);
        input.setValue(cells.getOrDefault(column, ""));
        input.setEnabled(!fixed.contains(column));
        input.addValueChangeListener(e -> {
            if (e.isFromClient()) {
                say(column, column.equals("price") ? Amounts.plain(e.getValue()) : e.getValue().strip());
            }
        });
        Div box = Controls.labelled(id(column), Text.of("catalogue.heading." + column), input);
        box.addClassName(column.equals("name") ? "form-wide" : "form-plain");
        return field(column, box);
    }

    private Div one(String column, List<String> words, boolean mayBeEmpty) {
        String chosen = cells.getOrDefault(column, "");
        Map<String, String> options = new LinkedHashMap<>();
        if (mayBeEmpty || !words.contains(chosen)) {
            options.put("", Text.of("shelf.form.none"));
        }
        words.forEach(w -> options.put(w, Trait.word(w)));
        return field(column, Controls.select(id(column), Text.of("catalogue.heading." + column), options, chosen, w -> say(column, w)));
    }

    private Div several(String column, List<String> words, String keys) {
        Span name = new Span(Text.of("catalogue.heading." + column));
        name.addClassName("words-name");
        Set<String> held = new TreeSet<>(split(cells.getOrDefault(column, "")));
        Div pills = new Div();
        pills.addClassName("form-pills");
        for (String word : words) {
            String title = column.equals("looks") ? looks.getOrDefault(word, word) : keys.isEmpty() ? Trait.word(word) : Text.or(keys + word, word);
            NativeButton[] pill = new NativeButton[1];
            pill[0] = Controls.pill(title, held.contains(word), () -> {
                if (!held.remove(word)) {
                    held.add(word);
                }
                Controls.pressed(pill[0], held.contains(word));
                say(column, String.join(" ", words.stream().filter(held::contains).toList()));
            });
            pills.add(pill[0]);
        }
        Div box = new Div(name, pills);
        box.addClassNames("field", "form-wide");
        return field(column, box);
    }

    private static List<String> split(String text) {
        return text.isBlank() ? List.of() : List.of(text.strip().split("\\s+"));
    }

    private Div colour(String column) {
        String hex = cells.getOrDefault(column, "");
        Input input = new Input(ValueChangeMode.ON_CHANGE);
        input.setType("color");
        input.setId(id(column));
        input.setValue(hex.isEmpty() ? "#ffffff" : hex);
        NativeLabel label = new NativeLabel(Text.of("catalogue.heading." + column));
        label.setFor(input);
        Span name = Controls.words(named(hex), "soft");
        List<Component> parts = new ArrayList<>(List.of(input, name));
        input.addValueChangeListener(e -> {
            if (e.isFromClient()) {
                name.setText(named(e.getValue()));
                say(column, e.getValue());
            }
        });
        if (column.equals("second_colour")) {
            parts.add(Controls.link(Text.of("shelf.form.no-second"), () -> {
                name.setText(named(""));
                say(column, "");
            }));
        }
        Div line = new Div(parts.toArray(Component[]::new));
        line.addClassName("near");
        Div box = new Div(label, line);
        box.addClassName("field");
        return field(column, box);
    }

    private static String named(String hex) {
        return Srgb.read(hex).map(c -> ColourName.of(c).shown()).orElse(Text.of("shelf.form.none"));
    }

    /** Shows what is wrong; nothing takes all marks off. */
    void complain(List<CatalogueFault> faults) {
        boxes.values().forEach(b -> b.removeClassName("wrong"));
        told.values().forEach(t -> t.setText(""));
        for (CatalogueFault fault : faults) {
            if (boxes.containsKey(fault.column())) {
                boxes.get(fault.column()).addClassName("wrong");
                told.get(fault.column()).setText(fault.mend());
            }
        }
    }
}
