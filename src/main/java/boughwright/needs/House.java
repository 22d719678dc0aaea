package boughwright.needs;

import boughwright.measure.Length;
import boughwright.measure.Units;
import boughwright.text.Text;
import java.math.BigDecimal;
import java.util.Collections;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * What one edition sets for every {@link HouseNumber} and {@link HouseWords}: a fact that style and safety rules read, so that changing a
 * number changes no rule. Complete and within bounds by construction.
 */
public record House(SortedMap<HouseNumber, BigDecimal> numbers, SortedMap<HouseWords, SortedSet<String>> words) {

    /** A 15 A circuit at 120 V. */
    private static final double CIRCUIT_WATTS = 15 * 120;
    private static final Pattern PLACE = Pattern.compile("\\{([a-z-]+)}");

    /** @throws IllegalArgumentException when a number is missing or not allowed, or a list is empty or lacks a word of its floor */
    public House {
        for (HouseNumber number : HouseNumber.values()) {
            BigDecimal value = numbers.get(number);
            if (value == null) {
                throw new IllegalArgumentException(number.word() + " is missing");
            }
            if (!number.allows(value)) {
                throw new IllegalArgumentException(number.word() + " runs from " + number.least() + " to " + number.most() + ", not " + value);
            }
        }
        for (HouseWords list : HouseWords.values()) {
            Set<String> held = words.get(list);
            if (held == null) {
                throw new IllegalArgumentException(list.word() + " is missing");
            }
            if (held.isEmpty() || !held.containsAll(list.floor())) {
                throw new IllegalArgumentException(list.word() + " must hold some words, among them " + new TreeSet<>(list.floor()) + ", not " + held);
            }
        }
        numbers = Collections.unmodifiableSortedMap(new TreeMap<>(numbers));
        SortedMap<HouseWords, SortedSet<String>> sorted = new TreeMap<>();
        words.forEach((list, held) -> sorted.put(list, Collections.unmodifiableSortedSet(new TreeSet<>(held))));
        words = Collections.unmodifiableSortedMap(sorted);
    }

    /** In the unit of the number's measure. */
    public double number(HouseNumber number) {
        return numbers.get(number).doubleValue();
    }

    public int count(HouseNumber number) {
        return numbers.get(number).intValueExact();
    }

    /** A percent as a share of 1. */
    public double share(HouseNumber number) {
        return numbers.get(number).movePointLeft(2).doubleValue();
    }

    public Length length(HouseNumber number) {
        return new Length(number(number));
    }

    /** Rounded as {@link Length#feet()} is, so that a tree of just that height is found equal to it. */
    public double feet(HouseNumber number) {
        return length(number).feet();
    }

    public Set<String> words(HouseWords list) {
        return words.get(list);
    }

    /** The watts that the house puts on one circuit. */
    public double circuitWatts() {
        return CIRCUIT_WATTS * share(HouseNumber.CIRCUIT_SHARE);
    }

    /** The points that each term of the design score brings, by the term's word. */
    public Map<String, Double> weights() {
        SortedMap<String, Double> weights = new TreeMap<>();
        numbers.forEach((number, value) -> {
            if (number.theme() == HouseNumber.Theme.SCORE) {
                weights.put(number.word().substring("score-".length()), value.doubleValue());
            }
        });
        return weights;
    }

    /** A sentence with its places filled in: {@code at least {scheme-textures} textures} names the number of this edition. */
    public String fill(String sentence, Units units) {
        return filled(sentence, new TreeMap<>(), length -> length.show(units));
    }

    /** What an advice says, lengths as both kinds of people read them: {@code 3 ft (91 cm)}. @param text of the advice, in any language */
    public String fill(String text, Advice advice) {
        return filled(text, advice.values(), length -> Text.of("length.both", length.show(Units.FEET), length.show(Units.METRES)));
    }

    private String filled(String sentence, SortedMap<String, Object> values, Function<Length, String> lengths) {
        Matcher place = PLACE.matcher(sentence);
        return place.replaceAll(found -> Matcher.quoteReplacement(value(found.group(1), values, lengths)));
    }

    private String value(String word, SortedMap<String, Object> values, Function<Length, String> lengths) {
        if (values.get(word) instanceof Length length) {
            return lengths.apply(length);
        }
        if (values.containsKey(word)) {
            return String.valueOf(values.get(word));
        }
        for (HouseNumber number : HouseNumber.values()) {
            if (number.word().equals(word)) {
                return number.measure() == HouseNumber.Measure.LENGTH ? lengths.apply(length(number))
                        : Text.number(new BigDecimal(numbers.get(number).stripTrailingZeros().toPlainString()));
            }
        }
        for (HouseWords list : HouseWords.values()) {
            if (list.word().equals(word)) {
                return words.get(list).stream().map(w -> list.trait().said(w)).collect(Collectors.joining(Text.of("list.comma")));
            }
        }
        throw new IllegalArgumentException("no house number or list is called " + word);
    }
}
