package boughwright.kit;

import boughwright.catalogue.Product;
import boughwright.needs.Layer;
import boughwright.needs.Need;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * One product in one slot: everything that choosing it would bring.
 *
 * @param pieces that the slot takes of this product: rolls by their length, strings by their bulbs, else the quantity
 * @param ownedUsed pieces of those that the customer has already
 * @param packs to buy for the rest
 * @param coins what the packs cost, in the currency's smallest coin
 * @param leftoverCoins what the pieces beyond the need cost
 * @param breaks ids of the wishes that choosing it would break
 */
record Candidate(Slot slot, Product product, int pieces, int ownedUsed, int packs, long coins, long leftoverCoins, Set<String> breaks) {

    /** Metres in the roll that a need for ribbon counts: 10 yd. */
    static final double ROLL = 9.144;

    static Candidate of(Slot slot, Product product, int owned) {
        return of(slot, product, owned, Set.of());
    }

    static Candidate of(Slot slot, Product product, int owned, Set<String> breaks) {
        int pieces = pieces(slot, product);
        int ownedUsed = Math.min(owned, pieces);
        int toBuy = pieces - ownedUsed;
        int packs = (toBuy + product.pack() - 1) / product.pack();
        long price = product.price().coins();
        long leftover = Math.round((double) price * (packs * product.pack() - toBuy) / product.pack());
        return new Candidate(slot, product, pieces, ownedUsed, packs, price * packs, leftover, breaks);
    }

    /** As this, breaking more wishes. */
    Candidate breaking(Set<String> more) {
        Set<String> all = new TreeSet<>(breaks);
        all.addAll(more);
        return new Candidate(slot, product, pieces, ownedUsed, packs, coins, leftoverCoins, all);
    }

    /** What one of the slot's needs takes of the whole. */
    record Share(Need need, int quantity, int owned, int packs) {
    }

    /** Pieces and packs shared out over the needs of the slot, in order; what one pack holds too much the next need takes first. */
    List<Share> shares() {
        List<Need> needs = slot.needs();
        if (needs.size() == 1) {
            return List.of(new Share(needs.get(0), pieces, ownedUsed, packs));
        }
        List<Share> shares = new ArrayList<>();
        int piecesSoFar = 0;
        int ownedSoFar = 0;
        int packsSoFar = 0;
        for (Need need : needs) {
            int ownedHere = Math.min(need.quantity(), ownedUsed - ownedSoFar);
            piecesSoFar += need.quantity();
            ownedSoFar += ownedHere;
            int packsNow = (piecesSoFar - ownedSoFar + product.pack() - 1) / product.pack();
            shares.add(new Share(need, need.quantity(), ownedHere, packsNow - packsSoFar));
            packsSoFar = packsNow;
        }
        return shares;
    }

    /** What it costs in one layer. */
    long coinsIn(Layer layer) {
        return product.price().coins() * shares().stream().filter(s -> s.need().layer() == layer).mapToInt(Share::packs).sum();
    }

    static int pieces(Slot slot, Product product) {
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
