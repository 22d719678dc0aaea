package boughwright.quote;

import boughwright.measure.Money;

/**
 * One product of a quote.
 *
 * @param packs to buy, at least 1
 * @param packSize pieces in one pack
 * @param each price of one pack, as the shelf says
 * @param price packs × each
 * @param tax of this line, where lines are taxed one by one; else zero
 */
public record QuoteLine(String sku, String name, String shelf, int packs, int packSize, Money each, Money price, Money tax) {
}
