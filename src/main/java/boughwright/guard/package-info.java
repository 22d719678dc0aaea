/**
 * The guard before everything that is asked for over HTTP: who may ask, how often, how much, and what browsers are told to refuse. Input:
 * requests. Output: the same requests, or a problem detail (RFC 9457). What a screen shows to whom does not belong here: screens have their
 * own door.
 */
package boughwright.guard;
