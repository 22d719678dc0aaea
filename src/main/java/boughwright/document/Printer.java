package boughwright.document;

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

/** Turns pages into a tagged PDF with its fonts embedded. The same pages give the same bytes; no clock is read and nothing is fetched. */
final class Printer {

    /** The document's identifier is made of this and its title, where others take the clock. */
    private static final long IDENTIFIER = 1;
    private static final int POINTS_PER_INCH = 72;

    static {
        XRLog.listRegisteredLoggers().forEach(logger -> XRLog.setLevel(logger, Level.WARNING));
    }

    private Printer() {
    }

    /** @param picture what stands in the place of the pages' one {@code svg} element, when they have one */
    static byte[] pdf(Document pages, Paper paper, Optional<Picture> picture) {
        PdfRendererBuilder builder = new PdfRendererBuilder();
        builder.useFastMode();
        builder.usePdfUaAccessibility(true);
        builder.useExternalResourceAccessControl((uri, type) -> false, ExternalResourceControlPriority.RUN_BEFORE_RESOLVING_URI);
        builder.useDefaultPageSize((float) (paper.width() / POINTS_PER_INCH), (float) (paper.height() / POINTS_PER_INCH), PageSizeUnits.INCHES);
        picture.ifPresent(builder::useSVGDrawer);
        builder.withW3cDocument(pages, "");
        builder.withProducer("Boughwright");
        Fonts.offer(builder);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream(1 << 19);
        try (PdfBoxRenderer renderer = builder.buildPdfRenderer()) {
            if (picture.isPresent()) {
                picture.get().into(renderer.getPdfDocument());
            }
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
