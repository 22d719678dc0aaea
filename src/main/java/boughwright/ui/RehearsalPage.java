package boughwright.ui;

import boughwright.consultation.Consultations;
import boughwright.house.Rehearsal;
import boughwright.house.RehearsalReport;
import boughwright.house.Rehearsed;
import boughwright.house.Rehearsed.Kind;
import boughwright.house.Rehearsed.Subject;
import boughwright.measure.Money;
import boughwright.needs.Adjustments;
import boughwright.needs.Layer;
import boughwright.proposal.Designer;
import boughwright.proposal.Proposal;
import boughwright.publishing.Publisher;
import boughwright.publishing.References;
import boughwright.publishing.Rehearsals;
import boughwright.text.Text;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.UIDetachedException;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.NativeTableCell;
import com.vaadin.flow.component.html.NativeTableHeaderCell;
import com.vaadin.flow.component.html.NativeTableRow;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.dom.Element;
import com.vaadin.flow.server.Command;
import com.vaadin.flow.server.streams.DownloadHandler;
import com.vaadin.flow.server.streams.DownloadResponse;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;

/** What the draft would do to real consultations: replayed beside the screen, with a bar that fills and a way to stop it. */
final class RehearsalPage extends HousePage {

    private static final int[] MOST = {50, 500, 5_000};
    private static final int LARGEST = 10;
    private static final int POLL_MILLIS = 300;

    private final HouseEdits edits;
    private final Publisher publisher;
    private final Rehearsals rehearsals;
    private final Consultations consultations;
    private final References references;
    private final Div asked = new Div();
    private final Div going = new Div();
    private final Div report = new Div();
    private final Element bar = new Element("progress");
    private final Paragraph done = new Paragraph();
    private int most = MOST[1];
    private boolean whole = true;
    private Rehearsal rehearsal;

    RehearsalPage(HouseEdits edits, Publisher publisher, Rehearsals rehearsals, Consultations consultations, References references) {
        super("rehearsal-page");
        this.edits = edits;
        this.publisher = publisher;
        this.rehearsals = rehearsals;
        this.consultations = consultations;
        this.references = references;
        Paragraph about = soft(Text.of("house.rehearse.about"));
        going.addClassName("going");
        going.getElement().appendChild(bar);
        bar.setAttribute("aria-label", Text.of("house.rehearse"));
        going.add(done, Controls.button(Text.of("house.rehearse.stop"), "quiet", this::stop));
        done.getElement().setAttribute("role", "status");
        going.setVisible(false);
        add(new H1(Text.of("house.rehearse")), about, asked, going, report);
        ask();
    }

    private void ask() {
        asked.removeAll();
        Div counts = new Div();
        counts.addClassNames("choice-row", "chips");
        for (int count : MOST) {
            counts.add(Controls.pill(Text.of("house.rehearse.newest", count), count == most, () -> {
                most = count;
                ask();
            }));
        }
        Div depth = new Div(Controls.pill(Text.of("house.rehearse.whole"), whole, () -> {
            whole = true;
            ask();
        }), Controls.pill(Text.of("house.rehearse.needs"), !whole, () -> {
            whole = false;
            ask();
        }));
        depth.addClassNames("choice-row", "chips");
        asked.add(counts, depth, Controls.button(Text.of("house.rehearse.go"), "strong", this::start));
    }

    private List<Subject> subjects() {
        List<Subject> subjects = new ArrayList<>();
        consultations.newest(most).forEach(s -> subjects.add(new Subject(s.spoken(), s.brief(), s.adjustments(), s.seed())));
        references.own().forEach(o -> subjects.add(new Subject(o.brief().title(), o.brief().brief(), Adjustments.NONE, Designer.SEED)));
        References.shipped().forEach(r -> subjects.add(new Subject(References.title(r), r.brief(), Adjustments.NONE, Designer.SEED)));
        return subjects;
    }

