package boughwright.consultation;

import boughwright.kit.KitLine;
import boughwright.needs.Adjustments;
import boughwright.needs.Taste;
import boughwright.needs.Trait;
import boughwright.proposal.Outcome;
import boughwright.shelf.Uses;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** What became of products in one state of a consultation. */
final class ProductUse {

    private static final ObjectMapper JSON = new ObjectMapper();

    private ProductUse() {
    }

    /** @param before the state that this one follows */
    static Map<Uses.Kind, Set<String>> in(Outcome outcome, Adjustments hand, Optional<Saved> before) {
        Map<Uses.Kind, Set<String>> uses = new EnumMap<>(Uses.Kind.class);
        List<KitLine> lines = outcome instanceof Outcome.Made made ? made.proposal().kit().lines() : List.of();
        Set<String> proposed = lines.stream().map(KitLine::sku).collect(Collectors.toCollection(TreeSet::new));
        Set<String> chosen = new TreeSet<>(hand.products().values());
        chosen.retainAll(proposed);
        uses.put(Uses.Kind.PROPOSED, proposed);
        uses.put(Uses.Kind.CHOSEN, chosen);
        uses.put(Uses.Kind.SWAPPED_OUT, before.map(b -> swappedOut(lines, hand, b)).orElse(Set.of()));
        return uses;
    }

    /** Those that stood where a hand has put another, or has said never. */
    private static Set<String> swappedOut(List<KitLine> now, Adjustments hand, Saved before) {
        Map<String, String> slots = now.stream().collect(Collectors.toMap(KitLine::needId, KitLine::slot, (a, b) -> a));
        Set<String> out = new TreeSet<>();
        for (JsonNode line : lines(before.proposal())) {
            String sku = line.path("sku").asText();
            String put = hand.products().get(slots.getOrDefault(line.path("need").asText(), ""));
            boolean never = hand.tastes().contains(Taste.no(Trait.PRODUCT, sku)) && !before.adjustments().tastes().contains(Taste.no(Trait.PRODUCT, sku));
            if (never || put != null && !put.equals(sku)) {
                out.add(sku);
            }
        }
        return out;
    }

    private static JsonNode lines(String proposal) {
        try {
            return JSON.readTree(proposal).path("kit").path("lines");
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a saved proposal is JSON", e);
        }
    }
}
