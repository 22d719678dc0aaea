package boughwright.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LanguageTest {

    @Test
    void a_thread_speaks_english_until_it_is_told_otherwise_and_again_afterwards() {
        assertThat(Language.now()).isEqualTo(Language.ENGLISH);
        Text.in(Language.GERMAN, () -> {
            assertThat(Language.now()).isEqualTo(Language.GERMAN);
            assertThat(Text.in(Language.SPANISH, Language::now)).isEqualTo(Language.SPANISH);
            assertThat(Language.now()).isEqualTo(Language.GERMAN);
        });
        assertThat(Language.now()).isEqualTo(Language.ENGLISH);
    }

    @Test
    void work_that_breaks_off_leaves_the_language_as_it_was() {
        try {
            Text.in(Language.GERMAN, () -> {
                throw new IllegalStateException();
            });
        } catch (IllegalStateException expected) {
            assertThat(Language.now()).isEqualTo(Language.ENGLISH);
        }
    }

    @Test
    void another_thread_speaks_english_unless_the_work_is_carried_over() throws Exception {
        AtomicReference<Language> carried = new AtomicReference<>();
        AtomicReference<Language> bare = new AtomicReference<>();
        Runnable[] work = new Runnable[1];
        Text.in(Language.SPANISH, () -> work[0] = Text.carried(() -> carried.set(Language.now())));
        CompletableFuture.runAsync(work[0]).get();
        CompletableFuture.runAsync(() -> bare.set(Language.now())).get();
        assertThat(carried.get()).isEqualTo(Language.SPANISH);
        assertThat(bare.get()).isEqualTo(Language.ENGLISH);
    }

    /** Ranges and weights as RFC 9110, 12.5.4, has them. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"de-AT,de;q=0.9,en;q=0.8 | GERMAN", "fr-FR,fr;q=0.9,es;q=0.5,en;q=0.4 | SPANISH", "en;q=0.1,de;q=0.9 | GERMAN", "es-419 | SPANISH",
        "fr | ", "* | ", "de;q=0 | ", ";;; | ", "'' | "})
    void the_language_that_somebody_likes_best_is_one_that_is_spoken(String ranges, Language expected) {
        assertThat(Language.liked(ranges)).isEqualTo(Optional.ofNullable(expected));
    }

    @Test
    void a_machine_set_to_german_speaks_english_where_english_is_asked_for() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.GERMANY);
            assertThat(Text.of("layer.lights")).isEqualTo("Lights");
            assertThat(Text.of("unit.bulb", 1234)).isEqualTo("bulbs");
            assertThat(Text.number(new BigDecimal("2.55"))).isEqualTo("2.55");
        } finally {
            Locale.setDefault(before);
        }
    }

    /** CLDR 39, dates of length "long" in en, de and es; decimal separators of the three. */
    @Test
    void days_and_numbers_are_written_as_each_language_writes_them() {
        LocalDate day = LocalDate.of(2026, 12, 3);
        assertThat(Text.day(day)).isEqualTo("December 3, 2026");
        assertThat(Text.in(Language.GERMAN, () -> Text.day(day))).isEqualTo("3. Dezember 2026");
        assertThat(Text.in(Language.SPANISH, () -> Text.day(day))).isEqualTo("3 de diciembre de 2026");
        assertThat(Text.in(Language.GERMAN, () -> Text.number(2.5, 1))).isEqualTo("2,5");
        assertThat(Text.in(Language.SPANISH, () -> Text.number(new BigDecimal("12.75")))).isEqualTo("12,75");
    }

    @Test
    void lists_end_in_each_language_s_own_and() {
        List<String> parts = List.of("a", "b", "c");
        assertThat(Text.list(parts)).isEqualTo("a, b and c");
        assertThat(Text.in(Language.GERMAN, () -> Text.list(parts))).isEqualTo("a, b und c");
        assertThat(Text.in(Language.SPANISH, () -> Text.list(parts))).isEqualTo("a, b y c");
        // Real Academia Española, Diccionario panhispánico de dudas, "y": e before the sound of i, but not before hie.
        assertThat(Text.in(Language.SPANISH, () -> Text.list(List.of("oro", "hilo")))).isEqualTo("oro e hilo");
        assertThat(Text.in(Language.SPANISH, () -> Text.list(List.of("oro", "hielo")))).isEqualTo("oro y hielo");
    }

    @Test
    void one_and_many_are_told_apart_in_every_language() {
        assertThat(Text.in(Language.GERMAN, () -> Text.of("unit.roll", 1))).isEqualTo("Rolle");
        assertThat(Text.in(Language.GERMAN, () -> Text.of("unit.roll", 2))).isEqualTo("Rollen");
        assertThat(Text.in(Language.SPANISH, () -> Text.of("unit.roll", 1))).isEqualTo("rollo");
        assertThat(Text.in(Language.SPANISH, () -> Text.of("unit.roll", 0))).isEqualTo("rollos");
    }

    @Test
    void german_nouns_keep_their_capitals_within_a_sentence() {
        assertThat(Text.within("Your tree")).isEqualTo("your tree");
        assertThat(Text.in(Language.GERMAN, () -> Text.within("Ihr Baum"))).isEqualTo("Ihr Baum");
        assertThat(Text.in(Language.SPANISH, () -> Text.within("Su árbol"))).isEqualTo("su árbol");
    }
}
