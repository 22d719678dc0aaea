package boughwright.ui;

import boughwright.brief.Look;
import boughwright.brief.Palette;
import boughwright.house.Complaint;
import boughwright.house.Headings;
import boughwright.house.HouseCheck;
import boughwright.house.HouseRules;
import boughwright.needs.Trait;
import boughwright.text.Text;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

/** The looks that the interview offers, in its order. */
final class LooksPage extends HousePage {

    private final HouseEdits edits;
    private final ComplaintList complaints = new ComplaintList();

    LooksPage(HouseEdits edits) {
        super("entries-page");
        this.edits = edits;
        add(new H1(HouseCheck.pageTitle(HouseCheck.LOOKS)), soft(Text.of("house.page.looks.about")), complaints);
        List<Look> looks = edits.drafting().rules().looks();
        for (int i = 0; i < looks.size(); i++) {
            add(look(i, looks.get(i)));
        }
        add(Controls.button(Text.of("house.look.add"), "quiet", () -> edits.page(this::added)));
    }

    private HouseRules added(HouseRules rules) {
        List<Look> looks = new ArrayList<>(rules.looks());
        String id = free(looks.stream().map(Look::id).toList(), "look");
        looks.add(new Look(id, "", "", rules.palettes().isEmpty() ? "" : rules.palettes().get(0).id(), List.of(), List.of()));
        return rules.withLooks(looks);
    }

    static String free(List<String> taken, String stem) {
        int number = 1;
        while (taken.contains(stem + "-" + number)) {
            number++;
        }
        return stem + "-" + number;
    }

    private Div look(int index, Look look) {
        Div box = new Div();
        box.addClassName("entry");
        Div head = new Div(new H2(Text.of("house.entry", String.valueOf(index + 1), look.title())),
                Controls.link(Text.of("house.row.up"), () -> moved(index, -1)), Controls.link(Text.of("house.row.down"), () -> moved(index, 1)),
                Controls.link(Text.of("house.row.delete"), () -> edits.page(r -> {
                    List<Look> looks = new ArrayList<>(r.looks());
                    looks.remove(index);
                    return r.withLooks(looks);
                })));
        head.addClassName("entry-head");
        Div fields = new Div(
                Controls.field("look-title-" + index, Headings.column("title"), "", look.title(),
                        text -> set(index, l -> new Look(l.id(), text, l.blurb(), l.palette(), l.textures(), l.finishes()), false)),
                Controls.field("look-tag-" + index, Headings.column("tag"), "", look.id(),
                        text -> set(index, l -> new Look(text, l.title(), l.blurb(), l.palette(), l.textures(), l.finishes()), false)),
                wide(Controls.field("look-blurb-" + index, Headings.column("blurb"), "", look.blurb(),
                        text -> set(index, l -> new Look(l.id(), l.title(), text, l.palette(), l.textures(), l.finishes()), false))));
        fields.addClassName("entry-fields");
        Div palettes = pills(Headings.column("palette"));
        for (Palette palette : edits.drafting().rules().palettes()) {
            palettes.add(Controls.pill(edits.drafting().words().of(palette.title()), palette.id().equals(look.palette()),
                    () -> set(index, l -> new Look(l.id(), l.title(), l.blurb(), palette.id(), l.textures(), l.finishes()), true)));
        }
        Div textures = pills(Headings.column("textures"));
        for (String word : HouseCheck.vocabulary(Trait.TEXTURE)) {
            textures.add(Controls.pill(Trait.word(word), look.textures().contains(word),
                    () -> set(index, l -> new Look(l.id(), l.title(), l.blurb(), l.palette(), toggled(l.textures(), word), l.finishes()), true)));
        }
        Div finishes = pills(Headings.column("finishes"));
        for (String word : HouseCheck.vocabulary(Trait.FINISH)) {
            finishes.add(Controls.pill(Trait.word(word), look.finishes().contains(word),
                    () -> set(index, l -> new Look(l.id(), l.title(), l.blurb(), l.palette(), l.textures(), toggled(l.finishes(), word)), true)));
        }
        box.add(head, fields, palettes, textures, finishes);
        return box;
    }

    static Div wide(Div field) {
        field.addClassName("wide-field");
        return field;
    }

    private static Div pills(String name) {
        Paragraph label = new Paragraph(name);
        label.addClassName("words-name");
        Div row = new Div(label);
        row.addClassNames("choice-row", "chips");
        return row;
    }

    private static List<String> toggled(List<String> words, String word) {
        List<String> changed = new ArrayList<>(words);
        if (!changed.remove(word)) {
            changed.add(word);
        }
        return changed;
    }

    private void moved(int index, int by) {
        edits.page(r -> {
            int to = index + by;
            if (to < 0 || to >= r.looks().size()) {
                return r;
            }
            List<Look> looks = new ArrayList<>(r.looks());
            java.util.Collections.swap(looks, index, to);
            return r.withLooks(looks);
        });
    }

    private void set(int index, UnaryOperator<Look> change, boolean drawn) {
        UnaryOperator<HouseRules> all = r -> {
            List<Look> looks = new ArrayList<>(r.looks());
            looks.set(index, change.apply(looks.get(index)));
            return r.withLooks(looks);
        };
        if (drawn) {
            edits.page(all);
        } else {
            edits.cell(all);
        }
    }

    @Override
    void complained(List<Complaint> all) {
        complaints.show(all);
    }
}
