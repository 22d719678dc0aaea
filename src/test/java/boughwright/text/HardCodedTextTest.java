package boughwright.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Nobody reads words that are written into the program; they stand in the bundle. */
class HardCodedTextTest {

    private static final Path MAIN = Path.of("src/main");
    /** Packages that show something to people. */
    private static final List<String> SHOWN = List.of("ui", "document", "drawing", "api", "cli", "athome", "counter", "people", "guard", "plan", "proposal", "palette");

    private static final Pattern LITERAL = Pattern.compile("\"\"\"(?<block>.*?)\"\"\"|\"(?<line>(?:[^\"\\\\\n]|\\\\.)*)\"", Pattern.DOTALL);
    private static final Pattern TWO_WORDS = Pattern.compile("\\p{L}{2,}[,.:;!?’]? \\p{L}{2,}");
    /** What makes something to read of its first text. */
    private static final Pattern SHOWS = Pattern.compile("(?:new (?:Span|Paragraph|H[1-6]|NativeButton|NativeLabel|ListItem|NativeTableCell|NativeTableHeaderCell|NativeDetails)\\(|"
            + "\\.set(?:Text|Title|Placeholder|Label|AriaLabel)\\(|Controls\\.(?:button|pill|link|words)\\(|setAttribute\\(\"(?:aria-label|title|placeholder|alt)\", )$");
    /** Messages for whoever mends the program, names for threads and tools, and what the interface's description says of itself. */
    private static final Pattern NOT_READ = Pattern.compile("throw |Exception\\(|LOG\\.|@\\w+\\(|executeJs|Thread\\(|\\.sql\\(|Pattern\\.compile|\\.requireNonNull");
    /** Markup, style and SQL. */
    private static final Pattern MACHINE = Pattern.compile("[<>{}=]|^(?:select|insert|update|delete|order|where) |, sans-serif");

    /** Media queries, selectors, class names of the style sheet, programs for the graphics card. */
    private static final Pattern SCRIPTS = Pattern.compile("^\\(prefers-|^\\(display-mode|^picture step$|^button, a\\[href],|(?:uniform|attribute|varying) (?:vec|float)");

    private static final Map<String, Set<String>> ALLOWED = Map.of(
            // Names of classes of the style sheet.
            "ui/InvitingView.java", Set.of("invite-tree shown"),
            "document/CutPages.java", Set.of("part fresh"),
            "document/QuoteDocument.java", Set.of("pick quote", "money strong", "sum small"),
            "document/PickPages.java", Set.of("part fresh", "money strong"),
            "document/StepPages.java", Set.of("places packed"),
            // Fields that the interface explains to programs, in the words of its schema.
            "proposal/ProposalJson.java", Set.of("floor at the trunk", "right of a viewer in front", "toward that viewer", "read from above, 6 faces the viewer",
                    "0 trunk, 1 branch tips"),
            "proposal/AdjustmentsJson.java", Set.of("texture, finish, material, family, product"),
            // Kinds of addresses in a header.
            "guard/ContentPolicy.java", Set.of(" data: blob:"),
            "api/ColoursApi.java", Set.of("The picture, at most 25 MB and 80 million pixels"));

    @Test
    void no_class_says_anything_in_words_of_its_own() throws IOException {
        List<String> found = new ArrayList<>();
        for (String name : SHOWN) {
            Path folder = MAIN.resolve("java/boughwright").resolve(name);
            if (Files.isDirectory(folder)) {
                try (Stream<Path> files = Files.list(folder)) {
                    for (Path file : files.filter(f -> f.toString().endsWith(".java")).sorted().toList()) {
                        literals(name + "/" + file.getFileName(), Files.readString(file), found);
                    }
                }
            }
        }
        assertThat(found).isEmpty();
    }

