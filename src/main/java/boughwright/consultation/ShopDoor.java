package boughwright.consultation;

import boughwright.catalogue.CatalogueFault;
import boughwright.needs.Adjustments;
import boughwright.proposal.Designer;
import boughwright.proposal.Shop;
import boughwright.rulebook.RulebookFault;
import boughwright.text.Text;
import java.nio.charset.CharacterCodingException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.SpringApplication;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.context.ApplicationContext;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;

/**
 * Opens the shop beside the start of the server: compiling the rulebook takes seconds, and the first screen need not wait.
 *
 * <p>A rulebook or catalogue with faults is told line by line in the log, and the kiosk stops: it could serve nobody.
 */
@Component
public class ShopDoor {

    private static final Logger LOG = LoggerFactory.getLogger(ShopDoor.class);

    private static final String SAMPLE = "{\"tree\": {\"height\": \"9 ft\"}}";

    private final CompletableFuture<Designer> designer = new CompletableFuture<>();

    ShopDoor(@Value("${boughwright.rules}") String rules, @Value("${boughwright.catalogue}") String catalogue) {
        Thread opening = new Thread(() -> open(path(rules), path(catalogue)), "opening the shop");
        opening.start();
    }

    private static Optional<Path> path(String text) {
        return text.isBlank() ? Optional.empty() : Optional.of(Path.of(text));
    }

    private void open(Optional<Path> rules, Optional<Path> catalogue) {
        try {
            Shop.Opening opening = Shop.open(rules, catalogue);
            if (opening instanceof Shop.Opening.Open open) {
                designer.complete(open.designer());
                // The first kit loads the solver and wakes the compiler; better now than while a customer waits.
                open.designer().propose(SAMPLE, Adjustments.NONE, Designer.SEED);
            } else if (opening instanceof Shop.Opening.BadRulebook bad) {
                refuse(bad.faults().stream().map(RulebookFault::sentence).toList());
            } else if (opening instanceof Shop.Opening.BadCatalogue bad) {
                refuse(bad.faults().stream().map(CatalogueFault::sentence).toList());
            }
        } catch (NoSuchFileException e) {
            refuse(List.of(Text.of("cli.no-file", e.getFile())));
        } catch (CharacterCodingException e) {
            refuse(List.of(Text.of("cli.not-utf8")));
        } catch (Exception | LinkageError e) {
            LOG.error("The shop could not be opened", e);
            designer.completeExceptionally(e);
        }
    }

    private void refuse(List<String> sentences) {
        sentences.forEach(LOG::error);
        designer.completeExceptionally(new IllegalStateException(String.join("\n", sentences)));
    }

    /** The designer of the open shop; waits while it is being opened. */
    public Designer designer() {
        try {
            return designer.join();
        } catch (CompletionException e) {
            throw new IllegalStateException("the shop could not be opened", e.getCause());
        }
    }

    /** Whether {@link #designer} would answer at once. */
    public boolean open() {
        return designer.isDone() && !designer.isCompletedExceptionally();
    }

    @EventListener
    void stopIfTheShopStaysShut(ApplicationReadyEvent ready) {
        ApplicationContext context = ready.getApplicationContext();
        designer.whenComplete((opened, thrown) -> {
            if (thrown != null) {
                System.exit(SpringApplication.exit(context, () -> 2));
            }
        });
    }
}
