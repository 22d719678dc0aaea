package boughwright.intake;

import boughwright.text.Text;
import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.PushbackInputStream;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.Set;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/**
 * Goes through one part of a spreadsheet element by element, with the JDK's own parser, in UTF-8 as all that write spreadsheets use. What is
 * no proper XML, or asks too much, is a refusal.
 */
final class XmlPart implements Closeable {

    private static final Set<Integer> TEXTS = Set.of(XMLStreamConstants.CHARACTERS, XMLStreamConstants.CDATA, XMLStreamConstants.SPACE);
    private static final int DEEPEST = 64;
    /** Names of elements and attributes, which a parser keeps; a sheet has some dozens. */
    private static final int MOST_NAMES = 1_000;

    private final String name;
    private final InputStream in;
    private final XMLStreamReader xml;
    private final Set<String> names = new HashSet<>();
    private int depth;
    private int namespaces;

    XmlPart(String name, InputStream in) throws RefusedFile {
        this.name = name;
        this.in = in;
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        try {
            this.xml = factory.createXMLStreamReader(new XmlPieces(new InputStreamReader(unmarked(in), StandardCharsets.UTF_8.newDecoder()
                    .onMalformedInput(CodingErrorAction.REPORT).onUnmappableCharacter(CodingErrorAction.REPORT))));
        } catch (XMLStreamException | IOException | RuntimeException e) {
            throw refused(e);
        }
    }

    /** Without the byte order mark that may stand before UTF-8. */
    private static InputStream unmarked(InputStream in) throws IOException {
        PushbackInputStream from = new PushbackInputStream(in, 3);
        byte[] begins = from.readNBytes(3);
        if (begins.length < 3 || begins[0] != (byte) 0xEF || begins[1] != (byte) 0xBB || begins[2] != (byte) 0xBF) {
            from.unread(begins);
        }
        return from;
    }

    /** To the next beginning or end of an element; false at the end. */
    boolean next() throws RefusedFile {
        try {
            while (xml.hasNext()) {
                int event = xml.next();
                if (event == XMLStreamConstants.START_ELEMENT) {
                    begun();
                    return true;
                }
                if (event == XMLStreamConstants.END_ELEMENT) {
                    depth--;
                    return true;
                }
            }
            return false;
        } catch (XMLStreamException | RuntimeException e) {
            // The parser of the JDK answers some broken texts with exceptions that it does not declare.
            throw refused(e);
        }
    }

    private void begun() throws RefusedFile {
        names.add(xml.getLocalName());
        for (int i = 0; i < xml.getAttributeCount(); i++) {
            names.add(xml.getAttributeLocalName(i));
        }
        namespaces += xml.getNamespaceCount();
        if (++depth > DEEPEST || names.size() > MOST_NAMES || namespaces > MOST_NAMES) {
            throw broken();
        }
    }

    boolean begins(String element) {
        return xml.isStartElement() && xml.getLocalName().equals(element);
    }

    boolean ends(String element) {
        return xml.isEndElement() && xml.getLocalName().equals(element);
    }

    /** An attribute of the element that begins here, or null. */
    String attribute(String attribute) {
        for (int i = 0; i < xml.getAttributeCount(); i++) {
            if (xml.getAttributeLocalName(i).equals(attribute)) {
                return xml.getAttributeValue(i);
            }
        }
        return null;
    }

    /** The value of an attribute that is a whole number from 0, or {@code otherwise} when there is none. */
    int number(String attribute, int otherwise) throws RefusedFile {
        String value = attribute(attribute);
        if (value == null) {
            return otherwise;
        }
        if (!value.matches("[0-9]{1,9}")) {
            throw broken();
        }
        return Integer.parseInt(value);
    }

    /** All text of the element that begins here, up to its end, without readings for East Asian characters. */
    String text() throws RefusedFile {
        StringBuilder text = new StringBuilder();
        int open = 1;
        int reading = 0;
        try {
            while (open > 0) {
                int event = xml.next();
                if (event == XMLStreamConstants.START_ELEMENT) {
                    begun();
                    open++;
                    reading = reading > 0 || xml.getLocalName().equals("rPh") ? reading + 1 : 0;
                } else if (event == XMLStreamConstants.END_ELEMENT) {
                    depth--;
                    open--;
                    reading = Math.max(0, reading - 1);
                } else if (reading == 0 && TEXTS.contains(event)) {
                    text.append(xml.getText());
                    if (text.length() > Limits.LONGEST_TEXT) {
                        throw new RefusedFile(Refusal.TEXT_LENGTH, String.valueOf(Limits.LONGEST_TEXT));
                    }
                }
            }
        } catch (XMLStreamException | RuntimeException e) {
            throw refused(e);
        }
        return text.toString();
    }

    RefusedFile broken() {
        return new RefusedFile(Refusal.BROKEN, Text.of("intake.broken.xml", name));
    }

    private RefusedFile refused(Exception e) {
        for (Throwable cause = e; cause != null; cause = cause instanceof XMLStreamException x && x.getNestedException() != null
                ? x.getNestedException() : cause.getCause()) {
            if (cause instanceof XmlPieces.Stopped stopped) {
                return stopped.refused();
            }
        }
        return broken();
    }

    @Override
    public void close() throws IOException {
        in.close();
    }
}
