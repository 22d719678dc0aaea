package boughwright.brief;

/** From how much of the room around it a tree is seen; the sector is centred on 6 o'clock. */
public enum SeenFrom implements Word {
    CORNER(90), WALL(180), BAY(270), ROUND(360);

    private final int degrees;

    SeenFrom(int degrees) {
        this.degrees = degrees;
    }

    public int degrees() {
        return degrees;
    }

    public double radians() {
        return Math.toRadians(degrees);
    }

    /** The share of the whole tree's surface that is seen, (0, 1]. */
    public double share() {
        return degrees / 360.0;
    }
}
