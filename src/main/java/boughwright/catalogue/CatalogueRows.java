package boughwright.catalogue;

import boughwright.brief.Word;
import boughwright.catalogue.Traits.Family;
import boughwright.catalogue.Traits.Finish;
import boughwright.catalogue.Traits.Level;
import boughwright.catalogue.Traits.Material;
import boughwright.catalogue.Traits.Pattern;
import boughwright.catalogue.Traits.Safety;
import boughwright.catalogue.Traits.Shape;
import boughwright.catalogue.Traits.Texture;
import boughwright.catalogue.Traits.Weave;
import boughwright.colour.Lab;
import boughwright.colour.Srgb;
import boughwright.measure.Length;
import boughwright.measure.Money;
import boughwright.needs.Role;
import boughwright.text.Text;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * A product as a row of text cells, and back: the one check behind every way into the catalogue, whatever the format of the file.
 *
 * <p>Cells are those that {@code catalogue-samples/README.md} describes. What is at fault is added to the list that is handed in.
 */
public final class CatalogueRows {

    /** Every column that a row may have: those of {@link CatalogueReader#COLUMNS} and {@code brand}, which may be missing. */
    public static final List<String> COLUMNS = with(CatalogueReader.COLUMNS, "brand");

    private final Set<String> looks;
    private final Currency currency;

    /**
     * @param looks ids of the looks that a product may name
     * @param currency the shop's
     */
    public CatalogueRows(Set<String> looks, Currency currency) {
        this.looks = Set.copyOf(looks);
        this.currency = currency;
    }

    private static List<String> with(List<String> columns, String further) {
        List<String> all = new ArrayList<>(columns);
        all.add(further);
        return List.copyOf(all);
    }

    /**
     * Reads one product.
     *
     * @param line told with each fault
     * @param header columns of {@link #COLUMNS}, in any order; one that is missing counts as a blank cell
     * @param cells as many as the header
     * @return empty when a fault was added
     */
    public Optional<Product> product(int line, List<String> header, String[] cells, List<CatalogueFault> faults) {
        int before = faults.size();
        Row row = new Row(line, header, cells, faults);
        String sku = row.required("sku");
        String gtin = row.gtin();
        String name = row.required("name");
        Set<Role> roles = row.words("roles", Role.class, Role::bought);
        if (row.text("roles").isEmpty()) {
            row.fault("roles", Text.of("catalogue.roles.none"));
        }
        Family family = row.word("family", Family.class);
        Srgb colour = row.colour("colour");
        Optional<Srgb> second = row.text("second_colour").isEmpty() ? Optional.empty() : Optional.ofNullable(row.colour("second_colour"));
        Texture texture = row.word("texture", Texture.class);
        Finish finish = row.word("finish", Finish.class);
        Material material = row.word("material", Material.class);
        Shape shape = row.word("shape", Shape.class);
        boolean ribbon = roles.stream().anyMatch(Role::ribbon);
        boolean light = roles.contains(Role.LIGHT_STRING);
        Optional<Pattern> pattern = ribbon ? Optional.ofNullable(row.word("pattern", Pattern.class)) : Optional.empty();
        Optional<Weave> weave = ribbon ? Optional.ofNullable(row.word("weave", Weave.class)) : Optional.empty();
        if (!ribbon) {
            row.unused("pattern", "weave");
        }
        if (!light) {
            row.unused("bulbs", "watts", "max_run");
        }
        double width = row.decimal("width_mm", 0.1, 2_000);
        boolean hasLength = ribbon || light || roles.stream().anyMatch(Role::stem) || roles.contains(Role.FEATURE_ORNAMENT);
        double length = hasLength || !row.text("length_mm").isEmpty() ? row.decimal("length_mm", hasLength ? 1 : 0, 200_000) : 0;
        Optional<Product.Lights> lights = light
                ? Optional.of(new Product.Lights(row.whole("bulbs", 1, 10_000), row.decimal("watts", 0.1, 2_000), row.whole("max_run", 0, 1_000)))
                : Optional.empty();
        int pack = row.whole("pack", 1, 1_000);
        Money price = row.price(currency);
        Level level = row.word("level", Level.class);
        int stock = row.stock();
        String shelf = row.required("shelf");
        Set<String> itsLooks = row.listed("looks", looks);
        Set<Safety> safety = row.words("safety", Safety.class, s -> true);
        if (faults.size() > before) {
            return Optional.empty();
        }
        return Optional.of(new Product(sku, gtin, name, row.text("brand"), roles, family, colour, second, texture, finish, material, shape, pattern,
                weave, Length.ofMillimetres(width), Length.ofMillimetres(length), lights, pack, price, level, stock, shelf, itsLooks, safety,
                Lab.of(colour)));
    }

    /** Packs on hand, from a row that names its product by sku or gtin or both; empty when a fault was added. */
    public OptionalInt stock(int line, List<String> header, String[] cells, List<CatalogueFault> faults) {
        int before = faults.size();
        Row row = new Row(line, header, cells, faults);
        row.known();
        int stock = row.stock();
        return faults.size() == before ? OptionalInt.of(stock) : OptionalInt.empty();
    }

    /** The price of a pack, from a row that names its product by sku or gtin or both; empty when a fault was added. */
    public Optional<Money> price(int line, List<String> header, String[] cells, List<CatalogueFault> faults) {
        int before = faults.size();
        Row row = new Row(line, header, cells, faults);
        row.known();
        Money price = row.price(currency);
        return faults.size() == before ? Optional.of(price) : Optional.empty();
    }

    /** The product's cells under {@link #COLUMNS}, from which {@link #product} makes an equal one. */
    public static List<String> cells(Product p) {
        return List.of(p.sku(), p.gtin(), p.name(), words(p.roles()), p.family().word(), p.colour().hex(), p.secondColour().map(Srgb::hex).orElse(""),
                p.texture().word(), p.finish().word(), p.material().word(), p.shape().word(), p.pattern().map(Word::word).orElse(""),
                p.weave().map(Word::word).orElse(""), plain(p.width().millimetres()), p.length().metres() == 0 ? "" : plain(p.length().millimetres()),
                p.lights().map(l -> String.valueOf(l.bulbs())).orElse(""), p.lights().map(l -> plain(l.watts())).orElse(""),
                p.lights().map(l -> String.valueOf(l.runLimit())).orElse(""), String.valueOf(p.pack()), p.price().decimal(),
                p.price().currency().getCurrencyCode(), p.level().word(), String.valueOf(p.stock()), p.shelf(), String.join(" ", p.looks()),
                words(p.safety()), p.brand());
    }

    private static String words(Collection<? extends Word> words) {
        return words.stream().map(Word::word).collect(Collectors.joining(" "));
    }

    /** Six decimals, as many as a cell may have, hide what is lost between millimetres and metres. */
    private static String plain(double value) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(6, RoundingMode.HALF_EVEN).stripTrailingZeros();
        return rounded.toPlainString();
    }
}