    @Test
    void the_search_finds_what_it_looks_for() {
        List<String> found = new ArrayList<>();
        literals("ui/Bad.java", "class Bad { void f() { add(new Span(\"Save\")); String s = \"Two words here\"; x.getElement().setAttribute(\"aria-label\", \"Close\"); } }", found);
        assertThat(found).hasSize(3);
        found.clear();
        literals("ui/Good.java", "class Good { /** \"Two words here\" */ void f() { add(new Span(Text.of(\"a.b\"))); throw new X(\"Two words here\"); } }", found);
        assertThat(found).isEmpty();
    }

    private static void literals(String file, String source, List<String> found) {
        String bare = Pattern.compile("/\\*.*?\\*/", Pattern.DOTALL).matcher(source).replaceAll(" ");
        bare = Pattern.compile("(?m)^\\s*//.*$").matcher(bare).replaceAll("");
        Matcher literal = LITERAL.matcher(bare);
        while (literal.find()) {
            String text = literal.group("line") == null ? literal.group("block") : literal.group("line");
            String before = bare.substring(0, literal.start());
            String statement = before.substring(Math.max(Math.max(before.lastIndexOf(';'), before.lastIndexOf('{')), before.lastIndexOf('}')) + 1);
            boolean shown = SHOWS.matcher(before).find() && text.matches("(?s).*\\p{L}{2,}.*");
            boolean sentence = TWO_WORDS.matcher(text).find() && !MACHINE.matcher(text).find() && !text.startsWith("\\n");
            if ((shown || sentence) && !NOT_READ.matcher(statement).find() && !ALLOWED.getOrDefault(file, Set.of()).contains(text)) {
                found.add(file + ": " + text);
            }
        }
    }

    /** Pages are filled from the bundle: what stands between two tags is a place to be filled. */
    @Test
    void no_page_holds_words_of_its_own() throws IOException {
        List<String> found = new ArrayList<>();
        try (Stream<Path> files = Files.walk(MAIN.resolve("resources"))) {
            for (Path file : files.filter(f -> f.toString().endsWith(".html")).toList()) {
                String bare = Files.readString(file).replaceAll("(?s)<!--.*?-->|<script.*?</script>|<style.*?</style>", "").replaceAll("\\{\\{.*?}}|\\$\\{.*?}|\\{[A-Za-z-]+}", "");
                Matcher words = Pattern.compile(">([^<]*\\p{L}{2,}[^<]*)<|(?:aria-label|title|alt|placeholder)=\"([^\"]*\\p{L}{2,}[^\"]*)\"").matcher(bare);
                while (words.find()) {
                    found.add(file.getFileName() + ": " + words.group().strip());
                }
            }
        }
        assertThat(found).isEmpty();
    }

    /** Scripts get their words from the page that loads them. */
    @Test
    void no_script_says_anything_in_words_of_its_own() throws IOException {
        List<String> found = new ArrayList<>();
        List<Path> folders = List.of(MAIN.resolve("resources/boughwright/athome"), MAIN.resolve("resources/static/lib"), MAIN.resolve("web"));
        for (Path folder : folders) {
            try (Stream<Path> files = Files.walk(folder)) {
                for (Path file : files.filter(f -> f.toString().endsWith(".js") && !f.toString().contains("node_modules")).toList()) {
                    String bare = Files.readString(file).replaceAll("(?s)/\\*.*?\\*/", "").replaceAll("(?m)(^|\\s)//.*$", "");
                    Matcher literal = Pattern.compile("'((?:[^'\\\\\n]|\\\\.)*)'|\"((?:[^\"\\\\\n]|\\\\.)*)\"|`([^`]*)`").matcher(bare);
                    while (literal.find()) {
                        String text = literal.group(1) != null ? literal.group(1) : literal.group(2) != null ? literal.group(2) : literal.group(3);
                        String before = bare.substring(Math.max(0, literal.start() - 40), literal.start());
                        if (TWO_WORDS.matcher(text).find() && !MACHINE.matcher(text).find() && !SCRIPTS.matcher(text).find() && !before.matches("(?s).*(?:Error|console\\.\\w+|querySelector(?:All)?)\\($")) {
                            found.add(file.getFileName() + ": " + text);
                        }
                    }
                }
            }
        }
        assertThat(found).isEmpty();
    }
}
