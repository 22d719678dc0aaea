package boughwright.kit;

import boughwright.catalogue.Product;

/**
 * How far a product is from another that it might stand in for, 0 for its twin.
 *
 * <p>Colour, size and price each count so that a difference one plainly sees is about 1: a CIEDE2000 of 8, half as wide or long
 * again, twice the price of a piece (common practice, no published source). Use is not weighed: only products for the same place
 * are compared.
 */
final class Nearness {

    private static final double COLOUR = 8;
    private static final double SIZE = Math.log(1.5);
    private static final double PRICE = Math.log(2);

    private Nearness() {
    }

    static double distance(Product one, Product other) {
        return one.lab().difference(other.lab()) / COLOUR + ratio(one.width().metres(), other.width().metres()) / SIZE
                + ratio(one.length().metres(), other.length().metres()) / SIZE + ratio(each(one), each(other)) / PRICE;
    }

    private static double each(Product product) {
        return (double) product.price().coins() / product.pack();
    }

    /** The logarithm of how many times the larger is of the smaller; 0 when either is nothing, as a ball's length is. */
    private static double ratio(double one, double other) {
        return one <= 0 || other <= 0 ? 0 : Math.abs(Math.log(one / other));
    }
}
