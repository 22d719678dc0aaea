package boughwright.proposal;

import boughwright.brief.Abundance;
import boughwright.brief.Palette;
import boughwright.measure.Money;
import java.util.List;
import java.util.Optional;

/**
 * Ways to meet one brief, to be seen side by side.
 *
 * @param offers as asked first; then, where there is one worth showing, the leaner and the fuller
 * @param palette a palette near the one asked for that this shelf serves better
 */
public record Offers(List<Offer> offers, Optional<PaletteHint> palette) {

    public Offers {
        offers = List.copyOf(offers);
    }

    /** Which of the three it is. */
    public enum Kind { ASKED, LEANER, FULLER }

    /**
     * @param sentence what it is, in one sentence
     * @param differences from what was asked for, a few words each; empty for what was asked for
     * @param budget that the brief would have; empty for no limit
     */
    public record Offer(Kind kind, Proposal proposal, String sentence, List<String> differences, Abundance abundance, Optional<Money> budget) {

        public Offer {
            differences = List.copyOf(differences);
        }
    }

    /** @param points that the best kit in it scores above the best kit in the palette asked for */
    public record PaletteHint(Palette palette, double points, Money total) {
    }
}
