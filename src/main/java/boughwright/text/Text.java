package boughwright.text;

import java.math.BigDecimal;
import java.text.DecimalFormatSymbols;
import java.text.MessageFormat;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.MissingResourceException;
import java.util.ResourceBundle;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;

/**
 * The sentences that people read, by key, from {@code boughwright/text/messages.properties} and its sisters {@code _de} and {@code _es},
 * in the language that the thread speaks.
 *
 * <p>Patterns are {@link MessageFormat}s. Numbers should be passed as text already formatted, so that a customer's units and
 * a shop's currency are settled where they are known. Nothing here is meant for machines: what files and programs read is written
 * without asking which language is spoken.
 */
public final class Text {

    static final ThreadLocal<Language> SPOKEN = ThreadLocal.withInitial(() -> Language.ENGLISH);

    /** What tests do to every message, to see which words on a screen are none. */
    static volatile UnaryOperator<String> told = UnaryOperator.identity();

    private static final Map<Language, ResourceBundle> MESSAGES = new EnumMap<>(Language.class);

    static {
        for (Language language : Language.values()) {
            // Without the fallback a machine set to German would find the German sentences where English ones are asked for.
            MESSAGES.put(language, ResourceBundle.getBundle("boughwright.text.messages", language.locale(),
                    ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_DEFAULT)));
        }
    }

    private Text() {
    }

    /** A stretch of work in one language; closing it goes back to the language before. */
    public interface Speaking extends AutoCloseable {

        @Override
        void close();
    }

    /** From now on this thread speaks {@code language}, until the answer is closed. */
    public static Speaking speak(Language language) {
        Language before = SPOKEN.get();
        SPOKEN.set(language);
        return () -> SPOKEN.set(before);
    }

    /** Does some work in a language. */
    public static <T> T in(Language language, Supplier<T> work) {
        try (Speaking ignored = speak(language)) {
            return work.get();
        }
    }

    /** Does some work in a language. */
    public static void in(Language language, Runnable work) {
        try (Speaking ignored = speak(language)) {
            work.run();
        }
    }

    /** The same work for another thread, in the language that is spoken here. */
    public static Runnable carried(Runnable work) {
        Language language = Language.now();
        return () -> in(language, work);
    }

    /** The same work for another thread, in the language that is spoken here. */
    public static <T> Callable<T> carriedCall(Callable<T> work) {
        Language language = Language.now();
        return () -> {
            try (Speaking ignored = speak(language)) {
                return work.call();
            }
        };
    }

    /**
     * A message of the language that is spoken; one that it lacks is told in English.
     *
     * @throws MissingResourceException when no message has the key: a defect, which the tests of the bundle look for
     */
    public static String of(String key, Object... arguments) {
        Language language = Language.now();
        return told.apply(new MessageFormat(MESSAGES.get(language).getString(key), language.locale()).format(arguments));
    }

    /** The message of {@code key}, or {@code otherwise} when the bundle has none: for words of a shop's own, such as a look. */
    public static String or(String key, String otherwise) {
        ResourceBundle messages = MESSAGES.get(Language.now());
        return messages.containsKey(key) ? told.apply(messages.getString(key)) : otherwise;
    }

    /** A number as people read it, all its digits, without marks between thousands: {@code 2.55}, {@code 2,55}. */
    public static String number(BigDecimal number) {
        return number.toPlainString().replace('.', DecimalFormatSymbols.getInstance(Language.now().locale()).getDecimalSeparator());
    }

    /** A number with so many decimals as people read it. */
    public static String number(double number, int decimals) {
        return number(new BigDecimal(String.format(Locale.ROOT, "%." + decimals + "f", number)));
    }

    /** A day in words: {@code November 26, 2026}. */
    public static String day(LocalDate day) {
        return DateTimeFormatter.ofLocalizedDate(FormatStyle.LONG).withLocale(Language.now().locale()).format(day);
    }

    /** A day in figures, where there is little room: {@code 11/26/26}. */
    public static String shortDay(LocalDate day) {
        return DateTimeFormatter.ofLocalizedDate(FormatStyle.SHORT).withLocale(Language.now().locale()).format(day);
    }

    /** A moment to the minute: {@code Nov 26, 2026, 2:05 AM}. */
    public static String moment(LocalDateTime moment) {
        return DateTimeFormatter.ofLocalizedDateTime(FormatStyle.MEDIUM, FormatStyle.SHORT).withLocale(Language.now().locale()).format(moment);
    }

    /** With a capital letter, as a sentence begins. */
    public static String sentence(String words) {
        return words.isEmpty() ? words : words.substring(0, 1).toUpperCase(Language.now().locale()) + words.substring(1);
    }

    /** A title as it stands within a sentence: small letters, but for a language whose nouns keep their capitals. */
    public static String within(String title) {
        return Language.now() == Language.GERMAN ? title : title.toLowerCase(Language.now().locale());
    }

    /** a; a and b; a, b and c. */
    public static String list(List<String> parts) {
        if (parts.size() < 2) {
            return String.join("", parts);
        }
        String last = parts.get(parts.size() - 1);
        // Spanish writes “e” for “y” before the sound of i.
        boolean i = last.toLowerCase(Locale.ROOT).matches("(?s)h?i(?![aeou]).*");
        return of(i ? "list.and.y" : "list.and", String.join(of("list.comma"), parts.subList(0, parts.size() - 1)), last);
    }
}
