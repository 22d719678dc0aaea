package boughwright.plan;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.measure.Length;
import boughwright.needs.Climb;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Reach by size of stepladder for a person of 5 ft 9 in: safemt.com, "Three Steps for Selecting Ladders". */
class StepladderTest {

    private static Climb at(int feet, double inches) {
        return Stepladder.forWorkAt(Length.ofInches(12 * feet + inches));
    }

    @ParameterizedTest(name = "a {0} ft ladder reaches {1} ft {2} in, then a {3} ft ladder is needed")
    @CsvSource({"0,6,9,4", "4,8,6,5", "5,9,5,6", "6,10,4,7", "7,11,4,8", "8,12,3,10", "10,14,2,12"})
    void each_ladder_serves_up_to_its_reach_and_the_next_size_above(int size, int feet, int inches, int next) {
        assertThat(at(feet, inches).ladderFeet()).isEqualTo(size);
        assertThat(at(feet, inches + 0.01).ladderFeet()).isEqualTo(next);
        assertThat(at(feet, inches + 0.01).beyondLadder()).isFalse();
    }

    @Test
    void work_above_what_a_twelve_foot_ladder_reaches_is_for_a_professional() {
        // The table goes on to 14 and 16 ft ladders; a customer does not.
        assertThat(at(16, 1)).isEqualTo(new Climb(Length.ofInches(193).metres(), 12, false));
        assertThat(at(16, 1.01).beyondLadder()).isTrue();
        assertThat(at(16, 1.01).ladderFeet()).isZero();
        assertThat(at(18, 0).beyondLadder()).isTrue();
        assertThat(at(19, 11).beyondLadder()).isTrue();
    }

    @Test
    void a_height_written_in_metres_is_not_moved_to_the_next_ladder_by_rounding() {
        assertThat(Stepladder.forWorkAt(Length.read("2.0574 m").orElseThrow()).ladderFeet()).as("6 ft 9 in").isZero();
        assertThat(Stepladder.forWorkAt(Length.read("259.08 cm").orElseThrow()).ladderFeet()).as("8 ft 6 in").isEqualTo(4);
    }
}
