package boughwright.ui;

import boughwright.kit.Wish;
import boughwright.text.Text;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.NativeButton;
import com.vaadin.flow.component.html.OrderedList;
import com.vaadin.flow.component.html.Span;
import java.util.List;
import java.util.function.Consumer;

/** The customer's wishes, the most important first, each to be moved up; when they clash, the last give way first. */
final class WishOrder extends Div {

    WishOrder(Proposing proposing, Consumer<Runnable> change) {
        addClassName("wish-order");
        List<Wish> wishes = proposing.wishes();
        if (wishes.size() < 2) {
            return;
        }
        OrderedList list = new OrderedList();
        for (int i = 0; i < wishes.size(); i++) {
            Wish wish = wishes.get(i);
            ListItem item = new ListItem(new Span(wish.text()));
            if (i > 0) {
                NativeButton up = Controls.link(Text.of("wishes.more"), () -> {
                    change.accept(() -> proposing.matterMore(wish.id()));
                });
                up.getElement().setAttribute("aria-label", Text.of("wishes.more.label", wish.text()));
                item.add(up);
            }
            list.add(item);
        }
        add(new H2(Text.of("wishes.head")), list);
    }
}
