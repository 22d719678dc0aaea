package boughwright.kit;

import boughwright.measure.Money;
import boughwright.needs.Layer;
import boughwright.needs.Reason;
import boughwright.needs.Role;

/**
 * One product for one need.
 *
 * <p>When a product serves two needs, as a cluster's stem serves the topper too, its packs are shared out over the lines in
 * order, so that packs and prices of all lines add up to what is bought; a line may then have no pack of its own.
 *
 * @param slot the slot whose product it is; swapping is by slot
 * @param quantity pieces for the need (rolls, strings of lights, stems, balls)
 * @param owned of these, the pieces that the customer has already
 * @param packs bought on this line
 * @param unitPrice of one pack
 * @param price packs × unitPrice
 */
public record KitLine(
        String needId, String slot, String sku, String name, Layer layer, Role role, int quantity, int owned, int packs, int packSize,
        Money unitPrice, Money price, String shelf, Reason reason) {
}
