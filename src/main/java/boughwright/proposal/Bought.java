package boughwright.proposal;

import boughwright.brief.Owned;
import boughwright.kit.KitLine;
import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What a customer has once a kit is bought: the basis of next year's brief. */
public final class Bought {

    private Bought() {
    }

    /** The pieces of all packs bought, and what was their own before, used or not. */
    public static List<Owned> by(Proposal proposal) {
        Map<String, Owned> all = new LinkedHashMap<>();
        proposal.brief().owned().forEach(o -> all.put(o.sku(), o));
        for (KitLine line : proposal.kit().lines()) {
            int pieces = line.packs() * line.packSize();
            if (pieces > 0) {
                all.merge(line.sku(), new Owned(line.sku(), pieces), (had, more) -> new Owned(had.sku(), had.quantity() + more.quantity(), had.described()));
            }
        }
        return List.copyOf(all.values());
    }

    /**
     * The same of a proposal as it was kept, whatever the shop sells by now.
     *
     * @param packs that were taken home, by SKU; empty when that is not known, and the whole kit counts
     * @return in pieces, by SKU; what was described in words is {@link #described}
     */
    public static Map<String, Integer> kept(JsonNode proposal, Map<String, Integer> packs) {
        Map<String, Integer> pieces = new LinkedHashMap<>();
        for (JsonNode line : proposal.path("kit").path("lines")) {
            String sku = line.path("sku").asText();
            int pack = line.path("packSize").asInt();
            if (packs.isEmpty()) {
                pieces.merge(sku, line.path("packs").asInt() * pack, Integer::sum);
            } else if (packs.containsKey(sku)) {
                pieces.put(sku, packs.get(sku) * pack);
            }
        }
        for (JsonNode owned : proposal.path("brief").path("owned")) {
            if (!owned.has("text")) {
                pieces.merge(owned.path("sku").asText(), owned.path("quantity").asInt(), Integer::sum);
            }
        }
        pieces.values().removeIf(count -> count <= 0);
        return pieces;
    }

    /** What a proposal as it was kept says that the customer had, in the customer's words. */
    public static List<String> described(JsonNode proposal) {
        List<String> texts = new ArrayList<>();
        proposal.path("brief").path("owned").forEach(owned -> Optional.ofNullable(owned.get("text")).ifPresent(text -> texts.add(text.asText())));
        return texts;
    }
}
