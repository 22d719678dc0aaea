package boughwright.rulebook;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/**
 * One rule file cut into its header (package, imports) and its rules, without understanding more of the language than that.
 *
 * <p>It is our own count of what a file declares, to hold against what the engine loaded; and it cuts out one rule at a time, on its own
 * lines, so that a fault which the engine does not place can be placed.
 */
record DrlSource(String file, String text, String bare, List<Rule> rules) {

    /** A rule's full name and where it stands: lines counted from 1, offsets from 0, end exclusive. */
    record Rule(String name, int line, int start, int end) {
    }

    private static final Pattern DECLARATION = Pattern.compile("(?<![\\w.$-])rule\\s+(?:(\"|')(.*?)\\1|([\\w.$-]+))", Pattern.DOTALL);
    private static final Pattern PACKAGE = Pattern.compile("(?m)^\\s*package\\s+([\\w.]+)");
    private static final Pattern NOT_LINE_END = Pattern.compile("[^\\r\\n]");

    static DrlSource read(String file, String text) {
        var bare = withoutCommentsAndTexts(text);
        var starts = new ArrayList<Rule>();
        var found = DECLARATION.matcher(bare);
        while (found.find()) {
            int group = found.group(2) != null ? 2 : 3;
            var name = text.substring(found.start(group), found.end(group));
            starts.add(new Rule(name, lineAt(text, found.start()), found.start(), text.length()));
        }
        var rules = new ArrayList<Rule>();
        for (int i = 0; i < starts.size(); i++) {
            var rule = starts.get(i);
            int end = i + 1 < starts.size() ? starts.get(i + 1).start() : rule.end();
            rules.add(new Rule(rule.name(), rule.line(), rule.start(), end));
        }
        return new DrlSource(file, text, bare, List.copyOf(rules));
    }

    /** The declared package; empty when there is none. */
    String packageName() {
        var found = PACKAGE.matcher(header());
        return found.find() ? found.group(1) : "";
    }

    /** What stands before the first rule, with comments and quoted texts blanked out. */
    String header() {
        return bare.substring(0, rules.isEmpty() ? bare.length() : rules.get(0).start());
    }

    /** The rule's own text, with comments and quoted texts blanked out. */
    String bare(Rule rule) {
        return bare.substring(rule.start(), rule.end());
    }

    /** The file with every other rule blanked out, so that line numbers still hold. */
    String only(Rule rule) {
        int body = rules.get(0).start();
        return text.substring(0, body)
                + NOT_LINE_END.matcher(text.substring(body, rule.start())).replaceAll(" ")
                + text.substring(rule.start(), rule.end());
    }

    /** The line of the first occurrence of {@code part} within the rule; the rule's first line when it does not occur. */
    int lineOf(Rule rule, String part) {
        int at = part.isBlank() ? -1 : text.indexOf(part, rule.start());
        return at < 0 || at >= rule.end() ? rule.line() : lineAt(text, at);
    }

    /** The rule whose lines include {@code line}; the file's last rule starting at or before it. */
    Rule ruleAt(int line) {
        Rule last = null;
        for (var rule : rules) {
            if (rule.line() <= line) {
                last = rule;
            }
        }
        return last;
    }

    static int lineAt(String text, int offset) {
        return 1 + (int) text.substring(0, offset).chars().filter(c -> c == '\n').count();
    }

    /** Blanks comments and the inside of quoted texts, keeping every offset and line end. */
    private static String withoutCommentsAndTexts(String text) {
        var bare = new StringBuilder(text);
        int i = 0;
        while (i < text.length()) {
            char c = text.charAt(i);
            int end;
            if (text.startsWith("//", i)) {
                end = endAfter(text, "\n", i, 0);
                blank(bare, i, end);
            } else if (text.startsWith("/*", i)) {
                end = endAfter(text, "*/", i + 2, 2);
                blank(bare, i, end);
            } else if (c == '"' || c == '\'') {
                end = endOfQuoted(text, i);
                blank(bare, i + 1, end - 1);
            } else {
                end = i + 1;
            }
            i = end;
        }
        return bare.toString();
    }

    private static int endAfter(String text, String mark, int from, int length) {
        int at = text.indexOf(mark, from);
        return at < 0 ? text.length() : at + length;
    }

    /** A quoted text ends at its line's end at the latest, so that one missing quote does not swallow the rest of the file. */
    private static int endOfQuoted(String text, int start) {
        char quote = text.charAt(start);
        for (int i = start + 1; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '\\') {
                i++;
            } else if (c == quote || c == '\n') {
                return i + 1;
            }
        }
        return text.length();
    }

    private static void blank(StringBuilder bare, int from, int to) {
        for (int i = from; i < to; i++) {
            if (bare.charAt(i) != '\n' && bare.charAt(i) != '\r') {
                bare.setCharAt(i, ' ');
            }
        }
    }
}
