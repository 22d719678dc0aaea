package boughwright.ui;

import boughwright.house.Comparison;
import boughwright.house.EditionArchive;
import boughwright.house.HouseRules;
import boughwright.house.Sheet;
import boughwright.publishing.Editions;
import boughwright.publishing.HouseEvent;
import boughwright.publishing.KeptEdition;
import boughwright.publishing.Publication;
import boughwright.publishing.Publisher;
import boughwright.publishing.ShopDoor;
import boughwright.text.Text;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Input;
import com.vaadin.flow.component.html.NativeButton;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.server.streams.DownloadHandler;
import com.vaadin.flow.server.streams.DownloadResponse;
import java.io.ByteArrayInputStream;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BiConsumer;

/** All editions: which is live, which was, which is to come; back to any of them, out as a zip and in again; and who did what. */
final class EditionsPage extends HousePage {

    private static final int HISTORY = 100;

    private final HouseEdits edits;
    private final ShopDoor shop;
    private final Editions editions;
    private final Publisher publisher;
    private final BiConsumer<Integer, Integer> compare;
    private final Runnable again;
    private final Div told = new Div();
    private int first;
    private int second;

    /** @param compare called with two numbers of editions; @param again called when what is live has changed */
    EditionsPage(HouseEdits edits, ShopDoor shop, Editions editions, Publisher publisher, BiConsumer<Integer, Integer> compare, Runnable again) {
        super("editions-page");
        this.edits = edits;
        this.shop = shop;
        this.editions = editions;
        this.publisher = publisher;
        this.compare = compare;
        this.again = again;
        told.addClassName("complaints");
        told.getElement().setAttribute("role", "status");
        List<KeptEdition> all = editions.all();
        add(new H1(Text.of("house.editions")), told);
        Div list = new Div();
        list.addClassName("editions");
        all.forEach(e -> list.add(edition(e)));
        add(list);
        if (all.size() > 1) {
            add(comparing(all));
        }
        add(importing(), reloading(), history());
    }

    private Div edition(KeptEdition edition) {
        int live = shop.liveEdition();
        Div box = new Div();
        box.addClassNames("edition", edition.number() == live ? "live" : "past");
        Optional<Publication> toCome = editions.toCome(editions.today()).stream().filter(p -> p.edition() == edition.number()).findFirst();
        H2 title = new H2(Text.of("house.edition", String.valueOf(edition.number()), edition.title()));
        String state = edition.number() == live ? Text.of("house.edition.live", since(live)) : toCome.map(p -> Text.of("house.edition.to-come", Text.day(p.startsOn())))
                .orElse("");
        Span mark = new Span(state);
        mark.addClassName("edition-state");
        Paragraph by = soft(Text.of("house.edition.by", author(edition), editions.moment(edition), note(edition).isBlank() ? "" : Text.of("house.edition.note", note(edition))));
        Div links = new Div();
        links.addClassName("line-links");
        Anchor zip = new Anchor(DownloadHandler.fromInputStream(event -> new DownloadResponse(
                new ByteArrayInputStream(EditionArchive.zip(edition.texts(), edition.title(), edition.note())), edition.id() + ".zip", "application/zip", -1)),
                Text.of("house.edition.export"));
        zip.addClassName("link");
        zip.getElement().setAttribute("download", true);
        links.add(zip);
        if (edition.number() != live) {
            NativeButton back = Controls.link(Text.of("house.edition.back"), () -> { });
            back.addClickListener(e -> {
                if (back.hasClassName("sure")) {
                    rollBack(edition.number());
                } else {
                    back.addClassName("sure");
                    back.setText(Text.of("house.edition.back.sure"));
                }
            });
            links.add(back);
            links.add(Controls.link(Text.of("house.edition.compare-live"), () -> compare.accept(edition.number(), live)));
        }
        toCome.ifPresent(p -> links.add(Controls.link(Text.of("house.edition.withdraw"), () -> {
            if (!edits.gone()) {
                publisher.withdraw(p.id(), edits.drafting().author());
                again.run();
            }
        })));
        box.add(title, mark, by);
        if (!edition.override().isBlank()) {
            box.add(new Paragraph(Text.of("house.edition.override", edition.override())));
        }
        box.add(links);
        return box;
    }

    private String since(int edition) {
        LocalDate today = editions.today();
        return editions.live(today).filter(p -> p.edition() == edition).map(p -> Text.day(p.startsOn())).orElse("");
    }

    private void rollBack(int number) {
        if (edits.gone()) {
            return;
        }
        List<String> faults = shop.rollBack(number, edits.drafting().author());
        if (faults.isEmpty()) {
            again.run();
        } else {
            tell(faults, true);
        }
    }

    private void tell(List<String> sentences, boolean fault) {
        told.removeAll();
        sentences.stream().limit(40).forEach(s -> {
            Div line = new Div(new Paragraph(s));
            line.addClassNames("complaint", fault ? "is-fault" : "is-well");
            told.add(line);
        });
        told.getElement().executeJs("this.scrollIntoView({block: 'center'})");
    }

