/**
 * Who works in the shop, what they may do and how they prove who they are. Input: names, roles, passwords, PINs, the mark of an enrolled
 * tablet. Output: who is signed in, for as long as nothing ends it; how long to wait after wrong tries. Screens and HTTP do not belong here.
 */
package boughwright.people;
