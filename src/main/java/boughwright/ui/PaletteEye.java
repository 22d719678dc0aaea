package boughwright.ui;

import boughwright.brief.Palette;
import boughwright.drawing.HueRing;
import boughwright.needs.Demand;
import boughwright.palette.ColourReading;
import boughwright.palette.PaletteWords;
import boughwright.text.Text;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.UnorderedList;
import java.util.List;

/** What is to be said of a palette by itself: a small ring, its scheme, colours that nearly match or that some eyes confuse. */
final class PaletteEye extends Div {

    private final String id;
    private final Div ring = new Div();
    private final Div words = new Div();

    /** @param id of its own on the page */
    PaletteEye(String id, Palette palette, Demand.Shares wanted) {
        this.id = id;
        addClassName("palette-eye");
        ring.addClassName("palette-ring");
        words.addClassName("palette-words");
        words.getElement().setAttribute("aria-live", "polite");
        add(ring, words);
        show(palette, wanted);
    }

    /** Says it of these colours. */
    void show(Palette palette, Demand.Shares wanted) {
        ColourReading reading = ColourReading.of(palette, wanted);
        String scheme = PaletteWords.of(reading.scheme());
        ring.getElement().setProperty("innerHTML", new HueRing(reading.tones(), List.of(), reading.template().sectors())
                .small(id, Text.of("house.palette.ring", palette.title()), scheme));
        words.removeAll();
        words.add(new Paragraph(scheme));
        reading.nearMisses().forEach(p -> warn(PaletteWords.nearMiss(p)));
        reading.alike().forEach(p -> warn(PaletteWords.alike(p)));
        if (!reading.confusions().isEmpty()) {
            UnorderedList list = new UnorderedList();
            for (Preview preview : Preview.values()) {
                preview.deficiency().ifPresent(sight -> reading.confusions().stream().filter(c -> c.sight().equals(sight))
                        .forEach(c -> list.add(new ListItem(Text.of("house.palette.confusion", preview.title(), PaletteWords.of(c))))));
            }
            words.add(list);
        }
    }

    private void warn(String sentence) {
        Paragraph warning = new Paragraph(sentence);
        warning.addClassName("near");
        words.add(warning);
    }
}
