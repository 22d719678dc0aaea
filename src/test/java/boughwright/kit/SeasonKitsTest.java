package boughwright.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.brief.Owned;
import boughwright.needs.Adjustments;
import boughwright.proposal.Designer;
import boughwright.proposal.Outcome;
import boughwright.proposal.Proposal;
import boughwright.proposal.ProposalFixture;
import boughwright.proposal.SeededProposals;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Kits from the full season's catalogue. */
class SeasonKitsTest {

    @Test
    void every_kit_keeps_to_its_needs_stock_packs_budget_and_house_rules() {
        for (Proposal p : SeededProposals.all()) {
            assertThat(new KitAudit(request(p), p.kit().lines()).faults()).as(SeededProposals.of(p)).isEmpty();
        }
    }

    @Test
    void the_score_is_the_sum_of_its_terms_and_lies_within_two_percent_of_its_bound() {
        for (Proposal p : SeededProposals.all()) {
            Kit kit = p.kit();
            assertThat(kit.terms()).as(SeededProposals.of(p)).extracting(TermScore::term).containsExactly(Term.values());
            assertThat(kit.score()).as(SeededProposals.of(p)).isCloseTo(kit.terms().stream().mapToDouble(TermScore::points).sum(), within(1e-9));
            assertThat(kit.bound()).as(SeededProposals.of(p)).isGreaterThanOrEqualTo(kit.score());
            assertThat(kit.gap()).as(SeededProposals.of(p)).isCloseTo((kit.bound() - kit.score()) / kit.score(), within(1e-5)).isBetween(0.0, 0.02);
        }
    }

    @Test
    void every_term_but_the_money_terms_lies_between_zero_and_one() {
        for (Proposal p : SeededProposals.all()) {
            assertThat(p.kit().terms()).as(SeededProposals.of(p)).allSatisfy(t -> {
                assertThat(t.term().counts() || t.value() <= 1 + 1e-9).as("%s", t.term()).isTrue();
                if (!t.term().counts() && t.term() != Term.NO_LEFTOVERS && t.term() != Term.THRIFT) {
                    assertThat(t.value()).as("%s", t.term()).isGreaterThanOrEqualTo(-1e-9);
                }
            });
        }
    }

    @Test
    void the_order_of_the_catalogue_does_not_matter() {
        List<String> rows = new ArrayList<>(ProposalFixture.text("season.csv").lines().toList());
        String header = rows.remove(0);
        for (int seed = 1; seed <= 3; seed++) {
            Collections.shuffle(rows, new Random(seed));
            Designer shuffled = ProposalFixture.designer(ProposalFixture.catalogue(header + "\n" + String.join("\n", rows) + "\n"));
            for (Proposal p : SeededProposals.all().subList(10 * seed, 10 * seed + 5)) {
                assertThat(ProposalFixture.made(shuffled, p.brief().asGiven()).kit()).as(SeededProposals.of(p)).isEqualTo(p.kit());
            }
        }
    }

    @Test
    void the_same_request_gives_the_same_kit_on_two_threads_at_once() {
        List<Proposal> some = SeededProposals.all().subList(60, 68);
        List<Kit> again = some.parallelStream().map(p -> ((Outcome.Made)
                ProposalFixture.season().propose(p.brief(), Adjustments.NONE, p.seed())).proposal().kit()).toList();
        assertThat(again).isEqualTo(some.stream().map(Proposal::kit).toList());
    }

    @Test
    void the_check_itself_sees_every_kind_of_fault() {
        Proposal p = SeededProposals.all().get(0);
        KitLine line = p.kit().lines().get(0);
        KitLine last = p.kit().lines().get(p.kit().lines().size() - 1);
        assertThat(spoiled(p, changed(line, line.sku(), line.quantity() + 1, line.owned(), line.packs()))).isNotEmpty();
        assertThat(spoiled(p, changed(line, line.sku(), line.quantity(), line.owned() + 1, line.packs()))).isNotEmpty();
        assertThat(spoiled(p, changed(line, line.sku(), line.quantity(), line.owned(), line.packs() + 1))).isNotEmpty();
        assertThat(spoiled(p, changed(line, last.sku(), line.quantity(), line.owned(), line.packs()))).isNotEmpty();
        assertThat(p.brief().owned()).extracting(Owned::sku).doesNotHaveDuplicates();
    }

    private static List<KitAudit.Fault> spoiled(Proposal p, KitLine instead) {
        List<KitLine> lines = new ArrayList<>(p.kit().lines());
        lines.set(0, instead);
        return new KitAudit(request(p), lines).faults();
    }

    private static KitRequest request(Proposal p) {
        return new KitRequest(p.brief(), p.needs(), p.catalogue(), p.brief().budget(), p.adjustments(), Map.of());
    }

    private static KitLine changed(KitLine l, String sku, int quantity, int owned, int packs) {
        return new KitLine(l.needId(), l.slot(), sku, l.name(), l.layer(), l.role(), quantity, owned, packs, l.packSize(), l.unitPrice(),
                l.unitPrice().times(packs), l.shelf(), l.reason());
    }
}
