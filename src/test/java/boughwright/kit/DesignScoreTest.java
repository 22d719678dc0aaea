package boughwright.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.catalogue.Traits.Finish;
import boughwright.catalogue.Traits.Level;
import boughwright.catalogue.Traits.Texture;
import boughwright.measure.Length;
import boughwright.needs.Demand;
import boughwright.needs.Layer;
import boughwright.needs.Role;
import boughwright.needs.Trait;
import java.util.Map;
import java.util.Optional;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** Each term by itself on choices so small that its value is worked out by hand in the test; the terms are our own definitions. */
class DesignScoreTest {

    private static final Offset<Double> EXACT = within(1e-12);

    /** One slot for a face flower, or as many as asked for, all of the same size and so of the same say. */
    private static TinyShop flowers(int slots) {
        TinyShop shop = new TinyShop();
        for (int i = 1; i <= slots; i++) {
            shop.need("flower/" + i, Layer.FLORALS, Role.FACE_FLOWER, 1);
        }
        return shop;
    }

    private static Goods flower(String sku) {
        return Goods.of(sku, Role.FACE_FLOWER);
    }

    @Test
    void look_fit_is_one_for_a_product_made_for_the_look_and_counts_texture_and_finish_of_others() {
        TinyShop shop = flowers(1).sell(flower("made").looks("hearth"), flower("texture").texture(Texture.VELVET),
                flower("finish").finish(Finish.SATIN), flower("both").texture(Texture.LEAFY).finish(Finish.MATTE), flower("neither"));
        assertThat(shop.value(Term.LOOK_FIT, "made")).isCloseTo(1, EXACT);
        assertThat(shop.value(Term.LOOK_FIT, "texture")).isCloseTo(0.4, EXACT);
        assertThat(shop.value(Term.LOOK_FIT, "finish")).isCloseTo(0.3, EXACT);
        assertThat(shop.value(Term.LOOK_FIT, "both")).isCloseTo(0.7, EXACT);
        assertThat(shop.value(Term.LOOK_FIT, "neither")).isZero();
    }

    @Test
    void a_slot_says_half_by_its_number_and_half_by_its_visible_area() {
        TinyShop shop = new TinyShop().need("stem", Layer.FLORALS, Role.HEIGHT_STEM, 2).need("flower", Layer.FLORALS, Role.FACE_FLOWER, 3)
                .sell(Goods.of("stem", Role.HEIGHT_STEM).looks("hearth"), flower("flower"));
        // Areas: two stems of 0.014 m² and three flowers of 0.020 m².
        double share = 0.028 / (0.028 + 0.060);
        assertThat(shop.value(Term.LOOK_FIT, "stem", "flower")).isCloseTo(0.5 / 2 + 0.5 * share, EXACT);
    }

    @Test
    void palette_fit_is_what_the_nearest_palette_colour_is_worth_in_the_role() {
        TinyShop shop = flowers(1).demand(new Demand.PaletteParts(Role.FACE_FLOWER, 1.0, 0.8, 0.6, 0.4))
                .sell(flower("main"), flower("second").colour(TinyShop.SECOND), flower("spark").colour(TinyShop.SPARK),
                        flower("ground").colour(TinyShop.GROUND), flower("alien").colour("#ff00ff"));
        assertThat(shop.value(Term.PALETTE_FIT, "main")).isCloseTo(1.0, EXACT);
        assertThat(shop.value(Term.PALETTE_FIT, "second")).isCloseTo(0.8, EXACT);
        assertThat(shop.value(Term.PALETTE_FIT, "spark")).isCloseTo(0.6, EXACT);
        assertThat(shop.value(Term.PALETTE_FIT, "ground")).isCloseTo(0.4, EXACT);
        assertThat(shop.value(Term.PALETTE_FIT, "alien")).isZero();
    }

