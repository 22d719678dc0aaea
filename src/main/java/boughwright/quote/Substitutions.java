package boughwright.quote;

import boughwright.kit.KitLine;
import boughwright.proposal.Proposal;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What has taken the place of what the customer saw. */
public final class Substitutions {

    private static final ObjectMapper JSON = new ObjectMapper();

    private Substitutions() {
    }

    /**
     * Need by need, in the order of the kit as it was: what was there, is not there now, and is too scarce to be there. What other wishes or
     * another's choice have changed is no substitution.
     *
     * @param before the proposal as JSON that the customer saw
     */
    public static List<Substitution> since(String before, Proposal now) {
        Map<String, KitLine> lines = new LinkedHashMap<>();
        now.kit().lines().forEach(l -> lines.putIfAbsent(l.needId(), l));
        Map<String, Substitution> found = new LinkedHashMap<>();
        for (JsonNode was : read(before).path("kit").path("lines")) {
            KitLine line = lines.get(was.path("need").asText());
            String sku = was.path("sku").asText();
            if (line != null && !line.sku().equals(sku) && scarce(now, sku, was.path("packs").asInt())) {
                found.putIfAbsent(sku + ">" + line.sku(), new Substitution(line.role().word(), was.path("name").asText(), line.name()));
            }
        }
        return new ArrayList<>(found.values());
    }

    private static boolean scarce(Proposal now, String sku, int packs) {
        return now.catalogue().product(sku).map(p -> !now.catalogue().sells(p) || p.stock() < Math.max(1, packs)).orElse(true);
    }

    private static JsonNode read(String json) {
        try {
            return JSON.readTree(json);
        } catch (JsonProcessingException e) {
            throw new IllegalArgumentException("a saved proposal is JSON", e);
        }
    }
}
