package boughwright.intake;

import static boughwright.intake.IntakeFixture.opened;
import static boughwright.intake.IntakeFixture.read;
import static boughwright.intake.IntakeFixture.season;
import static boughwright.intake.IntakeFixture.stored;
import static boughwright.intake.IntakeFixture.written;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class RoundTripTest {

    @TempDir
    Path folder;

    @ParameterizedTest
    @EnumSource
    void the_season_comes_back_as_it_went(Format format) {
        Delivery.Read read = read(opened(stored(folder, written(format, season()))), Kind.WHOLE);
        assertThat(read.faults()).isEmpty();
        assertThat(read.notes()).isEmpty();
        assertThat(read.products()).isEqualTo(season());
    }
}
