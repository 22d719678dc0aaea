package boughwright.api;

import boughwright.consultation.Consultations;
import boughwright.consultation.Reopened;
import boughwright.consultation.Saved;
import boughwright.proposal.Outcome;
import boughwright.proposal.Proposal;
import boughwright.text.Text;
import java.util.Optional;
import java.util.function.BiFunction;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Component;

/** Answers with pages of kept proposals. */
@Component
class KeptPages {

    private final Consultations consultations;

    KeptPages(Consultations consultations) {
        this.consultations = consultations;
    }

    /** A page of the proposal as it is now; the conflict or the faults where there is none. */
    ResponseEntity<?> page(String code, MediaType type, BiFunction<Saved, Proposal, ?> page) {
        Optional<Reopened> reopened = consultations.reopen(code);
        if (reopened.isEmpty()) {
            return ProposalsApi.problem(HttpStatus.NOT_FOUND, "code", Text.of("api.no-code.title"), Text.of("api.no-code", code));
        }
        Outcome outcome = reopened.get().outcome();
        if (outcome instanceof Outcome.BadBrief bad) {
            return ProposalsApi.problem(bad.faults());
        }
        if (outcome instanceof Outcome.NoKitFits) {
            return ResponseEntity.status(HttpStatus.UNPROCESSABLE_ENTITY).contentType(MediaType.APPLICATION_JSON).body(reopened.get().saved().proposal());
        }
        return ResponseEntity.ok().contentType(type).body(page.apply(reopened.get().saved(), ((Outcome.Made) outcome).proposal()));
    }
}
