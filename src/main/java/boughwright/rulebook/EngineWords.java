package boughwright.rulebook;

import boughwright.text.Text;
import java.util.regex.Pattern;

/** Turns the rule engine's messages into sentences for the person who wrote the rule. What is not known here is passed on as it is. */
final class EngineWords {

    private static final Pattern PARSER_CODE = Pattern.compile("^\\[ERR \\d+] Line \\d+:\\d+ ");
    private static final Pattern IN_RULE = Pattern.compile(" in rule \".*\"$");
    private static final Pattern UNREAD = Pattern.compile("Unable to parse left part of expression: (.+)", Pattern.DOTALL);
    private static final Pattern NO_FIELD = Pattern.compile("Unknown field (\\S+) on class (?:.*\\.)?(\\S+)");

    private EngineWords() {
    }

    static String plain(String message) {
        var unread = UNREAD.matcher(message);
        if (unread.matches()) {
            return Text.of("rulebook.words.condition", unread.group(1));
        }
        var noField = NO_FIELD.matcher(message);
        if (noField.matches()) {
            return Text.of("rulebook.words.field", noField.group(2), noField.group(1));
        }
        var text = IN_RULE.matcher(PARSER_CODE.matcher(message).replaceFirst("")).replaceFirst("");
        return PARSER_CODE.matcher(message).find() ? Text.of("rulebook.words.here", text) : text;
    }

    /** The piece of the rule that the message quotes, to find its line; empty when it quotes none. */
    static String quoted(String message) {
        var unread = UNREAD.matcher(message);
        if (unread.matches()) {
            return unread.group(1);
        }
        var noField = NO_FIELD.matcher(message);
        return noField.matches() ? noField.group(1) : "";
    }

    /** Whether the message only repeats that another one was told. */
    static boolean isEcho(String message) {
        return message.startsWith("Java source of ") || message.startsWith("Parser returned a null Package");
    }
}
