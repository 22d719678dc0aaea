package boughwright.ui;

import boughwright.consultation.Consultation;
import boughwright.consultation.Interviews;
import boughwright.consultation.Saved;
import boughwright.proposal.Bought;
import boughwright.text.Language;
import boughwright.text.Text;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.vaadin.flow.component.Key;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.Input;
import com.vaadin.flow.component.html.NativeButton;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.data.value.ValueChangeMode;
import java.time.Duration;
import java.util.Map;
import java.util.Optional;

/**
 * Asks for a code and opens what it stands for: the interview where it stopped, or the plan; a plan of an earlier season may also be where
 * this year starts from.
 */
final class CodeEntry extends Div {

    private static final ObjectMapper JSON = new ObjectMapper();

    private final Books books;
    private final Input input = new Input(ValueChangeMode.EAGER);
    private final Paragraph fault = new Paragraph();
    private final Div choice = new Div();
    private final String here;
    private final Runnable again;

    /** @param words why it is asked */
    CodeEntry(Books books, String words) {
        this(books, words, "", () -> { });
    }

    /**
     * @param here code of the plan whose page asks
     * @param again shows that page once the code was typed
     */
    CodeEntry(Books books, String words, String here, Runnable again) {
        this.books = books;
        this.here = here;
        this.again = again;
        addClassName("code-entry");
        input.setPlaceholder(Text.of("interview.code.example"));
        Controls.quiet(input);
        // Nothing to correct or to complete: a code is no text.
        input.getElement().setAttribute("autocapitalize", "characters").setAttribute("spellcheck", "false").setAttribute("maxlength", "40");
        fault.addClassName("fault");
        fault.getElement().setAttribute("role", "alert");
        choice.addClassName("code-choice");
        NativeButton open = Controls.button(Text.of("kiosk.code.open"), "strong", this::open);
        open.addClickShortcut(Key.ENTER);
        Div row = new Div(Controls.labelled("code", Text.of("kiosk.code.label"), input), open);
        row.addClassName("code-typed");
        Paragraph why = new Paragraph(words);
        why.addClassName("soft");
        add(new H1(Text.of("kiosk.code.title")), why, row, fault, choice);
    }

    private void open() {
        choice.removeAll();
        fault.setText("");
        String typed = input.getValue();
        if (typed.isBlank()) {
            return;
        }
        Optional<Duration> pause = books.tries().begin();
        if (pause.isPresent()) {
            fault.setText(wait(pause.get()));
            return;
        }
        Optional<Consultation> found = books.interviews().open(typed);
        if (found.isEmpty()) {
            fault.setText(Text.of("api.no-code", typed.strip()));
            return;
        }
        books.tries().right();
        Consultation consultation = found.get();
        boolean planned = books.consultations().open(consultation.code()).isPresent();
        if (planned && books.interviews().ofAnEarlierSeason(consultation)) {
            ask(consultation);
        } else {
            go(consultation, planned);
        }
    }

    static String wait(Duration pause) {
        return Text.of("kiosk.code.wait", Math.max(1, pause.plusSeconds(59).toMinutes()));
    }

    private void ask(Consultation consultation) {
        choice.add(new Paragraph(Text.of("kiosk.code.earlier")),
                Controls.card(null, Text.of("kiosk.code.start"), Text.of("kiosk.code.start.words"), false, () -> startFrom(consultation)),
                Controls.card(null, Text.of("kiosk.code.plan"), Text.of("kiosk.code.plan.words"), false, () -> go(consultation, true)));
    }

    private void go(Consultation consultation, boolean planned) {
        books.open(consultation);
        String code = consultation.code();
        if (planned && code.equals(here)) {
            again.run();
        } else if (planned) {
            UI.getCurrent().navigate(ProposalView.class, code);
        } else {
            UI.getCurrent().navigate(InterviewView.class);
        }
    }

    /** A new consultation that knows tree, room and taste of the earlier one, and what was bought by it. */
    private void startFrom(Consultation earlier) {
        Saved plan = books.consultations().open(earlier.code()).orElseThrow();
        Answers answers = Answers.of(plan.brief(), earlier.units());
        answers.budget = "";
        take(books, earlier.code(), answers);
        Consultation begun = books.interviews().begin(new Interviews.State(Question.TREE.word(), answers.brief(), answers.units, Language.now().tag()),
                Optional.of(earlier.code()));
        go(begun, false);
    }

    /**
     * What was bought by a plan of an earlier year is the customer's own now: what they took home, where that is known; else the whole kit as
     * it was kept then, whatever the shop sells by now. What they had before is theirs still.
     *
     * @return whether there is such a plan
     */
    static boolean take(Books books, String code, Answers answers) {
        Optional<JsonNode> plan = books.consultations().open(code).filter(Saved::fits).map(s -> json(s.proposal()));
        plan.ifPresent(p -> {
            Map<String, Integer> bought = Bought.kept(p, books.holds().collected(code));
            bought.keySet().removeIf(sku -> books.shop().designer().catalogue().product(sku).isEmpty());
            answers.owned.putAll(bought);
            Bought.described(p).stream().filter(words -> !answers.ownedInWords.contains(words)).forEach(answers.ownedInWords::add);
        });
        return plan.isPresent();
    }

    private static JsonNode json(String proposal) {
        try {
            return JSON.readTree(proposal);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a kept proposal is JSON", e);
        }
    }
}