    @Test
    void a_colour_fits_wholly_up_to_a_difference_of_three_and_not_at_all_from_thirty_two() {
        assertThat(DesignScore.closeness(0)).isEqualTo(1);
        assertThat(DesignScore.closeness(3)).isEqualTo(1);
        assertThat(DesignScore.closeness(17.5)).isCloseTo(0.5, EXACT);
        assertThat(DesignScore.closeness(32)).isZero();
        assertThat(DesignScore.closeness(90)).isZero();
    }

    @Test
    void the_colour_of_lights_is_judged_by_no_palette() {
        TinyShop shop = flowers(1).need("lights", Layer.LIGHTS, Role.LIGHT_STRING, 100)
                .sell(flower("flower").colour("#ff00ff"), Goods.of("main", Role.LIGHT_STRING), Goods.of("near", Role.LIGHT_STRING).colour("#c43a2e"));
        assertThat(shop.value(Term.PALETTE_FIT, "flower", "main")).isZero();
        assertThat(shop.value(Term.NO_NEAR_MISS, "flower", "near")).isCloseTo(1, EXACT);
    }

    @Test
    void palette_shares_lose_half_of_every_distance_from_sixty_thirty_ten() {
        TinyShop shop = flowers(3).demand(new Demand.Shares(0.6, 0.3, 0.1)).sell(flower("main"), flower("main2"), flower("main3"),
                flower("second").colour(TinyShop.SECOND), flower("spark").colour(TinyShop.SPARK), flower("ground").colour(TinyShop.GROUND));
        assertThat(shop.value(Term.PALETTE_SHARES, "main", "second", "spark"))
                .isCloseTo(1 - (0.6 - 1 / 3.0 + 1 / 3.0 - 0.3 + 1 / 3.0 - 0.1) / 2, EXACT);
        assertThat(shop.value(Term.PALETTE_SHARES, "main", "main2", "main3")).isCloseTo(1 - (0.4 + 0.3 + 0.1) / 2, EXACT);
        assertThat(shop.value(Term.PALETTE_SHARES, "main", "main2", "ground"))
                .as("ground counts with second")
                .isCloseTo(1 - (2 / 3.0 - 0.6 + 1 / 3.0 - 0.3 + 0.1) / 2, EXACT);
    }

    @Test
    void texture_variety_counts_different_textures_up_to_what_each_layer_needs() {
        TinyShop shop = flowers(2).need("ball", "ball", Layer.ORNAMENTS, Role.FEATURE_ORNAMENT, 1, Optional.of(Length.ofMillimetres(400)));
        shop.sell(flower("a"), flower("b"), flower("c").texture(Texture.VELVET), Goods.of("ball", Role.FEATURE_ORNAMENT));
        // Four textures make florals varied, three the ornaments.
        assertThat(shop.value(Term.TEXTURE_VARIETY, "a", "b", "ball")).isCloseTo(2 / 7.0, EXACT);
        assertThat(shop.value(Term.TEXTURE_VARIETY, "a", "c", "ball")).isCloseTo(3 / 7.0, EXACT);
    }

    @Test
    void finish_mix_counts_the_finishes_of_ornaments_up_to_three() {
        TinyShop shop = flowers(1);
        for (int i = 1; i <= 4; i++) {
            shop.need("ball/" + i, "ball/" + i, Layer.ORNAMENTS, Role.FILLER_BALL, 1, Optional.of(Length.ofMillimetres(80)));
        }
        shop.sell(flower("flower").finish(Finish.NATURAL));
        for (Finish finish : Finish.values()) {
            shop.sell(Goods.of(finish.word(), Role.FILLER_BALL).finish(finish));
        }
        shop.sell(Goods.of("matte2", Role.FILLER_BALL).finish(Finish.MATTE), Goods.of("matte3", Role.FILLER_BALL).finish(Finish.MATTE),
                Goods.of("matte4", Role.FILLER_BALL).finish(Finish.MATTE));
        assertThat(shop.value(Term.FINISH_MIX, "flower", "matte", "matte2", "matte3", "matte4")).isCloseTo(1 / 3.0, EXACT);
        assertThat(shop.value(Term.FINISH_MIX, "flower", "matte", "satin", "matte3", "matte4")).isCloseTo(2 / 3.0, EXACT);
        assertThat(shop.value(Term.FINISH_MIX, "flower", "matte", "satin", "glass", "glitter")).isCloseTo(1, EXACT);
    }

