package boughwright.ui;

import boughwright.text.Words;
import boughwright.house.Change;
import boughwright.house.Comparison;
import boughwright.house.Complaint;
import boughwright.house.HouseCheck;
import boughwright.house.HouseRules;
import boughwright.measure.Units;
import boughwright.publishing.Drafts;
import boughwright.publishing.Publisher;
import boughwright.publishing.ShopDoor;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * The draft of the house rules in one pair of hands: each change is checked and kept before it is shown, and can be undone. Knows no
 * screen.
 */
final class HouseDrafting {

    private static final int MOST_STEPS = 200;

    private final Publisher publisher;
    private final Drafts drafts;
    private final ShopDoor shop;
    private final String author;
    private final HouseCheck check;
    private final Units units;
    private final Deque<HouseRules> undo = new ArrayDeque<>();
    private final Deque<HouseRules> redo = new ArrayDeque<>();
    private HouseRules rules;
    private HouseRules live;
    private int liveEdition;
    private int basedOn;
    private Optional<String> keptAt;
    private List<Complaint> complaints;

    HouseDrafting(Publisher publisher, Drafts drafts, ShopDoor shop, String author, Units units) {
        this.publisher = publisher;
        this.drafts = drafts;
        this.shop = shop;
        this.author = author;
        this.units = units;
        this.check = new HouseCheck(units);
        open();
    }

    private void open() {
        refreshLive();
        Optional<Drafts.Draft> kept = drafts.open();
        rules = kept.map(Drafts.Draft::rules).orElse(live);
        basedOn = kept.map(Drafts.Draft::basedOn).orElse(liveEdition);
        keptAt = kept.map(Drafts.Draft::mark);
        complaints = checked();
    }

    private void refreshLive() {
        int now = shop.liveEdition();
        if (now != liveEdition) {
            liveEdition = now;
            live = publisher.rules(now);
        }
    }

    String author() {
        return author;
    }

    Units units() {
        return units;
    }

    HouseRules rules() {
        return rules;
    }

    /** The rules of the edition that is live now. */
    HouseRules live() {
        refreshLive();
        return live;
    }

    int basedOn() {
        return basedOn;
    }

    List<Complaint> complaints() {
        return complaints;
    }

    /** Says everything again in the language that is spoken now. */
    void retell() {
        complaints = checked();
    }

    private List<Complaint> checked() {
        return check.of(rules).stream().map(c -> new Complaint(c.weight(), c.page(), words().of(c.title()), c.table(), c.row(), c.column(), c.message())).toList();
    }

    /** What the shop's own texts are in other languages. */
    Words words() {
        return shop.designer().rulebook().words();
    }

    /** Differences, with their pages called as they are in the language that is spoken. */
    List<Change> told(List<Change> changes) {
        return changes.stream().map(c -> new Change(c.page(), words().of(c.title()), c.table(), c.row(), c.column(), c.before(), c.after())).toList();
    }

    long faults() {
        return complaints.stream().filter(Complaint::fault).count();
    }

    /** Those of one page. */
    List<Complaint> complaints(String page) {
        return complaints.stream().filter(c -> c.page().equals(page)).toList();
    }

    /** What the draft changes of the live edition. */
    List<Change> changes() {
        return told(Comparison.of(live(), rules, units));
    }

    boolean pristine() {
        return keptAt.isEmpty();
    }

    /**
     * Makes a change, checks the draft and keeps it.
     *
     * @return false when somebody else has changed the draft meanwhile; then theirs is at hand and the change is not made
     */
    boolean change(UnaryOperator<HouseRules> change) {
        if (changedElsewhere()) {
            again();
            return false;
        }
        HouseRules before = rules;
        HouseRules next = change.apply(rules);
        if (next.equals(before)) {
            return true;
        }
        if (!become(next)) {
            return false;
        }
        undo.push(before);
        if (undo.size() > MOST_STEPS) {
            undo.removeLast();
        }
        redo.clear();
        return true;
    }

    private boolean changedElsewhere() {
        return !drafts.mark().equals(keptAt);
    }

    /** @return false when somebody else was faster; then theirs is at hand */
    private boolean become(HouseRules next) {
        Optional<String> mark = drafts.keep(basedOn, next, author, keptAt);
        if (mark.isEmpty()) {
            again();
            return false;
        }
        keptAt = mark;
        rules = next;
        complaints = checked();
        return true;
    }

    boolean canUndo() {
        return !undo.isEmpty();
    }

    boolean canRedo() {
        return !redo.isEmpty();
    }

    /** @return false when somebody else has changed the draft meanwhile; then theirs is at hand */
    boolean undo() {
        return !canUndo() || travel(undo, redo);
    }

    /** As {@link #undo}, forward again. */
    boolean redo() {
        return !canRedo() || travel(redo, undo);
    }

    private boolean travel(Deque<HouseRules> from, Deque<HouseRules> to) {
        HouseRules before = rules;
        HouseRules next = from.peek();
        if (!become(next)) {
            return false;
        }
        from.pop();
        to.push(before);
        return true;
    }

    /**
     * Throws the draft away; what is live is at hand again, and the draft comes back by undoing.
     *
     * @return false when somebody else has changed the draft meanwhile; then theirs is at hand
     */
    boolean discard() {
        HouseRules thrown = rules;
        if (keptAt.isPresent() && !drafts.discard(keptAt.get())) {
            again();
            return false;
        }
        open();
        undo.push(thrown);
        return true;
    }

    /** After the draft has gone live or another edition has. */
    void again() {
        undo.clear();
        redo.clear();
        open();
    }
}
