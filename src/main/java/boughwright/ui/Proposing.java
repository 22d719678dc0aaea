package boughwright.ui;

import boughwright.brief.Abundance;
import boughwright.brief.Word;
import boughwright.catalogue.Product;
import boughwright.colour.Lab;
import boughwright.colour.Srgb;
import boughwright.consultation.Consultations;
import boughwright.consultation.Reopened;
import boughwright.consultation.Saved;
import boughwright.kit.Conflict;
import boughwright.kit.OwnFirst;
import boughwright.kit.Patience;
import boughwright.kit.Swap;
import boughwright.kit.Wish;
import boughwright.measure.Money;
import boughwright.measure.Units;
import boughwright.needs.Adjustments;
import boughwright.needs.Layer;
import boughwright.needs.Need;
import boughwright.needs.Needs;
import boughwright.needs.Spot;
import boughwright.needs.Taste;
import boughwright.needs.Trait;
import boughwright.needs.Unit;
import boughwright.proposal.Designer;
import boughwright.proposal.Growth;
import boughwright.proposal.KitChanges;
import boughwright.proposal.Offers;
import boughwright.proposal.Outcome;
import boughwright.proposal.Proposal;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One consultation at the proposal: what it is now, and what each change makes of it. Every change is worked out and saved under
 * the same code before it is shown. Knows no screen.
 */
final class Proposing {

    private static final ObjectMapper JSON = new ObjectMapper();

    private Designer designer;
    private final Consultations consultations;
    private final Deque<State> undo = new ArrayDeque<>();
    private final Deque<State> redo = new ArrayDeque<>();
    private Saved saved;
    private Outcome outcome;
    private List<String> changes = List.of();
    private Optional<Proposal> before = Optional.empty();
    private Optional<Units> units = Optional.empty();
    private Patience patience = Patience.usual();

    /** All that decides a proposal beside the shop. */
    private record State(String brief, Adjustments hand) {
    }

    /** @param reopened with a proposal or a conflict; a kept brief that can no longer be read has nothing to change */
    Proposing(Designer designer, Consultations consultations, Reopened reopened) {
        this.designer = designer;
        this.consultations = consultations;
        this.saved = reopened.saved();
        this.outcome = reopened.outcome();
    }

    /** Makes a change that is worked out only as long as somebody waits for it; cancelled, it leaves everything as it was. */
    void with(Patience until, Runnable change) {
        patience = until;
        change.run();
    }

    private Outcome propose(String brief, Adjustments hand) {
        return consultations.workOut(designer, brief, hand, saved.seed(), patience);
    }

    Saved saved() {
        return saved;
    }

    /** The units in which lengths are shown: those that were chosen on screen, else those of the brief. */
    Units units() {
        return units.orElseGet(() -> outcome instanceof Outcome.Made made ? made.proposal().brief().units() : ((Outcome.NoKitFits) outcome).brief().units());
    }

    /** Shows lengths in other units. That is a view of the same proposal, which is kept as it was. */
    void read(Units other) {
        units = Optional.of(other);
        ChosenUnits.choose(saved.code(), other);
        retell();
    }

