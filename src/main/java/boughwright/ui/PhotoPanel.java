package boughwright.ui;

import boughwright.needs.Trait;
import boughwright.brief.Word;
import boughwright.catalogue.Traits.Finish;
import boughwright.colour.ColourName;
import boughwright.photo.FinishHint;
import boughwright.photo.Ground;
import boughwright.photo.Photo;
import boughwright.photo.PhotoColour;
import boughwright.photo.PhotoColours;
import boughwright.photo.PhotoReading;
import boughwright.photo.SmallCopy;
import boughwright.shelf.Photos;
import boughwright.text.Text;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Image;
import com.vaadin.flow.component.html.Input;
import com.vaadin.flow.component.html.NativeButton;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.data.value.ValueChangeMode;
import java.io.IOException;
import java.io.InputStream;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * A product's photo: its colours are found and proposed, to be accepted or corrected. The photo itself is kept only when one says so.
 */
final class PhotoPanel extends Div {

    private static final int MOST_COLOURS = 4;
    /** A second colour is proposed from this share on; less is a highlight or an edge. */
    private static final double SECOND_FROM = 0.15;

    private final ShelfDesk desk;
    private final Photos photos;
    private final String sku;
    private final Consumer<Map<String, String>> accepted;
    private final Div kept = new Div();
    private final Div found = new Div();
    private final Map<String, String> chosen = new HashMap<>();
    private volatile byte[] picture = {};
    private volatile PhotoReading reading;

    /** @param accepted is given cells by column: colours, and a finish when it was taken too */
    PhotoPanel(ShelfDesk desk, Photos photos, String sku, Consumer<Map<String, String>> accepted) {
        this.desk = desk;
        this.photos = photos;
        this.sku = sku;
        this.accepted = accepted;
        addClassNames("section", "product-photo");
        FileDrop drop = new FileDrop("product-photo", Text.of("shelf.photo.drop"), Text.of("shelf.photo.hint"), "image/jpeg,image/png,image/gif", Photo.MOST_BYTES,
                this::received).withCamera().shrinking().whenDone(this::show);
        add(new H2(Text.of("shelf.photo")), kept, drop, found);
        drawKept();
    }

    private void drawKept() {
        kept.removeAll();
        if (photos.has(sku)) {
            // The address changes with the photo, so that no browser shows the one before.
            Image image = new Image("api/product/photo.jpg?sku=" + Addresses.part(sku) + "&" + System.nanoTime(), Text.of("shelf.photo.of", sku));
            kept.add(image, Controls.link(Text.of("shelf.photo.remove"), () -> {
                if (!desk.gone()) {
                    photos.remove(sku);
                    drawKept();
                }
            }));
        }
    }

    private void received(String name, String type, InputStream in, long length) throws IOException {
        byte[] bytes = in.readAllBytes();
        reading = Photo.read(bytes, Ground.DROP, MOST_COLOURS);
        picture = bytes;
    }

    private void show() {
        found.removeAll();
        chosen.clear();
        if (reading instanceof PhotoReading.Refused refused) {
            Paragraph fault = new Paragraph(refused.why().sentence());
            fault.addClassName("cell-fault");
            found.add(fault);
            return;
        }
        PhotoColours colours = ((PhotoReading.Read) reading).colours();
        chosen.put("colour", colours.colours().get(0).colour().hex());
        chosen.put("second_colour", colours.colours().size() > 1 && colours.colours().get(1).share() >= SECOND_FROM ? colours.colours().get(1).colour().hex() : "");
        found.add(new Paragraph(Text.of("shelf.photo.found", colours.colours().size())));
        Div swatches = new Div();
        swatches.addClassName("photo-colours");
        colours.colours().forEach(c -> swatches.add(swatch(c)));
        found.add(swatches, corrections());
        colours.finish().ifPresent(hint -> found.add(finish(hint)));
        NativeButton keep = Controls.button(Text.of("shelf.photo.keep"), "quiet", this::keep);
        found.add(Controls.button(Text.of("shelf.photo.take"), "strong", () -> accepted.accept(Map.copyOf(chosen))), keep);
        found.add(ShelfPage.soft(Text.of("shelf.photo.not-kept")));
    }

    private static Div swatch(PhotoColour colour) {
        Div swatch = new Div(Dots.dot(colour.colour()), Controls.words(Text.of("shelf.photo.share", ColourName.of(colour.colour()).shown(),
                Math.round(100 * colour.share())), "soft"));
        swatch.addClassName("photo-colour");
        return swatch;
    }

    /** The two colours as they will be kept, each of which can be another. */
    private Div corrections() {
        Div both = new Div(correction("colour"), correction("second_colour"));
        both.addClassName("colours");
        return both;
    }

    private Div correction(String column) {
        Input input = new Input(ValueChangeMode.ON_CHANGE);
        input.setType("color");
        input.setValue(chosen.get(column).isEmpty() ? "#ffffff" : chosen.get(column));
        input.addValueChangeListener(e -> chosen.put(column, e.getValue()));
        Div box = Controls.labelled("photo-" + column.replace('_', '-'), Text.of("catalogue.heading." + column), input);
        box.addClassName("near-field");
        if (column.equals("second_colour")) {
            NativeButton[] none = new NativeButton[1];
            none[0] = Controls.pill(Text.of("shelf.form.no-second"), chosen.get(column).isEmpty(), () -> {
                boolean empty = !chosen.get(column).isEmpty();
                chosen.put(column, empty ? "" : input.getValue());
                Controls.pressed(none[0], empty);
            });
            input.addValueChangeListener(e -> Controls.pressed(none[0], false));
            box.add(none[0]);
        }
        return box;
    }

    private Div finish(FinishHint hint) {
        Optional<Finish> finish = Word.read(Finish.class, hint.finish().word());
        Div box = new Div(ShelfPage.soft(hint.reason()));
        finish.ifPresent(f -> {
            NativeButton[] take = new NativeButton[1];
            take[0] = Controls.pill(Text.of("shelf.photo.finish", Trait.word(f.word())), false, () -> {
                boolean taken = chosen.remove("finish") == null;
                if (taken) {
                    chosen.put("finish", f.word());
                }
                Controls.pressed(take[0], taken);
            });
            box.add(take[0]);
        });
        hint.highlight().ifPresent(light -> box.add(swatch(new PhotoColour(light, Math.max(0.005, hint.highlightShare())))));
        return box;
    }

    private void keep() {
        if (!desk.gone()) {
            SmallCopy.jpeg(picture).ifPresent(jpeg -> photos.keep(sku, jpeg));
            drawKept();
            desk.tell(Text.of("shelf.photo.kept"), true);
        }
    }
}
