package boughwright.ui;

import boughwright.drawing.HueRing;
import boughwright.drawing.LightnessLadder;
import boughwright.drawing.ShareBars;
import boughwright.palette.Confusion;
import boughwright.palette.PaletteReading;
import boughwright.palette.PaletteWords;
import boughwright.palette.Pair;
import boughwright.palette.Tone;
import boughwright.proposal.Proposal;
import boughwright.text.Text;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.NativeButton;
import com.vaadin.flow.component.html.NativeDetails;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.UnorderedList;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/** What is to be said of the colours of palette and kit, and how others, or a lamp, would show them. */
final class ColoursSide extends Div {

    /** Near misses, and confusions of a kind, that are told; the rest are counted. */
    private static final int MOST = 3;

    private final Proposing proposing;
    private final Proposal proposal;
    private final PaletteReading reading;
    private final Stage stage;
    private final Consumer<Runnable> change;
    private final Div mind = new Div();
    private final Div previews = new Div();

    /** @param stage whose drawing is shown as others see it @param change works a change out and shows what comes of it */
    ColoursSide(Proposing proposing, Proposal proposal, Stage stage, Consumer<Runnable> change) {
        this.proposing = proposing;
        this.proposal = proposal;
        this.reading = PaletteReading.of(proposal.brief(), proposal.needs(), proposal.catalogue(), proposal.kit());
        this.stage = stage;
        this.change = change;
        addClassName("colours-side");
        previews.addClassNames("choice-row", "previews");
        previews.getElement().setAttribute("role", "group");
        previews.getElement().setAttribute("aria-label", Text.of("colours.previews"));
        mind.addClassName("mind");
        mind.getElement().setAttribute("aria-live", "polite");
        add(section("colours.previews", previews, mind), scheme(), shares(), nearMisses(), ladder(), inWords());
        stage.onPreview(this::preview);
        preview();
    }

    private static Section section(String heading, Component... content) {
        Section section = new Section(new H2(Text.of(heading)));
        section.add(content);
        section.addClassName("eye");
        return section;
    }

    private static Paragraph soft(String text) {
        Paragraph paragraph = new Paragraph(text);
        paragraph.addClassName("soft");
        return paragraph;
    }

    /** The buttons of the previews and what to mind under the one that is on. */
    private void preview() {
        previews.removeAll();
        for (Preview each : Preview.values()) {
            NativeButton pill = Controls.pill(each.button(), each == stage.preview(), () -> {
                stage.look(each);
                preview();
            });
            pill.addClassName("preview-" + each.word());
            previews.add(pill);
        }
        mind.removeAll();
        Preview on = stage.preview();
        if (on != Preview.AS_IT_IS) {
            Paragraph title = new Paragraph(on.title());
            title.addClassName("mind-title");
            mind.add(title);
        }
        mind.add(new Paragraph(on.mind()));
        on.deficiency().ifPresent(sight -> {
            List<Confusion> confusions = new ArrayList<>(reading.palette().confusions(sight, MOST));
            confusions.addAll(reading.kit().confusions(sight, MOST));
            if (confusions.isEmpty()) {
                mind.add(new Paragraph(Text.of("colours.no-confusion")));
            } else {
                UnorderedList list = new UnorderedList();
                confusions.forEach(c -> list.add(new ListItem(PaletteWords.of(c))));
                mind.add(list);
            }
            mind.add(soft(Text.of(on == Preview.WITHOUT_BLUE ? "sight.blue.who" : "sight.red-green.who")));
        });
    }

    private Section scheme() {
        HueRing ring = new HueRing(reading.members(), reading.kit().tones(), reading.kit().template().sectors());
        Div words = new Div(new Paragraph(PaletteWords.of(reading.kit().scheme())));
        String ofPalette = PaletteWords.of(reading.palette().scheme());
        if (!ofPalette.equals(PaletteWords.of(reading.kit().scheme()))) {
            words.add(soft(Text.of("colours.scheme.palette", proposal.brief().palette().shownTitle(), ofPalette)));
        }
        PaletteWords.of(reading.kit().template()).ifPresent(remark -> words.add(soft(remark)));
        return section("colours.scheme", split(words, drawn(ring.labelled("ring", Text.of("colours.ring"), Text.of("colours.ring.description")))));
    }

