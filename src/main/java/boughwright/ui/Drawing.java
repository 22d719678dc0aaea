package boughwright.ui;

import boughwright.drawing.ProposalPicture;
import boughwright.proposal.Proposal;
import boughwright.text.Language;
import boughwright.text.Text;
import com.vaadin.flow.component.AttachEvent;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.server.StreamResource;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;

/**
 * A dressed tree from the front, which the page fetches by itself as soon as it is shown. Such a drawing weighs as much as a hundred pages of words:
 * sent within a screen's message it would be written several times over and kept for each tablet, and three of them would hold up the words beside them.
 */
final class Drawing extends Div {

    private final Proposal proposal;
    private final String name;
    private final Language language = Language.now();

    /** @param name of its own among the drawings of the page */
    Drawing(Proposal proposal, String name) {
        this.proposal = proposal;
        this.name = name;
        addClassName("picture");
    }

    /** What is fetched: SVG of our own making, every word in it escaped where it was written. */
    String svg() {
        return Text.in(language, () -> new ProposalPicture(proposal.brief(), proposal.kit(), proposal.layout(), proposal.catalogue()).beside(name));
    }

    @Override
    protected void onAttach(AttachEvent attach) {
        StreamResource resource = new StreamResource(name + ".svg", () -> new ByteArrayInputStream(svg().getBytes(StandardCharsets.UTF_8)));
        resource.setContentType("image/svg+xml;charset=utf-8");
        getElement().setAttribute("data-drawing", resource);
        // A lost connection is told and mended elsewhere; the drawing only tries again.
        getElement().executeJs("""
                const fetched = () => fetch(this.dataset.drawing).then(answer => answer.ok ? answer.text() : Promise.reject(answer.status))
                    .then(svg => { this.innerHTML = svg; })
                    .catch(() => { if (this.isConnected) setTimeout(fetched, 3000); });
                fetched();""");
    }
}
