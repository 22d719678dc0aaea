package boughwright.kit;

import boughwright.brief.Brief;
import boughwright.brief.Owned;
import boughwright.catalogue.Catalogue;
import boughwright.catalogue.Product;
import boughwright.needs.Adjustments;
import boughwright.needs.Need;
import boughwright.needs.Needs;
import boughwright.needs.Reason;
import boughwright.needs.Unit;
import boughwright.text.Text;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Gives the customer's own pieces their places before anything is bought.
 *
 * <p>Pieces that fill a slot by themselves, or that the shop can add to, take part in the choice like any product, at no cost.
 * Pieces that are too few and cannot be added to get a part of a slot of their own, beside the product that fills the rest. They
 * go where they come nearest to filling the slot. Ribbon is not shared: a run needs the same ribbon from top to bottom.
 */
public final class OwnFirst {

    /** What the part of a need or a slot that the customer's own pieces fill is called after the whole. */
    public static final String OWN = "/own";

    /**
     * @param needs with the parts that own pieces fill as needs of their own
     * @param own sku by slot of those parts
     */
    public record Shared(Needs needs, Map<String, String> own) {
    }

    private final Catalogue catalogue;
    private final Adjustments hand;
    private List<Need> needs;
    private final Needs whole;
    private final Map<String, String> own = new HashMap<>();
    private final Set<String> taken = new HashSet<>();

    private OwnFirst(Needs needs, Catalogue catalogue, Adjustments hand) {
        this.whole = needs;
        this.needs = needs.needs();
        this.catalogue = catalogue;
        this.hand = hand;
    }

    /** @param catalogue with the pieces that the customer described */
    public static Shared share(Brief brief, Needs needs, Catalogue catalogue, Adjustments hand) {
        if (brief.owned().isEmpty()) {
            return new Shared(needs, Map.of());
        }
        OwnFirst first = new OwnFirst(needs, catalogue, hand);
        brief.owned().forEach(first::place);
        return new Shared(new Needs(needs.edition(), first.needs, needs.rules(), needs.ribbon(), needs.accents(), needs.weights()), first.own);
    }

    /** The id of the need of which this is the own part, or the id itself. */
    public static String whole(String needId) {
        return needId.endsWith(OWN) ? needId.substring(0, needId.length() - OWN.length()) : needId;
    }

    private void place(Owned owned) {
        Optional<Product> known = catalogue.product(owned.sku());
        if (known.isEmpty()) {
            return;
        }
        Product product = known.get();
        List<Slot> slots = Slot.of(needs.stream().filter(n -> n.role().bought() && n.quantity() > 0).toList()).stream()
                .filter(s -> !taken.contains(s.id()) && !own.containsKey(s.id()) && mayFill(s, product)).toList();
        Optional<Slot> asItIs = slots.stream().filter(s -> Candidate.of(s, product, owned.quantity()).packs() <= product.stock())
                .max(Comparator.comparingInt((Slot s) -> Candidate.of(s, product, owned.quantity()).ownedUsed()).thenComparing(Slot::id));
        if (asItIs.isPresent()) {
            taken.add(asItIs.get().id());
            return;
        }
        slots.stream().filter(s -> !s.role().ribbon())
                .min(Comparator.comparingInt((Slot s) -> Candidate.pieces(s, product)).thenComparing(Slot::id))
                .ifPresent(slot -> split(slot, product, owned.quantity()));
    }

    private boolean mayFill(Slot slot, Product product) {
        String pinned = hand.products().get(slot.id());
        return product.roles().contains(slot.role()) && Shortlist.rightSize(slot.first(), product) && Shortlist.allowed(slot.role(), product, whole)
                && (pinned == null || pinned.equals(product.sku()))
                && hand.tastes().stream().filter(t -> t.speaksOf(slot.role())).allMatch(product::meets);
    }

    private void split(Slot slot, Product product, int pieces) {
        int left = slot.first().unit() == Unit.BULB ? pieces * product.lights().orElseThrow().bulbs() : pieces;
        List<Need> shared = new ArrayList<>();
        for (Need need : needs) {
            int here = slot.needs().contains(need) ? Math.min(left, need.quantity()) : 0;
            if (here > 0) {
                left -= here;
                Reason mine = new Reason(need.reason().rule(), need.reason().row(), Text.of("need.own", here, product.name(), need.reason().text()));
                Reason rest = new Reason(need.reason().rule(), need.reason().row(), Text.of("need.beside-own", here, need.reason().text()));
                shared.add(new Need(need.id() + OWN, slot.id() + OWN, need.layer(), need.role(), need.style(), here, here, need.unit(), need.diameter(),
                        mine));
                shared.add(new Need(need.id(), need.slot(), need.layer(), need.role(), need.style(), need.quantity() - here,
                        Math.max(0, need.computed() - here), need.unit(), need.diameter(), rest));
            } else {
                shared.add(need);
            }
        }
        needs = shared;
        own.put(slot.id() + OWN, product.sku());
        taken.add(slot.id());
    }
}
