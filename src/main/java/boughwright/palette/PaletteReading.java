package boughwright.palette;

import boughwright.brief.Brief;
import boughwright.catalogue.Catalogue;
import boughwright.kit.Kit;
import boughwright.kit.KitColours;
import boughwright.needs.Demand;
import boughwright.needs.Needs;
import java.util.List;

/**
 * How a kit keeps to its palette, and how the colours of both stand to one another. The same kit gives the same reading.
 *
 * @param members the palette's four colours with the shares that they take in this kit
 * @param palette of the four by themselves, in the shares that are wanted of them
 * @param kit of the products, each with its share of what is seen; light strings show no colour and are left out
 * @param wanted of main, of second with ground, and of spark
 */
public record PaletteReading(List<Tone> members, ColourReading palette, ColourReading kit, Demand.Shares wanted) {

    public PaletteReading {
        members = List.copyOf(members);
    }

    /** @param catalogue holds every product of the kit */
    public static PaletteReading of(Brief brief, Needs needs, Catalogue catalogue, Kit kit) {
        KitColours colours = KitColours.of(brief, needs, catalogue, kit);
        List<Tone> products = colours.shown().stream().map(s -> new Tone(s.slot(), s.product().name(), s.product().colour(), s.share(), s.part())).toList();
        return new PaletteReading(ColourReading.tones(brief.palette(), colours.fallen()), ColourReading.of(brief.palette(), colours.wanted()),
                ColourReading.of(products), colours.wanted());
    }

    /** The share that a palette colour takes in this kit. @param part 0 main, 1 second, 2 spark, 3 ground */
    public double fallen(int part) {
        return members.get(part).share();
    }
}
