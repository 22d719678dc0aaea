package boughwright.publishing;

import boughwright.catalogue.CatalogueFault;
import boughwright.kit.KitSolver;
import boughwright.needs.Adjustments;
import boughwright.proposal.Designer;
import boughwright.proposal.ProposalWatch;
import boughwright.proposal.Shop;
import boughwright.rulebook.Edition;
import boughwright.rulebook.Rulebook;
import boughwright.rulebook.RulebookFault;
import boughwright.rulebook.StyleRules;
import boughwright.shelf.Shelf;
import boughwright.text.Text;
import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.DisposableBean;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.SpringApplication;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.context.ApplicationContext;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;

/**
 * The open shop: opened beside the start of the server, since compiling the rulebook takes seconds and the first screen need not wait;
 * then the one place that says which edition is live.
 *
 * <p>Whoever asks for {@link #designer()} keeps what he got: an edition that goes live later changes nothing for him. An edition that
 * cannot be opened never takes the place of one that serves. What another kiosk on the same database publishes, rolls back or withdraws is
 * live here within some seconds. With no usable rulebook at all the faults are told line by line in the
 * log, and the kiosk stops: it could serve nobody. Safe for several threads.
 */
@Component
public class ShopDoor implements DisposableBean {

    private static final Logger LOG = LoggerFactory.getLogger(ShopDoor.class);

    private static final String SAMPLE = "{\"tree\": {\"height\": \"9 ft\"}}";
    /** Editions other than the live one that are kept open for consultations made with them. */
    private static final int OPEN = 4;
    private static final Duration LONGEST_OPENING = Duration.ofMinutes(1);

