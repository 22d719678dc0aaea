package boughwright.ui;

import boughwright.drawing.ProposalPicture;
import boughwright.proposal.Proposal;
import boughwright.text.Language;
import boughwright.text.Text;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.server.StreamResource;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.function.Supplier;

/**
 * A large drawing, which the page fetches by itself. Such a drawing weighs as much as a hundred pages of words: sent within a screen's message it
 * would be written several times over and kept for each tablet, and the words beside it would wait for it.
 */
final class Drawing extends Div {

    private final String name;
    private Supplier<String> svg = () -> "";

    /** @param name of its own among the drawings of the page */
    Drawing(String name) {
        this.name = name;
    }

    /** A dressed tree from the front, in the language that is spoken now. @param name of its own among the drawings of the page */
    static Drawing of(Proposal proposal, String name) {
        Drawing drawing = new Drawing(name);
        drawing.addClassName("picture");
        drawing.draw(() -> new ProposalPicture(proposal.brief(), proposal.kit(), proposal.layout(), proposal.catalogue()).beside(name));
        return drawing;
    }

    /** Shows something else as soon as the page has it. @param drawn makes SVG of our own, every word in it escaped; called when it is fetched */
    void draw(Supplier<String> drawn) {
        Language language = Language.now();
        svg = () -> Text.in(language, drawn);
        StreamResource resource = new StreamResource(name + ".svg", () -> new ByteArrayInputStream(svg().getBytes(StandardCharsets.UTF_8)));
        resource.setContentType("image/svg+xml;charset=utf-8");
        getElement().setAttribute("data-drawing", resource);
        // A lost connection is told and mended elsewhere; the drawing only tries again. What comes too late is not shown.
        getElement().executeJs("""
                const wanted = this.dataset.drawing;
                const here = () => this.isConnected && this.dataset.drawing === wanted;
                const fetched = () => fetch(wanted).then(answer => answer.ok ? answer.text() : Promise.reject(answer.status))
                    .then(svg => { if (here()) this.innerHTML = svg; })
                    .catch(() => { if (here()) setTimeout(fetched, 3000); });
                fetched();""");
    }

    /** What is fetched. */
    String svg() {
        return svg.get();
    }
}
