package boughwright.ui;

import boughwright.brief.BriefFault;
import boughwright.brief.BriefReader;
import boughwright.brief.BriefReading;
import boughwright.brief.ShopChoices;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** Leads through the questions: where one is, what may be asked next, what keeps one from going on. Knows no screen. */
final class Interview {

    /** Keeps what was answered, before anything of it is shown. */
    @FunctionalInterface
    interface Book {
        void keep(Answers answers, Question at);
    }

    private final Answers answers;
    private final Supplier<ShopChoices> shop;
    private final Book book;
    private Question at;

    /**
     * @param answers as far as they were given before
     * @param at where it goes on
     * @param shop asked only once a question needs it
     * @param book told of every answer, and of each step on or back
     */
    Interview(Answers answers, Question at, Supplier<ShopChoices> shop, Book book) {
        this.answers = answers;
        this.at = at;
        this.shop = shop;
        this.book = book;
    }

    /** Something was answered. */
    void answered() {
        book.keep(answers, at);
    }

    Answers answers() {
        return answers;
    }

    Question at() {
        return at;
    }

    int number() {
        return at.ordinal() + 1;
    }

    int count() {
        return Question.values().length;
    }

    boolean first() {
        return at.ordinal() == 0;
    }

    boolean last() {
        return number() == count();
    }

    void back() {
        if (!first()) {
            at = Question.values()[at.ordinal() - 1];
            book.keep(answers, at);
        }
    }

    /** Goes on, unless the present page's answer will not do: then says why and stays. */
    Optional<BriefFault> next() {
        Optional<BriefFault> fault = faults().stream().filter(f -> at.asksFor(f.field())).findFirst();
        if (fault.isEmpty() && !last()) {
            at = Question.values()[at.ordinal() + 1];
            book.keep(answers, at);
        }
        return fault;
    }

    private List<BriefFault> faults() {
        BriefReading reading = new BriefReader(shop.get()).read(answers.brief());
        return reading instanceof BriefReading.Faulty faulty ? faulty.faults() : List.of();
    }
}
