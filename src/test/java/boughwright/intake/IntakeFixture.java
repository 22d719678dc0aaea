package boughwright.intake;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.catalogue.CatalogueFixture;
import boughwright.catalogue.CatalogueReader;
import boughwright.catalogue.CatalogueReading;
import boughwright.catalogue.Product;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Currency;
import java.util.List;
import java.util.Set;

/** Files to be brought, and what comes of them. */
final class IntakeFixture {

    static final Set<String> LOOKS = CatalogueFixture.LOOKS;
    static final Currency USD = Currency.getInstance("USD");

    private IntakeFixture() {
    }

    static List<Product> season() {
        return ((CatalogueReading.Read) new CatalogueReader(LOOKS, USD).read(CatalogueFixture.sample("season.csv"))).catalogue().products();
    }

    /** A file of the text in UTF-8. */
    static Path stored(Path folder, String text) {
        return stored(folder, text.getBytes(StandardCharsets.UTF_8));
    }

    static Path stored(Path folder, byte[] bytes) {
        try {
            return Files.write(Files.createTempFile(folder, "brought", ".bin"), bytes);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static IntakeFile opened(Path stored) {
        Opening opening = IntakeFile.of("brought", stored);
        assertThat(opening).isInstanceOf(Opening.Opened.class);
        return ((Opening.Opened) opening).file();
    }

    static Opening.Refused refused(Path stored, Limits limits) {
        Opening opening = IntakeFile.of("brought", stored, limits);
        assertThat(opening).isInstanceOf(Opening.Refused.class);
        return (Opening.Refused) opening;
    }

    /** Read as guessed. */
    static Delivery.Read read(IntakeFile file, Kind kind) {
        return read(file, kind, Mapping.of(ColumnGuess.of(file, kind)));
    }

    static Delivery.Read read(IntakeFile file, Kind kind, Mapping mapping) {
        Delivery delivery = Intake.read(file, kind, mapping, LOOKS, USD, Progress.SILENT);
        assertThat(delivery).isInstanceOf(Delivery.Read.class);
        return (Delivery.Read) delivery;
    }

    static byte[] written(Format format, List<Product> products) {
        try {
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            CatalogueFile.write(format, products, out);
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
