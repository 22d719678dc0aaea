package boughwright.document;

import boughwright.proposal.Proposal;
import boughwright.text.Language;
import boughwright.text.Text;
import java.util.Optional;
import org.w3c.dom.Document;

/** All pages of a plan, in the order in which they are needed: to look at, to shop, to cut, to do, to take care. */
final class PlanPages {

    private final Proposal proposal;
    private final double aspect;
    private final Paper paper;
    private final Optional<String> code;
    private final Optional<String> atHome;
    private final Html html = new Html(Language.now().tag());

    /** @param aspect the picture's width over its height */
    PlanPages(Proposal proposal, double aspect, Paper paper, Optional<String> code, Optional<String> atHome) {
        this.proposal = proposal;
        this.aspect = aspect;
        this.paper = paper;
        this.code = code;
        this.atHome = atHome;
    }

    Document document() {
        html.in("head", "", () -> {
            html.put("title", "", Wording.unbound(Text.of("document.metadata.title", proposal.edition().shop(), Wording.title(proposal.brief()))));
            html.in("meta", "", () -> html.with("name", "subject").with("content", Text.of("document.metadata.description")));
            html.put("style", "", PageStyle.style(paper, code.map(c -> Text.of("document.foot.code", proposal.edition().shop(), c)).orElse(proposal.edition().shop())));
        });
        html.in("body", "", () -> {
            new FrontPage(html, proposal, code, atHome).write(aspect, paper);
            new PickPages(html, proposal).write();
            new CutPages(html, proposal).write();
            new StepPages(html, proposal.plan()).write();
            new CautionPage(html, proposal.plan()).write();
        });
        return html.document();
    }
}
