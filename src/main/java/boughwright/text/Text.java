package boughwright.text;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.MissingResourceException;
import java.util.ResourceBundle;

/**
 * The sentences that people read, by key, from {@code boughwright/text/messages.properties}.
 *
 * <p>Patterns are {@link MessageFormat}s. Numbers should be passed as text already formatted, so that a customer's units and
 * a shop's currency are settled where they are known.
 */
public final class Text {

    private static final ResourceBundle MESSAGES = ResourceBundle.getBundle("boughwright.text.messages", Locale.ENGLISH);

    private Text() {
    }

    /**
     * @throws MissingResourceException when no message has the key: a defect, which the tests of the bundle look for
     */
    public static String of(String key, Object... arguments) {
        return new MessageFormat(MESSAGES.getString(key), Locale.ENGLISH).format(arguments);
    }

    /** The message of {@code key}, or {@code otherwise} when the bundle has none: for words of a shop's own, such as a look. */
    public static String or(String key, String otherwise) {
        return MESSAGES.containsKey(key) ? MESSAGES.getString(key) : otherwise;
    }
}
