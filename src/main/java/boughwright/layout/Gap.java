package boughwright.layout;

import boughwright.needs.AccentKind;

/**
 * A hole in the loaded tree and what fills it.
 *
 * @param height of its middle above the floor, metres
 * @param clock of its middle
 * @param diameter of the largest disc that was empty there, metres
 * @param ribbon that the accent takes, metres
 */
public record Gap(String id, double height, double clock, Point at, double diameter, AccentKind accent, double ribbon) {
}
