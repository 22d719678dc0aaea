package boughwright.proposal;

import boughwright.brief.Owned;
import boughwright.brief.Palette;
import boughwright.catalogue.Product;
import boughwright.colour.Lab;
import boughwright.colour.Match;
import boughwright.text.Text;
import java.util.ArrayList;
import java.util.List;

/** What to tell customers about the pieces of their own: what found no place, and what fights the palette. */
public final class OwnNotes {

    /** CIEDE2000 from the nearest palette colour beyond which a piece has little to do with the palette: half of the colour fit. */
    private static final double FOREIGN = 17.5;

    private OwnNotes() {
    }

    /** One sentence each, in the order in which the pieces were named. */
    public static List<String> of(Proposal proposal) {
        List<String> notes = new ArrayList<>();
        for (Owned owned : proposal.brief().owned()) {
            Product product = proposal.catalogue().product(owned.sku()).orElseThrow();
            int used = proposal.kit().lines().stream().filter(l -> l.sku().equals(owned.sku())).mapToInt(l -> l.owned()).sum();
            if (used == 0) {
                notes.add(Text.of("own.no-place", product.name()));
            } else if (used < owned.quantity()) {
                notes.add(Text.of("own.left", owned.quantity() - used, product.name()));
            }
            if (used > 0 && product.lights().isEmpty()) {
                double difference = nearest(product, proposal.brief().palette());
                if (difference > FOREIGN) {
                    notes.add(Text.of("own.foreign", product.name(), proposal.brief().palette().shownTitle()));
                } else if (Match.of(difference) == Match.NEAR_MISS) {
                    notes.add(Text.of("own.near-miss", product.name(), proposal.brief().palette().shownTitle()));
                }
            }
        }
        return notes;
    }

    private static double nearest(Product product, Palette palette) {
        return palette.labs().stream().mapToDouble((Lab l) -> product.lab().difference(l)).min().orElseThrow();
    }
}
