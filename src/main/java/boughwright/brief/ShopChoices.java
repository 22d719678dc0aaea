package boughwright.brief;

import java.util.Currency;
import java.util.List;
import java.util.Optional;

/**
 * What this shop offers this season: a brief may only ask for these.
 *
 * @param looks at least one; the first is the default
 * @param palettes holds at least every look's own
 */
public record ShopChoices(List<Look> looks, List<Palette> palettes, Currency currency) {

    public ShopChoices {
        looks = List.copyOf(looks);
        palettes = List.copyOf(palettes);
        if (looks.isEmpty()) {
            throw new IllegalArgumentException("a shop needs at least one look");
        }
    }

    public Optional<Look> look(String id) {
        return looks.stream().filter(l -> l.id().equals(id)).findFirst();
    }

    public Optional<Palette> palette(String id) {
        return palettes.stream().filter(p -> p.id().equals(id)).findFirst();
    }
}
