package boughwright.house;

import boughwright.brief.Look;
import boughwright.brief.Palette;
import boughwright.needs.HouseNumber;
import boughwright.needs.HouseWords;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.UnaryOperator;

/**
 * All that staff may set for a season, each cell as somebody has typed it, right or wrong. Immutable, so that a draft can be undone.
 *
 * @param sheets in the order of the layers
 * @param numbers lengths with their unit, all others as plain numbers
 * @param words each list in the order in which it was put together
 * @param looks the first is the one that the interview begins with
 */
public record HouseRules(
        List<Sheet> sheets, SortedMap<HouseNumber, String> numbers, SortedMap<HouseWords, List<String>> words, List<Look> looks, List<Palette> palettes) {

    public HouseRules {
        sheets = List.copyOf(sheets);
        numbers = Collections.unmodifiableSortedMap(new TreeMap<>(numbers));
        words = Collections.unmodifiableSortedMap(new TreeMap<>(words));
        looks = List.copyOf(looks);
        palettes = List.copyOf(palettes);
    }

    public Optional<Sheet> sheet(String topic) {
        return sheets.stream().filter(s -> s.topic().equals(topic)).findFirst();
    }

    public HouseRules changeSheet(String topic, UnaryOperator<Sheet> change) {
        List<Sheet> changed = new ArrayList<>(sheets);
        changed.replaceAll(s -> s.topic().equals(topic) ? change.apply(s) : s);
        return new HouseRules(changed, numbers, words, looks, palettes);
    }

    public HouseRules changeGrid(String topic, String grid, UnaryOperator<Grid> change) {
        return changeSheet(topic, s -> s.change(grid, change));
    }

    public HouseRules withNumber(HouseNumber number, String text) {
        Map<HouseNumber, String> changed = new TreeMap<>(numbers);
        changed.put(number, text.strip());
        return new HouseRules(sheets, new TreeMap<>(changed), words, looks, palettes);
    }

    public HouseRules withWords(HouseWords list, List<String> held) {
        Map<HouseWords, List<String>> changed = new TreeMap<>(words);
        changed.put(list, List.copyOf(held));
        return new HouseRules(sheets, numbers, new TreeMap<>(changed), looks, palettes);
    }

    public HouseRules withLooks(List<Look> other) {
        return new HouseRules(sheets, numbers, words, other, palettes);
    }

    public HouseRules withPalettes(List<Palette> other) {
        return new HouseRules(sheets, numbers, words, looks, other);
    }
}
