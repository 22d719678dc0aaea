package boughwright.layout;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.needs.Layer;
import boughwright.proposal.Proposal;
import boughwright.proposal.SeededProposals;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Two pieces of one zone may touch and never overlap; a bouquet at the tip and the stems of one cluster touch by design. */
class PiecesDoNotOverlapTest {

    private static final double HAIR = 1e-6;

    /** None; of many, the first three are shown. */
    private static void assertNone(List<String> overlaps) {
        assertThat(overlaps.stream().limit(3)).as("the first of %s overlaps", overlaps.size()).isEmpty();
    }

    private static List<String> overlaps(Predicate<Placement> which) {
        List<String> overlaps = new ArrayList<>();
        for (Proposal p : SeededProposals.all()) {
            Map<Zone, List<Placement>> zones = p.layout().pieces().stream().filter(q -> q.zone() != Zone.CROWN).filter(which)
                    .collect(Collectors.groupingBy(Placement::zone));
            zones.values().forEach(pieces -> {
                for (int i = 0; i < pieces.size(); i++) {
                    for (int j = i + 1; j < pieces.size(); j++) {
                        Placement a = pieces.get(i);
                        Placement b = pieces.get(j);
                        boolean together = !a.group().isEmpty() && a.group().equals(b.group());
                        if (!together && a.at().distance(b.at()) < a.radius() + b.radius() - HAIR) {
                            overlaps.add(SeededProposals.of(p) + ": " + a.needId() + " " + a.group() + " and " + b.needId() + " " + b.group() + " "
                                    + a.at().distance(b.at()) + " m apart, radii " + a.radius() + " and " + b.radius());
                        }
                    }
                }
            });
        }
        return overlaps;
    }

    @Test
    void no_two_single_pieces_of_one_zone_overlap() {
        assertNone(overlaps(p -> p.group().isEmpty() && p.layer() != Layer.LIGHTS));
    }

    @Test
    void the_start_of_a_string_of_lights_is_in_no_other_piece() {
        assertNone(overlaps(p -> p.group().isEmpty() && p.zone() == Zone.MIDDLE));
    }

    @Test
    void no_two_clusters_overlap_and_no_single_flower_is_in_a_cluster() {
        assertNone(overlaps(p -> p.zone() == Zone.OUTER));
    }
}
