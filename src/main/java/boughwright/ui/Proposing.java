package boughwright.ui;

import boughwright.brief.Abundance;
import boughwright.catalogue.Product;
import boughwright.consultation.Consultations;
import boughwright.consultation.Reopened;
import boughwright.consultation.Saved;
import boughwright.needs.Adjustments;
import boughwright.needs.Need;
import boughwright.needs.Needs;
import boughwright.needs.Unit;
import boughwright.kit.Conflict;
import boughwright.kit.KitLine;
import boughwright.kit.Wish;
import boughwright.proposal.Designer;
import boughwright.proposal.Outcome;
import boughwright.proposal.Proposal;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;

/**
 * One consultation at the proposal: what it is now, and what each change makes of it. Every change is worked out and saved under
 * the same code before it is shown. Knows no screen.
 */
final class Proposing {

    private static final ObjectMapper JSON = new ObjectMapper();

    private final Designer designer;
    private final Consultations consultations;
    private Saved saved;
    private Outcome outcome;

    /** @param reopened with a proposal or a conflict; a kept brief that can no longer be read has nothing to change */
    Proposing(Designer designer, Consultations consultations, Reopened reopened) {
        this.designer = designer;
        this.consultations = consultations;
        this.saved = reopened.saved();
        this.outcome = reopened.outcome();
    }

    Saved saved() {
        return saved;
    }

    Outcome outcome() {
        return outcome;
    }

    /** Empty while no kit fits. */
    Optional<Proposal> proposal() {
        return outcome instanceof Outcome.Made made ? Optional.of(made.proposal()) : Optional.empty();
    }

    Designer designer() {
        return designer;
    }

    void abundance(Abundance abundance) {
        amend(brief -> brief.put("abundance", abundance.word()));
    }

    /** @param budget plain decimal, or empty for no limit */
    Outcome budget(String budget) {
        return amend(brief -> {
            if (budget.isBlank()) {
                brief.remove("budget");
            } else {
                brief.put("budget", budget);
            }
        });
    }

    void palette(String id) {
        amend(brief -> brief.put("palette", id));
    }

    /** Sets the pieces of a line; a light string is counted in strings here and in bulbs in the need. */
    void quantity(String needId, int pieces) {
        Needs needs = needs();
        Need need = needs.need(needId).orElseThrow();
        int quantity = need.unit() == Unit.BULB ? pieces * bulbs(need) : pieces;
        quantity = Math.min(quantity, Adjustments.MOST);
        adjust(quantity == need.computed() ? saved.adjustments().withoutQuantity(needId) : saved.adjustments().withQuantity(needId, quantity));
    }

    private int bulbs(Need need) {
        return proposal().flatMap(p -> p.kit().line(need.id())).map(KitLine::sku).flatMap(designer.catalogue()::product)
                .flatMap(Product::lights).map(Product.Lights::bulbs).orElse(100);
    }

    void quantityAsComputed(String needId) {
        adjust(saved.adjustments().withoutQuantity(needId));
    }

    void swap(String slot, String sku) {
        adjust(saved.adjustments().withProduct(slot, sku));
    }

    void letTheKitChoose(String slot) {
        adjust(saved.adjustments().withoutProduct(slot));
    }

    boolean chosenByHand(String slot) {
        return saved.adjustments().products().containsKey(slot);
    }

    List<Product> alternatives(String slot) {
        return proposal().map(p -> designer.alternatives(p, slot)).orElse(List.of());
    }

    /** Lets go of the wishes of a way out: raises the budget to what is needed, takes back what else was asked. */
    void take(Conflict.WayOut way) {
        ObjectNode brief = brief();
        Adjustments adjustments = saved.adjustments();
        for (String wish : way.wishes()) {
            if (wish.equals(Wish.BUDGET)) {
                brief.put("budget", way.total().decimal());
            } else if (wish.equals(Wish.ABUNDANCE)) {
                brief.put("abundance", Abundance.RESTRAINED.word());
            } else if (wish.startsWith(Wish.QUANTITY)) {
                adjustments = adjustments.withoutQuantity(wish.substring(Wish.QUANTITY.length()));
            } else if (wish.startsWith(Wish.PRODUCT)) {
                adjustments = adjustments.withoutProduct(wish.substring(Wish.PRODUCT.length()));
            }
        }
        keep(brief.toString(), designer.propose(brief.toString(), adjustments, saved.seed()));
    }

    Needs needs() {
        if (outcome instanceof Outcome.Made made) {
            return made.proposal().needs();
        }
        return ((Outcome.NoKitFits) outcome).needs();
    }

    private void adjust(Adjustments adjustments) {
        keep(saved.brief(), designer.propose(saved.brief(), adjustments, saved.seed()));
    }

    private interface Amendment {
        void to(ObjectNode brief);
    }

    private Outcome amend(Amendment amendment) {
        ObjectNode brief = brief();
        amendment.to(brief);
        return keep(brief.toString(), designer.propose(brief.toString(), saved.adjustments(), saved.seed()));
    }

    private ObjectNode brief() {
        try {
            return (ObjectNode) JSON.readTree(saved.brief());
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a saved brief is JSON", e);
        }
    }

    /** A change that makes the brief faulty is answered and not kept. */
    private Outcome keep(String brief, Outcome next) {
        if (!(next instanceof Outcome.BadBrief)) {
            saved = consultations.go(saved.code(), brief, next);
            outcome = next;
        }
        return next;
    }
}
