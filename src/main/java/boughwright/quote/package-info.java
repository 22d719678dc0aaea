/**
 * What a kit costs the customer. Input: a proposal and the shop's terms for tax. Output: a quote with its lines, tax and total, which
 * never changes once it is made. Where quotes are kept, and what is held for whom, does not belong here.
 */
package boughwright.quote;
