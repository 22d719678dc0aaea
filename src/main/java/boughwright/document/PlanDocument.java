package boughwright.document;

import boughwright.proposal.Proposal;
import java.util.Optional;
import org.w3c.dom.Document;

/** The plan on paper: what to fetch from the shelves, how to cut the ribbon, what to do at home, what to take care of. */
public final class PlanDocument {

    private PlanDocument() {
    }

    /**
     * A tagged PDF with its fonts embedded, in English. The same arguments give the same bytes; it bears no date.
     *
     * @param frontSvg the tree from the front: SVG 1.1 text without a document type; what it refers to outside itself is left out
     * @param code the consultation's code, printed on page 1 and at the foot of every page
     * @param atHome address of the page to follow at home, printed on page 1 as a QR code
     * @throws IllegalArgumentException when {@code frontSvg} is no such text
     */
    public static byte[] pdf(Proposal proposal, String frontSvg, Paper paper, Optional<String> code, Optional<String> atHome) {
        Picture picture = new Picture(frontSvg);
        Document pages = new PlanPages(proposal, picture.aspect(), paper, code, atHome).document();
        return Printer.pdf(pages, paper, Optional.of(picture));
    }
}
