package boughwright.ui;

import boughwright.counter.Entry;
import boughwright.text.Text;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeButton;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.server.streams.DownloadHandler;
import com.vaadin.flow.server.streams.DownloadResponse;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;

/** What a customer may ask for: all that is kept of the consultation, or that it be erased. */
final class KeepingTools extends Div {

    KeepingTools(CounterView view, CounterDesk desk, Entry entry) {
        addClassName("keeping");
        Anchor export = new Anchor(DownloadHandler.fromInputStream(event -> {
            byte[] bytes = desk.keeping().export(entry.code()).orElse("{}").getBytes(StandardCharsets.UTF_8);
            return new DownloadResponse(new ByteArrayInputStream(bytes), entry.code() + ".json", "application/json", bytes.length);
        }), Text.of("counter.export"));
        export.getElement().setAttribute("download", true);
        export.addClassNames("button", "quiet");
        Div sure = new Div(new Paragraph(Text.of("counter.erase.sure", entry.spoken())));
        sure.addClassName("sure");
        sure.setVisible(false);
        NativeButton erase = Controls.button(Text.of("counter.erase"), "quiet", () -> sure.setVisible(true));
        sure.add(CasePage.actions(Controls.button(Text.of("counter.erase.yes"), "strong", () -> view.act(() -> {
            desk.keeping().erase(entry.code());
            view.go(CounterView.ROUTE);
            view.tell(Text.of("counter.erased", entry.spoken()), true);
        })), Controls.button(Text.of("counter.erase.no"), "quiet", () -> sure.setVisible(false))));
        add(CasePage.actions(export, erase), sure);
    }
}
