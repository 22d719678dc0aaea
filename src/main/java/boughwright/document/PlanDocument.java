package boughwright.document;
import boughwright.catalogue.Catalogue;
import boughwright.proposal.Proposal;
import java.util.Optional;
public final class PlanDocument {
    public static byte[] pdf(Proposal proposal, String frontSvg, Paper paper, Optional<String> code, Catalogue catalogue) {
        throw new UnsupportedOperationException();
    }
}
