package boughwright.ui;

import boughwright.brief.Look;
import boughwright.brief.Palette;
import boughwright.brief.ShopChoices;
import boughwright.catalogue.ShelfMatch;
import boughwright.colour.ColourName;
import boughwright.colour.Srgb;
import boughwright.drawing.DressedTree;
import boughwright.photo.Photo;
import boughwright.photo.PhotoColour;
import boughwright.proposal.Designer;
import boughwright.text.Text;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.H3;
import com.vaadin.flow.component.html.Input;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.NativeButton;
import com.vaadin.flow.component.html.NativeLabel;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.data.value.ValueChangeMode;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Supplier;

/**
 * Which colours: one of the shop's palettes, four of the customer's own, or four drawn from a photo. Of a photo only its colours are kept, here and
 * as long as the interview lasts.
 */
final class PaletteQuestion {

    private static final List<String> ROLES = List.of("main", "second", "spark", "ground");
    private final Answers answers;
    private final Supplier<Designer> shop;
    private final Consumer<Runnable> answer;
    private final FileDrop drop;
    private final RoomPhoto photo = new RoomPhoto();

    /** @param answer does the change that it is given and draws the page anew */
    PaletteQuestion(Answers answers, Supplier<Designer> shop, Consumer<Runnable> answer) {
        this.answers = answers;
        this.shop = shop;
        this.answer = answer;
        drop = new FileDrop("room-photo", Text.of("interview.palette.photo.label"), Text.of("interview.palette.photo.hint"), "image/*", Photo.MOST_BYTES,
                (name, type, in, length) -> photo.look(in.readAllBytes())).whenDone(() -> answer.accept(this::draw)).withCamera().shrinking();
    }

    private ShopChoices choices() {
        return shop.get().rulebook().choices();
    }

    private Look look() {
        return choices().look(answers.look).orElse(choices().looks().get(0));
    }

    /** The palette as it is answered by now. */
    Palette chosen() {
        Palette start = choices().palette(answers.palette).or(() -> choices().palette(look().palette())).orElse(choices().palettes().get(0));
        if (answers.ownColours.isEmpty()) {
            return start;
        }
        List<Srgb> own = ROLES.stream().map(r -> Srgb.read(answers.ownColours.get(r)).orElseThrow()).toList();
        return Palette.own(own.get(0), own.get(1), own.get(2), own.get(3));
    }

    void show(Div page) {
        Div cards = new Div();
        cards.addClassNames("cards", "four");
        Palette chosen = chosen();
        for (Palette palette : choices().palettes()) {
            cards.add(Controls.card(Icons.palette(palette), palette.shownTitle(),
                    palette.id().equals(look().palette()) ? Text.of("interview.palette.looks", look().shownTitle()) : "", palette.id().equals(chosen.id()),
                    () -> answer.accept(() -> {
                        answers.ownColours.clear();
                        answers.palette = palette.id();
                    })));
        }
        page.add(cards, new H2(Text.of("interview.palette.photo")), photo(), new H2(Text.of(answers.ownColours.isEmpty() ? "interview.palette.own" : "interview.palette.four")), roles(chosen));
    }

    /** The four colours become those that the photo suggests. */
    private void draw() {
        photo.palette().filter(p -> photo.refusal().isEmpty()).ifPresent(drawn -> {
            for (int i = 0; i < ROLES.size(); i++) {
                answers.ownColours.put(ROLES.get(i), drawn.palette().colours().get(i).hex());
            }
        });
    }

    private Div photo() {
        Div box = new Div(drop, Controls.words(Text.of("interview.palette.photo.privacy"), "soft"));
        box.addClassName("photo");
        if (!photo.refusal().isEmpty()) {
            Paragraph fault = new Paragraph(photo.refusal());
            fault.addClassName("fault");
            fault.getElement().setAttribute("role", "alert");
            box.add(fault);
        }
        photo.colours().ifPresent(found -> {
            UnorderedList swatches = new UnorderedList();
            swatches.addClassName("found-colours");
            for (PhotoColour colour : found.colours()) {
                Div swatch = new Div();
                swatch.addClassName("found-colour");
                swatch.getStyle().set("background-color", colour.colour().hex());
                swatches.add(new ListItem(swatch, new Span(Text.of("interview.palette.photo.share", String.valueOf(Math.max(1, Math.round(100 * colour.share()))), ColourName.of(colour.colour()).shown()))));
            }
            box.add(new H3(Text.of("interview.palette.photo.found")), swatches);
        });
        if (photo.hasBackground()) {
            Div ground = new Div(Controls.pill(Text.of("interview.palette.photo.whole"), !photo.leavesBackground(), () -> leaveBackground(false)),
                    Controls.pill(Text.of("interview.palette.photo.thing"), photo.leavesBackground(), () -> leaveBackground(true)));
            ground.addClassName("choice-row");
            box.add(ground);
        }
        return box;
    }

