package boughwright.counter;

import boughwright.quote.QuoteJson;
import boughwright.quote.Tax;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Map;
import java.util.TreeMap;

/**
 * On what terms the shop sells and keeps.
 *
 * @param numbers one for each of {@link Number}
 */
public record Terms(Tax tax, Map<Number, Integer> numbers) {

    /** A number that the manager sets, with its usual value and its bounds, both included. */
    public enum Number {
        /** Days for which a quote holds. */
        QUOTE_DAYS(7, 1, 90),
        /** Hours for which packs are held. */
        HOLD_HOURS(48, 1, 720),
        /** Minutes before a hold falls from which it is said to fall soon. */
        WARN_MINUTES(60, 5, 1_440),
        /** Minutes for which a customer alone at a tablet may hold a kit; 0 for not at all. */
        ALONE_MINUTES(20, 0, 120),
        /** Days for which the private link to the plan at home opens it. */
        LINK_DAYS(60, 1, 400),
        /** Days after which a consultation is forgotten whose kit was collected, since it was last touched. */
        KEEP_COLLECTED_DAYS(400, 30, 1_500),
        /** Days after which any other consultation is forgotten, since it was last touched. */
        KEEP_OTHER_DAYS(30, 1, 1_500);

        private final int usual;
        private final int least;
        private final int most;

        Number(int usual, int least, int most) {
            this.usual = usual;
            this.least = least;
            this.most = most;
        }

        public int least() {
            return least;
        }

        public int most() {
            return most;
        }

        public boolean takes(int value) {
            return value >= least && value <= most;
        }
    }

    private static final ObjectMapper JSON = new ObjectMapper();

    /** What is usual, without a tax: which one is due only the shop knows. */
    public static final Terms USUAL = new Terms(Tax.NONE, Map.of());

    /** A number that is not named is as usual. @throws IllegalArgumentException when one is out of its bounds */
    public Terms {
        Map<Number, Integer> all = new TreeMap<>();
        for (Number number : Number.values()) {
            int value = numbers.getOrDefault(number, number.usual);
            if (!number.takes(value)) {
                throw new IllegalArgumentException(number + " of " + value);
            }
            all.put(number, value);
        }
        numbers = Map.copyOf(all);
    }

    public int number(Number number) {
        return numbers.get(number);
    }

    String json() {
        ObjectNode root = JSON.createObjectNode();
        root.set("tax", QuoteJson.tax(tax));
        for (Number number : Number.values()) {
            root.put(number.name(), number(number));
        }
        return root.toString();
    }

    static Terms read(String json) {
        try {
            JsonNode root = JSON.readTree(json);
            Map<Number, Integer> numbers = new TreeMap<>();
            for (Number number : Number.values()) {
                if (root.has(number.name())) {
                    numbers.put(number, root.get(number.name()).asInt());
                }
            }
            return new Terms(QuoteJson.tax(root.required("tax")), numbers);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("the shop's terms could not be read", e);
        }
    }
}
