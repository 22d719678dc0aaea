/**
 * The message bundles, and which language is spoken. Input: a key and its values. Output: a plain, kind sentence. The words of house rules are not here; they
 * belong to the shop and live beside the rules.
 */
package boughwright.text;