    /** Says everything again in the language that is spoken now. */
    void retell() {
        outcome = designer.told(outcome, units());
        tellChanges();
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

    /** Works the same wishes out afresh under another edition of the house rules, which this consultation keeps from then on. */
    void under(Designer other) {
        Designer former = designer;
        designer = other;
        if (keep(saved.brief(), propose(saved.brief(), hand().keeping(Map.of()))) instanceof Outcome.BadBrief) {
            designer = former;
        }
        undo.clear();
        redo.clear();
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

    /** Sets the pieces of a line; a light string is counted in strings here and in bulbs in the need. Own pieces stay beside it. */
    void quantity(String needId, int pieces) {
        Need need = needs().need(needId).orElseThrow();
        int quantity = need.unit() == Unit.BULB ? pieces * bulbs(need) : pieces;
        String whole = OwnFirst.whole(needId);
        String other = whole.equals(needId) ? needId + OwnFirst.OWN : whole;
        int beside = needs().need(other).map(Need::quantity).orElse(0);
        int computed = need.computed() + needs().need(other).map(Need::computed).orElse(0);
        quantity = Math.min(quantity + beside, Adjustments.MOST);
        bend(quantity == computed ? hand().withoutQuantity(whole) : hand().withQuantity(whole, quantity));
    }

    private int bulbs(Need need) {
        return proposal().flatMap(p -> p.kit().line(need.id()).map(p::product)).flatMap(Product::lights).map(Product.Lights::bulbs).orElse(100);
    }

    void quantityAsComputed(String needId) {
        bend(hand().withoutQuantity(OwnFirst.whole(needId)));
    }

    void swap(String slot, String sku) {
        bend(hand().withProduct(slot, sku));
    }

    /** Keeps what stands in a slot whatever else changes. */
    void pin(String slot) {
        proposal().map(Proposal::products).map(p -> p.get(slot)).ifPresent(sku -> swap(slot, sku));
    }

    void letTheKitChoose(String slot) {
        bend(hand().withoutProduct(slot));
    }

    boolean chosenByHand(String slot) {
        return hand().products().containsKey(slot);
    }

    /** Takes a taste on, or lets go of it when it is there. */
    void taste(Taste taste) {
        bend(hand().tastes().contains(taste) ? hand().withoutTaste(taste) : hand().withTaste(taste));
    }

    /** Never this product; a pin on it goes. */
    void leaveOut(String slot, String sku) {
        bend(hand().withoutProduct(slot).withTaste(Taste.no(Trait.PRODUCT, sku)));
    }

    void cap(Layer layer, Optional<Money> most) {
        bend(most.isPresent() ? hand().withCap(layer, most.get()) : hand().withoutCap(layer));
    }

    void level(Layer layer, Optional<String> level) {
        bend(level.isPresent() ? hand().withLevel(layer, level.get()) : hand().withoutLevel(layer));
    }

    void drop(Layer layer, boolean dropped) {
        bend(dropped ? hand().withDropped(layer) : hand().withoutDropped(layer));
    }

    /** Puts a piece, a cluster or a run elsewhere on the tree; the kit stays as it is. */
    void move(String id, Spot spot) {
        rearrange(hand().withMoved(id, spot));
    }

    void moveBack(String id) {
        rearrange(hand().withoutMoved(id));
    }

    void moveAllBack() {
        rearrange(hand().withoutMoves());
    }

    private void rearrange(Adjustments next) {
        proposal().ifPresent(p -> keep(saved.brief(), new Outcome.Made(designer.rearranged(p, next))));
    }

    /** Says that a wish matters more than the one before it. */
    void matterMore(String wish) {
        List<String> order = new ArrayList<>(wishes().stream().map(Wish::id).toList());
        int at = order.indexOf(wish);
        if (at > 0) {
            Collections.swap(order, at, at - 1);
            bend(hand().withImportance(order));
        }
    }

    /** In the order of importance. */
    List<Wish> wishes() {
        return outcome instanceof Outcome.Made made ? designer.wishes(made.proposal().brief(), hand()) : ((Outcome.NoKitFits) outcome).wishes();
    }

    /** Chooses every line anew that is not pinned. */
    void afresh() {
        keep(saved.brief(), propose(saved.brief(), hand().keeping(Map.of())));
    }

    Adjustments hand() {
        return saved.adjustments();
    }

    List<Swap> swaps(String slot, int most) {
        return proposal().map(p -> designer.swaps(p, slot, most, Patience.usual())).orElse(List.of());
    }

    /** Those whose colour is nearest to one, the nearest first. */
    List<Swap> swapsNear(String slot, Srgb colour, int most) {
        return proposal().map(p -> designer.swapsNear(p, slot, Lab.of(colour), most, Patience.usual())).orElse(List.of());
    }

    /** What the last change has changed, sentence by sentence. */
    List<String> changes() {
        return changes;
    }

    boolean canUndo() {
        return !undo.isEmpty();
    }

    boolean canRedo() {
        return !redo.isEmpty();
    }

    void undo() {
        travel(undo, redo);
    }

    void redo() {
        travel(redo, undo);
    }

    private void travel(Deque<State> from, Deque<State> to) {
        if (!from.isEmpty()) {
            State state = from.peek();
            Outcome there = propose(state.brief(), state.hand());
            from.pop();
            to.push(new State(saved.brief(), saved.adjustments()));
            settle(state.brief(), there);
        }
    }

    /** Takes one of the ways to meet the brief. */
    void take(Offers.Offer offer) {
        amend(brief -> {
            brief.put("abundance", offer.abundance().word());
            offer.budget().ifPresentOrElse(b -> brief.put("budget", b.decimal()), () -> brief.remove("budget"));
        });
    }

    /** Lets go of the wishes of a way out, or meets them as far as it says. */
    void take(Conflict.WayOut way) {
        ObjectNode brief = brief();
        Adjustments next = hand();
        for (Conflict.Step step : way.steps()) {
            String wish = step.wish();
            if (wish.equals(Wish.BUDGET)) {
                brief.put("budget", step.instead().orElse(way.total().decimal()));
            } else if (wish.startsWith(Wish.ABUNDANCE)) {
                Abundance reached = Word.read(Abundance.class, wish.substring(Wish.ABUNDANCE.length())).orElseThrow();
                Abundance below = Abundance.values()[reached.ordinal() - 1];
                boolean lower = Word.read(Abundance.class, brief.path("abundance").asText(Abundance.GENEROUS.word())).orElseThrow().ordinal() > below.ordinal();
                brief.put("abundance", lower ? below.word() : brief.path("abundance").asText());
            } else if (wish.startsWith(Wish.QUANTITY)) {
                String need = wish.substring(Wish.QUANTITY.length());
                next = step.instead().isPresent() ? next.withQuantity(need, Integer.parseInt(step.instead().get())) : next.withoutQuantity(need);
            } else if (wish.startsWith(Wish.PRODUCT)) {
                String slot = wish.substring(Wish.PRODUCT.length());
                next = step.instead().isPresent() ? next.withProduct(slot, step.instead().get()) : next.withoutProduct(slot);
            } else if (wish.startsWith(Wish.CAP)) {
                Layer layer = Word.read(Layer.class, wish.substring(Wish.CAP.length())).orElseThrow();
                Optional<Money> more = step.instead().flatMap(m -> Money.read(m, way.total().currency()));
                next = more.isPresent() ? next.withCap(layer, more.get()) : next.withoutCap(layer);
            } else {
                Adjustments hand = next;
                next = next.tastes().stream().filter(t -> t.id().equals(wish)).findFirst().map(hand::withoutTaste).orElse(hand);
            }
        }
        keep(brief.toString(), propose(brief.toString(), next));
    }

    /** Starts with what the first of several years brings. */
    void start(Growth.Year year) {
        ObjectNode brief = brief();
        brief.put("abundance", year.proposal().brief().abundance().word());
        keep(brief.toString(), propose(brief.toString(), year.proposal().adjustments().keeping(Map.of())));
    }

    Needs needs() {
        if (outcome instanceof Outcome.Made made) {
            return made.proposal().needs();
        }
        return ((Outcome.NoKitFits) outcome).needs();
    }

    /** What need not change stays as it is. */
    private void bend(Adjustments next) {
        Adjustments keeping = proposal().map(p -> next.keeping(p.products())).orElse(next);
        keep(saved.brief(), propose(saved.brief(), keeping));
    }

    private interface Amendment {
        void to(ObjectNode brief);
    }

    /** Another brief is met afresh. */
    private Outcome amend(Amendment amendment) {
        ObjectNode brief = brief();
        amendment.to(brief);
        return keep(brief.toString(), propose(brief.toString(), hand().keeping(Map.of())));
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
            undo.push(new State(saved.brief(), saved.adjustments()));
            redo.clear();
            settle(brief, next);
        }
        return next;
    }

    private void settle(String brief, Outcome next) {
        before = proposal();
        saved = consultations.go(saved.code(), brief, next);
        Units shown = units();
        outcome = units.isPresent() ? designer.told(next, shown) : next;
        tellChanges();
    }

    private void tellChanges() {
        changes = before.isPresent() && proposal().isPresent() ? KitChanges.between(before.get(), proposal().get(), designer) : List.of();
    }
}
