/**
 * Lengths, money and the cone: the units and the plain geometry that every step shares.
 *
 * <p>Input: numbers and texts at the edges. Output: values that cannot be mixed up. SI inside; feet, inches and centimetres
 * only in {@link boughwright.measure.Length#read} and {@link boughwright.measure.Length#show}. Nothing here knows what a tree
 * trimming is.
 */
package boughwright.measure;
