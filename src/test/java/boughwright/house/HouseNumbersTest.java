package boughwright.house;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import boughwright.brief.Word;
import boughwright.kit.Term;
import boughwright.measure.Units;
import boughwright.needs.House;
import boughwright.needs.HouseNumber;
import boughwright.needs.HouseNumber.Guard;
import boughwright.needs.HouseWords;
import boughwright.rulebook.RulebookFixture;
import boughwright.text.Text;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class HouseNumbersTest {

    private static final House HOUSE = RulebookFixture.house();
    private static final Pattern RULE = Pattern.compile("(?m)^rule \"([^\"]+)\"");
    private static final Pattern PLACE = Pattern.compile("\\{([^}]*)}");
    /** Terms that weigh what a customer has or has changed, which is not a matter of the house's taste. */
    private static final List<Term> NOT_OF_THE_HOUSE = List.of(Term.OWNED_USED, Term.PRICE_LEVEL, Term.STABILITY);

    @Test
    void the_shipped_score_weighs_each_term_as_the_term_itself_does() {
        Map<String, Double> own = new HashMap<>();
        Arrays.stream(Term.values()).filter(t -> !NOT_OF_THE_HOUSE.contains(t)).forEach(t -> own.put(t.word(), t.weight()));
        assertThat(HOUSE.weights()).containsExactlyInAnyOrderEntriesOf(own);
    }

    @ParameterizedTest
    @EnumSource
    void every_number_has_its_name_and_every_guarded_one_its_reason(HouseNumber number) {
        assertThat(Text.or("house.number." + number.word() + ".name", "")).isNotBlank();
        assertThat(Text.or("house.why." + number.word(), "").isBlank()).isEqualTo(number.guard() == Guard.NONE);
        assertThat(HouseCheck.pageTitle(number.theme().word())).isNotBlank();
    }

    @ParameterizedTest
    @EnumSource
    void every_list_has_its_name_and_a_vocabulary_that_holds_its_floor(HouseWords list) {
        assertThat(Text.or("house.words." + list.word() + ".name", "")).isNotBlank();
        assertThat(HouseCheck.pageTitle(HouseCheck.page(list))).isNotBlank();
        assertThat(HouseCheck.vocabulary(list.trait())).containsAll(list.floor()).isNotEmpty();
    }

    @Test
    void no_two_numbers_or_lists_share_a_name() {
        assertThat(Arrays.stream(HouseNumber.values()).map(HouseCheck::name)).doesNotHaveDuplicates();
        assertThat(Arrays.stream(HouseWords.values()).map(HouseCheck::name)).doesNotHaveDuplicates();
    }

    @ParameterizedTest
    @EnumSource
    void a_house_is_refused_without_a_number_or_with_one_out_of_bounds(HouseNumber number) {
        assertThatThrownBy(() -> house(number, null)).isInstanceOf(IllegalArgumentException.class).hasMessageContaining(number.word());
        assertThatThrownBy(() -> house(number, number.most().add(new BigDecimal("0.001")))).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> house(number, number.least().subtract(new BigDecimal("0.001")))).isInstanceOf(IllegalArgumentException.class);
        assertThat(house(number, number.least()).number(number)).isEqualTo(number.least().doubleValue());
        assertThat(house(number, number.most()).number(number)).isEqualTo(number.most().doubleValue());
    }

    @ParameterizedTest
    @EnumSource
    void a_house_is_refused_without_the_words_that_safety_asks_for(HouseWords list) {
        assertThatThrownBy(() -> house(list, new TreeSet<>())).isInstanceOf(IllegalArgumentException.class).hasMessageContaining(list.word());
        for (String word : list.floor()) {
            SortedSet<String> lax = new TreeSet<>(HOUSE.words(list));
            lax.remove(word);
            assertThatThrownBy(() -> house(list, lax)).isInstanceOf(IllegalArgumentException.class).hasMessageContaining(word);
        }
    }

    @Test
    void what_ships_is_the_floor_of_safety() {
        assertThat(Arrays.stream(HouseNumber.values()).filter(n -> n.guard() != Guard.NONE)).hasSize(7).allSatisfy(number ->
                assertThat(HOUSE.numbers().get(number)).isEqualByComparingTo(number.guard() == Guard.NOT_BELOW ? number.least() : number.most()));
    }

    @Test
    void a_laxer_number_is_told_with_the_floor_and_why_and_a_stricter_one_is_not_told() {
        for (HouseNumber number : HouseNumber.values()) {
            if (number.guard() != Guard.NONE) {
                boolean below = number.guard() == Guard.NOT_BELOW;
                BigDecimal lax = below ? number.least().multiply(new BigDecimal("0.9")) : number.most().multiply(new BigDecimal("1.1"));
                BigDecimal strict = below ? number.least().multiply(new BigDecimal("1.1")) : number.most().multiply(new BigDecimal("0.9"));
                String floor = NumberText.of(number, HOUSE.numbers().get(number), Units.FEET);
                assertThat(typed(number, lax)).singleElement().satisfies(c -> {
                    assertThat(c.page()).isEqualTo("cautions");
                    assertThat(c.column()).isEqualTo(HouseCheck.name(number));
                    assertThat(c.message()).startsWith("This may be " + (below ? "more" : "less") + " than " + floor + ", never " + (below ? "less"
                            : "more") + ". ")
                            .endsWith(Text.of("house.why." + number.word()));
                });
                assertThat(typed(number, strict)).isEmpty();
            }
        }
    }

    @Test
    void sentences_name_the_numbers_and_words_of_the_house() {
        assertThat(HOUSE.fill("At least {scheme-textures} textures, a loop of {loop}, {circuit-share} %.", Units.FEET))
                .isEqualTo("At least 3 textures, a loop of 2 ft, 80 %.");
        assertThat(HOUSE.fill("{loop}", Units.METRES)).isEqualTo("61 cm");
        assertThat(HOUSE.fill("{base-weaves} and {never-with-pets}", Units.FEET)).isEqualTo("open and food-like, fragile, small-parts, tinsel");
        assertThat(house(HouseNumber.SCHEME_TEXTURES, new BigDecimal("5.000")).fill("{scheme-textures}", Units.FEET)).isEqualTo("5");
        assertThatThrownBy(() -> HOUSE.fill("{lop}", Units.FEET)).isInstanceOf(IllegalArgumentException.class).hasMessageContaining("lop");
    }

    @Test
    void every_place_in_the_name_of_a_shipped_rule_is_a_number_or_list_of_the_house() {
        List<String> names = RulebookFixture.texts().entrySet().stream().filter(e -> e.getKey().endsWith(".drl"))
                .flatMap(e -> RULE.matcher(e.getValue()).results()).map(r -> r.group(1)).toList();
        List<String> places = names.stream().flatMap(n -> PLACE.matcher(n).results()).map(r -> r.group(1)).toList();
        assertThat(names).hasSizeGreaterThan(30).allSatisfy(name -> assertThat(HOUSE.fill(name, Units.FEET)).doesNotContain("{", "}"));
        assertThat(places).isNotEmpty().allMatch(p -> Word.read(HouseNumber.class, p).isPresent() || Word.read(HouseWords.class, p).isPresent());
    }

    private static List<Complaint> typed(HouseNumber number, BigDecimal value) {
        String text = number.measure() == HouseNumber.Measure.LENGTH ? value.movePointRight(2).toPlainString() + " cm" : value.toPlainString();
        return HouseFixture.complaints(HouseFixture.shipped().withNumber(number, text));
    }

    private static House house(HouseNumber number, BigDecimal value) {
        SortedMap<HouseNumber, BigDecimal> numbers = new TreeMap<>(HOUSE.numbers());
        numbers.remove(number);
        if (value != null) {
            numbers.put(number, value);
        }
        return new House(numbers, HOUSE.words());
    }

    private static House house(HouseWords list, SortedSet<String> held) {
        SortedMap<HouseWords, SortedSet<String>> words = new TreeMap<>(HOUSE.words());
        words.put(list, held);
        return new House(HOUSE.numbers(), words);
    }
}
