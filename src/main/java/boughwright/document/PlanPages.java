package boughwright.document;

import boughwright.proposal.Proposal;
import boughwright.text.Text;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.w3c.dom.Document;

/** All pages of a plan, in the order in which they are needed: to look at, to shop, to cut, to do, to take care. */
final class PlanPages {

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

    private final Proposal proposal;
    private final double aspect;
    private final Paper paper;
    private final Optional<String> code;
    private final Optional<String> atHome;
    private final Html html = new Html("en");

    /** @param aspect the picture's width over its height */
    PlanPages(Proposal proposal, double aspect, Paper paper, Optional<String> code, Optional<String> atHome) {
        this.proposal = proposal;
        this.aspect = aspect;
        this.paper = paper;
        this.code = code;
        this.atHome = atHome;
    }

    Document document() {
        html.in("head", "", () -> {
            html.put("title", "", Wording.unbound(Text.of("document.metadata.title", proposal.edition().shop(), Wording.title(proposal.brief()))));
            html.in("meta", "", () -> html.with("name", "subject").with("content", Text.of("document.metadata.description")));
            html.put("style", "", STYLE + pageStyle());
        });
        html.in("body", "", () -> {
            new FrontPage(html, proposal, code, atHome).write(aspect, paper);
            new PickPages(html, proposal).write();
            new CutPages(html, proposal).write();
            new StepPages(html, proposal.plan()).write();
            new CautionPage(html, proposal.plan()).write();
        });
        return html.document();
    }

    private String pageStyle() {
        String start = code.map(c -> Text.of("document.foot.code", proposal.edition().shop(), c)).orElse(proposal.edition().shop());
        String[] words = Text.of("document.foot.page", "\n", "\n").split("\n", -1);
        return PAGE.formatted(size(paper.width()), size(paper.height()), quoted(start), quoted(words[0]), quoted(words[1]), quoted(words[2]));
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
        try (InputStream in = PlanPages.class.getResourceAsStream("plan.css")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
