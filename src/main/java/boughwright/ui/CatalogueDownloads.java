package boughwright.ui;

import boughwright.intake.CatalogueFile;
import boughwright.intake.Format;
import boughwright.intake.IntakeFault;
import boughwright.intake.IntakeFile;
import boughwright.intake.MarkedCopy;
import boughwright.shelf.Shelf;
import boughwright.text.Text;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.server.streams.DownloadHandler;
import com.vaadin.flow.server.streams.DownloadResponse;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.util.Currency;
import java.util.List;
import java.util.Locale;

/** Files to take along: the shelf as it is, an empty form of it, a file with what is to be mended marked in it. */
final class CatalogueDownloads extends Div {

    CatalogueDownloads(Shelf shelf) {
        addClassName("line-links");
        add(Controls.words(Text.of("shelf.download"), "soft"));
        for (Format format : Format.values()) {
            add(link("catalogue." + format.extension(), format, format.name(), out -> CatalogueFile.write(format, shelf.onSale(), out)));
        }
    }

    static Anchor template(Format format, Currency currency) {
        return link("catalogue-form." + format.extension(), format, format.name(), out -> CatalogueFile.template(format, currency, out));
    }

    static Anchor marked(IntakeFile file, List<IntakeFault> faults) {
        Format format = MarkedCopy.format(file);
        String bare = file.name().replaceAll("\\.[A-Za-z]{2,4}$", "");
        Anchor link = link(bare + "-to-mend." + format.extension(), format, Text.of("shelf.delivery.marked", format.name().toUpperCase(Locale.ROOT)),
                out -> MarkedCopy.write(file, faults, out));
        link.addClassNames("button", "quiet");
        return link;
    }

    private interface Writing {
        void to(OutputStream out) throws IOException;
    }

    private static Anchor link(String name, Format format, String words, Writing writing) {
        Anchor link = new Anchor(DownloadHandler.fromInputStream(event -> {
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            writing.to(bytes);
            return new DownloadResponse(new ByteArrayInputStream(bytes.toByteArray()), name, format.mediaType(), bytes.size());
        }), words);
        link.getElement().setAttribute("download", true);
        return link;
    }
}
