package boughwright.kit;

import boughwright.catalogue.Product;
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
import boughwright.measure.Length;
import boughwright.measure.Money;
import boughwright.needs.Role;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** One made-up product, plain unless a test says otherwise: smooth, shiny, in the main colour, a dollar a piece, plenty in stock. */
final class Goods {

    private final String sku;
    private final Set<Role> roles;
    private String colour = TinyShop.MAIN;
    private Texture texture = Texture.SMOOTH;
    private Finish finish = Finish.SHINY;
    private Set<Safety> safety = Set.of();
    private Set<String> looks = Set.of();
    private double width = 80;
    private double length = 400;
    private int bulbs = 100;
    private int pack = 1;
    private String price = "1.00";
    private int stock = 1000;
    private Level level = Level.EVERYDAY;

    private Goods(String sku, Role... roles) {
        this.sku = sku;
        this.roles = new TreeSet<>(Set.of(roles));
        if (this.roles.stream().anyMatch(Role::ribbon)) {
            length = 9144;
        }
    }

    static Goods of(String sku, Role... roles) {
        return new Goods(sku, roles);
    }

    Goods colour(String hex) {
        colour = hex;
        return this;
    }

    Goods texture(Texture other) {
        texture = other;
        return this;
    }

    Goods finish(Finish other) {
        finish = other;
        return this;
    }

    Goods safety(Safety... words) {
        safety = Set.of(words);
        return this;
    }

    Goods looks(String... ids) {
        looks = Set.of(ids);
        return this;
    }

    Goods width(double millimetres) {
        width = millimetres;
        return this;
    }

    Goods length(double millimetres) {
        length = millimetres;
        return this;
    }

    Goods bulbs(int count) {
        bulbs = count;
        return this;
    }

    Goods level(Level other) {
        level = other;
        return this;
    }

    /** So many pieces in a pack at so much a pack. */
    Goods pack(int pieces, String dollars) {
        pack = pieces;
        price = dollars;
        return this;
    }

    Goods stock(int packs) {
        stock = packs;
        return this;
    }

    Product product() {
        boolean ribbon = roles.stream().anyMatch(Role::ribbon);
        return new Product(sku, "2000000000008", "Goods " + sku, "", roles, Family.RED, TinyShop.colour(colour), Optional.empty(), texture, finish,
                Material.PLASTIC, Shape.BALL, ribbon ? Optional.of(Pattern.PLAIN) : Optional.empty(),
                ribbon ? Optional.of(Weave.OPEN) : Optional.empty(), Length.ofMillimetres(width), Length.ofMillimetres(length),
                roles.contains(Role.LIGHT_STRING) ? Optional.of(new Product.Lights(bulbs, 5, 20)) : Optional.empty(), pack,
                Money.read(price, TinyShop.DOLLARS).orElseThrow(), level, stock, "A1-1", looks, safety, Lab.of(TinyShop.colour(colour)));
    }
}
