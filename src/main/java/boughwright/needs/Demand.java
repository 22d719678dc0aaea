package boughwright.needs;

import java.util.Collections;
import java.util.Set;
import java.util.TreeSet;

/**
 * Something that the house asks of the kit. All but {@link Prefer}, {@link PaletteParts} and {@link Shares} must hold.
 */
public sealed interface Demand {

    /** Every product in the role has one of these values of the trait. */
    record Only(Role role, Trait trait, Set<String> values) implements Demand {
        public Only {
            values = sorted(values);
        }
    }

    /** No product in any of the roles has one of these values; an empty set of roles means all. */
    record Never(Set<Role> roles, Trait trait, Set<String> values) implements Demand {
        public Never {
            roles = sorted(roles);
            values = sorted(values);
        }
    }

    /** The measure of every product in the role lies in [least, most]. */
    record Within(Role role, Dimension dimension, double least, double most) implements Demand {
    }

    /** The products in these roles show at least so many different values of the trait between them. */
    record Variety(Set<Role> roles, Trait trait, int least) implements Demand {
        public Variety {
            roles = sorted(roles);
        }
    }

    /** The products of the two roles do not share a value of the trait. */
    record Differ(Role one, Role other, Trait trait) implements Demand {
    }

    /** At least one product in these roles is as dark as this, CIE L* from 0 to 100. */
    record DarkOne(Set<Role> roles, double lightness) implements Demand {
        public DarkOne {
            roles = sorted(roles);
        }
    }

    /** The product of {@code narrower} is narrower than the product of {@code wider}. */
    record Narrower(Role narrower, Role wider) implements Demand {
    }

    /** A value that the house likes in a role; weight in (0, 1]. */
    record Prefer(Role role, Trait trait, String value, double weight) implements Demand {
    }

    /** How well each colour of the palette suits the role, 0 (never) to 1 (its natural colour). */
    record PaletteParts(Role role, double main, double second, double spark, double ground) implements Demand {

        public double of(int part) {
            return switch (part) {
                case 0 -> main;
                case 1 -> second;
                case 2 -> spark;
                case 3 -> ground;
                default -> throw new IllegalArgumentException("a palette has four colours, not " + part);
            };
        }
    }

    /** Shares of the visible area that the palette's colours should take; they add to 1. Ground counts with second. */
    record Shares(double main, double second, double spark) implements Demand {
    }

    /** In natural order, so that what a demand prints, and all that follows from its order, is the same in every run. */
    private static <T extends Comparable<T>> Set<T> sorted(Set<T> values) {
        return Collections.unmodifiableSortedSet(new TreeSet<>(values));
    }
}
