package boughwright.proposal;

import boughwright.brief.Abundance;
import boughwright.brief.Brief;
import boughwright.brief.OwnPieces;
import boughwright.brief.Owned;
import boughwright.brief.Tree;
import boughwright.brief.Word;
import boughwright.catalogue.Catalogue;
import boughwright.catalogue.Product;
import boughwright.kit.Conflict.Step;
import boughwright.kit.KitRequest;
import boughwright.kit.OwnFirst;
import boughwright.kit.Wish;
import boughwright.kit.Wishes;
import boughwright.measure.Length;
import boughwright.needs.Adjustments;
import boughwright.needs.Layer;
import boughwright.needs.Need;
import boughwright.needs.Needs;
import boughwright.needs.Role;
import boughwright.needs.Taste;
import boughwright.needs.Trait;
import boughwright.rulebook.Rulebook;
import boughwright.text.Text;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What one brief and what hands changed of it ask for, as wishes that can be let go of one by one. */
final class AskedFor implements Wishes {

    private final Rulebook rulebook;
    private final Catalogue catalogue;
    private final Brief brief;
    private final Adjustments hand;
    private final Needs whole;
    private final List<Wish> wishes;
    private final Map<Object, Needs> known = new HashMap<>();

    AskedFor(Rulebook rulebook, Catalogue shelf, Brief brief, Adjustments hand) {
        this.rulebook = rulebook;
        this.brief = brief.withOwned(brief.owned().stream().map(o -> counted(rulebook, brief, o)).toList());
        this.catalogue = shelf.with(this.brief.owned(), rulebook.choices().currency());
        this.hand = hand;
        this.whole = needs(brief.abundance(), hand);
        this.wishes = hand.inOrder(wishes(), Wish::id);
    }

    /** A tree's worth is what the house would put on a tree of that height. */
    private static Owned counted(Rulebook rulebook, Brief brief, Owned owned) {
        if (owned.described().isEmpty()) {
            return owned;
        }
        OwnPieces pieces = owned.described().get();
        if (pieces.treesWorth().isEmpty()) {
            return new Owned(owned.sku(), Catalogue.pieces(pieces), owned.described());
        }
        Length height = pieces.treesWorth().get();
        Tree asked = brief.tree();
        Tree tree = new Tree(height, Tree.usualDiameter(height, asked.fullness()), asked.fullness(), asked.seenFrom(), false, asked.real());
        Role role = switch (pieces.kind()) {
            case BALL -> Role.FILLER_BALL;
            case ORNAMENT -> Role.FEATURE_ORNAMENT;
            case FLOWER -> Role.SINGLE_FLOWER;
            case SPRAY -> Role.SPRAY;
            case RIBBON -> Role.ACCENT_RIBBON;
            case LIGHTS, LIGHT_STRING -> Role.LIGHT_STRING;
        };
        int count = rulebook.needs(brief.withTree(tree), Adjustments.NONE).needs().stream().filter(n -> n.role() == role).mapToInt(Need::quantity).max()
                .orElse(0);
        OwnPieces told = new OwnPieces(pieces.text(), pieces.kind(), Math.max(1, count), pieces.treesWorth(), pieces.colour(), pieces.family(),
                pieces.finish(), pieces.size());
        int strings = pieces.kind() == OwnPieces.Kind.LIGHT_STRING ? Math.max(1, count / 100) : Catalogue.pieces(told);
        return new Owned(owned.sku(), strings, Optional.of(told));
    }

    private List<Wish> wishes() {
        List<Wish> all = new ArrayList<>();
        hand.products().forEach((slot, sku) -> whole.bought().stream().filter(n -> n.slot().equals(slot)).findFirst().ifPresent(n ->
                all.add(new Wish(Wish.PRODUCT + slot, Text.of("wish.product", name(sku), Text.of("role." + n.role().word()))))));
        hand.tastes().forEach(t -> all.add(new Wish(t.id(), words(t))));
        hand.quantities().forEach((id, quantity) -> whole.need(id).filter(n -> n.quantity() > n.computed()).ifPresent(n ->
                all.add(new Wish(Wish.QUANTITY + id, Text.of("wish.quantity", String.valueOf(quantity), Text.of("role." + n.role().word()))))));
        hand.caps().forEach((layer, most) -> all.add(new Wish(Wish.CAP + layer.word(), Text.of("wish.cap", most.show(), Text.of("layer." + layer.word())))));
        brief.budget().ifPresent(b -> all.add(new Wish(Wish.BUDGET, Text.of("wish.budget", b.show()))));
        if (brief.abundance() != Abundance.RESTRAINED) {
            boolean lavish = brief.abundance() == Abundance.LAVISH;
            all.add(new Wish(Wish.ABUNDANCE + Abundance.GENEROUS.word(), Text.of(lavish ? "wish.abundance.least" : "wish.abundance",
                    Text.within(Text.of("abundance." + Abundance.GENEROUS.word())))));
            if (lavish) {
                all.add(new Wish(Wish.ABUNDANCE + Abundance.LAVISH.word(), Text.of("wish.abundance",
                        Text.within(Text.of("abundance." + Abundance.LAVISH.word())))));
            }
        }
        return all;
    }

