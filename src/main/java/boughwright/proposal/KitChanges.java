package boughwright.proposal;

import boughwright.kit.Cause;
import boughwright.kit.KitLine;
import boughwright.kit.Wish;
import boughwright.needs.Need;
import boughwright.text.Text;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What a change has changed, line by line, and why; in sentences. */
public final class KitChanges {

    private KitChanges() {
    }

    /** In the order of the lines; empty when nothing has changed. */
    public static List<String> between(Proposal before, Proposal after, Designer designer) {
        List<String> changes = new ArrayList<>();
        Map<String, KitLine> old = bySlot(before);
        Map<String, KitLine> now = bySlot(after);
        now.forEach((slot, line) -> {
            KitLine was = old.get(slot);
            String role = Phrases.sentence(Text.of("role." + line.role().word()));
            if (was == null) {
                changes.add(Text.of("change.new", role, line.name()));
            } else if (!was.sku().equals(line.sku())) {
                changes.add(Text.of("change.product", role, line.name(), was.name(), why(after, slot, was, designer)));
            }
        });
        old.forEach((slot, line) -> {
            if (!now.containsKey(slot)) {
                changes.add(Text.of("change.gone", Phrases.sentence(Text.of("role." + line.role().word())), line.name()));
            }
        });
        for (Need need : after.needs().needs()) {
            before.needs().need(need.id()).filter(n -> n.quantity() != need.quantity() && n.quantity() > 0 && need.quantity() > 0)
                    .ifPresent(n -> changes.add(Text.of("change.number", Phrases.sentence(Text.of("role." + need.role().word())), n.quantity(), need.quantity())));
        }
        if (!before.kit().total().equals(after.kit().total())) {
            boolean dearer = after.kit().total().compareTo(before.kit().total()) > 0;
            changes.add(Text.of(dearer ? "change.dearer" : "change.cheaper", (dearer ? after.kit().total().minus(before.kit().total())
                    : before.kit().total().minus(after.kit().total())).show(), after.kit().total().show()));
        }
        return changes;
    }

    private static Map<String, KitLine> bySlot(Proposal proposal) {
        Map<String, KitLine> lines = new LinkedHashMap<>();
        proposal.kit().lines().forEach(l -> lines.putIfAbsent(l.slot(), l));
        return lines;
    }

    private static String why(Proposal after, String slot, KitLine was, Designer designer) {
        Cause cause = designer.cause(after, slot, was.sku());
        return switch (cause.kind()) {
            case WISH -> cause.words().startsWith(Wish.PRODUCT) ? Text.of("change.why.chosen")
                    : Text.of("change.why.wish", designer.wishes(after.brief(), after.adjustments()).stream().filter(w -> w.id().equals(cause.words()))
                            .map(Wish::text).findFirst().orElse(""));
            case STOCK -> Text.of("change.why.stock");
            case HOUSE -> Text.of("change.why.house", cause.words());
            case BUDGET -> Text.of("change.why.budget");
            case CAP -> Text.of("change.why.cap");
            case SIZE, TAKEN, GONE -> Text.of("change.why.taken");
            case BETTER -> Text.of(offLevel(after, was) ? "change.why.level" : "change.why.better");
        };
    }

    private static boolean offLevel(Proposal after, KitLine was) {
        String level = after.adjustments().levels().get(was.layer());
        return level != null && after.catalogue().product(was.sku()).filter(p -> !p.level().word().equals(level)).isPresent();
    }
}
