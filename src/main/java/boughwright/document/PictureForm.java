package boughwright.document;

import boughwright.document.Stamps.Stamp;
import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2D;
import java.awt.AlphaComposite;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import org.apache.batik.gvt.CanvasGraphicsNode;
import org.apache.batik.gvt.CompositeGraphicsNode;
import org.apache.batik.gvt.GraphicsNode;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAppearanceStream;
import org.apache.pdfbox.util.Matrix;

/** Writes a picture into PDF forms: one for each shape that is used again, one for each run of other things between them. */
final class PictureForm {

    private final PDDocument document;
    private final Map<GraphicsNode, PDFormXObject> masters = new IdentityHashMap<>();
    private final Map<GraphicsNode, Boolean> stamped = new IdentityHashMap<>();

    PictureForm(PDDocument document) {
        this.document = document;
    }

    /** Replaces what the form holds by the node, moved and scaled by {@code toForm}. */
    void fill(PDAppearanceStream form, GraphicsNode node, AffineTransform toForm) throws IOException {
        form.setResources(new PDResources());
        try (PDPageContentStream content = content(form)) {
            content.transform(new Matrix(toForm));
            write(content, List.of(node));
        }
    }

    private PDPageContentStream content(PDAppearanceStream form) throws IOException {
        return new PDPageContentStream(document, form, form.getStream().createOutputStream(COSName.FLATE_DECODE));
    }

    private void write(PDPageContentStream content, List<?> nodes) throws IOException {
        List<GraphicsNode> others = new ArrayList<>();
        for (Object each : nodes) {
            GraphicsNode node = (GraphicsNode) each;
            if (!node.isVisible() && !(node instanceof CompositeGraphicsNode)) {
                continue;
            }
            if (!plain(node) || !holdsStamps(node)) {
                others.add(node);
                continue;
            }
            paint(content, others);
            content.saveGraphicsState();
            AffineTransform transform = node.getTransform();
            if (transform != null && !transform.isIdentity()) {
                content.transform(new Matrix(transform));
            }
            if (node instanceof Stamp stamp) {
                PDFormXObject master = master(stamp.master());
                if (master != null) {
                    content.drawForm(master);
                }
            } else {
                write(content, ((CompositeGraphicsNode) node).getChildren());
            }
            content.restoreGraphicsState();
        }
        paint(content, others);
    }

    /** Null for a shape without any extent. */
    private PDFormXObject master(GraphicsNode node) throws IOException {
        if (!masters.containsKey(node)) {
            masters.put(node, holdsStamps(node) && plain(node) ? composed(node) : painted(List.of(node)));
        }
        return masters.get(node);
    }

    private PDFormXObject composed(GraphicsNode node) throws IOException {
        Rectangle2D bounds = bounds(node);
        if (bounds == null) {
            return null;
        }
        PDAppearanceStream form = new PDAppearanceStream(document);
        form.setBBox(new PDRectangle((float) bounds.getMinX(), (float) bounds.getMinY(), (float) bounds.getWidth(), (float) bounds.getHeight()));
        fill(form, node, new AffineTransform());
        return form;
    }

    private void paint(PDPageContentStream content, List<GraphicsNode> nodes) throws IOException {
        PDFormXObject form = painted(nodes);
        if (form != null) {
            content.drawForm(form);
        }
        nodes.clear();
    }

    private PDFormXObject painted(List<GraphicsNode> nodes) throws IOException {
        Rectangle2D bounds = null;
        for (GraphicsNode node : nodes) {
            Rectangle2D more = bounds(node);
            bounds = bounds == null ? more : more == null ? bounds : bounds.createUnion(more);
        }
        if (bounds == null) {
            return null;
        }
        PdfBoxGraphics2D graphics = new PdfBoxGraphics2D(document, (float) bounds.getWidth(), (float) bounds.getHeight());
        graphics.translate(-bounds.getMinX(), -bounds.getMinY());
        nodes.forEach(node -> node.paint(graphics));
        graphics.dispose();
        PDFormXObject form = graphics.getXFormObject();
        form.setMatrix(new AffineTransform(1, 0, 0, -1, bounds.getMinX(), bounds.getMaxY()));
        return form;
    }

    /** In the coordinates of what the node stands in. */
    private static Rectangle2D bounds(GraphicsNode node) {
        Rectangle2D bounds = node.getTransformedBounds(new AffineTransform());
        return bounds == null || bounds.isEmpty() ? null : bounds;
    }

    private boolean holdsStamps(GraphicsNode node) {
        if (node instanceof Stamp) {
            return true;
        }
        if (!(node instanceof CompositeGraphicsNode group)) {
            return false;
        }
        Boolean known = stamped.get(node);
        if (known == null) {
            known = false;
            for (Object child : group.getChildren()) {
                known |= plain((GraphicsNode) child) && holdsStamps((GraphicsNode) child);
            }
            stamped.put(node, known);
        }
        return known;
    }

    /** Nothing about the node needs more than a transform. */
    private static boolean plain(GraphicsNode node) {
        boolean opaque = node.getComposite() == null || node.getComposite().equals(AlphaComposite.SrcOver);
        // An svg element clips to its own edge, as the form does.
        boolean clipped = node.getClip() != null && !(node instanceof CanvasGraphicsNode);
        return opaque && !clipped && node.getMask() == null && node.getFilter() == null;
    }
}
