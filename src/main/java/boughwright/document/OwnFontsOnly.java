package boughwright.document;

import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.fontbox.FontBoxFont;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.font.CIDFontMapping;
import org.apache.pdfbox.pdmodel.font.FontMapper;
import org.apache.pdfbox.pdmodel.font.FontMapping;
import org.apache.pdfbox.pdmodel.font.PDCIDSystemInfo;
import org.apache.pdfbox.pdmodel.font.PDFontDescriptor;

/**
 * Answers every wish for a font that is not in the document with the text face.
 *
 * <p>PDFBox would search the machine for fonts before its first page, keep what it found in a file in the user's home, and warn at
 * every document of one that it lacks; no plan needs any of them.
 */
final class OwnFontsOnly implements FontMapper {

    private final TrueTypeFont face;

    OwnFontsOnly(byte[] trueType) {
        try {
            face = new TTFParser().parse(new RandomAccessReadBuffer(trueType));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public FontMapping<TrueTypeFont> getTrueTypeFont(String name, PDFontDescriptor descriptor) {
        return new FontMapping<>(face, false);
    }

    @Override
    public FontMapping<FontBoxFont> getFontBoxFont(String name, PDFontDescriptor descriptor) {
        return new FontMapping<>(face, false);
    }

    @Override
    public CIDFontMapping getCIDFont(String name, PDFontDescriptor descriptor, PDCIDSystemInfo system) {
        return new CIDFontMapping(null, face, false);
    }
}