    private String name(String sku) {
        return catalogue.product(sku).map(Product::name).orElse(sku);
    }

    private String words(Taste taste) {
        String value = taste.trait() == Trait.PRODUCT ? name(taste.value()) : taste.trait().said(taste.value());
        String role = taste.role().map(r -> Text.of("role." + r.word())).orElse("");
        return Text.of((taste.wanted() ? "wish.taste.only" : "wish.taste.no") + (role.isEmpty() ? "" : ".role"), value, role);
    }

    @Override
    public List<Wish> inOrder() {
        return wishes;
    }

    /** What is asked when all of it holds. */
    KitRequest all() {
        return holding(new HashSet<>(wishes));
    }

    @Override
    public KitRequest holding(Set<Wish> held) {
        Set<String> ids = new HashSet<>();
        held.forEach(w -> ids.add(w.id()));
        Adjustments left = hand;
        for (Wish wish : wishes) {
            if (!ids.contains(wish.id())) {
                left = without(left, wish.id());
            }
        }
        Abundance abundance = brief.abundance() == Abundance.RESTRAINED ? Abundance.RESTRAINED
                : ids.contains(Wish.ABUNDANCE + Abundance.LAVISH.word()) ? Abundance.LAVISH
                : ids.contains(Wish.ABUNDANCE + Abundance.GENEROUS.word()) ? Abundance.GENEROUS : Abundance.RESTRAINED;
        return request(abundance, left, ids.contains(Wish.BUDGET));
    }

    @Override
    public KitRequest holding(Set<Wish> held, Step instead) {
        KitRequest request = holding(held);
        String value = instead.instead().orElseThrow();
        Adjustments met = instead.wish().startsWith(Wish.QUANTITY)
                ? request.hand().withQuantity(instead.wish().substring(Wish.QUANTITY.length()), Integer.parseInt(value))
                : request.hand().withProduct(instead.wish().substring(Wish.PRODUCT.length()), value);
        return request(request.brief().abundance(), met, request.budget().isPresent());
    }

    private KitRequest request(Abundance abundance, Adjustments left, boolean limited) {
        Brief asked = brief.withAbundance(abundance);
        OwnFirst.Shared shared = OwnFirst.share(asked, needs(abundance, left), catalogue, left);
        return new KitRequest(asked, shared.needs(), catalogue, limited ? brief.budget() : Optional.empty(), left, shared.own());
    }

    private Needs needs(Abundance abundance, Adjustments left) {
        return known.computeIfAbsent(List.of(abundance, left.quantities(), left.dropped()), k -> rulebook.needs(brief.withAbundance(abundance), left));
    }

    static Adjustments without(Adjustments hand, String wish) {
        if (wish.startsWith(Wish.PRODUCT)) {
            return hand.withoutProduct(wish.substring(Wish.PRODUCT.length()));
        }
        if (wish.startsWith(Wish.QUANTITY)) {
            return hand.withoutQuantity(wish.substring(Wish.QUANTITY.length()));
        }
        if (wish.startsWith(Wish.CAP)) {
            return hand.withoutCap(layer(wish));
        }
        return hand.tastes().stream().filter(t -> t.id().equals(wish)).findFirst().map(hand::withoutTaste).orElse(hand);
    }

    static Layer layer(String cap) {
        return Word.read(Layer.class, cap.substring(Wish.CAP.length())).orElseThrow();
    }

    @Override
    public Range quantity(Wish quantity) {
        Need need = whole.need(quantity.id().substring(Wish.QUANTITY.length())).orElseThrow();
        return new Range(need.computed(), need.quantity());
    }
}
