package boughwright.document;

import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * Builds a page as a tree of elements, so that no text can ever be read as markup.
 *
 * <p>Characters that XML does not allow, and halves of surrogate pairs, are left out.
 */
final class Html {

    private final Document document;
    private Node here;

    Html(String language) {
        try {
            document = DocumentBuilderFactory.newInstance().newDocumentBuilder().newDocument();
        } catch (ParserConfigurationException e) {
            throw new IllegalStateException("the platform has no XML", e);
        }
        Element root = document.createElement("html");
        root.setAttribute("lang", language);
        document.appendChild(root);
        here = root;
    }

    Document document() {
        return document;
    }

    /** An element with whatever {@code inside} puts into it. */
    Html in(String tag, String kind, Runnable inside) {
        Node outer = here;
        Element element = document.createElement(tag);
        if (!kind.isEmpty()) {
            element.setAttribute("class", kind);
        }
        outer.appendChild(element);
        here = element;
        inside.run();
        here = outer;
        return this;
    }

    Html put(String tag, String kind, String text) {
        return in(tag, kind, () -> text(text));
    }

    Html text(String text) {
        here.appendChild(document.createTextNode(printable(text)));
        return this;
    }

    /** Gives the element that is open an attribute. */
    Html with(String attribute, String value) {
        ((Element) here).setAttribute(attribute, printable(value));
        return this;
    }

    static String printable(String text) {
        StringBuilder kept = new StringBuilder(text.length());
        text.codePoints().filter(Html::allowed).forEach(kept::appendCodePoint);
        return kept.toString();
    }

    private static boolean allowed(int c) {
        return c == '\t' || c == '\n' || c >= 0x20 && c < 0x7f || c >= 0xa0 && c < 0xd800 || c >= 0xe000 && c < 0xfffe || c > 0xffff;
    }
}