    private void start() {
        if (edits.gone()) {
            return;
        }
        report.removeAll();
        Publisher.Trial trial = publisher.trial(edits.drafting().rules());
        if (trial.rulebook().isEmpty()) {
            report.add(new Paragraph(Text.of("house.rehearse.faults")));
            trial.faults().stream().limit(20).forEach(f -> report.add(new Paragraph(f)));
            return;
        }
        List<Subject> subjects = subjects();
        Rehearsal mine = rehearsals.of(trial.rulebook().get(), whole);
        rehearsal = mine;
        asked.setVisible(false);
        going.setVisible(true);
        bar.setAttribute("max", String.valueOf(subjects.size()));
        progress(0, subjects.size());
        UI ui = UI.getCurrent();
        ui.setPollInterval(POLL_MILLIS);
        // Of several processors one is left to customers.
        int processors = Runtime.getRuntime().availableProcessors();
        int threads = processors > 2 ? processors - 1 : processors;
        Thread worker = new Thread(Text.carried(() -> work(ui, mine, subjects, threads)), "rehearsing");
        worker.setDaemon(true);
        worker.start();
    }

    private void work(UI ui, Rehearsal mine, List<Subject> subjects, int threads) {
        try {
            int step = Math.max(1, subjects.size() / 100);
            RehearsalReport made = mine.of(subjects, threads, n -> {
                if (n % step == 0) {
                    later(ui, () -> progress(n, subjects.size()));
                }
            });
            List<Rehearsal.Pair> pairs = new ArrayList<>();
            List<Rehearsed> largest = made.largest(LARGEST);
            if (whole) {
                largest.forEach(r -> pairs.add(mine.pair(r.subject())));
            }
            later(ui, () -> finish(ui, () -> show(made, largest, pairs)));
        } catch (CancellationException stopped) {
            later(ui, () -> finish(ui, () -> report.add(new Paragraph(Text.of("house.rehearse.stopped")))));
        } catch (RuntimeException broken) {
            later(ui, () -> finish(ui, () -> report.add(new Paragraph(Text.of("house.rehearse.broken")))));
            throw broken;
        }
    }

    /** On the screen, if it is still there; a rehearsal that nobody sees stops. */
    private void later(UI ui, Command shown) {
        try {
            ui.access(Text.carried(shown::execute)::run);
        } catch (UIDetachedException gone) {
            stop();
        }
    }

    private void finish(UI ui, Runnable shown) {
        ui.setPollInterval(-1);
        going.setVisible(false);
        asked.setVisible(true);
        report.removeAll();
        shown.run();
    }

    private void progress(int now, int all) {
        bar.setAttribute("value", String.valueOf(now));
        done.setText(Text.of("house.rehearse.done", now, all));
    }

    private void stop() {
        if (rehearsal != null) {
            rehearsal.cancel();
        }
    }

    @Override
    void leave() {
        stop();
    }

    private void show(RehearsalReport made, List<Rehearsed> largest, List<Rehearsal.Pair> pairs) {
        long changed = made.changed().size();
        report.add(new H2(Text.of("house.report.title", made.all().size())));
        Div facts = new Div();
        facts.addClassName("facts");
        fact(facts, Text.of(made.whole() ? "house.report.changed" : "house.report.needs-changed"), String.valueOf(changed));
        if (made.whole()) {
            made.medianDifference().ifPresent(m -> fact(facts, Text.of("house.report.median"), signed(m)));
            fact(facts, Text.of("house.report.conflicts"), String.valueOf(made.count(Kind.NEW_CONFLICT)));
            fact(facts, Text.of("house.report.budget"), String.valueOf(made.outOfBudget()));
            fact(facts, Text.of("house.report.gone"), String.valueOf(made.count(Kind.CONFLICT_GONE)));
        }
        fact(facts, Text.of("house.report.unreadable"), String.valueOf(made.count(Kind.UNREADABLE)));
        report.add(facts, layers(made), download(made));
        if (!largest.isEmpty()) {
            report.add(new H2(Text.of("house.report.largest")));
        }
        for (int i = 0; i < largest.size(); i++) {
            report.add(change(largest.get(i), i < pairs.size() ? Optional.of(pairs.get(i)) : Optional.empty(), i));
        }
    }

