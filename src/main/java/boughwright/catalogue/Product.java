package boughwright.catalogue;

import boughwright.catalogue.Traits.Family;
import boughwright.catalogue.Traits.Finish;
import boughwright.catalogue.Traits.Level;
import boughwright.catalogue.Traits.Material;
import boughwright.catalogue.Traits.Pattern;
import boughwright.catalogue.Traits.Safety;
import boughwright.catalogue.Traits.Shape;
import boughwright.catalogue.Traits.Texture;
import boughwright.catalogue.Traits.Weave;
import boughwright.colour.Lab;
import boughwright.colour.Srgb;
import boughwright.measure.Length;
import boughwright.measure.Money;
import boughwright.needs.Role;
import boughwright.needs.Taste;
import boughwright.needs.Trait;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * One thing that the shop sells.
 *
 * @param gtin 13 digits with the right GS1 check digit
 * @param brand as the label names it; empty when it was not said
 * @param roles those it may fill, at least one
 * @param pattern of ribbons only, as is {@code weave}
 * @param width of the head, the ball or the ribbon
 * @param length of the stem, the drop or the roll; zero for a ball
 * @param lights of light strings only
 * @param pack pieces in one pack, at least 1
 * @param price of one pack
 * @param stock packs on hand
 */
public record Product(
        String sku, String gtin, String name, String brand, Set<Role> roles, Family family, Srgb colour, Optional<Srgb> secondColour,
        Texture texture, Finish finish, Material material, Shape shape, Optional<Pattern> pattern, Optional<Weave> weave, Length width, Length length,
        Optional<Lights> lights, int pack, Money price, Level level, int stock, String shelf, Set<String> looks, Set<Safety> safety,
        Lab lab) {

    /**
     * A light string's own figures.
     *
     * @param bulbs on one string
     * @param watts of one string
     * @param runLimit strings that the maker lets run end to end
     */
    public record Lights(int bulbs, double watts, int runLimit) {
    }

    /** The values of a trait, as the words that house rules use; a product may have several safety words, or none. */
    public Set<String> values(Trait trait) {
        return switch (trait) {
            case TEXTURE -> Set.of(texture.word());
            case FINISH -> Set.of(finish.word());
            case MATERIAL -> Set.of(material.word());
            case SHAPE -> Set.of(shape.word());
            case SCALE -> Set.of(scale());
            case PATTERN -> pattern.map(p -> Set.of(p.word())).orElse(Set.of());
            case WEAVE -> weave.map(w -> Set.of(w.word())).orElse(Set.of());
            case SAFETY -> safety.stream().map(Safety::word).collect(Collectors.toSet());
            case FAMILY -> Set.of(family.word());
            case LEVEL -> Set.of(level.word());
            case PRODUCT -> Set.of(sku);
        };
    }

    /** Whether it is as the customer wants it, wherever the taste speaks of it. */
    public boolean meets(Taste taste) {
        return values(taste.trait()).contains(taste.value()) == taste.wanted();
    }

    /** The class of its width: small below 8 cm, middling below 13 cm, large (common practice, no published source). */
    public String scale() {
        return width.metres() < 0.08 ? "small" : width.metres() < 0.13 ? "middling" : "large";
    }

    /** The same with so many packs on hand. */
    public Product withStock(int packs) {
        return new Product(sku, gtin, name, brand, roles, family, colour, secondColour, texture, finish, material, shape, pattern, weave, width, length, lights,
                pack, price, level, packs, shelf, looks, safety, lab);
    }

    /** All the pieces that are on hand. */
    public int piecesInStock() {
        return (int) Math.min(Integer.MAX_VALUE, (long) stock * pack);
    }
}
