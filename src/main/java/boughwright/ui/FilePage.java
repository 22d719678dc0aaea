package boughwright.ui;

import boughwright.intake.ColumnGuess;
import boughwright.intake.Delivery;
import boughwright.intake.Format;
import boughwright.intake.Intake;
import boughwright.intake.IntakeFile;
import boughwright.intake.Kind;
import boughwright.intake.Limits;
import boughwright.intake.Mapping;
import boughwright.intake.Opening;
import boughwright.publishing.ShopDoor;
import boughwright.shelf.FileMappings;
import boughwright.shelf.Shelf;
import boughwright.text.Text;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.dom.Element;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicBoolean;

/**
 * A file of products, stock or prices brought in: dropped, its columns matched, checked, compared with the shelf, and only then taken. The
 * file lies on disk while the page is open and no longer.
 */
final class FilePage extends ShelfPage {

    /** Between two words of progress. */
    private static final long TOLD_EACH_NANOS = 200_000_000;

    private final ShelfDesk desk;
    private final Shelf shelf;
    private final FileMappings mappings;
    private final ShopDoor shop;
    private final Later later = new Later();
    private final Div body = new Div();
    private Kind kind = Kind.WHOLE;
    private Path stored;
    private volatile Opening opening;
    private AtomicBoolean stopped = new AtomicBoolean();
    private boolean keepOthers;
    private final H1 title = new H1();
    /** Shows where things stand once more. */
    private Runnable again;

    FilePage(ShelfDesk desk, ShopDoor shop, Shelf shelf, FileMappings mappings) {
        super("file-page");
        this.desk = desk;
        this.shop = shop;
        this.shelf = shelf;
        this.mappings = mappings;
        add(title, body);
        again = this::start;
        retell();
    }

    @Override
    boolean retell() {
        title.setText(Text.of("shelf.page.file"));
        again.run();
        return true;
    }

    /** What kind of file, and the file. */
    private void start() {
        again = this::start;
        body.removeAll();
        Div kinds = new Div();
        kinds.addClassName("choice-row");
        for (Kind each : Kind.values()) {
            kinds.add(Controls.pill(Text.of("shelf.file." + each.word()), each == kind, () -> {
                kind = each;
                start();
            }));
        }
        FileDrop drop = new FileDrop("shelf-file", Text.of("shelf.file.drop"), Text.of("shelf.file.drop.hint"), ".csv,.tsv,.txt,.xlsx,.json",
                Limits.DEFAULT.fileBytes(), this::received).whenDone(this::arrived);
        Div templates = new Div(soft(Text.of("shelf.file.template")), CatalogueDownloads.template(Format.CSV, currency()), CatalogueDownloads.template(Format.XLSX, currency()));
        templates.addClassName("line-links");
        body.add(kinds, soft(Text.of("shelf.file." + kind.word() + ".words")), drop, templates);
    }

    private void received(String name, String type, InputStream in, long length) throws IOException {
        Path file = Files.createTempFile("delivery", ".part");
        try {
            Files.copy(in, file, StandardCopyOption.REPLACE_EXISTING);
            opening = IntakeFile.of(name, file);
            forget(file);
        } catch (IOException | RuntimeException broken) {
            Files.deleteIfExists(file);
            throw broken;
        }
    }

