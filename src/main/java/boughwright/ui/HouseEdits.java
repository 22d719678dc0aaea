package boughwright.ui;

import boughwright.house.HouseRules;
import java.util.function.UnaryOperator;

/** How a page changes the draft. */
interface HouseEdits {

    HouseDrafting drafting();

    /** Whether nobody is signed in any more; then the page closes, and nothing that was asked for is done. */
    boolean gone();

    /** A change that the page shows already: only complaints, charts and counts follow. */
    void cell(UnaryOperator<HouseRules> change);

    /** A change after which the page is drawn anew. */
    void page(UnaryOperator<HouseRules> change);
}
