package boughwright.ui;

import boughwright.kit.KitLine;
import boughwright.layout.Clash;
import boughwright.layout.Moving;
import boughwright.layout.Placement;
import boughwright.layout.Side;
import boughwright.needs.Caution;
import boughwright.needs.Role;
import boughwright.plan.Whereabouts;
import boughwright.proposal.Proposal;
import boughwright.text.Text;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.NativeButton;
import com.vaadin.flow.component.html.Paragraph;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Says of the piece that was touched what it is and where it goes; while things are being moved, also moves it by small steps. */
final class PieceCard extends Div {

    /** One nudge, metres. */
    private static final double NUDGE = 0.05;

    private final Stage.Hand hand;
    private final Supplier<Side> side;
    private final Consumer<String> onPick;
    private Proposal proposal;
    private boolean moving;
    private String id = "";
    private String focus = "";

    PieceCard(Stage.Hand hand, Supplier<Side> side, Consumer<String> onPick) {
        this.hand = hand;
        this.side = side;
        this.onPick = onPick;
        addClassName("piece-card");
        getElement().setAttribute("role", "region");
        getElement().setAttribute("aria-label", Text.of("piece.label"));
        getElement().setAttribute("aria-live", "polite");
        setVisible(false);
    }

    String picked() {
        return id;
    }

    /** @param moves whether things are being moved */
    void of(Proposal other, boolean moves) {
        proposal = other;
        moving = moves;
        show(id);
    }

    void say(String sentence) {
        removeAll();
        id = "";
        add(new Paragraph(sentence), close());
        appear(true);
    }

    /** The drawing makes room for the card. */
    private void appear(boolean there) {
        setVisible(there);
        getParent().ifPresent(stage -> stage.getElement().getClassList().set("with-card", there));
    }

    /** Shows what an id of the layout stands for; nothing when it stands for nothing. */
    void show(String other) {
        removeAll();
        id = other;
        Optional<String> name = name(id);
        appear(name.isPresent() || moving);
        onPick.accept(name.isPresent() ? id : "");
        if (name.isEmpty()) {
            id = "";
            add(new Paragraph(Text.of("piece.move-hint")), row(next()));
            return;
        }
        add(new H2(name.get()), new Paragraph(where()));
        if (!moving) {
            Paragraph made = new Paragraph(made());
            made.addClassName("soft");
            add(made);
        }
        clashes().forEach(c -> {
            Paragraph clash = new Paragraph(c);
            clash.addClassName("clash");
            add(clash);
        });
        if (moving && moves().spot(id).isPresent()) {
            add(nudges());
        }
        add(moving ? row(next(), close()) : row(close()));
        focusAgain();
    }

    /** A card that is drawn anew keeps the keyboard where it was. */
    private void focusAgain() {
        getElement().executeJs("if ($0) this.querySelector($0)?.focus()", focus);
        focus = "";
    }

    private Optional<String> name(String of) {
        if (of.isEmpty()) {
            return Optional.empty();
        }
        Optional<Placement> piece = proposal.layout().pieces().stream().filter(p -> p.id().equals(of)).findFirst();
        if (piece.isPresent()) {
            return proposal.kit().lines().stream().filter(l -> l.needId().equals(piece.get().needId())).findFirst().map(KitLine::name);
        }
        if (proposal.layout().pieces().stream().anyMatch(p -> p.group().equals(of))) {
            return Optional.of(Text.of("plan.thing.cluster", number(of)));
        }
        if (proposal.layout().ribbonRuns().stream().anyMatch(r -> r.id().equals(of))) {
            return Optional.of(Text.of("plan.thing.run", number(of)));
        }
        return proposal.layout().gaps().stream().filter(g -> g.id().equals(of)).findFirst().map(g -> Text.of("piece.accent", Text.of("accent." + g.accent().word())));
    }

    /** The lines of the kit that it is made of. */
    private List<KitLine> lines() {
        Set<String> needs = proposal.layout().pieces().stream().filter(p -> p.id().equals(id) || p.group().equals(id)).map(Placement::needId)
                .collect(Collectors.toSet());
        boolean run = proposal.layout().ribbonRuns().stream().anyMatch(r -> r.id().equals(id));
        boolean accent = proposal.layout().gaps().stream().anyMatch(g -> g.id().equals(id));
        return proposal.kit().lines().stream().filter(l -> needs.contains(l.needId()) || accent && l.role() == Role.ACCENT_RIBBON
                || run && (l.role() == Role.BASE_RIBBON || l.role() == Role.OVERLAY_RIBBON)).toList();
    }

    private String made() {
        List<KitLine> lines = lines();
        return lines.size() == 1 ? Text.of("piece.line", String.valueOf(lines.get(0).quantity()), lines.get(0).price().show(), lines.get(0).shelf())
                : Text.of("piece.lines", lines.stream().map(KitLine::name).distinct().collect(Collectors.joining(", ")));
    }

    private static String number(String of) {
        return of.substring(of.lastIndexOf('-') + 1);
    }

    private Moving moves() {
        return new Moving(proposal.layout(), proposal.brief());
    }

    private String where() {
        String where = new Whereabouts(proposal.brief().units()).of(proposal.layout(), id).orElseThrow();
        return where + (proposal.adjustments().moved().containsKey(id) ? " " + Text.of("piece.moved") : "");
    }

    /** What the plan says of clashes that are about this; it has one caution for each clash, in their order. */
    private List<String> clashes() {
        List<Clash> clashes = proposal.layout().clashes();
        List<String> told = proposal.plan().cautions().stream().filter(c -> c.id().equals("clash")).map(Caution::text).toList();
        return IntStream.range(0, clashes.size()).filter(i -> clashes.get(i).id().equals(id) || clashes.get(i).other().equals(id)).mapToObj(told::get).toList();
    }

    private Div nudges() {
        Div nudges = new Div(nudge("left", -NUDGE, 0), nudge("up", 0, NUDGE), nudge("down", 0, -NUDGE), nudge("right", NUDGE, 0));
        nudges.addClassName("nudges");
        nudges.getElement().setAttribute("role", "group");
        nudges.getElement().setAttribute("aria-label", Text.of("piece.nudge"));
        if (proposal.adjustments().moved().containsKey(id)) {
            nudges.add(Controls.link(Text.of("piece.back"), () -> {
                focus = ".nudge";
                hand.back(id);
            }));
        }
        if (proposal.adjustments().moved().size() > 1) {
            nudges.add(Controls.link(Text.of("piece.all-back"), () -> {
                focus = ".nudge";
                hand.allBack();
            }));
        }
        return nudges;
    }

    private NativeButton nudge(String way, double right, double up) {
        NativeButton button = new NativeButton(Text.of("piece.nudge." + way + ".sign"), e -> {
            focus = ".nudge[data-way='" + way + "']";
            hand.shift(id, side.get(), right, up);
        });
        button.addClassName("nudge");
        button.getElement().setAttribute("aria-label", Text.of("piece.nudge." + way));
        button.getElement().setAttribute("data-way", way);
        return button;
    }

    private NativeButton next() {
        NativeButton next = Controls.link(Text.of("piece.next"), () -> {
            focus = ".next";
            List<String> all = moves().movable();
            show(all.isEmpty() ? "" : all.get((all.indexOf(id) + 1) % all.size()));
        });
        next.addClassName("next");
        return next;
    }

    private NativeButton close() {
        return Controls.link(Text.of("piece.close"), () -> {
            show("");
            appear(moving);
        });
    }

    private static Div row(NativeButton... buttons) {
        Div row = new Div(buttons);
        row.addClassName("links");
        return row;
    }
}
