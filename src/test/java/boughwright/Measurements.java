package boughwright;

import boughwright.document.Paper;
import boughwright.document.PlanDocument;
import boughwright.drawing.ProposalPicture;
import boughwright.drawing.View;
import boughwright.needs.Adjustments;
import boughwright.proposal.Designer;
import boughwright.proposal.Outcome;
import boughwright.proposal.Proposal;
import boughwright.proposal.ProposalJson;
import boughwright.proposal.Shop;
import java.io.IOException;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;

/** Prints how long things take on this machine; run it on demand and copy what it prints, with the machine, to docs/performance.md. */
public final class Measurements {

    private static final String NINE_FEET = "{\"tree\": {\"height\": \"9 ft\"}, \"abundance\": \"generous\"}";
    private static final String TWENTY_FEET =
            "{\"tree\": {\"height\": \"20 ft\", \"fullness\": \"full\", \"seenFrom\": \"round\"}, \"abundance\": \"lavish\"}";

    private Measurements() {
    }

    public static void main(String[] args) throws IOException {
        System.out.println("processors " + Runtime.getRuntime().availableProcessors() + ", java " + System.getProperty("java.version"));
        long start = System.nanoTime();
        Designer designer = ((Shop.Opening.Open) Shop.open(Optional.empty(), Optional.empty())).designer();
        System.out.printf(Locale.ROOT, "open the shop, cold: %.1f s%n", (System.nanoTime() - start) / 1e9);
        Proposal nine = made(designer, NINE_FEET);
        Proposal twenty = made(designer, TWENTY_FEET);

        report("brief to proposal and its JSON, 9 ft generous, " + designer.catalogue().products().size() + " products", 30, 100, () -> ProposalJson.text(ProposalJson.of(made(designer, NINE_FEET))));
        report("brief to proposal, 9 ft with a budget", 10, 60,
                () -> made(designer, NINE_FEET.replace("\"abundance\"", "\"budget\": \"650.00\", \"abundance\"")));
        report("brief to proposal, 20 ft full, round, lavish", 5, 20, () -> made(designer, TWENTY_FEET));
        report("front picture, 9 ft generous", 30, 100, () -> picture(designer, nine).svg(View.FRONT));
        System.out.println("front picture, 9 ft generous: " + picture(designer, nine).svg(View.FRONT).length() / 1024 + " KB");
        report("front picture, 20 ft lavish", 5, 20, () -> picture(designer, twenty).svg(View.FRONT));
        report("plan.pdf with its picture, 9 ft generous", 8, 30, () -> pdf(designer, nine));
        report("plan.pdf with its picture, 20 ft lavish", 2, 8, () -> pdf(designer, twenty));
    }

    private static Proposal made(Designer designer, String brief) {
        return ((Outcome.Made) designer.propose(brief, Adjustments.NONE, Designer.SEED)).proposal();
    }

    private static ProposalPicture picture(Designer designer, Proposal p) {
        return new ProposalPicture(p.brief(), p.kit(), p.layout(), p.catalogue());
    }

    private static byte[] pdf(Designer designer, Proposal p) {
        return PlanDocument.pdf(p, picture(designer, p).printed(View.FRONT), Paper.LETTER, Optional.empty(), Optional.empty());
    }

    private static void report(String what, int warmUp, int runs, Supplier<?> work) {
        for (int i = 0; i < warmUp; i++) {
            work.get();
        }
        long[] nanos = new long[runs];
        for (int i = 0; i < runs; i++) {
            long start = System.nanoTime();
            work.get();
            nanos[i] = System.nanoTime() - start;
        }
        Arrays.sort(nanos);
        System.out.printf(Locale.ROOT, "%s: median %.0f ms, p95 %.0f ms, most %.0f ms (%d runs)%n", what, nanos[runs / 2] / 1e6,
                nanos[(int) Math.ceil(runs * 0.95) - 1] / 1e6, nanos[runs - 1] / 1e6, runs);
    }
}
