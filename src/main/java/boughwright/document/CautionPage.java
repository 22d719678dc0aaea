package boughwright.document;

import boughwright.needs.Caution;
import boughwright.plan.Plan;
import boughwright.text.Text;

/** What to take care of, with where the advice comes from, and what it does not replace. */
final class CautionPage {

    private final Html html;
    private final Plan plan;

    CautionPage(Html html, Plan plan) {
        this.html = html;
        this.plan = plan;
    }

    void write() {
        html.in("h2", "part", () -> html.with("id", "care").text(Text.of("document.care")));
        for (Caution caution : plan.cautions()) {
            html.in("div", "caution", () -> html.put("p", "", caution.text()).put("p", "source", Text.of("document.care.source", caution.source())));
        }
        html.put("p", "defer", Text.of("document.care.defer"));
    }
}
