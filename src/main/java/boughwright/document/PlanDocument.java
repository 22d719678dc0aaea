package boughwright.document;

import boughwright.proposal.Proposal;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.PageSizeUnits;
import com.openhtmltopdf.outputdevice.helper.ExternalResourceControlPriority;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Optional;
import java.util.logging.Level;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.w3c.dom.Document;

/** The plan on paper: what to fetch from the shelves, how to cut the ribbon, what to do at home, what to take care of. */
public final class PlanDocument {

    /** The document's identifier is made of this and its title, where others take the clock. */
    private static final long IDENTIFIER = 1;

    static {
        XRLog.listRegisteredLoggers().forEach(logger -> XRLog.setLevel(logger, Level.WARNING));
    }

    private PlanDocument() {
    }

    /**
     * A tagged PDF with its fonts embedded, in English. The same arguments give the same bytes; it bears no date.
     *
     * @param frontSvg the tree from the front: SVG 1.1 text without a document type; what it refers to outside itself is left out
     * @param code the consultation's code, printed on page 1 and at the foot of every page
     * @param atHome address of the page to follow at home, printed on page 1 as a QR code
     * @throws IllegalArgumentException when {@code frontSvg} is no such text
     */
    public static byte[] pdf(Proposal proposal, String frontSvg, Paper paper, Optional<String> code, Optional<String> atHome) {
        Picture picture = new Picture(frontSvg);
        Document pages = new PlanPages(proposal, picture.aspect(), paper, code, atHome).document();
        PdfRendererBuilder builder = new PdfRendererBuilder();
        builder.useFastMode();
        builder.usePdfUaAccessibility(true);
        builder.useExternalResourceAccessControl((uri, type) -> false, ExternalResourceControlPriority.RUN_BEFORE_RESOLVING_URI);
        builder.useDefaultPageSize((float) (paper.width() / 72), (float) (paper.height() / 72), PageSizeUnits.INCHES);
        builder.useSVGDrawer(picture);
        builder.withW3cDocument(pages, "");
        builder.withProducer("Boughwright");
        Fonts.offer(builder);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream(1 << 19);
        try (PdfBoxRenderer renderer = builder.buildPdfRenderer()) {
            picture.into(renderer.getPdfDocument());
            try (PDDocument document = renderer.createPDFKeepOpen()) {
                Metadata.settle(document);
                document.setDocumentId(IDENTIFIER);
                document.save(bytes);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }
}
