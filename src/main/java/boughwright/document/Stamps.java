package boughwright.document;

import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.io.InputStream;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import org.apache.batik.dom.svg.SVGOMUseShadowRoot;
import org.apache.batik.bridge.Bridge;
import org.apache.batik.bridge.BridgeContext;
import org.apache.batik.bridge.CSSUtilities;
import org.apache.batik.bridge.ExternalResourceSecurity;
import org.apache.batik.bridge.FontFace;
import org.apache.batik.bridge.FontFamilyResolver;
import org.apache.batik.bridge.NoLoadExternalResourceSecurity;
import org.apache.batik.bridge.NoLoadScriptSecurity;
import org.apache.batik.bridge.SVGUseElementBridge;
import org.apache.batik.bridge.ScriptSecurity;
import org.apache.batik.bridge.UserAgentAdapter;
import org.apache.batik.gvt.AbstractGraphicsNode;
import org.apache.batik.gvt.CompositeGraphicsNode;
import org.apache.batik.gvt.GraphicsNode;
import org.apache.batik.gvt.font.AWTFontFamily;
import org.apache.batik.gvt.font.GVTFontFace;
import org.apache.batik.gvt.font.GVTFontFamily;
import org.apache.batik.util.ParsedURL;
import org.w3c.dom.Element;
import org.w3c.dom.NamedNodeMap;
import org.w3c.dom.Node;
import org.w3c.dom.svg.SVGTransformable;

/**
 * Reads each shape that a picture uses again and again only once.
 *
 * <p>A dressed tree holds some 1,500 uses of some 160 shapes. Copied out, as is usual, they make a PDF of 1.2 MB; kept as
 * stamps of shared masters they make a tenth of it in a fraction of the time.
 */
final class Stamps {

    private Stamps() {
    }

    /** One use of a shape. It paints its master, which other stamps may share. */
    static final class Stamp extends AbstractGraphicsNode {

        private final GraphicsNode master;

        private Stamp(GraphicsNode master) {
            this.master = master;
        }

        GraphicsNode master() {
            return master;
        }

        @Override
        public void primitivePaint(Graphics2D graphics) {
            master.paint(graphics);
        }

        @Override
        public Rectangle2D getPrimitiveBounds() {
            return master.getTransformedBounds(new AffineTransform());
        }

        @Override
        public Rectangle2D getGeometryBounds() {
            return master.getGeometryBounds();
        }

        @Override
        public Rectangle2D getSensitiveBounds() {
            return master.getSensitiveBounds();
        }

        @Override
        public Shape getOutline() {
            return master.getOutline();
        }
    }

    /** Everything that Batik needs to know for one picture. */
    static final class Context extends BridgeContext {

        private final Map<String, GraphicsNode> masters = new HashMap<>();

        Context() {
            super(new Reader());
            setDynamic(false);
        }

        @Override
        public void registerSVGBridges() {
            super.registerSVGBridges();
            putBridge(new UseBridge(masters));
        }
    }

    private static final class UseBridge extends SVGUseElementBridge {

        /** Attributes that say where a thing is or what it means, but not how it looks. */
        private static final Set<String> NEUTRAL = Set.of("id", "transform", "x", "y", "role", "viewBox", "width", "height", "version");

        private final Map<String, GraphicsNode> masters;

        UseBridge(Map<String, GraphicsNode> masters) {
            this.masters = masters;
        }

        @Override
        public Bridge getInstance() {
            return new UseBridge(masters);
        }

        @Override
        public GraphicsNode createGraphicsNode(BridgeContext context, Element use) {
            // The look of a shape depends on what it inherits; two uses share a master only where that is the same.
            String key = looks(use);
            GraphicsNode master = masters.get(key);
            if (master == null) {
                CompositeGraphicsNode copied = buildCompositeGraphicsNode(context, use, null);
                master = (GraphicsNode) copied.get(0);
                copied.remove(0);
                masters.put(key, master);
            }
            Stamp stamp = new Stamp(master);
            associateSVGContext(context, use, stamp);
            stamp.setTransform(computeTransform((SVGTransformable) use, context));
            stamp.setVisible(CSSUtilities.convertVisibility(use));
            return stamp;
        }

        @Override
        public boolean isComposite() {
            return false;
        }

        private static String looks(Element use) {
            StringBuilder looks = new StringBuilder();
            Node node = use;
            while (node != null) {
                NamedNodeMap attributes = node.getAttributes();
                for (int i = 0; attributes != null && i < attributes.getLength(); i++) {
                    String name = attributes.item(i).getNodeName();
                    boolean href = name.endsWith("href");
                    boolean neutral = NEUTRAL.contains(name) || name.startsWith("data-") || name.startsWith("aria-") || name.startsWith("xmlns");
                    if (href ? node == use : !neutral) {
                        looks.append(name).append('=').append(attributes.item(i).getNodeValue()).append('\n');
                    }
                }
                node = node instanceof SVGOMUseShadowRoot shadow ? shadow.getCSSParentNode() : node.getParentNode();
            }
            return looks.toString();
        }
    }

    /** Knows one typeface, runs nothing and fetches nothing. */
    private static final class Reader extends UserAgentAdapter implements FontFamilyResolver {

        private final GVTFontFamily family = new AWTFontFamily(new GVTFontFace("Figtree"), Fonts.PICTURE);

        Reader() {
            addStdFeatures();
        }

        @Override
        public FontFamilyResolver getFontFamilyResolver() {
            return this;
        }

        @Override
        public GVTFontFamily resolve(String name) {
            return family;
        }

        @Override
        public GVTFontFamily resolve(String name, FontFace face) {
            return family;
        }

        @Override
        public GVTFontFamily loadFont(InputStream in, FontFace face) {
            return family;
        }

        @Override
        public GVTFontFamily getDefault() {
            return family;
        }

        @Override
        public GVTFontFamily getFamilyThatCanDisplay(char c) {
            return family;
        }

        @Override
        public ScriptSecurity getScriptSecurity(String type, ParsedURL script, ParsedURL from) {
            return new NoLoadScriptSecurity(type);
        }

        @Override
        public ExternalResourceSecurity getExternalResourceSecurity(ParsedURL resource, ParsedURL from) {
            return new NoLoadExternalResourceSecurity();
        }
    }
}
