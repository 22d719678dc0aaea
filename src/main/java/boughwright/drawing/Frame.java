package boughwright.drawing;

/** The outside of every picture: one root element that stands alone and explains itself to a screen reader. */
final class Frame {

    private Frame() { }

    /**
     * @param box     left, top, width, height of the view in mm
     * @param px      width in px
     * @param prefix  before the ids of title and description
     * @param content what is drawn, after the definitions of the studio
     */
    static String of(double[] box, double px, String prefix, String title, String description, Studio studio, Svg content) {
        Svg svg = new Svg(content.builder().length() + studio.definitions().length() + 1000);
        svg.raw("<svg xmlns=\"http://www.w3.org/2000/svg\" xmlns:xlink=\"http://www.w3.org/1999/xlink\" version=\"1.1\" role=\"img\"");
        String titleId = prefix + "-title";
        String descId = prefix + "-desc";
        boolean described = description != null && !description.isBlank();
        svg.attr("aria-labelledby", described ? titleId + ' ' + descId : titleId);
        svg.attr("width", px).attr("height", Math.round(px * box[3] / box[2]));
        svg.raw(" viewBox=\"").num(Math.floor(box[0])).raw(" ").num(Math.floor(box[1])).raw(" ").num(Math.ceil(box[2])).raw(" ")
                .num(Math.ceil(box[3])).raw("\">");
        svg.raw("<title id=\"").raw(titleId).raw("\">").text(title == null ? "" : title).raw("</title>");
        if (described) {
            svg.raw("<desc id=\"").raw(descId).raw("\">").text(description).raw("</desc>");
        }
        svg.raw("<defs>").raw(studio.definitions()).raw("</defs>").raw(content.builder()).raw("</svg>");
        return svg.toString();
    }
}