    private static void fact(Div facts, String name, String value) {
        Div fact = new Div(Controls.words(name, "fact-name"), Controls.words(value, "fact-value"));
        fact.addClassName("fact");
        facts.add(fact);
    }

    private static String signed(Money money) {
        return (money.coins() > 0 ? "+ " : money.coins() < 0 ? "− " : "") + (money.coins() < 0 ? Money.zero(money.currency()).minus(money) : money).show();
    }

    private static String signed(long number) {
        return number > 0 ? "+ " + number : number < 0 ? "− " + -number : "0";
    }

    private Div layers(RehearsalReport made) {
        NativeTable table = new NativeTable();
        NativeTableRow head = new NativeTableRow();
        for (String key : List.of("house.report.layer", "house.report.layer.changed", "house.report.layer.pieces", "house.report.layer.money")) {
            NativeTableHeaderCell cell = new NativeTableHeaderCell(Text.of(key));
            cell.getElement().setAttribute("scope", "col");
            head.add(cell);
        }
        table.add(head);
        made.byLayer().forEach((layer, change) -> {
            NativeTableRow row = new NativeTableRow();
            row.add(new NativeTableCell(name(layer)), new NativeTableCell(String.valueOf(change.consultations())), new NativeTableCell(signed(change.pieces())),
                    new NativeTableCell(change.money().map(RehearsalPage::signed).orElse("–")));
            table.add(row);
        });
        Div box = new Div(table);
        box.addClassName("plain-table");
        return box;
    }

    private static String name(Layer layer) {
        return Text.of("layer." + layer.word());
    }

    private static Anchor download(RehearsalReport made) {
        byte[] csv = made.csv().getBytes(StandardCharsets.UTF_8);
        Anchor anchor = new Anchor(DownloadHandler.fromInputStream(event -> new DownloadResponse(new ByteArrayInputStream(csv), "rehearsal.csv",
                "text/csv;charset=UTF-8", csv.length)), Text.of("house.report.csv"));
        anchor.addClassNames("button", "quiet");
        anchor.getElement().setAttribute("download", true);
        return anchor;
    }

    private Div change(Rehearsed rehearsed, Optional<Rehearsal.Pair> pair, int index) {
        Div box = new Div();
        box.addClassName("rehearsed");
        StringBuilder words = new StringBuilder(Text.of("house.kind." + rehearsed.change().name().toLowerCase(java.util.Locale.ROOT).replace('_', '-')));
        rehearsed.difference().filter(d -> d.coins() != 0).ifPresent(d -> words.append(", ").append(signed(d)));
        rehearsed.quantities().forEach((layer, n) -> words.append("; ").append(name(layer)).append(' ').append(signed((long) n)));
        box.add(new H2(rehearsed.subject().name()), new Paragraph(words.toString()));
        pair.ifPresent(p -> {
            Div beside = new Div(side(p.before(), Text.of("house.compare.live"), "live" + index), side(p.after(), Text.of("house.compare.draft"), "draft" + index));
            beside.addClassNames("beside", "beside-2");
            box.add(beside);
        });
        return box;
    }

    private static Div side(Optional<Proposal> proposal, String name, String unique) {
        Div side = new Div();
        side.addClassName("way");
        proposal.ifPresent(p -> side.add(Drawing.of(p, unique)));
        Div words = new Div(new Paragraph(Text.of("house.side", name, proposal.map(p -> p.kit().total().show()).orElse(Text.of("house.side.none")))));
        words.addClassName("words");
        side.add(words);
        return side;
    }
}
