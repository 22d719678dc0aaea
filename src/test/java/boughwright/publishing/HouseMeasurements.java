package boughwright.publishing;

import boughwright.house.Grid;
import boughwright.house.GridRow;
import boughwright.house.HouseCheck;
import boughwright.house.HouseRules;
import boughwright.house.Heights;
import boughwright.house.Rehearsal;
import boughwright.house.Rehearsed.Kind;
import boughwright.house.Rehearsed.Subject;
import boughwright.house.RehearsalReport;
import boughwright.measure.Units;
import boughwright.needs.Adjustments;
import boughwright.needs.HouseNumber;
import boughwright.proposal.SeededProposals;
import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;

/** Prints how long checking, rehearsing and publishing house rules take on this machine; on demand, copied to docs/performance.md. */
public final class HouseMeasurements {

    private HouseMeasurements() {
    }

    public static void main(String[] args) throws IOException {
        System.out.println("processors " + Runtime.getRuntime().availableProcessors() + ", java " + System.getProperty("java.version"));
        OpenShop shop = OpenShop.onDisk(Files.createTempDirectory("boughwright"));
        shop.shop.designer();
        HouseRules rules = shop.live();
        checks(rules);
        largeTable(rules);
        rehearsals(shop, rules);
        publishing(shop);
        System.exit(0);
    }

    /** An edit of one cell, whichever page it is on. */
    private static void checks(HouseRules rules) {
        HouseCheck check = new HouseCheck(Units.FEET);
        check.of(rules);
        List<String> topics = rules.sheets().stream().map(s -> s.topic()).toList();
        double[] millis = new double[220];
        for (int i = 0; i < millis.length; i++) {
            String number = String.valueOf(1 + i / 100.0);
            HouseRules edited = rules.changeGrid(topics.get(i % topics.size()), "Base", g -> g.change(1, r -> r.withResult(0, number)));
            long start = System.nanoTime();
            check.of(edited);
            millis[i] = (System.nanoTime() - start) / 1e6;
        }
        report("check of one edit", Arrays.copyOfRange(millis, 20, millis.length));
    }

    private static void largeTable(HouseRules rules) {
        List<GridRow> rows = new ArrayList<>();
        for (int i = 0; i < 512; i++) {
            int hole = i % 64 == 40 ? 1 : 0;
            rows.add(new GridRow(new Heights(feet(i), false, feet(i + 1 - hole * 0.5 + (i % 64 == 50 ? 0.5 : 0)), i == 511), List.of(List.of(), List.of(), List.of()),
                    List.of(String.valueOf(1 + i)), false, "A row."));
        }
        HouseRules large = rules.changeGrid("body-ribbon", "Base", g -> new Grid(g.name(), true, g.columns(), g.results(), rows));
        double[] millis = new double[8];
        int found = 0;
        for (int i = 0; i < millis.length; i++) {
            HouseCheck check = new HouseCheck(Units.FEET);
            check.of(rules);
            long start = System.nanoTime();
            found = check.of(large).size();
            millis[i] = (System.nanoTime() - start) / 1e6;
        }
        report("check of a table of 512 rows with 8 gaps and 8 overlaps, " + found + " told", millis);
    }

    private static String feet(double step) {
        return String.format(Locale.ROOT, "%.6f ft", 3 + 17 * step / 512);
    }

    private static void rehearsals(OpenShop shop, HouseRules rules) {
        List<Subject> subjects = IntStream.rangeClosed(1, 500).mapToObj(i -> new Subject("c" + i, SeededProposals.brief(i), Adjustments.NONE, i)).toList();
        List<Subject> many = new ArrayList<>();
        for (int i = 0; i < 10; i++) {
            many.addAll(subjects);
        }
        int threads = Runtime.getRuntime().availableProcessors();
        HouseRules row = OpenShop.moreRibbon(rules, "3.2");
        HouseRules all = rules.withNumber(HouseNumber.SCORE_THRIFT, "9").withNumber(HouseNumber.TAIL, "10 in");
        for (int round = 0; round < 3; round++) {
            rehearse("by needs, one row changed", rehearsing(shop, row, false), many, threads);
        }
        rehearse("whole, one row changed", rehearsing(shop, row, true), subjects, threads);
        for (int round = 0; round < 2; round++) {
            rehearse("whole, weights and tails changed, so that every kit is made " + (round == 0 ? "under both editions" : "under the draft, known under the live one"), rehearsing(shop, all, true), subjects, threads);
        }
    }

    private static Rehearsal rehearsing(OpenShop shop, HouseRules rules, boolean whole) {
        return shop.rehearsals.of(shop.publisher.trial(rules).rulebook().orElseThrow(), whole);
    }

    private static void rehearse(String what, Rehearsal rehearsal, List<Subject> subjects, int threads) {
        long start = System.nanoTime();
        RehearsalReport report = rehearsal.of(subjects, threads, n -> { });
        double seconds = (System.nanoTime() - start) / 1e9;
        System.out.printf(Locale.ROOT, "rehearsal %s: %.0f consultations/s (%d, of which %d change, %d with a new conflict)%n", what, subjects.size() / seconds,
                subjects.size(), report.changed().size(), report.count(Kind.NEW_CONFLICT));
    }

    private static void publishing(OpenShop shop) {
        double[] millis = new double[200];
        long early = 0;
        for (int i = 0; i < millis.length; i++) {
            String rolls = String.valueOf(2.5 + i / 1000.0);
            int number = i;
            long start = System.nanoTime();
            shop.publish("Edition number " + number, r -> OpenShop.moreRibbon(r, rolls));
            millis[i] = (System.nanoTime() - start) / 1e6;
            if (i == 19) {
                early = heap();
            }
        }
        long late = heap();
        report("publish", millis);
        System.out.printf(Locale.ROOT, "heap after 20 publishes %d MB, after 200 %d MB: %.1f %%%n", early >> 20, late >> 20, 100.0 * late / early - 100);
    }

    private static long heap() {
        for (int i = 0; i < 5; i++) {
            System.gc();
            try {
                Thread.sleep(200);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        }
        return Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
    }

    private static void report(String what, double[] millis) {
        Arrays.sort(millis);
        System.out.printf(Locale.ROOT, "%s: p50 %.0f ms, p95 %.0f ms, most %.0f ms (%d)%n", what, millis[millis.length / 2],
                millis[(int) Math.ceil(0.95 * millis.length) - 1], millis[millis.length - 1], millis.length);
    }
}
