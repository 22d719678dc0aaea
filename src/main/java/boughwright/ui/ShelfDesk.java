package boughwright.ui;

import boughwright.catalogue.CatalogueFault;
import boughwright.shelf.Shelf;
import java.util.List;

/** What a page of the shelf asks of the screen around it. */
interface ShelfDesk {

    /** Who is signed in. */
    String author();

    /** Whether nobody is signed in any more; the screen shows its door then. */
    boolean gone();

    /** Says something above the page. */
    void tell(String words, boolean well);

    /** Says what came of a change, with a way to take it back; faults are given back for the page to show. */
    List<CatalogueFault> told(Shelf.Outcome outcome);

    /** Draws the page anew. */
    void again();

    void go(String page);

    /** To a page about one product. */
    void go(String page, String sku);
}