    private void leaveBackground(boolean out) {
        answer.accept(() -> {
            photo.leaveBackground(out);
            draw();
        });
    }

    private Div roles(Palette chosen) {
        Div roles = new Div();
        roles.addClassName("roles");
        for (int i = 0; i < ROLES.size(); i++) {
            roles.add(role(i, chosen));
        }
        return roles;
    }

    private Div role(int index, Palette chosen) {
        String role = ROLES.get(index);
        Srgb colour = chosen.colours().get(index);
        Div box = new Div(colourInput(role, colour.hex()));
        box.addClassName("role");
        photo.colours().ifPresent(found -> box.add(photoColours(found.colours(), role, colour)));
        if (photo.palette().filter(drawn -> !drawn.seen().get(index) && colour.equals(drawn.palette().colours().get(index))).isPresent()) {
            box.add(Controls.words(Text.of("interview.palette.photo.lacking"), "soft"));
        }
        if (!answers.ownColours.isEmpty()) {
            shelf(box, role, colour);
        }
        return box;
    }

    private Div photoColours(List<PhotoColour> found, String role, Srgb colour) {
        Div choice = new Div();
        choice.addClassName("choice-row");
        for (int i = 0; i < found.size(); i++) {
            Srgb other = found.get(i).colour();
            NativeButton button = new NativeButton();
            button.addClassName("photo-colour");
            button.getStyle().set("background-color", other.hex());
            button.getElement().setAttribute("aria-label", Text.of("interview.palette.photo.use", i + 1, found.size(), Text.of("palette." + role)));
            Controls.pressed(button, other.equals(colour));
            button.addClickListener(e -> set(role, other.hex()));
            choice.add(button);
        }
        return choice;
    }

    private void shelf(Div box, String role, Srgb colour) {
        List<ShelfMatch> matches = ShelfMatch.nearest(shop.get().catalogue(), colour);
        if (matches.isEmpty()) {
            return;
        }
        ShelfMatch best = matches.get(0);
        box.add(new H3(Text.of("interview.palette.shop")));
        if (best.nearness() == ShelfMatch.Nearness.FAR) {
            box.add(new Paragraph(Text.of("interview.palette.shop.none")));
        }
        UnorderedList list = new UnorderedList();
        list.addClassName("shelf");
        for (ShelfMatch match : matches) {
            Div picture = Controls.drawn(DressedTree.swatch(match.product(), 40));
            picture.addClassName("swatch");
            list.add(new ListItem(picture, new Span(match.product().name()),
                    Controls.words(Text.of("interview.palette.shop." + match.nearness().word()), "soft")));
        }
        box.add(list);
        if (best.nearness() != ShelfMatch.Nearness.SAME) {
            NativeButton use = Controls.link(Text.of("interview.palette.shop.use"), () -> set(role, best.product().colour().hex()));
            use.getElement().setAttribute("aria-label", Text.of("interview.palette.shop.use") + ": " + Text.of("palette." + role));
            box.add(use);
        }
    }

    private void set(String role, String hex) {
        List<Srgb> before = new ArrayList<>(chosen().colours());
        answer.accept(() -> {
            for (int k = 0; k < ROLES.size(); k++) {
                answers.ownColours.putIfAbsent(ROLES.get(k), before.get(k).hex());
            }
            answers.ownColours.put(role, hex);
        });
    }

    private Div colourInput(String role, String hex) {
        Input input = new Input(ValueChangeMode.ON_CHANGE);
        input.setType("color");
        input.setId("colour-" + role);
        input.setValue(hex);
        input.addValueChangeListener(e -> {
            if (e.isFromClient()) {
                set(role, e.getValue());
            }
        });
        NativeLabel label = new NativeLabel(Text.of("palette." + role));
        label.setFor(input);
        Div field = new Div(input, label, Controls.words(Srgb.read(hex).map(c -> ColourName.of(c).shown()).orElse(""), "soft"));
        field.addClassName("colour");
        return field;
    }
}
