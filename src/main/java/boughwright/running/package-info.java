/**
 * How the kiosk does, for whoever keeps it running. Input: what the other packages say of themselves. Output: health, measurements, lines in
 * the log that name their consultation, and plain answers to other programs while the database is away. What a customer reads on a screen
 * then does not belong here.
 */
package boughwright.running;
