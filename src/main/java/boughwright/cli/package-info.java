/**
 * The command line. Input: arguments and files. Output: files, a sentence and an exit code; no server, no database.
 */
package boughwright.cli;