    /** The file before is of no use any more. */
    private synchronized void forget(Path next) {
        if (stored != null) {
            try {
                Files.deleteIfExists(stored);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        stored = next;
    }

    private void arrived() {
        if (desk.gone()) {
            return;
        }
        if (opening instanceof Opening.Refused refused) {
            desk.tell(refused.sentence(), false);
        } else if (opening instanceof Opening.Opened opened) {
            match(opened.file());
        }
    }

    /** Which column is which. */
    private void match(IntakeFile file) {
        match(file, Optional.empty());
    }

    /** @param chosen what was chosen by hand on this page already */
    private void match(IntakeFile file, Optional<Mapping> chosen) {
        Optional<Mapping> remembered = mappings.of(file.headings());
        List<ColumnGuess> guesses = ColumnGuess.of(file, kind);
        Mapping mapping = chosen.or(() -> remembered).orElseGet(() -> Mapping.of(guesses));
        ColumnTable table = new ColumnTable(file, kind, guesses, mapping);
        again = () -> match(file, Optional.of(table.mapping()));
        Div rows = new Div(new FilePreview(file));
        body.removeAll();
        body.add(new H2(file.name()));
        file.assumptions().forEach(a -> body.add(soft(a)));
        body.add(soft(Text.of(remembered.isPresent() ? "shelf.match.remembered" : "shelf.match.about")), table, rows, Controls.button(Text.of("shelf.match.go"), "strong",
                () -> {
                    if (!desk.gone()) {
                        check(file, table.mapping());
                    }
                }), Controls.link(Text.of("shelf.file.other"), this::start));
    }

    private void check(IntakeFile file, Mapping mapping) {
        List<String> missing = mapping.missing(kind, file.headings());
        if (!missing.isEmpty()) {
            desk.tell(Text.of("shelf.match.missing", String.join(", ", missing.stream().map(c -> Text.of("catalogue.heading." + c)).toList())), false);
            return;
        }
        mappings.keep(file.headings(), mapping);
        Set<String> looks = shop.looks();
        Currency currency = currency();
        Delivery[] delivery = new Delivery[1];
        Going going = new Going(Text.of("shelf.file.reading", file.name()));
        stopped = going.stopped();
        again = () -> { };
        later.run(patience -> delivery[0] = Intake.read(file, kind, mapping, looks, currency, going::at), () -> {
            body.removeAll();
            body.add(going);
        }, () -> checked(file, mapping, delivery[0]));
    }

    private Currency currency() {
        return shop.designer().rulebook().choices().currency();
    }

    private void checked(IntakeFile file, Mapping mapping, Delivery delivery) {
        if (delivery instanceof Delivery.Read read) {
            result(file, read);
        } else {
            match(file);
            desk.tell(delivery instanceof Delivery.Refused refused ? refused.sentence() : Text.of("shelf.file.stopped"), false);
        }
    }

    /** What the file holds, what it would do, and the two ways on. */
    private void result(IntakeFile file, Delivery.Read read) {
        // What is wrong with its rows is told while it is read.
        again = () -> mappings.of(file.headings()).ifPresentOrElse(mapping -> check(file, mapping), () -> match(file));
        body.removeAll();
        body.add(new H2(file.name()), new DeliveryPanel(file, read, shelf, keepOthers, keep -> {
            keepOthers = keep;
            result(file, read);
        }, goodOnly -> bring(file, read, goodOnly)), Controls.link(Text.of("shelf.file.match-again"), () -> match(file)),
                Controls.link(Text.of("shelf.file.other"), this::start));
    }

    private void bring(IntakeFile file, Delivery.Read read, boolean goodOnly) {
        if (desk.gone()) {
            return;
        }
        Shelf.Outcome[] outcome = new Shelf.Outcome[1];
        String author = desk.author();
        again = () -> { };
        later.run(patience -> outcome[0] = shelf.bring(read, keepOthers, goodOnly, file.name(), author), () -> {
            body.removeAll();
            body.add(soft(Text.of("shelf.file.bringing")));
        }, () -> {
            start();
            desk.told(outcome[0]);
        });
    }

    /** How far a reading has come; can be stopped. */
    private static final class Going extends Div {

        private final AtomicBoolean stopped = new AtomicBoolean();
        private final Element bar = new Element("progress").setAttribute("max", "1");
        private final Paragraph words = soft("");
        private final UI ui = UI.getCurrent();
        private long told;

        Going(String title) {
            addClassName("going");
            bar.setAttribute("aria-label", title);
            getElement().appendChild(bar);
            add(words, Controls.button(Text.of("shelf.file.stop"), "quiet", () -> stopped.set(true)));
        }

        AtomicBoolean stopped() {
            return stopped;
        }

        /** On the thread that reads. */
        boolean at(int rows, long bytes, long ofBytes) {
            long now = System.nanoTime();
            if (now - told > TOLD_EACH_NANOS) {
                told = now;
                ui.access(Text.carried(() -> {
                    bar.setAttribute("value", String.valueOf(ofBytes == 0 ? 0 : Math.min(1, (double) bytes / ofBytes)));
                    words.setText(Text.of("shelf.file.rows", rows));
                })::run);
            }
            return !stopped.get();
        }
    }

    @Override
    void leave() {
        stopped.set(true);
        later.stop();
        forget(null);
    }
}
