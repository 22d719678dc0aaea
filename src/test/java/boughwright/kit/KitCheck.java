package boughwright.kit;

import boughwright.brief.Brief;
import boughwright.brief.Owned;
import boughwright.catalogue.Catalogue;
import boughwright.catalogue.Product;
import boughwright.measure.Money;
import boughwright.needs.Need;
import boughwright.needs.Needs;
import boughwright.needs.Role;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Reads a finished kit as a suspicious customer would: every amount is worked out again from the needs, the catalogue and the
 * customer's own pieces. Shares no code with the programme that chose it.
 */
final class KitCheck {

    private static final double TEN_YARDS = 30 * 0.3048;

    private final Needs needs;
    private final Catalogue catalogue;
    private final Brief brief;
    private final List<String> faults = new ArrayList<>();

    private KitCheck(Needs needs, Catalogue catalogue, Brief brief) {
        this.needs = needs;
        this.catalogue = catalogue;
        this.brief = brief;
    }

    /** Everything wrong with the kit, one sentence each. */
    static List<String> faults(Kit kit, Needs needs, Catalogue catalogue, Brief brief) {
        KitCheck check = new KitCheck(needs, catalogue, brief);
        check.oneLineForEachNeed(kit);
        check.oneProductForEachSlot(kit);
        kit.lines().forEach(check::line);
        check.packsOfEachProduct(kit);
        check.money(kit);
        check.faults.addAll(HouseCheck.faults(needs, check.products(kit)));
        return List.copyOf(check.faults);
    }

    private void fault(String sentence) {
        faults.add(sentence);
    }

    private void oneLineForEachNeed(Kit kit) {
        List<String> wanted = needs.needs().stream()
                .filter(n -> n.quantity() > 0 && n.role() != Role.GROUPING && n.role() != Role.CLUSTER && n.role() != Role.GAP_ACCENT)
                .map(Need::id).toList();
        List<String> got = kit.lines().stream().map(KitLine::needId).toList();
        if (!wanted.equals(got)) {
            fault("lines for " + got + " where the needs are " + wanted);
        }
    }

    private void oneProductForEachSlot(Kit kit) {
        Map<String, String> productOf = new TreeMap<>();
        Map<String, String> slotOf = new TreeMap<>();
        for (KitLine line : kit.lines()) {
            String other = productOf.putIfAbsent(line.slot(), line.sku());
            if (other != null && !other.equals(line.sku())) {
                fault("two products in slot " + line.slot());
            }
            String elsewhere = slotOf.putIfAbsent(line.sku(), line.slot());
            if (elsewhere != null && !elsewhere.equals(line.slot())) {
                fault(line.sku() + " in two slots");
            }
        }
    }

    private void line(KitLine line) {
        Need need = needs.need(line.needId()).orElseThrow();
        Optional<Product> known = catalogue.product(line.sku());
        if (known.isEmpty()) {
            fault(line.sku() + " is not sold here");
            return;
        }
        Product product = known.get();
        if (!line.slot().equals(need.slot()) || line.layer() != need.layer() || line.role() != need.role()) {
            fault(line.needId() + " in the wrong place");
        }
        if (!product.roles().contains(need.role())) {
            fault(line.sku() + " is no " + need.role());
        }
        if (line.packSize() != product.pack() || !line.unitPrice().equals(product.price())) {
            fault(line.sku() + " is sold in other packs or at another price");
        }
        if (!line.price().amount().equals(product.price().amount().multiply(BigDecimal.valueOf(line.packs())))) {
            fault(line.needId() + " costs something else");
        }
        if (line.owned() < 0 || line.packs() < 0 || line.owned() > line.quantity()) {
            fault(line.needId() + " has impossible amounts");
        }
        pieces(line, need, product);
        size(need, product);
    }

    /** Exactly as much as is needed: one piece fewer would not do. */
    private void pieces(KitLine line, Need need, Product product) {
        double each = switch (need.unit()) {
            case BULB -> product.lights().map(Product.Lights::bulbs).orElse(0);
            case ROLL -> product.length().metres() / TEN_YARDS;
            default -> 1;
        };
        // A roll a millimetre short is still a roll.
        double hair = 0.002;
        boolean enough = line.quantity() * each >= need.quantity() - hair;
        boolean tooMany = (line.quantity() - 1) * each >= need.quantity() + hair;
        if (!enough || tooMany) {
            fault(line.quantity() + " of " + line.sku() + " for " + need.quantity() + " of " + need.id());
        }
    }

    /** Balls by their diameter within rounding; features by their drop, which varies by about a quarter. */
    private void size(Need need, Product product) {
        need.diameter().ifPresent(wanted -> {
            boolean ball = need.role() == Role.FILLER_BALL;
            double off = Math.abs((ball ? product.width() : product.length()).metres() - wanted.metres());
            if (off > (ball ? 0.002 : 0.28 * wanted.metres()) + 1e-12) {
                fault(product.sku() + " is of the wrong size for " + need.id());
            }
        });
    }

    private void packsOfEachProduct(Kit kit) {
        Map<String, Integer> had = brief.owned().stream().collect(Collectors.toMap(Owned::sku, Owned::quantity));
        Map<String, List<KitLine>> bySku = kit.lines().stream().collect(Collectors.groupingBy(KitLine::sku, TreeMap::new, Collectors.toList()));
        bySku.forEach((sku, lines) -> {
            int quantity = lines.stream().mapToInt(KitLine::quantity).sum();
            int owned = lines.stream().mapToInt(KitLine::owned).sum();
            int packs = lines.stream().mapToInt(KitLine::packs).sum();
            int size = lines.get(0).packSize();
            if (owned != Math.min(quantity, had.getOrDefault(sku, 0))) {
                fault(owned + " owned pieces used of " + sku + ", " + had.getOrDefault(sku, 0) + " are there");
            }
            if (packs * size + owned < quantity) {
                fault("too few packs of " + sku);
            }
            if (packs > 0 && (packs - 1) * size + owned >= quantity) {
                fault("a pack too many of " + sku);
            }
            if (packs > catalogue.product(sku).map(Product::stock).orElse(0)) {
                fault("more packs of " + sku + " than are in stock");
            }
        });
    }

    private void money(Kit kit) {
        BigDecimal sum = BigDecimal.ZERO;
        for (KitLine line : kit.lines()) {
            sum = sum.add(line.price().amount());
        }
        if (kit.total().amount().compareTo(sum) != 0) {
            fault("the total " + kit.total() + " is not the sum " + sum);
        }
        Optional<Money> budget = brief.budget();
        if (!kit.budget().equals(budget)) {
            fault("the budget was " + budget + ", not " + kit.budget());
        }
        if (budget.isPresent() && sum.compareTo(budget.get().amount()) > 0) {
            fault(sum + " is over the budget of " + budget.get());
        }
    }

    /** Slot to product, with the slot's role. */
    private Map<HouseCheck.Place, Product> products(Kit kit) {
        Map<HouseCheck.Place, Product> products = new LinkedHashMap<>();
        kit.lines().forEach(l -> catalogue.product(l.sku()).ifPresent(p -> products.put(new HouseCheck.Place(l.slot(), l.role()), p)));
        return products;
    }
}
