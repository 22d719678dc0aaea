package boughwright.brief;

import boughwright.colour.Srgb;
import java.util.Currency;
import java.util.List;

/** A small shop of two looks and three palettes, and ways to read briefs in it. */
public final class BriefFixture {

    static final Look ORCHARD = new Look("orchard", "Orchard", "Apples and pine.", "apple", List.of("velvet"), List.of("matte"));
    static final Look FROST = new Look("frost", "Frost", "Ice and birch.", "ice", List.of("faceted"), List.of("glitter"));
    static final Palette APPLE = palette("apple", "#a3202e", "#f3ead9", "#c79a3a", "#24402f");
    static final Palette ICE = palette("ice", "#e9e8e3", "#b9bec4", "#6f8f7c", "#4f5560");
    static final Palette PLUM = palette("plum", "#5e2750", "#d69a3c", "#f0dfc0", "#3d3328");

    static final ShopChoices SHOP = new ShopChoices(List.of(ORCHARD, FROST), List.of(APPLE, ICE, PLUM), Currency.getInstance("USD"));

    private BriefFixture() {
    }

    private static Palette palette(String id, String main, String second, String spark, String ground) {
        return new Palette(id, id, colour(main), colour(second), colour(spark), colour(ground));
    }

    static Srgb colour(String hex) {
        return Srgb.read(hex).orElseThrow();
    }

    static Brief read(String json) {
        return brief(SHOP, json);
    }

    /** The brief that {@code json} holds for a shop; an {@link AssertionError} with the faults when it holds none. */
    public static Brief brief(ShopChoices shop, String json) {
        BriefReading reading = new BriefReader(shop).read(json);
        if (reading instanceof BriefReading.Read read) {
            return read.brief();
        }
        throw new AssertionError(json + " gives " + ((BriefReading.Faulty) reading).faults());
    }

    static List<BriefFault> faults(String json) {
        BriefReading reading = new BriefReader(SHOP).read(json);
        if (reading instanceof BriefReading.Faulty faulty) {
            return faulty.faults();
        }
        throw new AssertionError(json + " was read: " + ((BriefReading.Read) reading).brief());
    }

    /** A brief of a 9 ft tree with further fields of the whole, such as {@code "look": "frost"}. */
    static String with(String fields) {
        return "{\"tree\": {\"height\": \"9 ft\"}, " + fields + "}";
    }

    /** A brief of a 9 ft tree with further fields of the tree. */
    static String withTree(String fields) {
        return "{\"tree\": {\"height\": \"9 ft\", " + fields + "}}";
    }
}
