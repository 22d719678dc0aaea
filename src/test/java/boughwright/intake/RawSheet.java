package boughwright.intake;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** An XLSX written part by part (ECMA-376), so that it can hold what no spreadsheet program would write. */
final class RawSheet {

    private static final String MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
    private static final String RELATIONSHIPS = "http://schemas.openxmlformats.org/package/2006/relationships";
    private static final String OFFICE = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";

    private final Map<String, byte[]> parts = new LinkedHashMap<>();

    private RawSheet() {
    }

    /** One sheet with these rows, as XML. */
    static RawSheet of(String rows) {
        RawSheet sheet = new RawSheet();
        sheet.part("[Content_Types].xml", "<Types xmlns=\"http://schemas.openxmlformats.org/package/2006/content-types\">"
                + "<Override PartName=\"/xl/workbook.xml\" ContentType=\"application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml\"/>"
                + "<Override PartName=\"/xl/sharedStrings.xml\" ContentType=\"application/vnd.openxmlformats-officedocument.spreadsheetml.sharedStrings+xml\"/>"
                + "<Override PartName=\"/xl/styles.xml\" ContentType=\"application/vnd.openxmlformats-officedocument.spreadsheetml.styles+xml\"/></Types>");
        sheet.part("_rels/.rels", "<Relationships xmlns=\"" + RELATIONSHIPS + "\"><Relationship Id=\"rId1\" Type=\"" + OFFICE
                + "/officeDocument\" Target=\"xl/workbook.xml\"/></Relationships>");
        sheet.part("xl/workbook.xml", "<workbook xmlns=\"" + MAIN + "\" xmlns:r=\"" + OFFICE
                + "\"><sheets><sheet name=\"List\" sheetId=\"1\" r:id=\"rId1\"/></sheets></workbook>");
        sheet.part("xl/_rels/workbook.xml.rels", "<Relationships xmlns=\"" + RELATIONSHIPS + "\">"
                + "<Relationship Id=\"rId1\" Type=\"" + OFFICE + "/worksheet\" Target=\"worksheets/sheet1.xml\"/>"
                + "<Relationship Id=\"rId2\" Type=\"" + OFFICE + "/sharedStrings\" Target=\"/xl/sharedStrings.xml\"/>"
                + "<Relationship Id=\"rId3\" Type=\"" + OFFICE + "/styles\" Target=\"styles.xml\"/></Relationships>");
        sheet.part("xl/sharedStrings.xml", "<sst xmlns=\"" + MAIN + "\"/>");
        sheet.part("xl/styles.xml", "<styleSheet xmlns=\"" + MAIN + "\"><cellXfs><xf numFmtId=\"0\"/></cellXfs></styleSheet>");
        return sheet.part("xl/worksheets/sheet1.xml", worksheet(rows));
    }

    static String worksheet(String rows) {
        return "<worksheet xmlns=\"" + MAIN + "\"><sheetData>" + rows + "</sheetData></worksheet>";
    }

    /** A row of inline strings. */
    static String row(int number, String... cells) {
        StringBuilder row = new StringBuilder("<row r=\"" + number + "\">");
        for (int i = 0; i < cells.length; i++) {
            row.append("<c r=\"").append(Recognition.letters(i)).append(number).append("\" t=\"inlineStr\"><is><t>").append(escaped(cells[i]))
                    .append("</t></is></c>");
        }
        return row.append("</row>").toString();
    }

    static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }

    RawSheet part(String name, String xml) {
        return part(name, xml.getBytes(StandardCharsets.UTF_8));
    }

    RawSheet part(String name, byte[] bytes) {
        parts.put(name, bytes);
        return this;
    }

    /** Strings to be pointed at from cells, as XML of each {@code si}. */
    RawSheet shared(String... items) {
        return part("xl/sharedStrings.xml", "<sst xmlns=\"" + MAIN + "\"><si>" + String.join("</si><si>", items) + "</si></sst>");
    }

    RawSheet styles(String xml) {
        return part("xl/styles.xml", "<styleSheet xmlns=\"" + MAIN + "\">" + xml + "</styleSheet>");
    }

    RawSheet without(String name) {
        parts.remove(name);
        return this;
    }

    byte[] bytes() {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            for (Map.Entry<String, byte[]> part : parts.entrySet()) {
                zip.putNextEntry(new ZipEntry(part.getKey()));
                zip.write(part.getValue());
                zip.closeEntry();
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }
}
