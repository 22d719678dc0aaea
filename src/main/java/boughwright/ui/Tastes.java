package boughwright.ui;

import boughwright.catalogue.Product;
import boughwright.needs.Role;
import boughwright.needs.Taste;
import boughwright.needs.Trait;
import boughwright.text.Text;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.H3;
import com.vaadin.flow.component.html.NativeButton;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;

/** What must not be on the tree, and what colour a kind of piece must have. */
final class Tastes extends Div {

    private static final List<Trait> NOT_WANTED = List.of(Trait.FINISH, Trait.MATERIAL, Trait.TEXTURE, Trait.FAMILY);
    private static final List<Role> COLOURED = List.of(Role.FEATURE_ORNAMENT, Role.FILLER_BALL, Role.SINGLE_FLOWER, Role.SPRAY, Role.BASE_RIBBON,
            Role.OVERLAY_RIBBON);

    private final Proposing proposing;
    private final Consumer<Runnable> change;
    private final Div colours = new Div();
    private Role role = COLOURED.get(0);

    Tastes(Proposing proposing, Consumer<Runnable> change) {
        this.proposing = proposing;
        this.change = change;
        addClassName("tastes");
        add(new H2(Text.of("tastes.not")));
        NOT_WANTED.forEach(trait -> add(new H3(Text.of("trait." + trait.word())), notWanted(trait)));
        for (Taste taste : proposing.hand().tastes()) {
            if (taste.trait() == Trait.PRODUCT) {
                add(Controls.pill(Text.of("tastes.product", proposing.designer().catalogue().product(taste.value()).map(Product::name).orElse(taste.value())),
                        true, () -> take(taste)));
            }
        }
        add(new H2(Text.of("tastes.only")), roles(), colours);
        showColours();
    }

    private void take(Taste taste) {
        change.accept(() -> proposing.taste(taste));
    }

    /** Words that some product on the shelf has, and those that are chosen already. */
    private Set<String> words(Trait trait, Role of) {
        Set<String> words = new TreeSet<>();
        proposing.designer().catalogue().products().stream().filter(p -> of == null || p.roles().contains(of)).forEach(p -> words.addAll(p.values(trait)));
        return words;
    }

    private Div notWanted(Trait trait) {
        Div row = new Div();
        row.addClassNames("choice-row", "chips");
        for (String word : words(trait, null)) {
            Taste taste = Taste.no(trait, word);
            row.add(Controls.pill(Text.of("tastes.no", trait.said(word)), proposing.hand().tastes().contains(taste), () -> take(taste)));
        }
        return row;
    }

    private Div roles() {
        Div row = new Div();
        row.addClassNames("choice-row", "chips");
        for (Role each : COLOURED) {
            row.add(Controls.pill(Text.of("role.many." + each.word()), each == role, () -> {
                role = each;
                row.getChildren().forEach(c -> Controls.pressed((NativeButton) c,
                        ((NativeButton) c).getText().equals(Text.of("role.many." + role.word()))));
                showColours();
            }));
        }
        return row;
    }

    private void showColours() {
        colours.removeAll();
        colours.addClassNames("choice-row", "chips");
        for (String family : words(Trait.FAMILY, role)) {
            Taste taste = Taste.only(Trait.FAMILY, family, role);
            colours.add(Controls.pill(Trait.FAMILY.said(family), proposing.hand().tastes().contains(taste), () -> take(taste)));
        }
    }
}