    @Test
    void scale_mix_counts_small_middling_and_large_heads_among_florals() {
        TinyShop shop = flowers(3).sell(flower("5cm").width(50), flower("7.9cm").width(79), flower("8cm").width(80), flower("12.9cm").width(129),
                flower("13cm").width(130));
        assertThat(shop.value(Term.SCALE_MIX, "5cm", "7.9cm", "8cm")).isCloseTo(2 / 3.0, EXACT);
        assertThat(shop.value(Term.SCALE_MIX, "8cm", "12.9cm", "13cm")).isCloseTo(2 / 3.0, EXACT);
        assertThat(shop.value(Term.SCALE_MIX, "7.9cm", "8cm", "13cm")).isCloseTo(1, EXACT);
    }

    @Test
    void a_near_miss_costs_its_slot_and_a_match_or_another_colour_does_not() {
        TinyShop shop = flowers(1).sell(flower("match"), flower("near").colour("#c43a2e"), flower("other").colour("#e08a3a"));
        double near = difference("#c43a2e");
        double other = difference("#e08a3a");
        assertThat(near).as("a near miss lies between 3 and 8 (CIEDE2000), the test's own colour too").isBetween(3.0, 8.0);
        assertThat(other).isGreaterThan(8);
        assertThat(shop.value(Term.NO_NEAR_MISS, "match")).isCloseTo(1, EXACT);
        assertThat(shop.value(Term.NO_NEAR_MISS, "near")).isZero();
        assertThat(shop.value(Term.NO_NEAR_MISS, "other")).isCloseTo(1, EXACT);
    }

    private static double difference(String hex) {
        return Goods.of("x", Role.FACE_FLOWER).colour(hex).product().lab().difference(Goods.of("y", Role.FACE_FLOWER).product().lab());
    }

    @Test
    void house_preference_is_the_share_of_what_the_house_likes_spread_over_the_slots_of_a_role() {
        TinyShop shop = flowers(2).need("stem", Layer.FLORALS, Role.HEIGHT_STEM, 1)
                .demand(new Demand.Prefer(Role.FACE_FLOWER, Trait.TEXTURE, "velvet", 0.6),
                        new Demand.Prefer(Role.HEIGHT_STEM, Trait.FINISH, "matte", 0.2),
                        new Demand.Prefer(Role.SPRAY, Trait.FINISH, "matte", 1.0))
                .sell(flower("velvet").texture(Texture.VELVET), flower("plain"), Goods.of("stem", Role.HEIGHT_STEM));
        // A wish about sprays does not count on a tree without any.
        assertThat(shop.value(Term.HOUSE_PREFERENCE, "velvet", "plain", "stem")).isCloseTo(0.3 / 0.8, EXACT);
    }

    @Test
    void owned_used_counts_the_kinds_of_owned_pieces_that_find_a_place() {
        TinyShop shop = flowers(2).sell(flower("had"), flower("new"), flower("other")).has("had", 9).has("other", 1);
        assertThat(shop.value(Term.OWNED_USED, "had", "other")).isEqualTo(2);
        assertThat(shop.value(Term.OWNED_USED, "had", "new")).isEqualTo(1);
        assertThat(shop.value(Term.OWNED_USED, "new", "new")).isZero();
    }

    @Test
    void price_level_loses_one_for_each_slot_off_the_level_that_was_chosen_for_its_layer() {
        TinyShop shop = flowers(2).need("ball", "ball", Layer.ORNAMENTS, Role.FEATURE_ORNAMENT, 1, Optional.of(Length.ofMillimetres(400)));
        shop.sell(flower("fine").level(Level.FINE), flower("plain"), Goods.of("ball", Role.FEATURE_ORNAMENT));
        assertThat(shop.value(Term.PRICE_LEVEL, "fine", "plain", "ball")).isZero();
        shop.hand = shop.hand.withLevel(Layer.FLORALS, "fine");
        assertThat(shop.value(Term.PRICE_LEVEL, "fine", "plain", "ball")).isEqualTo(-1);
        assertThat(shop.value(Term.PRICE_LEVEL, "plain", "plain", "ball")).isEqualTo(-2);
    }

