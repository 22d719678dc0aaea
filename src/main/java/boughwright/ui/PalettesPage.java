package boughwright.ui;

import boughwright.brief.Palette;
import boughwright.colour.ColourName;
import boughwright.colour.Srgb;
import boughwright.house.Complaint;
import boughwright.house.Headings;
import boughwright.house.HouseCheck;
import boughwright.house.HouseRules;
import boughwright.house.NumberText;
import boughwright.needs.Demand;
import boughwright.needs.HouseNumber;
import boughwright.text.Text;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Input;
import com.vaadin.flow.component.html.NativeLabel;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.data.value.ValueChangeMode;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

/** The palettes on offer, each with its four colours as swatches to touch. */
final class PalettesPage extends HousePage {

    private static final String[] PARTS = {"main", "second", "spark", "ground"};

    private final HouseEdits edits;
    private final ComplaintList complaints = new ComplaintList();
    private final List<PaletteEye> eyes = new ArrayList<>();

    PalettesPage(HouseEdits edits) {
        super("entries-page");
        this.edits = edits;
        Div all = new Div();
        all.addClassName("palettes");
        List<Palette> palettes = edits.drafting().rules().palettes();
        for (int i = 0; i < palettes.size(); i++) {
            all.add(palette(i, palettes.get(i)));
        }
        add(new H1(HouseCheck.pageTitle(HouseCheck.PALETTES)), soft(Text.of("house.page.palettes.about")), complaints, all,
                Controls.button(Text.of("house.palette.add"), "quiet", () -> edits.page(PalettesPage::added)));
    }

    private static HouseRules added(HouseRules rules) {
        List<Palette> palettes = new ArrayList<>(rules.palettes());
        palettes.add(new Palette(LooksPage.free(palettes.stream().map(Palette::id).toList(), "palette"), "", colour("#8f2f4c"), colour("#efe4cf"),
                colour("#c79a3a"), colour("#24402f")));
        return rules.withPalettes(palettes);
    }

    private static Srgb colour(String hex) {
        return Srgb.read(hex).orElseThrow();
    }

    private Div palette(int index, Palette palette) {
        Div box = new Div();
        box.addClassName("entry");
        Div head = new Div(new H2(Text.of("house.entry", String.valueOf(index + 1), palette.title())), Controls.link(Text.of("house.row.delete"), () -> edits.page(r -> {
            List<Palette> palettes = new ArrayList<>(r.palettes());
            palettes.remove(index);
            return r.withPalettes(palettes);
        })));
        head.addClassName("entry-head");
        Div colours = new Div();
        colours.addClassName("colours");
        for (int part = 0; part < PARTS.length; part++) {
            colours.add(colour(index, part, palette.colours().get(part)));
        }
        Div fields = new Div(
                Controls.field("palette-title-" + index, Headings.column("title"), "", palette.title(),
                        text -> set(index, p -> new Palette(p.id(), text, p.main(), p.second(), p.spark(), p.ground()))),
                Controls.field("palette-tag-" + index, Headings.column("tag"), "", palette.id(),
                        text -> set(index, p -> new Palette(text, p.title(), p.main(), p.second(), p.spark(), p.ground()))));
        fields.addClassName("entry-fields");
        PaletteEye eye = new PaletteEye("palette-ring-" + index, palette, wanted());
        eyes.add(eye);
        box.add(head, fields, colours, eye);
        return box;
    }

    /** The shares that the draft wants; those of most houses while a number there is unreadable. */
    private Demand.Shares wanted() {
        return new Demand.Shares(share(HouseNumber.MAIN_SHARE, 0.6), share(HouseNumber.SECOND_SHARE, 0.3), share(HouseNumber.SPARK_SHARE, 0.1));
    }

    private double share(HouseNumber number, double otherwise) {
        String typed = edits.drafting().rules().numbers().getOrDefault(number, "");
        return NumberText.read(number, typed).filter(number::allows).map(n -> n.movePointLeft(2).doubleValue()).orElse(otherwise);
    }

    private Div colour(int index, int part, Srgb now) {
        Input field = new Input(ValueChangeMode.ON_CHANGE);
        field.setType("color");
        field.setValue(now.hex());
        String id = "palette-" + index + "-" + PARTS[part];
        field.setId(id);
        field.addValueChangeListener(e -> {
            if (e.isFromClient()) {
                Srgb.read(e.getValue()).ifPresent(colour -> set(index, p -> {
                    List<Srgb> colours = new ArrayList<>(p.colours());
                    colours.set(part, colour);
                    return new Palette(p.id(), p.title(), colours.get(0), colours.get(1), colours.get(2), colours.get(3));
                }));
            }
        });
        NativeLabel label = new NativeLabel(Headings.column(PARTS[part]));
        label.setFor(field);
        Span name = Controls.words(ColourName.of(now).shown(), "soft");
        field.addValueChangeListener(e -> Srgb.read(e.getValue()).ifPresent(c -> name.setText(ColourName.of(c).shown())));
        Div box = new Div(field, label, name);
        box.addClassName("colour");
        return box;
    }

    private void set(int index, UnaryOperator<Palette> change) {
        edits.cell(r -> {
            List<Palette> palettes = new ArrayList<>(r.palettes());
            palettes.set(index, change.apply(palettes.get(index)));
            return r.withPalettes(palettes);
        });
        // What others have changed meanwhile may have another number of palettes; then the page is drawn anew.
        List<Palette> now = edits.drafting().rules().palettes();
        if (index < now.size()) {
            eyes.get(index).show(now.get(index), wanted());
        }
    }

    @Override
    void complained(List<Complaint> all) {
        complaints.show(all);
    }
}
