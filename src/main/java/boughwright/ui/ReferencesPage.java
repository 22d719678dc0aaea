package boughwright.ui;

import boughwright.brief.Abundance;
import boughwright.brief.BriefReader;
import boughwright.brief.BriefReading;
import boughwright.brief.Fullness;
import boughwright.brief.SeenFrom;
import boughwright.brief.Word;
import boughwright.consultation.Consultations;
import boughwright.consultation.Saved;
import boughwright.house.NeedName;
import boughwright.house.ReferenceBrief;
import boughwright.needs.Adjustments;
import boughwright.needs.Layer;
import boughwright.needs.Need;
import boughwright.publishing.References;
import boughwright.publishing.ShopDoor;
import boughwright.text.Text;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Input;
import com.vaadin.flow.component.html.NativeLabel;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.data.value.ValueChangeMode;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/** Trees that the house knows well, and what every edition must give for them. */
final class ReferencesPage extends HousePage {

    private static final ObjectMapper JSON = new ObjectMapper();

    private final HouseEdits edits;
    private final References references;
    private final Consultations consultations;
    private final ShopDoor shop;
    private final String author;
    private final Div own = new Div();
    private final Div told = new Div();
    private final Div numbers = new Div();
    private final SortedMap<String, Integer> expected = new TreeMap<>();
    private String title = "";
    private String height = "9 ft";
    private String fullness = Fullness.MEDIUM.word();
    private String seenFrom = SeenFrom.WALL.word();
    private String abundance = Abundance.GENEROUS.word();
    private String brief = "";

    ReferencesPage(HouseEdits edits, References references, Consultations consultations, ShopDoor shop) {
        super("references-page");
        this.edits = edits;
        this.references = references;
        this.consultations = consultations;
        this.shop = shop;
        this.author = edits.drafting().author();
        Paragraph about = soft(Text.of("house.references.about", References.shipped().size()));
        told.addClassName("complaints");
        told.getElement().setAttribute("role", "status");
        add(new H1(Text.of("house.references")), about, own, new H2(Text.of("house.reference.new")), form(), told, numbers);
        numbers.addClassName("numbers");
        list();
    }

    private void list() {
        own.removeAll();
        for (References.Own reference : references.own()) {
            List<String> broken = reference.brief().broken(shop.designer().rulebook());
            Div box = new Div(new H2(reference.brief().title()));
            box.addClassName("entry");
            Paragraph gives = soft(Text.of("house.reference.gives", reference.brief().expected().size(), reference.author()));
            box.add(gives);
            broken.forEach(b -> {
                Div line = new Div(new Paragraph(b));
                line.addClassNames("complaint", "is-doubt");
                box.add(line);
            });
            box.add(Controls.link(Text.of("house.row.delete"), () -> {
                if (!edits.gone()) {
                    references.remove(reference.id(), author);
                    list();
                }
            }));
            own.add(box);
        }
    }

    private Div form() {
        Div fields = new Div(
                Controls.field("reference-title", Text.of("house.reference.title"), "", "", t -> title = t),
                Controls.field("reference-code", Text.of("house.reference.code"), Text.of("house.reference.code.words"), "", this::fromCode),
                Controls.field("reference-height", Text.of("house.reference.height"), "", height, t -> {
                    height = t;
                    fromTree();
                }),
                labelled("house.column.fullness", Word.words(Fullness.class), fullness, w -> fullness = w),
                labelled("house.column.seen-from", Word.words(SeenFrom.class), seenFrom, w -> seenFrom = w),
                labelled("house.column.abundance", Word.words(Abundance.class), abundance, w -> abundance = w));
        fields.addClassName("entry-fields");
        Div box = new Div(fields, Controls.button(Text.of("house.reference.show"), "quiet", this::fromTree));
        box.addClassName("section");
        return box;
    }

    private Div labelled(String key, List<String> choices, String chosen, java.util.function.Consumer<String> changed) {
        Paragraph name = new Paragraph(Text.of(key));
        name.addClassName("words-name");
        Div box = new Div(name, GridTable.select(choices, chosen, Text.of(key), w -> {
            changed.accept(w);
            fromTree();
        }));
        box.addClassName("field");
        return box;
    }

    private void fromCode(String code) {
        if (code.isBlank()) {
            return;
        }
        Optional<Saved> saved = consultations.open(code);
        if (saved.isEmpty()) {
            tell(Text.of("api.no-code", code), true);
            return;
        }
        show(saved.get().brief());
    }

    private void fromTree() {
        ObjectNode root = JSON.createObjectNode();
        root.putObject("tree").put("height", height).put("fullness", fullness).put("seenFrom", seenFrom);
        root.put("abundance", abundance);
        show(root.toString());
    }

    private void show(String json) {
        numbers.removeAll();
        expected.clear();
        brief = "";
        BriefReading reading = new BriefReader(shop.designer().rulebook().choices()).read(json);
        if (reading instanceof BriefReading.Faulty faulty) {
            tell(faulty.faults().get(0).sentence(), true);
            return;
        }
        told.removeAll();
        brief = json;
        for (Need need : shop.designer().rulebook().needs(((BriefReading.Read) reading).brief(), Adjustments.NONE).needs()) {
            boolean counted = need.role().bought() || need.layer() != Layer.TOPPER;
            if (counted) {
                numbers.add(number(need));
            }
        }
        numbers.add(Controls.button(Text.of("house.reference.keep"), "strong", this::keep));
    }

    private Div number(Need need) {
        expected.put(need.id(), need.quantity());
        Input field = new Input(ValueChangeMode.ON_CHANGE);
        field.setId("reference-" + need.id().replace('/', '-'));
        field.setValue(String.valueOf(need.quantity()));
        field.getElement().setAttribute("inputmode", "numeric");
        field.addValueChangeListener(e -> {
            if (e.isFromClient()) {
                String text = e.getValue().strip();
                if (text.isEmpty()) {
                    expected.remove(need.id());
                } else if (text.matches("\\d{1,5}")) {
                    expected.put(need.id(), Integer.parseInt(text));
                } else {
                    field.setValue(String.valueOf(expected.getOrDefault(need.id(), need.quantity())));
                }
            }
        });
        NativeLabel label = new NativeLabel(Text.of("house.reference.need", Text.of("layer." + need.layer().word()), NeedName.of(need)));
        label.setFor(field);
        Div row = new Div(label, field);
        row.addClassName("number-row");
        return row;
    }

    private void keep() {
        if (edits.gone()) {
            return;
        }
        if (title.isBlank() || title.length() > 80) {
            tell(Text.of("house.reference.no-title"), true);
            return;
        }
        references.add(new ReferenceBrief(title, brief, expected), author);
        numbers.removeAll();
        tell(Text.of("house.reference.kept", title), false);
        list();
    }

    private void tell(String sentence, boolean fault) {
        told.removeAll();
        Div line = new Div(new Paragraph(sentence));
        line.addClassNames("complaint", fault ? "is-fault" : "is-well");
        told.add(line);
    }
}
