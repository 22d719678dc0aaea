package boughwright.api;

import boughwright.consultation.Consultations;
import boughwright.consultation.Reopened;
import boughwright.consultation.Saved;
import boughwright.measure.Units;
import boughwright.proposal.Outcome;
import boughwright.proposal.Proposal;
import boughwright.text.Text;
import java.util.Arrays;
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

    /** A page of the proposal as it is now, with lengths in the customer's own units; the conflict or the faults where there is none. */
    ResponseEntity<?> page(String code, MediaType type, BiFunction<Saved, Proposal, ?> page) {
        return page(code, type, null, page);
    }

    /** @param units in which lengths are told: {@code feet} or {@code metres}; null for the customer's own */
    ResponseEntity<?> page(String code, MediaType type, String units, BiFunction<Saved, Proposal, ?> page) {
        Optional<Units> asked = Arrays.stream(Units.values()).filter(u -> u.name().equalsIgnoreCase(units)).findFirst();
        if (units != null && asked.isEmpty()) {
            return ProposalsApi.problem(HttpStatus.BAD_REQUEST, "units", Text.of("api.bad-units.title"), Text.of("api.bad-units", units));
        }
        Optional<Reopened> reopened = consultations.reopen(code);
        if (reopened.isEmpty()) {
            return ProposalsApi.problem(HttpStatus.NOT_FOUND, "code", Text.of("api.no-code.title"), Text.of("api.no-code", code));
        }
        Outcome outcome = reopened.get().outcome();
        if (outcome instanceof Outcome.BadBrief bad) {
            return ProposalsApi.problem(bad.faults());
        }
        if (outcome instanceof Outcome.NoKitFits) {
            return ResponseEntity.status(HttpStatus.UNPROCESSABLE_ENTITY).contentType(MediaType.APPLICATION_JSON).body(Consultations.json(reopened.get()));
        }
        Proposal proposal = ((Outcome.Made) outcome).proposal();
        Proposal told = asked.map(u -> reopened.get().designer().told(proposal, u)).orElse(proposal);
        return ResponseEntity.ok().contentType(type).body(page.apply(reopened.get().saved(), told));
    }
}
