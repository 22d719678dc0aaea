/**
 * The programming interface over HTTP. Input: briefs and codes. Output: the same JSON as everywhere, pages and pictures; problem
 * details (RFC 9457) for what went wrong. Holds no rule of its own.
 */
package boughwright.api;
