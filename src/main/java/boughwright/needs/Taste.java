package boughwright.needs;

import java.util.Comparator;
import java.util.Optional;

/**
 * Something that the customer wants or does not want the products to be: no glitter anywhere, gold for the feature ornaments.
 *
 * @param wanted true when every product in scope must have the value, false when none may
 * @param value a word of the trait, or a SKU for {@link Trait#PRODUCT}
 * @param role what it is said of; empty for the whole scheme
 */
public record Taste(boolean wanted, Trait trait, String value, Optional<Role> role) implements Comparable<Taste> {

    private static final Comparator<Taste> ORDER = Comparator.comparing(Taste::id);

    public static Taste no(Trait trait, String value) {
        return new Taste(false, trait, value, Optional.empty());
    }

    public static Taste only(Trait trait, String value, Role role) {
        return new Taste(true, trait, value, Optional.of(role));
    }

    /** The same text for the same taste: {@code taste:no:finish:glitter}, {@code taste:only:family:gold:feature-ornament}. */
    public String id() {
        return "taste:" + (wanted ? "only" : "no") + ":" + trait.word() + ":" + value + role.map(r -> ":" + r.word()).orElse("");
    }

    public boolean speaksOf(Role other) {
        return role.isEmpty() || role.get() == other;
    }

    @Override
    public int compareTo(Taste other) {
        return ORDER.compare(this, other);
    }
}
