package boughwright.document;

import boughwright.plan.Plan;
import boughwright.plan.Step;
import boughwright.text.Text;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** The steps at home. A step stays on one page, unless it has too many places for that. */
final class StepPages {

    /** More places than this are set small and in blocks. */
    static final int MANY = 40;

    private static final Pattern NUMBERED = Pattern.compile("(\\d+\\.) (.+)");

    private static final Setting ROOMY = new Setting("places", 3, 124, MANY);
    private static final Setting PACKED = new Setting("places packed", 4, 140, 10);

    /**
     * How places are set.
     *
     * @param most columns
     * @param line characters that the whole width holds; a place longer than most goes on in a second line
     * @param rows of one block
     */
    private record Setting(String kind, int most, int line, int rows) {
    }

    private final Html html;
    private final Plan plan;

    StepPages(Html html, Plan plan) {
        this.html = html;
        this.plan = plan;
    }

    void write() {
        html.in("h2", "part", () -> html.with("id", "steps").text(Text.of("document.steps", plan.steps().size())));
        html.put("p", "lead", Text.of("document.steps.lead", Wording.duration(plan.minutes())));
        plan.steps().forEach(this::step);
    }

    private void step(Step step) {
        List<Runnable> blocks = blocks(step.places(), step.places().size() > MANY ? PACKED : ROOMY);
        html.in("div", "step", () -> {
            // A page never ends between a step's head and the first of its places.
            html.in("div", "together", () -> {
                head(step);
                blocks.stream().limit(1).forEach(Runnable::run);
            });
            blocks.stream().skip(1).forEach(Runnable::run);
        });
    }

    private void head(Step step) {
        html.put("div", "box", "");
        html.put("div", "number", String.valueOf(step.number()));
        html.put("h3", "", step.title());
        html.put("p", "meta", Text.of("document.step.meta", Text.of("layer." + step.layer().word()), Wording.duration(step.minutes())));
        html.put("p", "", step.text());
        if (!step.pieces().isEmpty()) {
            html.put("p", "pieces", Text.of("document.step.pieces", step.pieces().stream()
                    .map(p -> Text.of("document.step.piece", String.valueOf(p.quantity()), p.name())).collect(Collectors.joining("; "))));
        }
    }

    /** Columns that are read downward; many places come in blocks, so that a page can end between two of them. */
    private List<Runnable> blocks(List<String> places, Setting setting) {
        int usual = places.stream().mapToInt(String::length).sorted().skip(places.size() / 2).findFirst().orElse(0);
        int columns = Math.max(1, Math.min(places.size(), Math.min(setting.most(), setting.line() / (usual + 1))));
        int size = setting.rows() * columns;
        List<Runnable> blocks = new ArrayList<>();
        for (int from = 0; from < places.size(); from += size) {
            List<String> block = places.subList(from, Math.min(places.size(), from + size));
            blocks.add(() -> html.in("table", setting.kind(), () -> html.in("tr", "", () -> cells(block, columns))));
        }
        return blocks;
    }

    private void cells(List<String> places, int columns) {
        int rows = (places.size() + columns - 1) / columns;
        for (int column = 0; column < columns; column++) {
            int from = Math.min(places.size(), column * rows);
            List<String> lines = places.subList(from, Math.min(places.size(), from + rows));
            html.in("td", "", () -> lines.forEach(line -> html.in("div", "", () -> place(line))));
        }
    }

    /** The number apart from the height that follows it, so that “1. 51 cm” is not taken for 1.51. */
    private void place(String place) {
        Matcher numbered = NUMBERED.matcher(place);
        if (numbered.matches()) {
            html.put("span", "count", numbered.group(1)).text(" " + numbered.group(2));
        } else {
            html.text(place);
        }
    }
}
