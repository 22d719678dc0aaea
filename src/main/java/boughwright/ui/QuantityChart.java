package boughwright.ui;

import boughwright.needs.Trait;
import boughwright.house.Curve;
import boughwright.measure.Length;
import boughwright.measure.Units;
import boughwright.text.Text;
import com.vaadin.flow.component.html.Div;
import java.util.List;
import java.util.Locale;

/** Quantity against height, one colour for each word: the draft drawn through, the live edition dashed, gaps as bands. */
final class QuantityChart extends Div {

    private static final String[] COLOURS = {"#2d5b43", "#94551f", "#2f4f7c", "#7d2b49"};
    private static final double LEFT = 46;
    private static final double RIGHT = 372;
    private static final double TOP = 30;
    private static final double BOTTOM = 222;
    private static final int WIDTH = 392;
    private static final int HEIGHT = 300;

    private final StringBuilder svg = new StringBuilder();
    private final double most;
    private final boolean share;

    /**
     * @param draft one curve for each word
     * @param live the same words, or none
     * @param counted what the axis counts
     * @param share whether the numbers are shares of 1, to be shown as percents
     */
    QuantityChart(List<Curve> draft, List<Curve> live, String counted, boolean share, Units units) {
        addClassName("chart");
        this.share = share;
        double greatest = java.util.stream.Stream.concat(draft.stream(), live.stream()).flatMap(c -> c.points().stream()).filter(Curve.Point::known)
                .mapToDouble(Curve.Point::value).max().orElse(1);
        double step = step(greatest / 5);
        this.most = Math.max(step, Math.ceil(greatest / step - 1e-9) * step);
        svg.append("<svg viewBox=\"0 0 ").append(WIDTH).append(' ').append(HEIGHT).append("\" role=\"img\" aria-label=\"")
                .append(Controls.escaped(Text.of("house.chart.label", counted))).append("\">");
        gaps(draft);
        axes(step, counted, units);
        for (int i = 0; i < live.size(); i++) {
            line(live.get(i), COLOURS[i % COLOURS.length], true);
        }
        for (int i = 0; i < draft.size(); i++) {
            line(draft.get(i), COLOURS[i % COLOURS.length], false);
        }
        legend(draft);
        svg.append("</svg>");
        getElement().setProperty("innerHTML", svg.toString());
    }

    /** A round step of 1, 2 or 5 times a power of ten, not below {@code least}. */
    private static double step(double least) {
        double power = Math.pow(10, Math.floor(Math.log10(Math.max(least, 1e-6))));
        for (double factor : new double[] {1, 2, 5, 10}) {
            if (factor * power >= least - 1e-12) {
                return factor * power;
            }
        }
        return 10 * power;
    }

    private static double x(double feet) {
        return LEFT + (feet - 3) / 17 * (RIGHT - LEFT);
    }

    private double y(double value) {
        return BOTTOM - value / most * (BOTTOM - TOP);
    }

    /** Of the first curve that has some: bands on bands would only darken. */
    private void gaps(List<Curve> draft) {
        for (Curve curve : draft.stream().filter(c -> c.points().stream().anyMatch(q -> !q.known())).limit(1).toList()) {
            for (int i = 0; i < curve.points().size(); i++) {
                int from = i;
                while (i < curve.points().size() && !curve.points().get(i).known()) {
                    i++;
                }
                if (i > from) {
                    double start = x(curve.points().get(from).feet()) - 1;
                    double end = x(curve.points().get(Math.min(i, curve.points().size() - 1)).feet()) + 1;
                    svg.append(String.format(Locale.ROOT, "<rect x=\"%.1f\" y=\"%.1f\" width=\"%.1f\" height=\"%.1f\" fill=\"#b3402e\" fill-opacity=\"0.14\"/>",
                            start, TOP, Math.max(3, end - start), BOTTOM - TOP));
                }
            }
        }
    }

    private void axes(double step, String counted, Units units) {
        for (double value = 0; value <= most + 1e-9; value += step) {
            svg.append(String.format(Locale.ROOT, "<path d=\"M%.1f %.1fH%.1f\" stroke=\"%s\"/>", LEFT, y(value), RIGHT, value == 0 ? "#b9ad8f" : "#eae2cd"));
            text(LEFT - 7, y(value) + 4, "end", number(value));
        }
        svg.append(String.format(Locale.ROOT, "<path d=\"M%.1f %.1fV%.1f\" stroke=\"#b9ad8f\"/>", LEFT, TOP - 8, BOTTOM));
        text(LEFT + 6, TOP - 12, "start", counted);
        int[] marks = {3, 6, 9, 12, 15, 18};
        for (int feet : marks) {
            text(x(feet), BOTTOM + 17, "middle", Length.ofFeet(feet).show(units));
        }
    }

    private String number(double value) {
        double shown = share ? value * 100 : value;
        String plain = Text.number(shown, Math.abs(shown - Math.rint(shown)) < 1e-9 ? 0 : 1);
        return share ? plain + " %" : plain;
    }

    private void line(Curve curve, String colour, boolean dashed) {
        StringBuilder path = new StringBuilder();
        Curve.Point before = null;
        for (Curve.Point point : curve.points()) {
            if (point.known() && before == null) {
                path.append(String.format(Locale.ROOT, "M%.1f %.1f", x(point.feet()), y(point.value())));
            } else if (point.known()) {
                path.append(String.format(Locale.ROOT, "H%.1f", x(point.feet())));
                if (point.value() != before.value()) {
                    path.append(String.format(Locale.ROOT, "V%.1f", y(point.value())));
                }
            }
            before = point.known() ? point : null;
        }
        svg.append("<path fill=\"none\" stroke=\"").append(colour).append(dashed ? "\" stroke-width=\"1.6\" stroke-dasharray=\"3 4\" stroke-opacity=\"0.85\" d=\""
                : "\" stroke-width=\"2.4\" d=\"").append(path).append("\"/>");
    }

    private void legend(List<Curve> curves) {
        double at = LEFT;
        for (int i = 0; i < curves.size() && !curves.get(i).name().isEmpty(); i++) {
            String name = Trait.word(curves.get(i).name());
            svg.append(String.format(Locale.ROOT, "<circle cx=\"%.1f\" cy=\"256\" r=\"5\" fill=\"%s\"/>", at + 5, COLOURS[i % COLOURS.length]));
            text(at + 15, 260, "start", name);
            at += 34 + 6.6 * name.length();
        }
        svg.append("<path d=\"M46 280H70\" stroke=\"#20281f\" stroke-width=\"2.4\"/>");
        text(77, 284, "start", Text.of("house.chart.draft"));
        svg.append("<path d=\"M150 280H174\" stroke=\"#20281f\" stroke-width=\"1.6\" stroke-dasharray=\"3 4\"/>");
        text(181, 284, "start", Text.of("house.chart.live"));
    }

    private void text(double x, double y, String anchor, String text) {
        svg.append(String.format(Locale.ROOT, "<text x=\"%.1f\" y=\"%.1f\" text-anchor=\"%s\">%s</text>", x, y, anchor, Controls.escaped(text)));
    }
}
