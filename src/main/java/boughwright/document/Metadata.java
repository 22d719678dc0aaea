package boughwright.document;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDMetadata;

/** What the PDF says of itself: its title, its maker and its language, but no date, so that nothing in it depends on a clock. */
final class Metadata {

    private static final String XMP = """
            <?xpacket begin="" id="W5M0MpCehiHzreSzNTczkc9d"?>
            <x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
            <rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/" xmlns:pdf="http://ns.adobe.com/pdf/1.3/" pdf:Producer="Boughwright">
            <dc:title><rdf:Alt><rdf:li xml:lang="x-default">%s</rdf:li></rdf:Alt></dc:title>
            <dc:language><rdf:Bag><rdf:li>%s</rdf:li></rdf:Bag></dc:language>
            </rdf:Description></rdf:RDF></x:xmpmeta>
            <?xpacket end="r"?>""";

    private Metadata() {
    }

    static void settle(PDDocument document) throws IOException {
        document.getDocumentInformation().getCOSObject().removeItem(COSName.CREATION_DATE);
        String xmp = XMP.formatted(escaped(document.getDocumentInformation().getTitle()), escaped(document.getDocumentCatalog().getLanguage()));
        document.getDocumentCatalog().setMetadata(new PDMetadata(document, new ByteArrayInputStream(xmp.getBytes(StandardCharsets.UTF_8))));
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }
}
