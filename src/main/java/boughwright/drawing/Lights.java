package boughwright.drawing;

/** Bulbs and their glow; a bulb is centred on the origin, mm. */
final class Lights {

    private final Studio studio;

    Lights(Studio studio) {
        this.studio = studio;
    }

    void bulb(Svg svg, String colour, double width) {
        double r = Math.max(5.5, width / 2);
        double reach = r * (studio.evening() ? 8 : 4.6);
        String warm = Tint.mix(colour, studio.evening() ? "#ffb04a" : "#ffd27a", 0.45);
        svg.circle(studio.radial(reach, Stop.of(0, Tint.lighter(warm, 0.3)).fade(studio.evening() ? 0.9 : 0.75),
                Stop.of(0.28, warm).fade(studio.evening() ? 0.34 : 0.26), Stop.of(1, warm).fade(0)), 0, 0, reach);
        svg.circle(Tint.lighter(colour, 0.55), 0, 0, r * 0.78);
        svg.circle("#fffdf4", -r * 0.1, -r * 0.12, r * 0.42);
    }

    /** A bulb in its socket as it lies in the box, pointing up, about 26 units tall. */
    void loose(Svg svg, String colour) {
        svg.circle(studio.radial(20, Stop.of(0, Tint.mix(colour, "#f0b040", 0.5)).fade(0.6), Stop.of(1, Tint.mix(colour, "#f0b040", 0.5))
                .fade(0)), 0, -13, 20);
        svg.fill("#24483a", Path.fine().m(-4.4, 3).l(4.4, 3).l(4, -6).l(-4, -6).z());
        svg.raw("<path stroke=\"").raw(Tint.darker(Tint.mix(colour, "#d99a34", 0.5), 0.3)).raw("\" stroke-width=\".8\" fill=\"")
                .raw(studio.volume(Surface.SHINY, Tint.mix(colour, "#f0b040", 0.35)))
                .raw("\" d=\"").raw(Path.fine().m(-4.2, -6).c(-8, -13, -5, -21, 0, -26).c(5, -21, 8, -13, 4.2, -6).z().d()).raw("\"/>");
    }

    /** The light that a bulb throws on what hangs in front of it, in the evening. */
    void halo(Svg svg, String colour) {
        double reach = 105;
        String warm = Tint.mix(colour, "#ff9d3c", 0.6);
        svg.circle(studio.radial(reach, Stop.of(0, warm).fade(0.22), Stop.of(0.45, warm).fade(0.08), Stop.of(1, warm).fade(0)), 0, 0,
                reach);
    }
}