    @Test
    void stability_loses_one_for_each_slot_whose_product_is_another_than_before() {
        TinyShop shop = flowers(2).sell(flower("a"), flower("b"), flower("c"));
        shop.hand = shop.hand.keeping(Map.of("flower/1", "a", "flower/9", "c"));
        assertThat(shop.value(Term.STABILITY, "a", "b")).as("a slot that was not there before cannot have changed").isZero();
        assertThat(shop.value(Term.STABILITY, "b", "c")).isEqualTo(-1);
    }

    @Test
    void every_term_says_its_value_in_a_sentence() {
        assertThat(Term.LOOK_FIT.sentence(0.784)).isEqualTo("78 % of the scheme belongs to the look.");
        assertThat(Term.PALETTE_FIT.sentence(0.5)).isEqualTo("The colours come 50 % of the way to the palette’s, each in its place.");
        assertThat(Term.PALETTE_SHARES.sentence(0.91)).isEqualTo("The shares of main, second and spark are 91 % right.");
        assertThat(Term.TEXTURE_VARIETY.sentence(1)).isEqualTo("100 % of the different textures that a full mix shows.");
        assertThat(Term.FINISH_MIX.sentence(2 / 3.0)).isEqualTo("67 % of the different finishes that a full mix of ornaments shows.");
        assertThat(Term.SCALE_MIX.sentence(1 / 3.0)).isEqualTo("33 % of small, middling and large heads are there.");
        assertThat(Term.NO_NEAR_MISS.sentence(0.95)).isEqualTo("95 % of the scheme is free of colours that just miss the palette’s.");
        assertThat(Term.HOUSE_PREFERENCE.sentence(0)).isEqualTo("0 % of what the house likes in this look is met.");
        assertThat(Term.NO_LEFTOVERS.sentence(0.97)).isEqualTo("Packs come out 97 % even.");
        assertThat(Term.THRIFT.sentence(0.6)).isEqualTo("60 % of the points for a low price.");
        assertThat(Term.OWNED_USED.sentence(2)).isEqualTo("2 kinds of piece of your own are used.");
        assertThat(Term.PRICE_LEVEL.sentence(-1)).isEqualTo("One product is off the price level you chose.");
        assertThat(Term.STABILITY.sentence(-3)).isEqualTo("3 products have changed.");
    }

    @Test
    void leftovers_and_price_are_measured_against_a_kit_of_middling_price() {
        TinyShop shop = new TinyShop().need("flower", Layer.FLORALS, Role.FACE_FLOWER, 10)
                .sell(flower("dozen").pack(12, "12.00"), flower("fives").pack(5, "3.00"));
        // Twelve dollars or six: nine on the average; the dozen leaves two pieces of a dollar each.
        assertThat(shop.value(Term.NO_LEFTOVERS, "dozen")).isCloseTo(1 - 2.0 / 9, EXACT);
        assertThat(shop.value(Term.NO_LEFTOVERS, "fives")).isCloseTo(1, EXACT);
        assertThat(shop.value(Term.THRIFT, "dozen")).isCloseTo(1 - 0.5 * 12 / 9, EXACT);
        assertThat(shop.value(Term.THRIFT, "fives")).isCloseTo(1 - 0.5 * 6 / 9, EXACT);
    }

    @Test
    void every_term_is_reported_once_and_gives_its_weight_times_its_value() {
        TinyShop shop = flowers(1).sell(flower("flower"));
        assertThat(shop.terms("flower")).extracting(TermScore::term).containsExactly(Term.values());
        assertThat(shop.terms("flower")).allSatisfy(t -> assertThat(t.points()).isCloseTo(t.value() * t.term().weight(), EXACT));
    }
}
