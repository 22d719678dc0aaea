package boughwright.document;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import java.awt.Font;
import java.awt.FontFormatException;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.font.FontMappers;

/** The plan's typefaces, read once from the class path; the PDF embeds the glyphs that it uses. */
final class Fonts {

    private record Face(String family, int weight, byte[] trueType) {
    }

    private static final List<Face> FACES = List.of(
            face("Fraunces", 400, "/fonts/fraunces/400Regular/Fraunces_400Regular.ttf"),
            face("Fraunces", 600, "/fonts/fraunces/600SemiBold/Fraunces_600SemiBold.ttf"),
            face("Figtree", 400, "/fonts/figtree/400Regular/Figtree_400Regular.ttf"),
            face("Figtree", 600, "/fonts/figtree/600SemiBold/Figtree_600SemiBold.ttf"));

    /** For the few words in the picture. */
    static final Font PICTURE = awt(FACES.get(2).trueType());

    static {
        FontMappers.set(new OwnFontsOnly(FACES.get(2).trueType()));
    }

    private Fonts() {
    }

    static void offer(PdfRendererBuilder builder) {
        for (Face face : FACES) {
            builder.useFont(() -> new ByteArrayInputStream(face.trueType()), face.family(), face.weight(), FontStyle.NORMAL, true);
        }
    }

    private static Face face(String family, int weight, String path) {
        try (InputStream in = Fonts.class.getResourceAsStream(path)) {
            if (in == null) {
                throw new IllegalStateException(path + " is not on the class path; the build copies it there");
            }
            return new Face(family, weight, in.readAllBytes());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Font awt(byte[] trueType) {
        try {
            return Font.createFont(Font.TRUETYPE_FONT, new ByteArrayInputStream(trueType));
        } catch (FontFormatException | IOException e) {
            throw new IllegalStateException("the text face cannot be read", e);
        }
    }
}
