package boughwright.document;

import com.openhtmltopdf.css.sheet.FontFaceRule;
import com.openhtmltopdf.extend.OutputDevice;
import com.openhtmltopdf.extend.SVGDrawer;
import com.openhtmltopdf.layout.SharedContext;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.css.style.CssContext;
import com.openhtmltopdf.render.Box;
import com.openhtmltopdf.render.RenderingContext;
import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Dimension2D;
import java.io.File;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.batik.anim.dom.SAXSVGDocumentFactory;
import org.apache.batik.bridge.BridgeContext;
import org.apache.batik.bridge.GVTBuilder;
import org.apache.batik.gvt.GraphicsNode;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAppearanceStream;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/**
 * The tree's picture, drawn as vectors in the place of the page's one {@code svg} element.
 *
 * <p>The SVG is read once; it may not declare entities, and what it refers to outside itself is not fetched.
 */
final class Picture implements SVGDrawer {

    private final GraphicsNode root;
    private final Dimension2D size;
    private PDDocument document;

    /** @throws IllegalArgumentException when the text is no SVG, or declares a document type */
    Picture(String svg) {
        if (svg.contains("<!DOCTYPE") || svg.contains("<!ENTITY")) {
            throw new IllegalArgumentException("a picture declares no document type");
        }
        Document parsed;
        try {
            parsed = new SAXSVGDocumentFactory(null).createDocument("picture.svg", new StringReader(svg));
        } catch (IOException e) {
            throw new IllegalArgumentException("the picture is no SVG: " + e.getMessage(), e);
        }
        BridgeContext context = new Stamps.Context();
        root = new GVTBuilder().build(context, parsed);
        size = context.getDocumentSize();
    }

    /** Width over height. */
    double aspect() {
        return size.getWidth() / size.getHeight();
    }

    /** The document that the picture goes into; to be said before it is drawn. */
    void into(PDDocument target) {
        document = target;
    }

    @Override
    public SVGImage buildSVGImage(Element element, Box box, CssContext css, double width, double height, double dotsPerPixel) {
        return new SVGImage() {
            @Override
            public int getIntrinsicWidth() {
                return (int) width;
            }

            @Override
            public int getIntrinsicHeight() {
                return (int) height;
            }

            @Override
            public void drawSVG(OutputDevice device, RenderingContext rendering, double x, double y) {
                draw(device, x, y, width / dotsPerPixel, height / dotsPerPixel);
            }
        };
    }

    /** Sizes in CSS pixels. The device lends an empty form, tagged and in its place, which is then filled. */
    private void draw(OutputDevice device, double x, double y, double width, double height) {
        PdfBoxGraphics2D[] lent = new PdfBoxGraphics2D[1];
        device.drawWithGraphics((float) x, (float) y, (float) width, (float) height, graphics -> lent[0] = (PdfBoxGraphics2D) graphics);
        PDAppearanceStream form = (PDAppearanceStream) lent[0].getXFormObject();
        double scale = Math.min(width / size.getWidth(), height / size.getHeight());
        // A picture counts downward, a form upward from its lower edge.
        AffineTransform toForm = new AffineTransform(scale, 0, 0, -scale, 0, (int) height);
        try {
            new PictureForm(document).fill(form, root, toForm);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public void importFontFaceRules(List<FontFaceRule> fontFaces, SharedContext shared) {
        // The picture has its own face.
    }

    @Override
    public void addFontFile(File fontFile, String family, Integer weight, FontStyle style) {
        // The picture has its own face.
    }

    @Override
    public void close() {
        // Nothing is open.
    }
}
