package boughwright.document;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.KioskFixture;
import boughwright.needs.Adjustments;
import boughwright.proposal.Designer;
import boughwright.proposal.Outcome;
import boughwright.proposal.Proposal;
import boughwright.quote.Quote;
import boughwright.quote.Substitution;
import boughwright.quote.Tax;
import boughwright.text.Language;
import boughwright.text.Text;
import java.io.IOException;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class QuoteDocumentTest {

    private static final String SPOKEN = "KELP 4 MOSS";
    private static final Quote QUOTE = quote(Tax.Basis.TOTAL);

    private static Quote quote(Tax.Basis basis) {
        Proposal proposal = ((Outcome.Made) KioskFixture.designer().propose("{\"tree\": {\"height\": \"9 ft\"}}", Adjustments.NONE, Designer.SEED)).proposal();
        return Quote.of(proposal, new Quote.Made("kelp-4-moss", 2, 3, "Ada", LocalDate.of(2026, 11, 28), LocalDate.of(2026, 12, 5)),
                new Tax("Sales tax", new BigDecimal("8.875"), false, basis, Tax.Rounding.HALF_UP), List.of(new Substitution("spray", "Old fern", "New fern")));
    }

    private static String text(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
        }
    }

    @ParameterizedTest
    @EnumSource
    void the_quote_says_what_is_to_be_paid_until_when_and_what_stands_in_for_what(Paper paper) throws IOException {
        String text = text(QuoteDocument.pdf(QUOTE, SPOKEN, paper));
        assertThat(text).contains("KELP 4 MOSS", QUOTE.total().show(), QUOTE.tax().show(), "8.875 %", "December 5, 2026", "New fern instead of Old fern");
        QUOTE.lines().forEach(line -> assertThat(text).contains(line.sku(), line.price().show()));
        try (PDDocument document = Loader.loadPDF(QuoteDocument.pdf(QUOTE, SPOKEN, paper))) {
            assertThat(document.getPage(0).getMediaBox().getWidth()).isCloseTo((float) paper.width(), org.assertj.core.data.Offset.offset(1f));
        }
    }

    @Test
    void a_quote_is_spoken_in_the_customers_language() throws IOException {
        byte[] german = Text.in(Language.GERMAN, () -> QuoteDocument.pdf(QUOTE, SPOKEN, Paper.A4));
        assertThat(text(german)).contains("8,875 %").doesNotContain("To pay");
        try (PDDocument document = Loader.loadPDF(german)) {
            assertThat(document.getDocumentCatalog().getLanguage()).isEqualTo("de");
        }
    }

    @Test
    void where_lines_are_taxed_each_line_shows_its_own() throws IOException {
        Quote byLine = quote(Tax.Basis.LINE);
        String text = text(QuoteDocument.pdf(byLine, SPOKEN, Paper.LETTER));
        byLine.lines().forEach(line -> assertThat(text).contains(line.tax().show()));
    }

    @Test
    void the_same_quote_gives_the_same_bytes() {
        assertThat(QuoteDocument.pdf(QUOTE, SPOKEN, Paper.LETTER)).isEqualTo(QuoteDocument.pdf(QUOTE, SPOKEN, Paper.LETTER));
    }
}