    private final Editions editions;
    private final Shelf shelf;
    private final ProposalWatch watch;
    private final Rulebook.Source files;
    private final boolean invented;
    private final CompletableFuture<Void> opened = new CompletableFuture<>();
    private final Thread opening;
    private final KitSolver solver = new KitSolver();
    private final Map<String, Rulebook> others = new LinkedHashMap<>(16, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Rulebook> eldest) {
            return size() > OPEN;
        }
    };
    private volatile LiveShop live;
    private volatile boolean warm;
    private StyleRules rules;

    ShopDoor(@Value("${boughwright.rules}") String folder, @Value("${boughwright.catalogue}") String catalogue, Editions editions, Shelf shelf, ProposalWatch watch) {
        this.editions = editions;
        this.shelf = shelf;
        this.watch = watch;
        this.files = Shop.rules(path(folder));
        this.invented = folder.isBlank() && catalogue.isBlank();
        this.opening = new Thread(() -> open(path(catalogue)), "opening the shop");
        opening.start();
    }

    /** The database must not be closed under a shop that is still being opened. */
    @Override
    public void destroy() throws InterruptedException {
        opening.join(LONGEST_OPENING.toMillis());
    }

    private static Optional<Path> path(String text) {
        return text.isBlank() ? Optional.empty() : Optional.of(Path.of(text));
    }

    private void open(Optional<Path> goods) {
        try {
            // Before anything is read, so that what another kiosk publishes meanwhile is not missed.
            editions.whenChangedElsewhere(this::changedElsewhere);
            Rulebook.Opening folder = Rulebook.open(files);
            if (folder instanceof Rulebook.Opening.Faulty faulty) {
                refuse(faulty.faults().stream().map(RulebookFault::sentence).toList());
                return;
            }
            Rulebook shipped = ((Rulebook.Opening.Open) folder).rulebook();
            int number = keepFolder(shipped);
            List<CatalogueFault> faults = shelf.open(this::looks, shipped.choices().currency(), Shop.catalogueText(goods));
            if (!faults.isEmpty()) {
                refuse(faults.stream().map(CatalogueFault::sentence).toList());
                return;
            }
            synchronized (this) {
                rules = shipped.styleRules();
                live = liveFrom(number, shipped);
            }
            shelf.whenChanged(left -> restocked());
            opened.complete(null);
            // The first kit loads the solver and wakes the compiler; better now than while a customer waits.
            live.designer().propose(SAMPLE, Adjustments.NONE, Designer.SEED);
            warm = true;
        } catch (NoSuchFileException e) {
            refuse(List.of(Text.of("cli.no-file", e.getFile())));
        } catch (CharacterCodingException e) {
            refuse(List.of(Text.of("cli.not-utf8")));
        } catch (Exception | LinkageError e) {
            LOG.error("The shop could not be opened", e);
            opened.completeExceptionally(e);
        }
    }

    private void refuse(List<String> sentences) {
        sentences.forEach(LOG::error);
        opened.completeExceptionally(new IllegalStateException(String.join("\n", sentences)));
    }

    /**
     * Keeps what lies in the folder as an edition, unless it is there already. It goes live by itself only as the first of all or after
     * another one of the folder: what staff have published is for staff to replace.
     *
     * @return the number of the folder's edition
     */
    private int keepFolder(Rulebook folder) throws IOException {
        SortedMap<String, String> texts = new TreeMap<>();
        for (String path : folder.edition().sizing()) {
            texts.put(path, files.read(path));
        }
        String json = files.read("edition.json");
        Optional<KeptEdition> known = editions.all().stream().filter(e -> e.origin() == KeptEdition.Origin.FOLDER).findFirst();
        if (known.isPresent()) {
            texts.put("edition.json", named(json, folder.edition().id(), known.get().id()));
            if (known.get().texts().equals(texts)) {
                return known.get().number();
            }
        }
        Optional<KeptEdition> serving = editions.live(editions.today()).flatMap(p -> editions.edition(p.edition()));
        boolean goesLive = serving.map(e -> e.origin() == KeptEdition.Origin.FOLDER).orElse(true);
        String id = editions.edition(folder.edition().id()).isPresent() ? editions.freeId(folder.edition().id()) : folder.edition().id();
        texts.put("edition.json", named(json, folder.edition().id(), id));
        Optional<Integer> kept = editions.keep(new KeptEdition(0, id, folder.edition().title(), Text.of(known.isPresent() ? "publishing.folder.again" : "publishing.folder.first"),
                Text.of("publishing.folder.author"), KeptEdition.Origin.FOLDER, known.map(KeptEdition::number), null, texts, ""),
                goesLive ? Optional.of(editions.today()) : Optional.empty(), "");
        // Another kiosk that starts at the same moment was faster; what it has kept is found now.
        return kept.isPresent() ? kept.get() : keepFolder(folder);
    }

    /** Tags of looks that any edition has: a product may belong to one that is gone, or to one that is to come. */
    public Set<String> looks() {
        Set<String> tags = new TreeSet<>();
        try {
            for (KeptEdition edition : editions.all()) {
                Edition.read(edition.texts().get("edition.json")).choices().looks().forEach(l -> tags.add(l.id()));
            }
        } catch (IOException impossible) {
            throw new IllegalStateException("a kept edition could not be read", impossible);
        }
        return tags;
    }

    /** Ids of kept editions differ; the folder's own stays as engineers have written it. */
    private static String named(String json, String id, String other) {
        return json.replaceFirst("\"id\"\\s*:\\s*\"" + java.util.regex.Pattern.quote(id) + "\"", "\"id\": \"" + other + "\"");
    }

    /** The live edition opened; should it not open, the one before it, and the folder's as the last. */
    private LiveShop liveFrom(int folderNumber, Rulebook folder) throws IOException {
        LocalDate today = editions.today();
        List<Integer> order = new ArrayList<>();
        editions.live(today).ifPresent(p -> order.add(p.edition()));
        editions.publications().stream().filter(p -> !p.withdrawn() && !p.startsOn().isAfter(today)).forEach(p -> order.add(p.edition()));
        for (int number : order) {
            KeptEdition edition = editions.edition(number).orElseThrow();
            if (number == folderNumber && edition.id().equals(folder.edition().id())) {
                // Opened already, in the same words.
                break;
            }
            Rulebook.Opening opening = opening(edition);
            if (opening instanceof Rulebook.Opening.Open open) {
                return new LiveShop(number, designer(open.rulebook()), today);
            }
            ((Rulebook.Opening.Faulty) opening).faults().forEach(f -> LOG.error(Text.of("publishing.unusable", edition.title(), f.sentence())));
        }
        return new LiveShop(folderNumber, designer(folder), today);
    }

    private Rulebook.Opening opening(KeptEdition edition) throws IOException {
        return Rulebook.open(path -> edition.texts().get(path), rules);
    }

    private Designer designer(Rulebook rulebook) {
        return new Designer(rulebook, shelf.catalogue(), solver, watch);
    }

    /** Whoever asks from now on is served from the shelf as it is now; what is being worked out goes on with what it has. */
    private synchronized void restocked() {
        live = new LiveShop(live.edition(), designer(live.designer().rulebook()), live.on());
    }

    /** The designer of the open shop under the edition that is live today; waits while the shop is being opened. */
    public Designer designer() {
        return live().designer();
    }

    /** The number of the edition that is live today. */
    public int liveEdition() {
        return live().edition();
    }

    private LiveShop live() {
        await();
        LiveShop now = live;
        // An edition may have been published long ago to begin today.
        if (!now.on().equals(editions.today())) {
            now = refreshed();
        }
        // Packs are promised and given back all day long.
        if (now.designer().catalogue() != shelf.catalogue()) {
            restocked();
            now = live;
        }
        return now;
    }

    private void await() {
        try {
            opened.join();
        } catch (CompletionException e) {
            throw new IllegalStateException("the shop could not be opened", e.getCause());
        }
    }

    private void changedElsewhere() {
        await();
        refreshed();
    }

    private synchronized LiveShop refreshed() {
        LocalDate today = editions.today();
        Optional<Publication> due = editions.live(today);
        if (due.isPresent() && due.get().edition() != live.edition()) {
            try {
                Rulebook.Opening opening = opening(editions.edition(due.get().edition()).orElseThrow());
                if (opening instanceof Rulebook.Opening.Open open) {
                    goLive(due.get().edition(), open.rulebook());
                    return live;
                }
                ((Rulebook.Opening.Faulty) opening).faults().forEach(f -> LOG.error(f.sentence()));
            } catch (IOException impossible) {
                throw new IllegalStateException("a kept edition could not be read", impossible);
            }
        }
        live = new LiveShop(live.edition(), live.designer(), today);
        return live;
    }

    private void goLive(int number, Rulebook rulebook) {
        others.put(live.designer().rulebook().edition().id(), live.designer().rulebook());
        others.remove(rulebook.edition().id());
        live = new LiveShop(number, designer(rulebook), editions.today());
    }

    /**
     * As {@link #designer(String)}, for somebody who has been promised some packs already: they can be proposed again.
     *
     * @param own packs by SKU
     */
    public Designer designer(String editionId, Map<String, Integer> own) {
        Designer serving = designer(editionId);
        return own.isEmpty() ? serving : new Designer(serving.rulebook(), shelf.catalogue(own), solver, watch);
    }

    /** The designer under the edition of that id; under the live one when there is none of that id or it cannot be opened any more. */
    public Designer designer(String editionId) {
        Designer serving = designer();
        if (serving.rulebook().edition().id().equals(editionId)) {
            return serving;
        }
        synchronized (this) {
            Rulebook open = others.get(editionId);
            if (open == null) {
                open = editions.edition(editionId).flatMap(this::opened).orElse(null);
                if (open != null) {
                    others.put(editionId, open);
                }
            }
            return open == null ? serving : designer(open);
        }
    }

    private Optional<Rulebook> opened(KeptEdition edition) {
        try {
            return opening(edition) instanceof Rulebook.Opening.Open open ? Optional.of(open.rulebook()) : Optional.empty();
        } catch (IOException impossible) {
            throw new IllegalStateException("a kept edition could not be read", impossible);
        }
    }

    /** An edition's texts opened as it would be in service, without anything going live. */
    public Rulebook.Opening tried(Map<String, String> texts) {
        await();
        try {
            StyleRules serving;
            synchronized (this) {
                serving = rules;
            }
            return Rulebook.open(texts::get, serving);
        } catch (IOException impossible) {
            throw new IllegalStateException("texts at hand could not be read", impossible);
        }
    }

    /** The shop as it would be under another rulebook. */
    public Designer trying(Rulebook rulebook) {
        await();
        return designer(rulebook);
    }

    /** Keeps an edition, and lets it go live at once when its day has come. @return its number; empty when another has its title already */
    synchronized Optional<Integer> publish(KeptEdition edition, Rulebook rulebook, LocalDate startsOn, String changes) {
        Optional<Integer> number = editions.keep(edition, Optional.of(startsOn), changes);
        if (number.isPresent() && editions.live(editions.today()).map(Publication::edition).equals(number)) {
            goLive(number.get(), rulebook);
        }
        return number;
    }

    /**
     * An earlier edition serves again, from now on.
     *
     * @return what keeps it from being opened; nothing has changed then
     */
    public synchronized List<String> rollBack(int number, String author) {
        await();
        KeptEdition edition = editions.edition(number).orElseThrow(() -> new IllegalArgumentException("no edition " + number));
        try {
            Rulebook.Opening opening = opening(edition);
            if (opening instanceof Rulebook.Opening.Faulty faulty) {
                return faulty.faults().stream().map(RulebookFault::sentence).toList();
            }
            editions.rollBack(number, author);
            goLive(number, ((Rulebook.Opening.Open) opening).rulebook());
            return List.of();
        } catch (IOException impossible) {
            throw new IllegalStateException("a kept edition could not be read", impossible);
        }
    }

    /**
     * Reads the rules folder again, as engineers have left it. Rules that compile take the place of those in service; tables that have
     * changed become an edition.
     *
     * @return what is wrong in the folder; nothing has changed then, and what was live stays live
     */
    public synchronized List<String> reload(String author) {
        await();
        try {
            Rulebook.Opening opening = Rulebook.open(files);
            if (opening instanceof Rulebook.Opening.Faulty faulty) {
                return faulty.faults().stream().map(RulebookFault::sentence).toList();
            }
            Rulebook folder = ((Rulebook.Opening.Open) opening).rulebook();
            StyleRules former = rules;
            rules = folder.styleRules();
            Rulebook.Opening serving = opening(editions.edition(live.edition()).orElseThrow());
            if (serving instanceof Rulebook.Opening.Faulty faulty) {
                rules = former;
                return faulty.faults().stream().map(RulebookFault::sentence).toList();
            }
            others.clear();
            int number = keepFolder(folder);
            editions.note(author, HouseEvent.Kind.RELOADED, Optional.of(number), "");
            live = new LiveShop(live.edition(), designer(((Rulebook.Opening.Open) serving).rulebook()), editions.today());
            refreshed();
            return List.of();
        } catch (NoSuchFileException e) {
            return List.of(Text.of("cli.no-file", e.getFile()));
        } catch (IOException e) {
            return List.of(Text.of("cli.not-utf8"));
        }
    }

    /** Whether this is the invented shop: it was given neither rules nor products of its own, and staff have brought none in. */
    public boolean demo() {
        return invented && !shelf.ownGoods();
    }

    /** Whether {@link #designer} would answer at once. */
    public boolean open() {
        return opened.isDone() && !opened.isCompletedExceptionally();
    }

    /** Whether a first kit has been worked out, so that no customer waits for the solver to be loaded. */
    public boolean warm() {
        return warm;
    }

    @EventListener
    void stopIfTheShopStaysShut(ApplicationReadyEvent ready) {
        ApplicationContext context = ready.getApplicationContext();
        opened.whenComplete((done, thrown) -> {
            if (thrown != null) {
                System.exit(SpringApplication.exit(context, () -> 2));
            }
        });
    }
}
