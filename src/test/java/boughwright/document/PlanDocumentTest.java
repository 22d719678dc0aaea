package boughwright.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.offset;

import boughwright.catalogue.Catalogue;
import boughwright.catalogue.CatalogueReader;
import boughwright.catalogue.CatalogueReading;
import boughwright.catalogue.Product;
import boughwright.kit.Kit;
import boughwright.kit.KitLine;
import boughwright.kit.KitSolver;
import boughwright.needs.Adjustments;
import boughwright.plan.Plan;
import boughwright.plan.Step;
import boughwright.proposal.Designer;
import boughwright.proposal.Outcome;
import boughwright.proposal.Proposal;
import boughwright.rulebook.Rulebook;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class PlanDocumentTest {

    private static final String PICTURE = """
            <svg xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink" width="300" height="500" viewBox="-60 -100 120 200">
            <defs><g id="ball"><circle r="6" fill="#a03050"/></g><g id="pair"><use xlink:href="#ball"/><use xlink:href="#ball" x="14"/></g></defs>
            <path d="M-50 80L0-90 50 80z" fill="#2d5b43"/>
            <use xlink:href="#ball" transform="translate(-10 20)"/><use xlink:href="#pair" transform="translate(0 50)"/>
            <text x="30" y="60" font-size="8" font-family="Figtree">floor</text></svg>
            """;

    private static Designer designer;
    private static Proposal nine;

    @BeforeAll
    static void a_tree_of_nine_feet() throws IOException {
        Rulebook book = ((Rulebook.Opening.Open) Rulebook.open(path -> Files.readString(Path.of("rules", path)))).rulebook();
        var looks = book.choices().looks().stream().map(look -> look.id()).collect(Collectors.toSet());
        try (var file = Files.newBufferedReader(Path.of("catalogue-samples/season.csv"))) {
            var reading = new CatalogueReader(looks, book.choices().currency()).read(file);
            designer = new Designer(book, ((CatalogueReading.Read) reading).catalogue(), new KitSolver());
        }
        nine = proposal("{\"tree\":{\"height\":\"9 ft\"},\"budget\":\"650.00\"}");
    }

    @Test
    void the_same_input_gives_the_same_bytes() throws IOException {
        byte[] bytes = pdf(nine, Paper.LETTER);
        assertThat(pdf(nine, Paper.LETTER)).isEqualTo(bytes);
        try (PDDocument document = Loader.loadPDF(bytes)) {
            assertThat(document.getDocumentInformation().getCreationDate()).isNull();
        }
    }

    @Test
    void it_says_its_title_and_its_language_and_is_tagged() throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf(nine, Paper.LETTER))) {
            assertThat(document.getDocumentInformation().getTitle()).isEqualTo("Larkrise & Daughters: A Woodland tree of 9 ft");
            assertThat(document.getDocumentCatalog().getLanguage()).isEqualTo("en");
            assertThat(document.getDocumentCatalog().getMarkInfo().isMarked()).isTrue();
            assertThat(new String(document.getDocumentCatalog().getMetadata().toByteArray(), StandardCharsets.UTF_8))
                    .contains("Larkrise &amp; Daughters: A Woodland tree of 9 ft");
        }
    }

    @ParameterizedTest
    @EnumSource(Paper.class)
    void every_page_has_the_size_of_the_paper(Paper paper) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf(nine, paper))) {
            for (PDPage page : document.getPages()) {
                assertThat(page.getMediaBox().getWidth()).isCloseTo(paper == Paper.LETTER ? 612f : 595.3f, offset(0.5f));
                assertThat(page.getMediaBox().getHeight()).isCloseTo(paper == Paper.LETTER ? 792f : 841.9f, offset(0.5f));
            }
        }
    }

    @ParameterizedTest
    @EnumSource(Paper.class)
    void all_fonts_are_embedded(Paper paper) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf(nine, paper))) {
            List<PDFont> fonts = new ArrayList<>();
            for (PDPage page : document.getPages()) {
                collect(page.getResources(), fonts);
            }
            assertThat(fonts).isNotEmpty().allMatch(PDFont::isEmbedded);
            List<String> names = fonts.stream().map(font -> font.getName().replaceFirst("^[A-Z]{6}\\+", "")).distinct().sorted().toList();
            assertThat(names).containsExactly("Figtree-Regular", "Figtree-SemiBold", "Fraunces-SemiBold");
        }
    }

    private static void collect(PDResources resources, List<PDFont> fonts) throws IOException {
        for (COSName name : resources.getFontNames()) {
            fonts.add(resources.getFont(name));
        }
        for (COSName name : resources.getXObjectNames()) {
            if (resources.getXObject(name) instanceof PDFormXObject form && form.getResources() != null) {
                collect(form.getResources(), fonts);
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"{\"tree\":{\"height\":\"9 ft\"},\"budget\":\"650.00\"}", "{\"tree\":{\"height\":\"3 ft\"}}",
            "{\"tree\":{\"height\":\"228 cm\"},\"household\":{\"toddlers\":true,\"pets\":true}}",
            "{\"tree\":{\"height\":\"20 ft\",\"seenFrom\":\"round\"},\"abundance\":\"lavish\"}"})
    void everything_that_the_proposal_says_is_in_the_text(String brief) throws IOException {
        Proposal proposal = proposal(brief);
        String text = text(pdf(proposal, Paper.of(proposal.brief().units())));
        for (KitLine line : proposal.kit().lines()) {
            assertThat(text).contains(squeezed(line.name())).contains(line.price().show()).contains(line.unitPrice().show())
                    .contains(squeezed(line.shelf())).contains(line.sku());
        }
        assertThat(text).contains(proposal.kit().total().show());
        for (Step step : proposal.plan().steps()) {
            assertThat(text).contains(squeezed(step.title())).contains(squeezed(step.text()));
            step.places().forEach(place -> assertThat(text).contains(squeezed(place)));
            step.pieces().forEach(piece -> assertThat(text).contains(squeezed(piece.quantity() + " × " + piece.name())));
        }
        proposal.plan().cautions().forEach(caution -> assertThat(text).contains(squeezed(caution.text())).contains(squeezed(caution.source())));
        assertThat(text).contains(squeezed(proposal.plan().ladder())).contains(squeezed("do not replace the makers’ instructions"));
    }

    @Test
    void every_page_names_shop_code_and_its_number() throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf(nine, Paper.A4))) {
            int pages = document.getNumberOfPages();
            for (int page = 1; page <= pages; page++) {
                PDFTextStripper stripper = new PDFTextStripper();
                stripper.setStartPage(page);
                stripper.setEndPage(page);
                assertThat(squeezed(stripper.getText(document))).contains(squeezed("Larkrise & Daughters · KELP 4 MOSS"))
                        .contains(squeezed("page " + page + " of " + pages));
            }
        }
    }

    @Test
    void text_that_looks_like_markup_or_style_stays_text() throws IOException {
        String nasty = "</style><script>x</script> & \"q\" \\ }{ \u0000\uD800é";
        Kit kit = nine.kit();
        List<KitLine> lines = new ArrayList<>(kit.lines());
        KitLine l = lines.get(0);
        lines.set(0, new KitLine(l.needId(), l.slot(), l.sku(), nasty, l.layer(), l.role(), l.quantity(), l.owned(), l.packs(), l.packSize(),
                l.unitPrice(), l.price(), "<Z>", l.reason()));
        Plan plan = nine.plan();
        Proposal changed = new Proposal(nine.edition(), nine.brief(), nine.adjustments(), nine.needs(),
                new Kit(lines, kit.total(), kit.budget(), kit.score(), kit.terms(), kit.bound(), kit.gap()), nine.layout(), plan, nine.seed(), nine.catalogue());
        String text = text(PlanDocument.pdf(changed, PICTURE, Paper.LETTER, Optional.of("\"; } body { display: none } <b>"), Optional.empty()));
        assertThat(text).contains(squeezed("</style><script>x</script> & \"q\" \\ }{ é")).contains("<Z>")
                .contains(squeezed("· \"; } body { display: none } <b>"));
    }

    @Test
    void a_product_that_the_catalogue_lacks_is_printed_without_its_colour() throws IOException {
        Proposal bare = new Proposal(nine.edition(), nine.brief(), nine.adjustments(), nine.needs(), nine.kit(), nine.layout(), nine.plan(), nine.seed(),
                new Catalogue(List.<Product>of()));
        assertThat(text(PlanDocument.pdf(bare, PICTURE, Paper.LETTER, Optional.empty(), Optional.empty()))).contains(squeezed(nine.kit().lines().get(0).name()));
    }

    @Test
    void a_picture_may_not_declare_entities() {
        String svg = "<!DOCTYPE svg [<!ENTITY e SYSTEM \"file:///etc/hostname\">]><svg xmlns=\"http://www.w3.org/2000/svg\"><text>&e;</text></svg>";
        assertThatThrownBy(() -> PlanDocument.pdf(nine, svg, Paper.LETTER, Optional.empty(), Optional.empty()))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> PlanDocument.pdf(nine, "no picture", Paper.LETTER, Optional.empty(), Optional.empty()))
                .isInstanceOf(IllegalArgumentException.class);
    }

    private static Proposal proposal(String brief) {
        return ((Outcome.Made) designer.propose(brief, Adjustments.NONE, Designer.SEED)).proposal();
    }

    private static byte[] pdf(Proposal proposal, Paper paper) {
        return PlanDocument.pdf(proposal, PICTURE, paper, Optional.of("KELP 4 MOSS"), Optional.of("https://trees.example/at-home/kelp-4-moss"));
    }

    private static String text(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return squeezed(new PDFTextStripper().getText(document));
        }
    }

    /** Without any space, since a line end may fall anywhere. */
    private static String squeezed(String text) {
        return text.replaceAll("[\\s\\u00a0]+", "");
    }
}
