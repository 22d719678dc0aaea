package boughwright.proposal;

import boughwright.catalogue.Product;
import boughwright.kit.Cause;
import boughwright.kit.KitLine;
import boughwright.kit.Swap;
import boughwright.kit.TermScore;
import boughwright.kit.Wish;
import boughwright.text.Text;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * How one product stands in one proposal: that it is in it, or for each place that it might fill why something else is there.
 *
 * @param places in the order of the kit's lines; empty when this tree has no use for such a thing
 */
public record Standing(String sku, List<Place> places) {

    /**
     * One place that the product might fill.
     *
     * @param role of the place, as customers read it
     * @param cause empty when the product stands there
     * @param sentence what a shop reads
     */
    public record Place(String role, Optional<Cause.Kind> cause, String sentence) {
    }

    /** From not being meant for a place at all to nearly standing there. */
    private static final List<Cause.Kind> NEARER = List.of(Cause.Kind.GONE, Cause.Kind.SIZE, Cause.Kind.TAKEN, Cause.Kind.WISH, Cause.Kind.STOCK, Cause.Kind.HOUSE,
            Cause.Kind.CAP, Cause.Kind.BUDGET, Cause.Kind.BETTER);

    public boolean proposed() {
        return places.stream().anyMatch(p -> p.cause().isEmpty());
    }

    /** The place at which it comes nearest to standing; empty when there is none, or it is proposed. */
    public Optional<Place> nearest() {
        return proposed() ? Optional.empty() : places.stream().max(Comparator.comparing(p -> NEARER.indexOf(p.cause().orElseThrow())));
    }

    public static Standing of(Proposal proposal, Product product, Designer designer) {
        Map<String, KitLine> slots = new LinkedHashMap<>();
        proposal.kit().lines().stream().filter(l -> product.roles().contains(l.role())).forEach(l -> slots.putIfAbsent(l.slot(), l));
        List<Place> places = new ArrayList<>();
        slots.forEach((slot, line) -> {
            String role = Text.of("role." + line.role().word());
            if (line.sku().equals(product.sku())) {
                places.add(new Place(role, Optional.empty(), Text.of("standing.proposed", line.quantity())));
            } else {
                Cause cause = designer.cause(proposal, slot, product.sku());
                places.add(new Place(role, Optional.of(cause.kind()), sentence(proposal, product, line, cause, designer)));
            }
        });
        return new Standing(product.sku(), List.copyOf(places));
    }

    private static String sentence(Proposal proposal, Product product, KitLine line, Cause cause, Designer designer) {
        return switch (cause.kind()) {
            case WISH -> cause.words().startsWith(Wish.PRODUCT) ? Text.of("standing.chosen", line.name())
                    : Text.of("standing.wish", designer.wishes(proposal.brief(), proposal.adjustments()).stream().filter(w -> w.id().equals(cause.words()))
                            .map(Wish::text).findFirst().orElse(""));
            case STOCK -> product.stock() == 0 ? Text.of("standing.none") : Text.of("standing.stock", product.piecesInStock(), line.quantity());
            case HOUSE -> Text.of("standing.house", cause.words());
            case SIZE -> Text.of("standing.size");
            case BUDGET -> Text.of("standing.budget");
            case CAP -> Text.of("standing.cap");
            case TAKEN -> Text.of("standing.taken");
            case GONE -> Text.of("standing.gone");
            case BETTER -> better(line, designer.swap(proposal, line.slot(), product.sku()));
        };
    }

    /** With the two terms in which it loses most. */
    private static String better(KitLine line, Optional<Swap> swap) {
        List<TermScore> losses = swap.map(Swap::terms).orElse(List.of()).stream().filter(t -> t.points() < -0.05)
                .sorted(Comparator.comparingDouble(TermScore::points)).limit(2).toList();
        double points = swap.map(Swap::points).orElse(0.0);
        if (losses.isEmpty() || points > -0.05) {
            return Text.of("standing.as-good", line.name());
        }
        return Text.of("standing.better", line.name(), tenth(-points), Phrases.list(losses.stream()
                .map(t -> Text.of("standing.loss", Text.within(Text.of("term." + t.term().word())), tenth(-t.points()))).toList()));
    }

    private static String tenth(double points) {
        return Text.number(points, 1);
    }
}
