package boughwright.intake;

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
import boughwright.colour.Srgb;
import boughwright.measure.Length;
import boughwright.measure.Money;
import boughwright.needs.Role;
import boughwright.text.Text;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The two invented products of a template: one with few cells, one with more. Their GTINs are of the range that GS1 leaves to shops. */
final class Examples {

    private static final Srgb GOLD = new Srgb(0xc9, 0xa2, 0x4b);
    private static final Srgb RED = new Srgb(0x8e, 0x1f, 0x27);

    private Examples() {
    }

    static List<Product> of(Currency currency) {
        Product ball = new Product("EXAMPLE-1", "2000000000015", Text.of("intake.example.ball"), Text.of("intake.example.brand"),
                Set.of(Role.FILLER_BALL), Family.GOLD, GOLD, Optional.empty(), Texture.SMOOTH, Finish.GLASS, Material.GLASS, Shape.BALL,
                Optional.empty(), Optional.empty(), Length.ofMillimetres(60), Length.ofMillimetres(0), Optional.empty(), 12,
                Money.ofCoins(1_500, currency), Level.EVERYDAY, 40,
                Text.of("intake.example.shelf"), Set.of(), Set.of(Safety.FRAGILE), Lab.of(GOLD));
        Product ribbon = new Product("EXAMPLE-2", "2000000000022", Text.of("intake.example.ribbon"), "", Set.of(Role.OVERLAY_RIBBON), Family.RED, RED,
                Optional.of(GOLD), Texture.VELVET, Finish.MATTE, Material.FABRIC, Shape.RIBBON, Optional.of(Pattern.STRIPE), Optional.of(Weave.OPEN),
                Length.ofMillimetres(63.5), Length.ofMillimetres(9_144), Optional.empty(), 1, Money.ofCoins(1_250, currency), Level.FINE, 18,
                Text.of("intake.example.shelf"), Set.of(), Set.of(), Lab.of(RED));
        return List.of(ball, ribbon);
    }
}
