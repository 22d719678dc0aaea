package boughwright.ui;

import boughwright.brief.Palette;
import boughwright.brief.SeenFrom;
import com.vaadin.flow.component.html.Div;

/** Small drawings on cards; decoration only, so screen readers pass over them. */
final class Icons {

    private static final String OPEN = "<svg xmlns=\"http://www.w3.org/2000/svg\" aria-hidden=\"true\" focusable=\"false\" viewBox=\"0 0 120 90\" width=\"120\" height=\"90\">";

    private Icons() {
    }

    /** The tree from above, its seen part dark, with the walls about it. */
    static Div seenFrom(SeenFrom seen) {
        String walls = switch (seen) {
            case CORNER -> "<path d=\"M22 84V6H104\" fill=\"none\" stroke=\"#b9a883\" stroke-width=\"5\"/>";
            case WALL -> "<path d=\"M10 8H110\" stroke=\"#b9a883\" stroke-width=\"5\"/>";
            case BAY -> "<path d=\"M34 8H86\" stroke=\"#b9a883\" stroke-width=\"5\"/>";
            case ROUND -> "";
        };
        double half = seen.radians() / 2;
        double r = 30;
        String sector = seen == SeenFrom.ROUND ? "<circle cx=\"60\" cy=\"48\" r=\"30\" fill=\"#2d5b43\"/>"
                : String.format(java.util.Locale.ROOT, "<path d=\"M60 48L%.1f %.1fA30 30 0 %d 0 %.1f %.1fZ\" fill=\"#2d5b43\"/>",
                        60 - r * Math.sin(half), 48 + r * Math.cos(half), half > Math.PI / 2 ? 1 : 0, 60 + r * Math.sin(half), 48 + r * Math.cos(half));
        // In a corner the seen quarter points away from both walls.
        String turned = seen == SeenFrom.CORNER ? "<g transform=\"rotate(-45 60 48)\">" + sector + "</g>" : sector;
        return icon(OPEN + walls + "<circle cx=\"60\" cy=\"48\" r=\"30\" fill=\"#e2e8dd\" stroke=\"#2d5b43\" stroke-width=\"2\"/>" + turned + "</svg>");
    }

    /** The palette's colours in about the shares in which they will be seen. */
    static Div palette(Palette palette) {
        String[] hex = palette.colours().stream().map(c -> c.hex()).toArray(String[]::new);
        return icon("<svg xmlns=\"http://www.w3.org/2000/svg\" aria-hidden=\"true\" focusable=\"false\" viewBox=\"0 0 200 44\" width=\"100%\" height=\"44\" preserveAspectRatio=\"none\">"
                + "<rect width=\"100\" height=\"44\" fill=\"" + hex[0] + "\"/><rect x=\"100\" width=\"56\" height=\"44\" fill=\"" + hex[1]
                + "\"/><rect x=\"156\" width=\"22\" height=\"44\" fill=\"" + hex[2] + "\"/><rect x=\"178\" width=\"22\" height=\"44\" fill=\"" + hex[3]
                + "\"/></svg>");
    }

    /** A small tree with few, many or very many dots. */
    static Div abundance(int dots) {
        StringBuilder svg = new StringBuilder(OPEN).append("<path d=\"M60 4L92 84H28Z\" fill=\"#2d5b43\"/>");
        double golden = (Math.sqrt(5) - 1) / 2;
        for (int i = 0; i < dots; i++) {
            double down = 0.12 + 0.84 * Math.sqrt((i + 0.5) / dots);
            double across = (i * golden % 1 - 0.5) * 56 * down;
            svg.append(String.format(java.util.Locale.ROOT, "<circle cx=\"%.1f\" cy=\"%.1f\" r=\"3\" fill=\"%s\"/>", 60 + across, 4 + 80 * down,
                    i % 3 == 0 ? "#efe4cf" : "#d08a4e"));
        }
        return icon(svg.append("</svg>").toString());
    }

    private static Div icon(String svg) {
        Div icon = Controls.drawn(svg);
        icon.addClassName("icon");
        return icon;
    }
}
