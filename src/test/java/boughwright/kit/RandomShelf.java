package boughwright.kit;

import boughwright.catalogue.Catalogue;
import boughwright.catalogue.Product;
import boughwright.colour.Lab;
import boughwright.colour.Srgb;
import boughwright.measure.Length;
import boughwright.measure.Money;
import boughwright.needs.Role;
import boughwright.proposal.ProposalFixture;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** Catalogues of any size by seed: each product is one of the season's with another shade, price, stock and size. */
public final class RandomShelf {

    private RandomShelf() {
    }

    public static Catalogue of(int products, long seed) {
        List<Product> season = ProposalFixture.season().catalogue().products();
        SplittableRandom random = new SplittableRandom(seed);
        List<Product> shelf = new ArrayList<>();
        for (int i = 0; i < products; i++) {
            shelf.add(like(season.get(i % season.size()), String.format("RS-%05d", i), random));
        }
        return new Catalogue(shelf);
    }

    private static Product like(Product p, String sku, SplittableRandom random) {
        Srgb colour = new Srgb(shifted(p.colour().red(), random), shifted(p.colour().green(), random), shifted(p.colour().blue(), random));
        long coins = Math.max(25, Math.round(p.price().coins() * (0.6 + 0.8 * random.nextDouble())));
        boolean fixed = p.roles().contains(Role.FILLER_BALL);
        Length width = fixed ? p.width() : new Length(p.width().metres() * (0.9 + 0.2 * random.nextDouble()));
        return new Product(sku, p.gtin(), p.name() + " " + sku, p.brand(), p.roles(), p.family(), colour, p.secondColour(), p.texture(), p.finish(), p.material(),
                p.shape(), p.pattern(), p.weave(), width, p.length(), p.lights(), p.pack(), Money.ofCoins(coins, p.price().currency()), p.level(),
                (int) Math.round(p.stock() * (0.5 + random.nextDouble())), p.shelf(), p.looks(), p.safety(), Lab.of(colour));
    }

    private static int shifted(int channel, SplittableRandom random) {
        return Math.max(0, Math.min(255, channel + random.nextInt(-24, 25)));
    }
}
