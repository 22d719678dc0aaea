package boughwright.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.kit.KitLine;
import boughwright.needs.Role;
import boughwright.proposal.Proposal;
import boughwright.proposal.SeededProposals;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** The cut list is a cutting-stock problem; lower bounds on rolls are worked out here without the code that cuts. */
class CutListTest {

    private static KitLine line(Proposal p, Role role) {
        return p.kit().lines().stream().filter(l -> l.role() == role).findFirst().orElseThrow();
    }

    private static List<RollCuts> rolls(Proposal p, Role role) {
        String sku = line(p, role).sku();
        return p.layout().cutList().stream().filter(r -> r.sku().equals(sku)).toList();
    }

    @Test
    void cuts_and_leftover_of_every_roll_add_up_to_the_roll() {
        for (Proposal p : SeededProposals.all()) {
            assertThat(p.layout().cutList()).as(SeededProposals.of(p)).allSatisfy(roll -> {
                double cut = roll.cuts().stream().mapToDouble(RollCuts.Cut::length).sum();
                assertThat(cut + roll.lost() + roll.leftover()).isCloseTo(roll.rollLength(), within(1e-9));
                assertThat(roll.leftover()).isGreaterThanOrEqualTo(0);
            });
        }
    }

    @Test
    void every_run_is_cut_once_from_each_of_the_two_ribbons() {
        for (Proposal p : SeededProposals.all()) {
            Map<String, Double> runs = new TreeMap<>(p.layout().ribbonRuns().stream().collect(Collectors.toMap(RibbonRun::id, RibbonRun::length)));
            for (Role role : List.of(Role.BASE_RIBBON, Role.OVERLAY_RIBBON)) {
                Map<String, Double> cut = new TreeMap<>(rolls(p, role).stream().flatMap(r -> r.cuts().stream())
                        .collect(Collectors.toMap(RollCuts.Cut::purpose, RollCuts.Cut::length)));
                assertThat(cut).as("%s %s", SeededProposals.of(p), role).isEqualTo(runs);
            }
        }
    }

    @Test
    void the_rolls_are_those_that_were_bought() {
        for (Proposal p : SeededProposals.all()) {
            for (Role role : List.of(Role.BASE_RIBBON, Role.OVERLAY_RIBBON, Role.ACCENT_RIBBON)) {
                List<Integer> numbers = rolls(p, role).stream().map(RollCuts::roll).toList();
                assertThat(numbers).as("%s %s", SeededProposals.of(p), role)
                        .isEqualTo(IntStream.rangeClosed(1, line(p, role).quantity()).boxed().toList());
            }
        }
    }

    @Test
    void no_cutting_could_do_with_fewer_rolls() {
        for (Proposal p : SeededProposals.all()) {
            for (Role role : List.of(Role.BASE_RIBBON, Role.OVERLAY_RIBBON)) {
                List<RollCuts> used = rolls(p, role).stream().filter(r -> !r.cuts().isEmpty()).toList();
                double roll = used.get(0).rollLength();
                List<Double> cuts = used.stream().flatMap(r -> r.cuts().stream()).map(RollCuts.Cut::length).toList();
                double total = cuts.stream().mapToDouble(d -> d).sum();
                double shortest = cuts.stream().mapToDouble(d -> d).min().orElseThrow();
                int byLength = (int) Math.ceil(total / roll - 1e-9);
                int byCount = (int) Math.ceil(cuts.size() / Math.floor(roll / shortest + 1e-9) - 1e-9);
                assertThat(used.size()).as("%s %s", SeededProposals.of(p), role).isEqualTo(Math.max(byLength, byCount));
            }
        }
    }

    @Test
    void what_is_left_of_a_body_roll_is_too_short_for_another_run_unless_the_tree_is_full_of_runs() {
        for (Proposal p : SeededProposals.all()) {
            int runs = p.layout().ribbonRuns().size();
            if (runs >= 2 && new Surface(p.brief().tree()).area() <= runs * 0.06) {
                continue;
            }
            double plain = 2 * p.needs().ribbon().tail() + 2 * p.needs().ribbon().loop();
            assertThat(rolls(p, Role.BASE_RIBBON)).as(SeededProposals.of(p)).allSatisfy(r -> assertThat(r.leftover()).isLessThan(plain));
        }
    }

    @Test
    void accents_are_cut_from_the_bought_rolls_of_the_third_ribbon() {
        for (Proposal p : SeededProposals.all()) {
            Map<String, Double> cut = new TreeMap<>(rolls(p, Role.ACCENT_RIBBON).stream().flatMap(r -> r.cuts().stream())
                    .collect(Collectors.toMap(RollCuts.Cut::purpose, RollCuts.Cut::length)));
            Map<String, Double> accents = new TreeMap<>(p.layout().gaps().stream().collect(Collectors.toMap(Gap::id, Gap::ribbon)));
            assertThat(cut).as(SeededProposals.of(p)).isEqualTo(accents);
        }
    }
}
