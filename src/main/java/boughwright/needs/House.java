package boughwright.needs;

import boughwright.measure.Length;
import boughwright.measure.Units;
import java.math.BigDecimal;
import java.util.Collections;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

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

    /** A length as both kinds of people read it: {@code 3 ft (91 cm)}. */
    public String inWords(HouseNumber number) {
        return length(number).show(Units.FEET) + " (" + length(number).show(Units.METRES) + ")";
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
        Matcher place = PLACE.matcher(sentence);
        return place.replaceAll(found -> Matcher.quoteReplacement(value(found.group(1), units)));
    }

    private String value(String word, Units units) {
        for (HouseNumber number : HouseNumber.values()) {
            if (number.word().equals(word)) {
                return number.measure() == HouseNumber.Measure.LENGTH ? length(number).show(units) : numbers.get(number).stripTrailingZeros().toPlainString();
            }
        }
        for (HouseWords list : HouseWords.values()) {
            if (list.word().equals(word)) {
                return String.join(", ", words.get(list));
            }
        }
        throw new IllegalArgumentException("no house number or list is called " + word);
    }
}
