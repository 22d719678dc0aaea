package boughwright.proposal;

import boughwright.brief.Abundance;
import boughwright.brief.Brief;
import boughwright.catalogue.Product;
import boughwright.kit.KitLine;
import boughwright.kit.OwnFirst;
import boughwright.kit.Patience;
import boughwright.measure.Money;
import boughwright.needs.Adjustments;
import boughwright.needs.Need;
import boughwright.needs.Role;
import boughwright.proposal.Growth.Year;
import boughwright.text.Text;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Grows a scheme over three years: it starts with few styles, dressed with restraint, and each year a style or so joins, until the
 * third has all that was asked for (a style or so a year: common practice, no published source).
 *
 * <p>Every year is a kit of its own under all the house's rules and within the same yearly budget; what was bought before counts as
 * owned, and what stands stays. A year that the budget cannot carry starts with fewer styles. Next year's shelf is not known, so
 * this season's is taken for it.
 */
final class Growing {

    private static final int YEARS = 3;

    private final Designer designer;
    private final Proposal asked;
    private final Patience patience;

    Growing(Designer designer, Proposal asked, Patience patience) {
        this.designer = designer;
        this.asked = asked;
        this.patience = patience;
    }

    Growth growth() {
        List<Year> years = new ArrayList<>();
        Optional<Proposal> before = Optional.empty();
        for (int number = 1; number <= YEARS; number++) {
            Optional<Proposal> made = year(number, before);
            if (made.isEmpty()) {
                break;
            }
            years.add(new Year(number, made.get(), joins(made.get()), mayBeGone(made.get())));
            before = made;
        }
        Money total = years.stream().map(Year::spend).reduce(Money::plus).orElse(Money.zero(designer.rulebook().choices().currency()));
        return new Growth(years, total);
    }

    private Optional<Proposal> year(int number, Optional<Proposal> before) {
        Brief brief = asked.brief().withOwned(before.map(Bought::by).orElse(asked.brief().owned()));
        Adjustments hand = asked.adjustments().keeping(before.map(Proposal::products).map(Growing::bySlot).orElse(Map.of()));
        for (int behind = YEARS - number; behind <= YEARS + 1; behind++) {
            int level = Math.max(0, Math.min(asked.brief().abundance().ordinal(), Abundance.LAVISH.ordinal() - behind));
            Abundance abundance = Abundance.values()[level];
            Brief stage = brief.withAbundance(abundance);
            Optional<Proposal> made = designer.ifPossible(stage, leaving(stage, hand, behind), asked.seed(), patience);
            if (made.isPresent()) {
                return made;
            }
        }
        return Optional.empty();
    }

    /** A slot's own part and the rest of it have been one style to the eye. */
    private static Map<String, String> bySlot(Map<String, String> products) {
        Map<String, String> whole = new LinkedHashMap<>();
        products.forEach((slot, sku) -> whole.putIfAbsent(OwnFirst.whole(slot), sku));
        return whole;
    }

    /** Leaves the last styles of sprays, balls and features for later years. */
    private Adjustments leaving(Brief stage, Adjustments hand, int behind) {
        Adjustments left = hand;
        for (Role role : List.of(Role.SPRAY, Role.FILLER_BALL, Role.FEATURE_ORNAMENT)) {
            List<Need> styles = designer.rulebook().needs(stage, hand).bought().stream().filter(n -> n.role() == role)
                    .sorted(Comparator.comparingInt(Need::style)).toList();
            int least = role == Role.FILLER_BALL ? 2 : 1;
            for (int i = Math.max(least, styles.size() - behind); i < styles.size(); i++) {
                left = left.withQuantity(styles.get(i).id(), 0);
            }
        }
        return left;
    }

    private static List<String> joins(Proposal year) {
        List<String> joins = new ArrayList<>();
        Map<String, Integer> pieces = new LinkedHashMap<>();
        Map<String, Boolean> had = new LinkedHashMap<>();
        Map<String, KitLine> lines = new LinkedHashMap<>();
        for (KitLine line : year.kit().lines()) {
            pieces.merge(line.sku(), line.quantity() - line.owned(), Integer::sum);
            had.merge(line.sku(), line.owned() > 0, Boolean::logicalOr);
            lines.putIfAbsent(line.sku(), line);
        }
        pieces.forEach((sku, more) -> {
            if (more > 0) {
                joins.add(Text.of(had.get(sku) ? "growth.more" : "growth.joins", more, lines.get(sku).name(), Text.of("role." + lines.get(sku).role().word())));
            }
        });
        return joins;
    }

    private static List<String> mayBeGone(Proposal year) {
        return year.kit().lines().stream().map(year::product).filter(p -> p.looks().size() == 1 && p.stock() > 0).map(Product::name).distinct().toList();
    }
}
