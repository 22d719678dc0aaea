package boughwright.document;

import boughwright.quote.Quote;
import boughwright.quote.QuoteLine;
import boughwright.quote.Substitution;
import boughwright.text.Language;
import boughwright.text.Text;
import java.util.Optional;
import org.w3c.dom.Document;

/** A quote on paper: what is to be bought, what it costs with tax, until when, and what stands in for what was there before. */
public final class QuoteDocument {

    private final Quote quote;
    private final String spoken;
    private final Html html = new Html(Language.now().tag());

    private QuoteDocument(Quote quote, String spoken) {
        this.quote = quote;
        this.spoken = spoken;
    }

    /**
     * A tagged PDF with its fonts embedded, in the language that is spoken. The same arguments give the same bytes.
     *
     * @param spoken the consultation's code as it is said
     */
    public static byte[] pdf(Quote quote, String spoken, Paper paper) {
        return Printer.pdf(new QuoteDocument(quote, spoken).pages(paper), paper, Optional.empty());
    }

    private Document pages(Paper paper) {
        String title = Text.of("quote.title", spoken);
        html.in("head", "", () -> {
            html.put("title", "", Text.of("document.metadata.title", quote.shop(), title));
            html.in("meta", "", () -> html.with("name", "subject").with("content", Text.of("quote.metadata")));
            html.put("style", "", PageStyle.style(paper, Text.of("document.foot.code", quote.shop(), spoken)));
        });
        html.in("body", "", () -> {
            html.in("div", "mast", () -> {
                html.put("span", "kind", Text.of("quote.kind"));
                html.put("span", "shop", quote.shop());
            });
            html.put("h1", "small", title);
            html.put("p", "brief", Text.of("quote.made", String.valueOf(quote.number()), Text.day(quote.madeOn()), quote.by()));
            html.put("p", "valid", Text.of("quote.valid", Text.day(quote.validTo())));
            substitutions();
            lines();
            sums();
            html.put("p", "lead", Text.of("quote.foot"));
        });
        return html.document();
    }

    private void substitutions() {
        if (quote.substitutions().isEmpty()) {
            return;
        }
        html.put("h2", "part", Text.of("quote.substituted"));
        html.in("ul", "", () -> {
            for (Substitution each : quote.substitutions()) {
                html.put("li", "", Text.of("quote.substitution", Text.sentence(Text.of("role." + each.role())), each.is(), each.was()));
            }
        });
    }

    private void lines() {
        boolean byLine = !quote.terms().none() && quote.terms().basis() == boughwright.quote.Tax.Basis.LINE;
        html.in("table", "pick quote", () -> {
            html.in("thead", "", () -> html.in("tr", "", () -> {
                html.put("th", "shelf", Text.of("document.pick.shelf"));
                html.put("th", "", Text.of("document.pick.product"));
                html.put("th", "packs", Text.of("document.pick.packs"));
                html.put("th", "money", Text.of("document.pick.each"));
                if (byLine) {
                    html.put("th", "money", quote.terms().name());
                }
                html.put("th", "money", Text.of("document.pick.price"));
            }));
            html.in("tbody", "", () -> quote.lines().forEach(line -> row(line, byLine)));
        });
    }

    private void row(QuoteLine line, boolean byLine) {
        html.in("tr", "", () -> {
            html.put("td", "shelf", Wording.bound(line.shelf()));
            html.in("td", "", () -> {
                html.put("div", "name", line.name());
                html.put("div", "sku", line.sku());
            });
            html.put("td", "packs", line.packSize() == 1 ? String.valueOf(line.packs())
                    : Wording.bound(Text.of("document.pick.pack", String.valueOf(line.packs()), String.valueOf(line.packSize()))));
            html.put("td", "money", line.each().show());
            if (byLine) {
                html.put("td", "money", line.tax().show());
            }
            html.put("td", "money strong", line.price().show());
        });
    }

    private void sums() {
        html.in("div", "sums", () -> {
            if (!quote.terms().none()) {
                sum("sum small", Text.of("quote.goods"), quote.goods().show());
                sum("sum small", Text.of(quote.terms().within() ? "quote.tax.within" : "quote.tax", quote.terms().name(), Text.number(quote.terms().percent())), quote.tax().show());
            }
            sum("sum", Text.of("quote.total"), quote.total().show());
        });
    }

    private void sum(String kind, String label, String amount) {
        html.in("div", kind, () -> {
            html.put("span", "money", amount);
            html.put("span", "label", label);
        });
    }
}