    private Section shares() {
        return section("colours.shares", split(drawn(bars()), sharesTable()), soft(Text.of("colours.shares.words")));
    }

    /** Beside one another where there is room. */
    private static Div split(Component... parts) {
        Div split = new Div(parts);
        split.addClassName("eye-split");
        return split;
    }

    private static Div drawn(String svg) {
        Div drawn = Controls.drawn(svg);
        drawn.addClassName("eye-chart");
        return drawn;
    }

    private String bars() {
        List<Tone> members = reading.members();
        List<ShareBars.Part> fallen = List.of(part(0, members.get(0).share()), part(1, members.get(1).share()), part(3, members.get(3).share()),
                part(2, members.get(2).share()));
        List<ShareBars.Part> wanted = List.of(part(0, reading.wanted().main()), part(1, reading.wanted().second()), part(2, reading.wanted().spark()));
        return ShareBars.svg(List.of(new ShareBars.Bar(Text.of("colours.shares.fallen"), fallen), new ShareBars.Bar(Text.of("colours.shares.wanted"), wanted)),
                "shares", Text.of("colours.shares"), Text.of("colours.shares.description"));
    }

    private ShareBars.Part part(int part, double share) {
        return new ShareBars.Part(reading.members().get(part).colour(), share);
    }

    private PlainTable sharesTable() {
        PlainTable table = new PlainTable(Text.of("colours.table.colour"), Text.of("colours.shares.fallen"), Text.of("colours.shares.wanted"));
        List<Tone> members = reading.members();
        table.row(members.get(0).name(), percent(members.get(0).share()), percent(reading.wanted().main()));
        table.row(Text.of("colours.second-and-ground"), Text.of("colours.second-and-ground.shares", percent(members.get(1).share() + members.get(3).share()),
                percent(members.get(3).share())), percent(reading.wanted().second()));
        table.row(members.get(2).name(), percent(members.get(2).share()), percent(reading.wanted().spark()));
        return table;
    }

    private static String percent(double share) {
        return Text.of("colours.percent", PaletteWords.percent(share));
    }

    private Section nearMisses() {
        List<Pair> worst = reading.kit().worst(MOST);
        Section section = section("colours.near-misses");
        reading.palette().nearMisses().forEach(p -> section.add(new Paragraph(PaletteWords.nearMiss(p))));
        worst.forEach(p -> section.add(new NearMissCard(proposing, proposal, p, change)));
        int more = reading.kit().nearMisses().size() - worst.size();
        if (worst.isEmpty() && reading.palette().nearMisses().isEmpty()) {
            section.add(soft(Text.of("colours.near-misses.none")));
        } else if (more > 0) {
            section.add(soft(Text.of("colours.near-misses.more", more)));
        }
        return section;
    }

    private Section ladder() {
        return section("colours.ladder", soft(Text.of("colours.ladder.words")), drawn(LightnessLadder.svg(reading.members(), reading.kit().tones(), "ladder",
                Text.of("colours.ladder"), Text.of("colours.ladder.description"))));
    }

    /** The same as the drawings, for whoever cannot see them or wants the numbers. */
    private NativeDetails inWords() {
        PlainTable table = new PlainTable(Text.of("colours.table.colour"), Text.of("colours.table.part"), Text.of("colours.table.share"),
                Text.of("colours.table.lightness"));
        reading.members().forEach(m -> table.row(PaletteWords.named(m), m.name(), percent(m.share()), light(m)));
        reading.kit().tones().forEach(t -> table.row(t.name(), reading.members().get(t.part()).name(), percent(t.share()), light(t)));
        NativeDetails details = new NativeDetails(Text.of("colours.table"), table);
        details.addClassName("eye");
        return details;
    }

    private static String light(Tone tone) {
        return String.valueOf(Math.round(tone.lab().l()));
    }
}