    private Div comparing(List<KeptEdition> all) {
        List<String> names = all.stream().map(e -> Text.of("house.edition", String.valueOf(e.number()), e.title())).toList();
        second = all.get(0).number();
        first = all.get(1).number();
        Div row = new Div(GridTable.select(names, names.get(1), Text.of("house.compare.first"), name -> first = all.get(names.indexOf(name)).number()),
                GridTable.select(names, names.get(0), Text.of("house.compare.second"), name -> second = all.get(names.indexOf(name)).number()),
                Controls.button(Text.of("house.compare.go"), "quiet", () -> compare.accept(first, second)));
        row.addClassName("choice-row");
        Div box = new Div(new H2(Text.of("house.compare.two")), row);
        box.addClassName("section");
        return box;
    }

    private Div importing() {
        Input file = new Input();
        file.setType("file");
        file.getElement().setAttribute("accept", ".zip,.dmn");
        file.getElement().addEventListener("change", e -> file.getElement().executeJs("""
                const input = this, most = $0;
                return (async () => {
                  const file = input.files[0];
                  if (!file) return ['', ''];
                  if (file.size > most) return [file.name, '!'];
                  const bytes = new Uint8Array(await file.arrayBuffer());
                  let text = '';
                  for (let i = 0; i < bytes.length; i += 32768) text += String.fromCharCode.apply(null, bytes.subarray(i, i + 32768));
                  input.value = '';
                  return [file.name, btoa(text)];
                })();""", EditionArchive.MOST_PACKED).then(elemental.json.JsonArray.class, this::imported));
        Paragraph about = soft(Text.of("house.import.words"));
        Div box = new Div(new H2(Text.of("house.import")), about, Controls.labelled("import-file", Text.of("house.import.file"), file));
        box.addClassName("section");
        return box;
    }

    private void imported(elemental.json.JsonArray file) {
        String name = file.getString(0);
        String content = file.getString(1);
        if (name.isEmpty() || edits.gone()) {
            return;
        }
        byte[] bytes = content.equals("!") ? new byte[EditionArchive.MOST_PACKED + 1] : Base64.getDecoder().decode(content);
        EditionArchive.Reading reading = EditionArchive.read(name, bytes, edits.drafting().live(), shop.designer().rulebook().edition());
        if (reading instanceof EditionArchive.Reading.Faulty faulty) {
            tell(faulty.faults(), true);
            return;
        }
        EditionArchive.Reading.Read read = (EditionArchive.Reading.Read) reading;
        HouseRules rules = read.rules();
        edits.cell(r -> rules);
        editions.imported(edits.drafting().author(), name);
        int changes = Comparison.of(edits.drafting().live(), rules, edits.drafting().units()).size();
        List<String> words = new ArrayList<>(List.of(Text.of("house.import.done", name, changes)));
        if (!read.lacking().isEmpty()) {
            words.add(Text.of("house.import.lacking", String.join(", ", read.lacking().stream()
                    .map(topic -> rules.sheet(topic).map(Sheet::title).orElse(topic)).toList())));
        }
        tell(words, false);
    }

    private Div reloading() {
        Paragraph about = soft(Text.of("house.reload.words"));
        Div box = new Div(new H2(Text.of("house.reload")), about, Controls.button(Text.of("house.reload.go"), "quiet", () -> {
            if (edits.gone()) {
                return;
            }
            List<String> faults = shop.reload(edits.drafting().author());
            if (faults.isEmpty()) {
                again.run();
            } else {
                tell(faults, true);
            }
        }));
        box.addClassName("section");
        return box;
    }

    /** The kiosk itself keeps what lies in the rules folder; it says so to each in their own language. */
    private static String author(KeptEdition edition) {
        return edition.origin() == KeptEdition.Origin.FOLDER ? Text.of("publishing.folder.author") : edition.author();
    }

    private static String note(KeptEdition edition) {
        return edition.origin() == KeptEdition.Origin.FOLDER ? Text.of(edition.basedOn().isPresent() ? "publishing.folder.again" : "publishing.folder.first")
                : edition.note();
    }

    private Div history() {
        Div box = new Div(new H2(Text.of("house.history")));
        box.addClassName("section");
        for (HouseEvent event : editions.history(HISTORY)) {
            String edition = event.edition().flatMap(editions::edition).map(e -> Text.of("house.edition", String.valueOf(e.number()), e.title())).orElse("");
            Paragraph what = new Paragraph(Text.of("house.event", editions.moment(event), event.author(),
                    Text.of("house.event." + event.kind().name().toLowerCase(Locale.ROOT).replace('_', '-'), edition)));
            Div entry = new Div(what);
            entry.addClassName("event");
            if (event.kind() == HouseEvent.Kind.KEPT && !event.words().isBlank()) {
                event.words().lines().limit(40).forEach(line -> {
                    Paragraph change = soft(line);
                    entry.add(change);
                });
            } else if (event.kind() == HouseEvent.Kind.REFERENCE || event.kind() == HouseEvent.Kind.IMPORTED) {
                entry.add(new Paragraph(event.words()));
            }
            box.add(entry);
        }
        return box;
    }
}
