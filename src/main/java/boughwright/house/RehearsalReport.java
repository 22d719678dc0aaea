package boughwright.house;

import boughwright.house.Rehearsed.Kind;
import boughwright.measure.Money;
import boughwright.needs.Layer;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * What a draft would do to all consultations that were rehearsed.
 *
 * @param all in the order in which they were given
 * @param whole with kits and layouts, not only by needs
 */
public record RehearsalReport(List<Rehearsed> all, boolean whole) {

    public RehearsalReport {
        all = List.copyOf(all);
    }

    public long count(Kind kind) {
        return all.stream().filter(r -> r.change() == kind).count();
    }

    /** Those that change in any way. */
    public List<Rehearsed> changed() {
        return all.stream().filter(r -> r.change() != Kind.SAME && r.change() != Kind.STILL_CONFLICT).toList();
    }

    /** The largest changes: new conflicts first, then by money, then by pieces. */
    public List<Rehearsed> largest(int most) {
        return changed().stream().sorted(Comparator.comparingDouble((Rehearsed r) -> -r.size()).thenComparing(r -> r.subject().name())).limit(most).toList();
    }

    /** How many consultations change in a layer, and by how many pieces and how much money together. */
    public record LayerChange(long consultations, long pieces, Optional<Money> money) {
    }

    public SortedMap<Layer, LayerChange> byLayer() {
        SortedMap<Layer, LayerChange> layers = new TreeMap<>();
        for (Layer layer : Layer.values()) {
            long touched = all.stream().filter(r -> r.quantities().containsKey(layer) || r.prices().containsKey(layer)).count();
            long pieces = all.stream().mapToLong(r -> r.quantities().getOrDefault(layer, 0)).sum();
            Optional<Money> money = all.stream().map(r -> r.prices().get(layer)).filter(java.util.Objects::nonNull).reduce(Money::plus);
            layers.put(layer, new LayerChange(touched, pieces, money));
        }
        return layers;
    }

    /** Half of the kits whose price is known either way change by less than this; empty when there are none. */
    public Optional<Money> medianDifference() {
        List<Money> differences = all.stream().flatMap(r -> r.difference().stream()).sorted(Comparator.comparing(Money::amount)).toList();
        if (differences.isEmpty()) {
            return Optional.empty();
        }
        Money low = differences.get((differences.size() - 1) / 2);
        Money high = differences.get(differences.size() / 2);
        BigDecimal middle = low.amount().add(high.amount()).divide(BigDecimal.valueOf(2), low.amount().scale(), RoundingMode.HALF_EVEN);
        return Optional.of(new Money(middle, low.currency()));
    }

    /** Kits that keep within the customer's budget now and would not. A kit never costs more than its budget: it becomes a conflict. */
    public long outOfBudget() {
        return all.stream().filter(r -> r.change() == Kind.NEW_CONFLICT && r.budget().isPresent()).count();
    }

    /** One line for each consultation, comma-separated values (RFC 4180), in the order in which they were given. */
    public String csv() {
        StringBuilder csv = new StringBuilder(String.join(",", "consultation", "change", "before", "after", "difference", "budget"));
        for (Layer layer : Layer.values()) {
            csv.append(',').append(layer.word()).append(',').append(layer.word()).append("-price");
        }
        csv.append("\r\n");
        for (Rehearsed r : all) {
            List<String> cells = new java.util.ArrayList<>(List.of(quoted(r.subject().name()), r.change().name().toLowerCase(java.util.Locale.ROOT).replace('_', '-'),
                    amount(r.before()), amount(r.after()), amount(r.difference()), amount(r.budget())));
            for (Layer layer : Layer.values()) {
                cells.add(String.valueOf(r.quantities().getOrDefault(layer, 0)));
                cells.add(amount(Optional.ofNullable(r.prices().get(layer))));
            }
            csv.append(cells.stream().collect(Collectors.joining(","))).append("\r\n");
        }
        return csv.toString();
    }

    private static String amount(Optional<Money> money) {
        return money.map(m -> m.amount().toPlainString()).orElse("");
    }

    /** A spreadsheet takes a cell that begins with a sign for a formula; a quote before it keeps it text. */
    private static String quoted(String text) {
        String safe = text.matches("^[=+\\-@\\t\\r].*") ? "'" + text : text;
        return "\"" + safe.replace("\"", "\"\"") + "\"";
    }
}
