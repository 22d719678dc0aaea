package boughwright.kit;

import boughwright.catalogue.Product;

/**
 * One product in one slot: everything that choosing it would bring.
 *
 * @param pieces that the slot takes of this product: rolls by their length, strings by their bulbs, else the quantity
 * @param ownedUsed pieces of those that the customer has already
 * @param packs to buy for the rest
 * @param coins what the packs cost, in the currency's smallest coin
 * @param leftoverCoins what the pieces beyond the need cost
 */
record Candidate(Slot slot, Product product, int pieces, int ownedUsed, int packs, long coins, long leftoverCoins) {

    static Candidate of(Slot slot, Product product, int owned) {
        int pieces = pieces(slot, product);
        int ownedUsed = Math.min(owned, pieces);
        int toBuy = pieces - ownedUsed;
        int packs = (toBuy + product.pack() - 1) / product.pack();
        long coins = product.price().times(packs).coins();
        long leftover = Math.round((double) product.price().coins() * (packs * product.pack() - toBuy) / product.pack());
        return new Candidate(slot, product, pieces, ownedUsed, packs, coins, leftover);
    }

    /** Metres in the roll that a need for ribbon counts: 10 yd. */
    private static final double ROLL = 9.144;

    private static int pieces(Slot slot, Product product) {
        int quantity = slot.quantity();
        return switch (slot.first().unit()) {
            case BULB -> {
                int bulbs = product.lights().orElseThrow().bulbs();
                yield (quantity + bulbs - 1) / bulbs;
            }
            // A roll cut a millimetre short is still a roll.
            case ROLL -> (int) Math.ceil(quantity * ROLL / product.length().metres() - 1e-3);
            default -> quantity;
        };
    }
}
