package boughwright.proposal;

import boughwright.catalogue.Catalogue;
import boughwright.catalogue.CatalogueFault;
import boughwright.catalogue.CatalogueReader;
import boughwright.catalogue.CatalogueReading;
import boughwright.kit.KitSolver;
import boughwright.rulebook.Rulebook;
import boughwright.rulebook.RulebookFault;
import java.io.BufferedReader;
import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Opens a shop: its rulebook and its catalogue, from files or from those that the program brings along. */
public final class Shop {

    private Shop() {
    }

    /** What came of opening a shop. */
    public sealed interface Opening {

        record Open(Designer designer) implements Opening {
        }

        record BadRulebook(List<RulebookFault> faults) implements Opening {
        }

        record BadCatalogue(List<CatalogueFault> faults) implements Opening {
        }
    }

    /**
     * @param rules folder of a rulebook; empty for the one that ships
     * @param catalogue CSV file; empty for the demo shop's season
     * @throws IOException when a file is missing or cannot be read as UTF-8 text
     */
    public static Opening open(Optional<Path> rules, Optional<Path> catalogue) throws IOException {
        Rulebook.Opening opening = Rulebook.open(rules(rules));
        if (opening instanceof Rulebook.Opening.Faulty faulty) {
            return new Opening.BadRulebook(faulty.faults());
        }
        Rulebook rulebook = ((Rulebook.Opening.Open) opening).rulebook();
        Goods goods = goods(rulebook.choices().looks().stream().map(l -> l.id()).collect(Collectors.toSet()), rulebook.choices().currency(), catalogue);
        return goods instanceof Goods.Faulty faulty
                ? new Opening.BadCatalogue(faulty.faults())
                : new Opening.Open(new Designer(rulebook, ((Goods.Read) goods).catalogue(), new KitSolver()));
    }

    /** @param folder of a rulebook; empty for the one that ships */
    public static Rulebook.Source rules(Optional<Path> folder) {
        return path -> folder.isPresent() ? Files.readString(folder.get().resolve(path)) : shipped("rules/" + path);
    }

    /** What came of reading a catalogue. */
    public sealed interface Goods {

        record Read(Catalogue catalogue) implements Goods {
        }

        record Faulty(List<CatalogueFault> faults) implements Goods {
        }
    }

    /**
     * @param looks tags that the catalogue may name
     * @param currency of its prices
     * @param catalogue CSV file; empty for the demo shop's season
     * @throws IOException when the file is missing or cannot be read as UTF-8 text
     */
    public static Goods goods(Set<String> looks, Currency currency, Optional<Path> catalogue) throws IOException {
        CatalogueReading reading = new CatalogueReader(looks, currency).read(catalogueText(catalogue));
        return reading instanceof CatalogueReading.Faulty faulty ? new Goods.Faulty(faulty.faults()) : new Goods.Read(((CatalogueReading.Read) reading).catalogue());
    }

    /**
     * @param catalogue CSV file; empty for the demo shop's season
     * @throws IOException when the file is missing or cannot be read as UTF-8 text
     */
    public static String catalogueText(Optional<Path> catalogue) throws IOException {
        return catalogue.isPresent() ? Files.readString(catalogue.get()) : shipped("catalogue-samples/season.csv");
    }

    private static String shipped(String path) throws IOException {
        try (Reader reader = stream(path)) {
            java.io.StringWriter text = new java.io.StringWriter();
            reader.transferTo(text);
            return text.toString();
        }
    }

    private static Reader stream(String path) throws IOException {
        InputStream in = Shop.class.getResourceAsStream("/" + path);
        if (in == null) {
            throw new FileNotFoundException(path);
        }
        return new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8));
    }
}
