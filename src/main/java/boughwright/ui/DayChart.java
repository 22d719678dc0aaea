package boughwright.ui;

import java.util.List;
import java.util.Locale;

/** Consultations day by day as bars, those whose kit was taken as the filled part of each. */
final class DayChart {

    private static final int WIDTH = 960;
    private static final int HEIGHT = 240;
    private static final double LEFT = 40;
    private static final double TOP = 14;
    private static final double BOTTOM = 190;
    private static final int TICKS = 4;
    /** Days between two dates below the axis, so that they do not run into each other. */
    private static final int DATES = 7;
    private static final double WIDEST_BAR = 34;
    /** A short date at this size of letters, in the longest of the languages. */
    private static final double HALF_A_DATE = 30;

    private DayChart() {
    }

    /** @param taken never more than {@code all} */
    record Day(String date, int all, int taken) {
    }

    /**
     * SVG text with a title and a description.
     *
     * @param all what a whole bar counts
     * @param taken what its filled part counts
     */
    static String svg(List<Day> days, String title, String words, String all, String taken) {
        int most = days.stream().mapToInt(Day::all).max().orElse(1);
        int step = Math.max(1, (int) Math.ceil(most / (double) TICKS));
        int top = step * (int) Math.ceil(Math.max(1, most) / (double) step);
        StringBuilder svg = new StringBuilder();
        svg.append("<svg viewBox=\"0 0 ").append(WIDTH).append(' ').append(HEIGHT).append("\" role=\"img\" aria-label=\"").append(Controls.escaped(title + ". " + words)).append("\">");
        for (int value = 0; value <= top; value += step) {
            double y = y(value, top);
            line(svg, LEFT, y, WIDTH, y, value == 0 ? "#20281f" : "#ddd3bb");
            text(svg, LEFT - 8, y + 4, "end", String.valueOf(value));
        }
        double room = (WIDTH - LEFT) / days.size();
        double bar = Math.min(WIDEST_BAR, room * 0.72);
        int every = Math.max(1, (int) Math.ceil(days.size() / (double) DATES));
        for (int i = 0; i < days.size(); i++) {
            Day day = days.get(i);
            double x = LEFT + i * room + (room - bar) / 2;
            box(svg, x, y(day.all(), top), bar, BOTTOM - y(day.all(), top), "fill=\"#e6ead9\" stroke=\"#2d5b43\"");
            box(svg, x, y(day.taken(), top), bar, BOTTOM - y(day.taken(), top), "fill=\"#2d5b43\"");
            if (i % every == 0) {
                boolean last = x + bar / 2 + HALF_A_DATE > WIDTH;
                text(svg, last ? WIDTH : Math.max(x + bar / 2, LEFT), BOTTOM + 18, last ? "end" : i == 0 ? "start" : "middle", day.date());
            }
        }
        box(svg, LEFT, HEIGHT - 18, 12, 12, "fill=\"#e6ead9\" stroke=\"#2d5b43\"");
        text(svg, LEFT + 18, HEIGHT - 8, "start", all);
        box(svg, LEFT + 260, HEIGHT - 18, 12, 12, "fill=\"#2d5b43\"");
        text(svg, LEFT + 278, HEIGHT - 8, "start", taken);
        return svg.append("</svg>").toString();
    }

    private static double y(int value, int top) {
        return BOTTOM - (BOTTOM - TOP) * value / top;
    }

    private static void line(StringBuilder svg, double x1, double y1, double x2, double y2, String colour) {
        svg.append(String.format(Locale.ROOT, "<line x1=\"%.1f\" y1=\"%.1f\" x2=\"%.1f\" y2=\"%.1f\" stroke=\"%s\"/>", x1, y1, x2, y2, colour));
    }

    private static void box(StringBuilder svg, double x, double y, double width, double height, String paint) {
        if (height > 0) {
            svg.append(String.format(Locale.ROOT, "<rect x=\"%.1f\" y=\"%.1f\" width=\"%.1f\" height=\"%.1f\" rx=\"2\" %s/>", x, y, width, height, paint));
        }
    }

    private static void text(StringBuilder svg, double x, double y, String anchor, String words) {
        svg.append(String.format(Locale.ROOT, "<text x=\"%.1f\" y=\"%.1f\" text-anchor=\"%s\" font-size=\"13\" fill=\"#646152\">", x, y, anchor)).append(Controls.escaped(words)).append("</text>");
    }
}
