package boughwright.rulebook;

import boughwright.text.Text;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/**
 * An XML element with the line it stands on, counted from 1. Names are local names; {@code text} is trimmed and holds the element's own
 * characters only.
 */
record XmlElement(String name, String namespace, int line, Map<String, String> attributes, List<XmlElement> children, String text) {

    /** Elements may nest this deep: far more than a table file needs, far less than a call stack holds. */
    private static final int DEEPEST = 40;

    /** Why a text is not XML that we read, and on which line. */
    static final class Unreadable extends Exception {
        final int line;

        Unreadable(int line, String message) {
            super(message);
            this.line = line;
        }
    }

    /** Reads a whole document. A document type is refused, so no entity of any kind is ever expanded or fetched. */
    static XmlElement read(String xml) throws Unreadable {
        // The JDK's own factory: what else lies on the class path may be laxer.
        var factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        try {
            var reader = factory.createXMLStreamReader(new StringReader(xml));
            XmlElement root = null;
            while (reader.hasNext()) {
                int event = reader.next();
                if (event == XMLStreamConstants.DTD) {
                    throw new Unreadable(reader.getLocation().getLineNumber(), Text.of("rulebook.xml.doctype"));
                }
                if (event == XMLStreamConstants.START_ELEMENT) {
                    root = element(reader, 1);
                }
            }
            return root;
        } catch (XMLStreamException broken) {
            int line = broken.getLocation() == null ? 0 : Math.max(0, broken.getLocation().getLineNumber());
            var message = broken.getMessage().replaceFirst("(?s)^ParseError at .*?Message: ", "");
            throw new Unreadable(line, Text.of("rulebook.xml.broken", message));
        }
    }

    private static XmlElement element(XMLStreamReader reader, int depth) throws XMLStreamException, Unreadable {
        int line = reader.getLocation().getLineNumber();
        if (depth > DEEPEST) {
            throw new Unreadable(line, Text.of("rulebook.xml.deep", DEEPEST));
        }
        var name = reader.getLocalName();
        var namespace = reader.getNamespaceURI() == null ? "" : reader.getNamespaceURI();
        var attributes = new LinkedHashMap<String, String>();
        for (int i = 0; i < reader.getAttributeCount(); i++) {
            attributes.put(reader.getAttributeLocalName(i), reader.getAttributeValue(i));
        }
        var children = new ArrayList<XmlElement>();
        var text = new StringBuilder();
        for (int event = reader.next(); event != XMLStreamConstants.END_ELEMENT; event = reader.next()) {
            switch (event) {
                case XMLStreamConstants.START_ELEMENT -> children.add(element(reader, depth + 1));
                case XMLStreamConstants.CHARACTERS, XMLStreamConstants.CDATA -> text.append(reader.getText());
                case XMLStreamConstants.ENTITY_REFERENCE ->
                        throw new Unreadable(reader.getLocation().getLineNumber(), Text.of("rulebook.xml.entity"));
                default -> { }
            }
        }
        return new XmlElement(name, namespace, line, attributes, List.copyOf(children), text.toString().strip());
    }

    String attribute(String attribute) {
        return attributes.getOrDefault(attribute, "");
    }

    Stream<XmlElement> all(String child) {
        return children.stream().filter(element -> element.name.equals(child));
    }

    Optional<XmlElement> first(String child) {
        return all(child).findFirst();
    }

    /** The text at the end of a path of first children; empty when the path breaks off. */
    String textAt(String... path) {
        var at = Optional.of(this);
        for (var step : path) {
            at = at.flatMap(element -> element.first(step));
        }
        return at.map(XmlElement::text).orElse("");
    }
}
