package boughwright.cli;

import boughwright.brief.BriefFault;
import boughwright.catalogue.CatalogueFault;
import boughwright.document.Paper;
import boughwright.document.PlanDocument;
import boughwright.drawing.ProposalPicture;
import boughwright.drawing.View;
import boughwright.kit.Conflict;
import boughwright.needs.Adjustments;
import boughwright.proposal.AdjustmentsJson;
import boughwright.proposal.Designer;
import boughwright.proposal.Outcome;
import boughwright.proposal.PickList;
import boughwright.proposal.Proposal;
import boughwright.proposal.ProposalJson;
import boughwright.proposal.Shop;
import boughwright.rulebook.RulebookFault;
import boughwright.text.Text;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The commands that need neither a server nor a database.
 *
 * <p>{@code plan BRIEF.json --out DIR [--catalogue FILE] [--rules DIR] [--changes FILE] [--seed N]} writes proposal.json, plan.pdf, front.svg,
 * left.svg, right.svg and picklist.csv into DIR. Exit code 0; 2 for bad input, with nothing written; 3 when no kit fits, with
 * the conflict in proposal.json; 1 for a defect or a broken machine.
 */
public final class CommandLine {

    private static final int DONE = 0;
    private static final int BAD_INPUT = 2;
    private static final int NO_KIT = 3;

    private final PrintStream out;
    private final PrintStream err;

    public CommandLine(PrintStream out, PrintStream err) {
        this.out = out;
        this.err = err;
    }

    /** Whether {@code args} begin with a word, right or wrong; the kiosk's own options begin with two hyphens. */
    public static boolean understands(String... args) {
        return args.length > 0 && (!args[0].startsWith("--") || args[0].equals("--help"));
    }

    /** Runs the command that {@code args} names and returns the exit code. */
    public int run(String... args) {
        if (List.of("help", "--help").contains(args[0])) {
            out.println(Text.of("cli.usage"));
            return DONE;
        }
        if (!args[0].equals("plan")) {
            err.println(Text.of("cli.no-command", args[0]));
            err.println(Text.of("cli.usage"));
            return BAD_INPUT;
        }
        try {
            return plan(PlanArguments.read(args));
        } catch (PlanArguments.Unreadable e) {
            err.println(e.getMessage());
            err.println(Text.of("cli.usage"));
            return BAD_INPUT;
        } catch (IOException e) {
            err.println(Text.of("cli.broken", e.toString()));
            return 1;
        }
    }

    private int plan(PlanArguments arguments) throws IOException {
        String brief;
        Optional<String> changes;
        Shop.Opening opening;
        try {
            brief = Files.readString(arguments.brief());
            changes = arguments.changes().isPresent() ? Optional.of(Files.readString(arguments.changes().get())) : Optional.empty();
            opening = Shop.open(arguments.rules(), arguments.catalogue());
        } catch (NoSuchFileException e) {
            err.println(Text.of("cli.no-file", e.getFile()));
            return BAD_INPUT;
        } catch (CharacterCodingException e) {
            err.println(Text.of("cli.not-utf8"));
            return BAD_INPUT;
        }
        if (opening instanceof Shop.Opening.BadCatalogue bad) {
            bad.faults().stream().map(CatalogueFault::sentence).forEach(err::println);
            return BAD_INPUT;
        }
        if (opening instanceof Shop.Opening.BadRulebook bad) {
            bad.faults().stream().map(RulebookFault::sentence).forEach(err::println);
            return BAD_INPUT;
        }
        Designer designer = ((Shop.Opening.Open) opening).designer();
        Adjustments hand = Adjustments.NONE;
        if (changes.isPresent()) {
            AdjustmentsJson.Reading reading = AdjustmentsJson.read(changes.get(), designer.rulebook().choices().currency(), designer.catalogue());
            if (reading instanceof AdjustmentsJson.Reading.Faulty faulty) {
                faulty.faults().stream().map(BriefFault::sentence).forEach(err::println);
                return BAD_INPUT;
            }
            hand = ((AdjustmentsJson.Reading.Read) reading).adjustments();
        }
        Outcome outcome = designer.propose(brief, hand, arguments.seed());
        if (outcome instanceof Outcome.BadBrief bad) {
            bad.faults().stream().map(BriefFault::sentence).forEach(err::println);
            return BAD_INPUT;
        }
        if (outcome instanceof Outcome.NoKitFits none) {
            write(arguments.out(), Map.of("proposal.json", utf8(ProposalJson.text(ProposalJson.of(none)))));
            err.println(Text.of("conflict.head"));
            none.conflict().wishes().stream().map(Conflict.Wished::text).forEach(err::println);
            none.conflict().shortages().forEach(err::println);
            none.conflict().waysOut().stream().map(Conflict.WayOut::text).forEach(err::println);
            return NO_KIT;
        }
        Proposal proposal = ((Outcome.Made) outcome).proposal();
        write(arguments.out(), files(proposal));
        out.println(Text.of("cli.done", proposal.kit().total().show(), arguments.out().toString()));
        return DONE;
    }

    private static Map<String, byte[]> files(Proposal proposal) {
        ProposalPicture picture = new ProposalPicture(proposal.brief(), proposal.kit(), proposal.layout(), proposal.catalogue());
        Map<String, byte[]> files = new LinkedHashMap<>();
        files.put("proposal.json", utf8(ProposalJson.text(ProposalJson.of(proposal))));
        files.put("plan.pdf", PlanDocument.pdf(proposal, picture.printed(View.FRONT),
                Paper.of(proposal.brief().units()), Optional.empty(), Optional.empty()));
        files.put("front.svg", utf8(picture.svg(View.FRONT)));
        files.put("left.svg", utf8(picture.svg(View.LEFT)));
        files.put("right.svg", utf8(picture.svg(View.RIGHT)));
        files.put("above.svg", utf8(picture.svg(View.ABOVE)));
        files.put("picklist.csv", utf8(PickList.csv(proposal)));
        return files;
    }

    private static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    /** All files are made before the first is written, so that a defect leaves nothing half-done. */
    private static void write(Path folder, Map<String, byte[]> files) throws IOException {
        Files.createDirectories(folder);
        for (Map.Entry<String, byte[]> file : files.entrySet()) {
            Files.write(folder.resolve(file.getKey()), file.getValue());
        }
    }
}
