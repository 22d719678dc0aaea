package boughwright.document;

import boughwright.text.Text;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.stream.Collectors;

/** The sheet that all documents are printed on: its size, its margins, its foot, its face. */
final class PageStyle {

    private static final String STYLE = style();

    /** The sheet and its foot. Here and not in the style sheet, because a second rule for a page's foot would replace the first whole. */
    private static final String PAGE = """
            @page {
              size: %s %s;
              margin: 45pt 44pt 52pt 44pt;
              @bottom-left { content: %s; width: 70%%; text-align: left; vertical-align: top; padding-top: 10pt;
                font-family: Figtree; font-size: 8pt; color: #5f665b; }
              @bottom-right { content: %s counter(page) %s counter(pages) %s; width: 30%%; text-align: right; vertical-align: top; padding-top: 10pt;
                font-family: Figtree; font-size: 8pt; color: #5f665b; }
            }
            """;

    private PageStyle() {
    }

    /** The style of all pages. @param foot what stands at the foot of each, before its number */
    static String style(Paper paper, String foot) {
        String[] words = Text.of("document.foot.page", "\n", "\n").split("\n", -1);
        return STYLE + PAGE.formatted(size(paper.width()), size(paper.height()), quoted(foot), quoted(words[0]), quoted(words[1]), quoted(words[2]));
    }

    private static String size(double points) {
        return String.format(Locale.ROOT, "%.3fpt", points);
    }

    /** A CSS string in which every character that is not a plain letter or digit is written by its number. */
    static String quoted(String text) {
        return Html.printable(text).codePoints()
                .mapToObj(c -> c < 128 && Character.isLetterOrDigit(c) ? Character.toString(c) : String.format(Locale.ROOT, "\\%06x", c))
                .collect(Collectors.joining("", "\"", "\""));
    }

    private static String style() {
        try (InputStream in = PageStyle.class.getResourceAsStream("plan.css")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
