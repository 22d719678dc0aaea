package boughwright.drawing;

/**
 * Where the viewer stands, named from the front of the tree. Clock positions are read from above, 6 o'clock faces the
 * viewer of the front: {@code FRONT} stands at 6, {@code LEFT} at 9, {@code BACK} at 12, {@code RIGHT} at 3 o'clock;
 * {@code ABOVE} looks down on it with 6 o'clock at the picture's foot.
 */
public enum View { FRONT, LEFT, RIGHT, BACK, ABOVE }
