package boughwright.ui;

import static org.mockito.ArgumentMatchers.any;
import static org.mockito.ArgumentMatchers.anyLong;
import static org.mockito.ArgumentMatchers.anyString;
import static org.mockito.Mockito.lenient;
import static org.mockito.Mockito.mock;

import boughwright.KioskFixture;
import boughwright.consultation.Consultation;
import boughwright.consultation.Consultations;
import boughwright.consultation.Interviews;
import boughwright.consultation.Reopened;
import boughwright.consultation.ResumeMarks;
import boughwright.consultation.Saved;
import boughwright.counter.Holds;
import boughwright.counter.ShopTerms;
import boughwright.counter.Terms;
import boughwright.publishing.ShopDoor;
import boughwright.needs.Adjustments;
import boughwright.proposal.Designer;
import boughwright.proposal.Outcome;
import boughwright.proposal.ProposalJson;
import java.time.LocalDateTime;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** Consultations kept in memory, and the demo shop behind an open door, for screens under test. */
final class SavedHere {

    private final Map<String, Saved> byCode = new HashMap<>();
    final Consultations consultations = mock(Consultations.class);
    final ShopDoor shop = mock(ShopDoor.class);
    final Interviews interviews = mock(Interviews.class);
    final ResumeMarks marks = mock(ResumeMarks.class);
    final CodeTries tries = mock(CodeTries.class);
    final Holds holds = mock(Holds.class);
    final ShopTerms terms = mock(ShopTerms.class);
    final Books books = new Books(shop, consultations, interviews, marks, tries, holds, terms);
    /** As they were kept last, by code. */
    final Map<String, Consultation> begun = new HashMap<>();

    SavedHere() {
        lenient().when(terms.now()).thenReturn(Terms.USUAL);
        lenient().when(shop.designer()).thenReturn(KioskFixture.designer());
        lenient().when(interviews.begin(any())).thenAnswer(call -> answered("kelp-4-moss", call.getArgument(0), Optional.empty()));
        lenient().when(interviews.begin(any(), any())).thenAnswer(call -> answered("kelp-4-moss", call.getArgument(0), call.getArgument(1)));
        lenient().doAnswer(call -> answered(call.getArgument(0), call.getArgument(1), Optional.empty())).when(interviews).keep(anyString(), any());
        lenient().when(interviews.open(anyString())).thenAnswer(call -> Optional.ofNullable(begun.get(call.<String>getArgument(0))));
        lenient().when(consultations.open(anyString())).thenAnswer(call -> Optional.ofNullable(byCode.get(call.<String>getArgument(0))));
        lenient().when(consultations.reopen(anyString())).thenAnswer(call -> Optional.ofNullable(byCode.get(call.<String>getArgument(0)))
                .map(saved -> new Reopened(saved, KioskFixture.designer(), KioskFixture.designer().propose(saved.brief(), saved.adjustments(), saved.seed()), false)));
        lenient().when(consultations.workOut(any(), anyString(), any(), anyLong(), any())).thenAnswer(call -> call.<Designer>getArgument(0)
                .propose(call.<String>getArgument(1), call.getArgument(2), call.getArgument(3), call.getArgument(4)));
        lenient().when(consultations.offers(any(), any(), any())).thenAnswer(call -> call.<Designer>getArgument(0).offers(call.getArgument(1), call.getArgument(2)));
        lenient().when(consultations.begin(anyString(), any())).thenAnswer(call -> keep("kelp-4-moss", 1, call.getArgument(0), call.getArgument(1)));
        lenient().when(consultations.go(anyString(), anyString(), any())).thenAnswer(call -> keep(call.getArgument(0),
                Optional.ofNullable(byCode.get(call.<String>getArgument(0))).map(Saved::revision).orElse(0) + 1, call.getArgument(1), call.getArgument(2)));
    }

    private Consultation answered(String code, Interviews.State state, Optional<String> follows) {
        LocalDateTime then = LocalDateTime.of(2026, 11, 26, 9, 0);
        Consultation consultation = new Consultation(code, then, then, "", state.language(), state.units(), state.question(), state.answers(), follows);
        begun.put(code, consultation);
        return consultation;
    }

    private Saved keep(String code, int revision, String brief, Outcome outcome) {
        Adjustments adjustments = outcome instanceof Outcome.Made made ? made.proposal().adjustments() : ((Outcome.NoKitFits) outcome).adjustments();
        Saved saved = new Saved(code, revision, brief, adjustments, 1, outcome instanceof Outcome.Made, outcome instanceof Outcome.Made m ? ProposalJson.text(ProposalJson.of(m.proposal())) : "{}", "winter-26", boughwright.text.Language.ENGLISH);
        byCode.put(code, saved);
        return saved;
    }

    /** Keeps a brief of an earlier season, whatever has become of what it asks for. */
    void keepStale(String code, String brief) {
        byCode.put(code, new Saved(code, 1, brief, Adjustments.NONE, 1, true, "{}", "winter-26", boughwright.text.Language.ENGLISH));
    }

    Reopened reopened(String brief) {
        return consultations.reopen(begin(brief).code()).orElseThrow();
    }

    Saved begin(String brief) {
        return consultations.begin(brief, KioskFixture.designer().propose(brief, Adjustments.NONE, 1));
    }
}
