package boughwright.ui;

import boughwright.intake.ColumnGuess;
import boughwright.intake.IntakeFile;
import boughwright.intake.Kind;
import boughwright.intake.Mapping;
import boughwright.text.Text;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Input;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.NativeTableCell;
import com.vaadin.flow.component.html.NativeTableHeaderCell;
import com.vaadin.flow.component.html.NativeTableRow;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.data.value.ValueChangeMode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Our columns, and beside each the file's heading that is taken for it, or one text for all rows, or nothing. */
final class ColumnTable extends Div {

    private static final String UNUSED = "unused";
    private static final String CONSTANT = "constant";
    private static final String HEADING = "heading:";

    private final IntakeFile file;
    private Mapping mapping;

    ColumnTable(IntakeFile file, Kind kind, List<ColumnGuess> guesses, Mapping mapping) {
        this.file = file;
        this.mapping = mapping;
        addClassNames("plain-table", "column-table");
        NativeTable table = new NativeTable();
        NativeTableRow head = new NativeTableRow();
        head.add(new NativeTableHeaderCell(Text.of("shelf.match.ours")), new NativeTableHeaderCell(Text.of("shelf.match.theirs")),
                new NativeTableHeaderCell(Text.of("shelf.match.sample")), new NativeTableHeaderCell(Text.of("shelf.match.sure")));
        table.add(head);
        for (String column : kind.columns()) {
            Optional<ColumnGuess> guess = guesses.stream().filter(g -> g.column().equals(column)).findFirst();
            table.add(row(column, kind.needed().contains(column), guess));
        }
        add(table);
    }

    Mapping mapping() {
        return mapping;
    }

    private NativeTableRow row(String column, boolean needed, Optional<ColumnGuess> guess) {
        NativeTableHeaderCell name = new NativeTableHeaderCell(Text.of("catalogue.heading." + column));
        name.getElement().setAttribute("scope", "row");
        if (needed) {
            name.add(Controls.words(Text.of("shelf.match.needed"), "soft"));
        }
        Map<String, String> options = new LinkedHashMap<>();
        options.put(UNUSED, Text.of("shelf.match.unused"));
        options.put(CONSTANT, Text.of("shelf.match.constant"));
        file.headings().forEach(h -> options.put(HEADING + h, h));
        Optional<Mapping.Source> source = mapping.source(column);
        Input constant = new Input(ValueChangeMode.ON_CHANGE);
        constant.getElement().setAttribute("aria-label", Text.of("shelf.match.constant.label", Text.of("catalogue.heading." + column)));
        constant.setValue(source.filter(Mapping.Source.Constant.class::isInstance).map(s -> ((Mapping.Source.Constant) s).value()).orElse(""));
        constant.setVisible(source.filter(Mapping.Source.Constant.class::isInstance).isPresent());
        constant.addValueChangeListener(e -> mapping = mapping.withConstant(column, e.getValue().strip()));
        Span sample = Controls.words(sample(source), "soft");
        Span sure = Controls.words(sure(source, guess), "soft");
        String chosen = source.map(s -> s instanceof Mapping.Source.Heading h ? HEADING + h.heading() : CONSTANT).orElse(UNUSED);
        Div select = Controls.select("match-" + column.replace('_', '-'), Text.of("shelf.match.for", Text.of("catalogue.heading." + column)), options, chosen, to -> {
            mapping = to.equals(UNUSED) ? mapping.without(column) : to.equals(CONSTANT) ? mapping.withConstant(column, constant.getValue().strip())
                    : mapping.with(column, to.substring(HEADING.length()));
            constant.setVisible(to.equals(CONSTANT));
            sample.setText(sample(mapping.source(column)));
            sure.setText(sure(mapping.source(column), guess));
        });
        select.addClassName("unlabelled");
        NativeTableRow row = new NativeTableRow();
        row.add(name, new NativeTableCell(select, constant), new NativeTableCell(sample), new NativeTableCell(sure));
        return row;
    }

    /** The first texts that stand under a heading. */
    private String sample(Optional<Mapping.Source> source) {
        int at = source.map(s -> s instanceof Mapping.Source.Heading h ? file.headings().indexOf(h.heading()) : -1).orElse(-1);
        return at < 0 ? "" : String.join(" · ", file.preview().stream().map(r -> r.get(at).strip()).filter(t -> !t.isEmpty()).distinct().limit(3)
                .map(t -> t.length() <= 40 ? t : t.substring(0, 39) + "…").toList());
    }

    private static String sure(Optional<Mapping.Source> source, Optional<ColumnGuess> guess) {
        boolean guessed = source.isPresent() && source.get() instanceof Mapping.Source.Heading h && guess.flatMap(ColumnGuess::heading).equals(Optional.of(h.heading()));
        return guessed ? Text.of("shelf.match.sure." + guess.get().sureness().name().toLowerCase(Locale.ROOT)) : "";
    }
}
