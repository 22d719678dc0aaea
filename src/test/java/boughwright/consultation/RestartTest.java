package boughwright.consultation;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.Boughwright;
import boughwright.KioskFixture;
import boughwright.needs.Adjustments;
import boughwright.proposal.Designer;
import boughwright.proposal.Outcome;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.boot.SpringApplication;
import org.springframework.context.ConfigurableApplicationContext;

class RestartTest {

    private static final String BRIEF = "{\"tree\": {\"height\": \"7 ft 6 in\"}}";

    @TempDir
    private Path data;

    private ConfigurableApplicationContext start(String... more) {
        List<String> arguments = new ArrayList<>(List.of("--server.port=0", "--boughwright.data=" + data, "--logging.level.root=WARN"));
        arguments.addAll(List.of(more));
        return SpringApplication.run(Boughwright.class, arguments.toArray(String[]::new));
    }

    @Test
    void what_was_saved_is_found_by_its_code_after_a_restart_with_all_that_hands_changed() {
        Adjustments adjustments = Adjustments.NONE.withQuantity("florals/single-flower", 7);
        Outcome first = KioskFixture.designer().propose(BRIEF, Adjustments.NONE, Designer.SEED);
        Outcome changed = KioskFixture.designer().propose(BRIEF, adjustments, Designer.SEED);
        Saved saved;
        try (ConfigurableApplicationContext kiosk = start()) {
            Consultations consultations = kiosk.getBean(Consultations.class);
            Saved begun = consultations.begin(BRIEF, first);
            saved = consultations.go(begun.code(), BRIEF, changed);
        }
        try (ConfigurableApplicationContext kiosk = start()) {
            Consultations consultations = kiosk.getBean(Consultations.class);
            assertThat(consultations.open(saved.code())).hasValue(saved);
            assertThat(consultations.open(saved.spoken())).hasValue(saved);
            Reopened reopened = consultations.reopen(saved.code()).orElseThrow();
            assertThat(reopened.moved()).isFalse();
            assertThat(reopened.saved()).isEqualTo(saved);
            assertThat(consultations.open(saved.code(), 1)).hasValueSatisfying(kept -> assertThat(kept.adjustments().none()).isTrue());
            assertThat(saved.revision()).isEqualTo(2);
            assertThat(saved.adjustments()).isEqualTo(adjustments);
            assertThat(saved.proposal()).contains("\"code\" : \"" + saved.code() + "\"");
        }
    }

    @Test
    void a_plan_kept_under_another_catalogue_is_worked_out_again_and_kept_anew() throws Exception {
        Saved saved;
        try (ConfigurableApplicationContext kiosk = start()) {
            saved = kiosk.getBean(Consultations.class).begin(BRIEF, KioskFixture.designer().propose(BRIEF, Adjustments.NONE, Designer.SEED));
        }
        try (ConfigurableApplicationContext kiosk = start("--boughwright.catalogue=catalogue-samples/small.csv")) {
            Consultations consultations = kiosk.getBean(Consultations.class);

            Reopened reopened = consultations.reopen(saved.code()).orElseThrow();

            assertThat(reopened.moved()).isTrue();
            assertThat(reopened.saved().revision()).isEqualTo(2);
            assertThat(consultations.open(saved.code())).hasValue(reopened.saved());
        }
    }
}
