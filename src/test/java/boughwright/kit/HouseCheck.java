package boughwright.kit;

import boughwright.catalogue.Product;
import boughwright.needs.Demand;
import boughwright.needs.Needs;
import boughwright.needs.Role;
import boughwright.needs.Trait;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** What the house demands of a choice of products, read from {@link Demand}'s own words. Shares no code with the programme. */
final class HouseCheck {

    /** A slot and what the piece in it does. */
    record Place(String slot, Role role) {
    }

    private final Map<Place, Product> products;

    private HouseCheck(Map<Place, Product> products) {
        this.products = products;
    }

    /** Every demand that the choice breaks. */
    static List<String> faults(Needs needs, Map<Place, Product> products) {
        HouseCheck check = new HouseCheck(products);
        List<String> faults = new ArrayList<>();
        needs.rules().forEach(rule -> {
            if (!check.holds(rule.demand())) {
                faults.add(rule.demand() + " does not hold");
            }
        });
        return faults;
    }

    private boolean holds(Demand demand) {
        if (demand instanceof Demand.Only only) {
            return in(only.role()).stream().allMatch(p -> shares(p.values(only.trait()), only.values()));
        }
        if (demand instanceof Demand.Never never) {
            return in(role -> never.roles().isEmpty() || never.roles().contains(role)).stream()
                    .noneMatch(p -> shares(p.values(never.trait()), never.values()));
        }
        if (demand instanceof Demand.Within within) {
            return in(within.role()).stream().mapToDouble(p -> measure(within, p))
                    .allMatch(m -> m >= within.least() - 1e-9 && m <= within.most() + 1e-9);
        }
        if (demand instanceof Demand.Variety variety) {
            List<Product> varied = in(variety.roles()::contains);
            // So few places cannot show so many values; the house does not ask the impossible.
            return varied.size() < variety.least() || values(varied, variety.trait()) >= variety.least();
        }
        if (demand instanceof Demand.Differ differ) {
            return in(differ.one()).stream().allMatch(a -> in(differ.other()).stream()
                    .filter(b -> b != a).noneMatch(b -> shares(a.values(differ.trait()), b.values(differ.trait()))));
        }
        if (demand instanceof Demand.DarkOne dark) {
            List<Product> among = in(dark.roles()::contains);
            return among.isEmpty() || among.stream().anyMatch(p -> p.lab().l() <= dark.lightness());
        }
        if (demand instanceof Demand.Narrower narrower) {
            return in(narrower.narrower()).stream().allMatch(n -> in(narrower.wider()).stream()
                    .allMatch(w -> n.width().metres() < w.width().metres()));
        }
        // What is left sways the score and forbids nothing.
        return demand instanceof Demand.Prefer || demand instanceof Demand.PaletteParts || demand instanceof Demand.Shares;
    }

    private static double measure(Demand.Within within, Product product) {
        return switch (within.dimension()) {
            case WIDTH -> product.width().metres();
            case LENGTH -> product.length().metres();
            case LIGHTNESS -> product.lab().l();
        };
    }

    private List<Product> in(Role role) {
        return in(role::equals);
    }

    private List<Product> in(Predicate<Role> which) {
        return products.entrySet().stream().filter(e -> which.test(e.getKey().role())).map(Map.Entry::getValue).toList();
    }

    private static long values(Collection<Product> products, Trait trait) {
        return products.stream().flatMap(p -> p.values(trait).stream()).collect(Collectors.toSet()).size();
    }

    private static boolean shares(Set<String> one, Set<String> other) {
        return !Collections.disjoint(one, other);
    }
}
