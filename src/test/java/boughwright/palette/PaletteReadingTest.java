package boughwright.palette;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.kit.KitColours;
import boughwright.kit.Term;
import boughwright.kit.TermScore;
import boughwright.needs.Role;
import boughwright.proposal.Proposal;
import boughwright.proposal.ProposalFixture;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PaletteReadingTest {

    private static Proposal proposal(String palette) {
        return ProposalFixture.made(ProposalFixture.season(), "{\"tree\": {\"height\": \"7 ft 6 in\"}, \"palette\": \"" + palette + "\"}");
    }

    private static PaletteReading reading(Proposal p) {
        return PaletteReading.of(p.brief(), p.needs(), p.catalogue(), p.kit());
    }

    /** The kit's audit counts the term from the lines alone and shares no code with the reading. */
    @ParameterizedTest
    @ValueSource(strings = {"copper-and-cream", "silver-birch", "tide-and-linen"})
    void shares_fall_as_the_audited_score_of_the_kit_says(String palette) {
        Proposal p = proposal(palette);
        PaletteReading reading = reading(p);
        double value = p.kit().terms().stream().filter(t -> t.term() == Term.PALETTE_SHARES).mapToDouble(TermScore::value).sum();
        double off = Math.abs(reading.fallen(0) - reading.wanted().main()) + Math.abs(reading.fallen(1) + reading.fallen(3) - reading.wanted().second())
                + Math.abs(reading.fallen(2) - reading.wanted().spark());
        assertThat(1 - off / 2).isCloseTo(value, within(1e-9));
        assertThat(reading.members().stream().mapToDouble(Tone::share).sum()).isCloseTo(1, within(1e-9));
    }

    /** Sixty, thirty, ten: common practice, as the edition that ships has it. */
    @Test
    void the_house_wants_sixty_thirty_and_ten() {
        PaletteReading reading = reading(proposal("copper-and-cream"));
        assertThat(List.of(reading.wanted().main(), reading.wanted().second(), reading.wanted().spark())).containsExactly(0.6, 0.3, 0.1);
    }

    @Test
    void every_product_that_shows_a_colour_is_read_once_with_its_share_and_the_palette_colour_it_counts_for() {
        Proposal p = proposal("cranberry-and-pine");
        PaletteReading reading = reading(p);
        List<String> slots = p.kit().lines().stream().filter(l -> l.role() != Role.LIGHT_STRING).map(l -> l.slot()).distinct().toList();
        assertThat(reading.kit().tones()).extracting(Tone::id).containsExactlyElementsOf(slots);
        for (int part = 0; part < 4; part++) {
            int which = part;
            assertThat(reading.kit().tones().stream().filter(t -> t.part() == which).mapToDouble(Tone::share).sum()).isCloseTo(reading.fallen(part), within(1e-9));
        }
    }

    @Test
    void a_kit_of_products_that_have_their_palette_colour_itself_counts_them_for_it() {
        Proposal p = proposal("copper-and-cream");
        for (KitColours.Shown shown : KitColours.of(p.brief(), p.needs(), p.catalogue(), p.kit()).shown()) {
            if (shown.difference() < 3) {
                assertThat(shown.product().lab().difference(p.brief().palette().labs().get(shown.part()))).isLessThan(3);
            }
            assertThat(shown.area()).isPositive();
        }
    }

    @Test
    void the_same_kit_is_read_the_same() {
        Proposal p = proposal("midnight-brass");
        assertThat(reading(p)).isEqualTo(reading(p));
    }
}
