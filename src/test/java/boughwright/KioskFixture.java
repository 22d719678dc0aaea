package boughwright;

import boughwright.proposal.Designer;
import boughwright.proposal.Shop;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Optional;

/** The demo shop as it ships, opened once for all tests of this run. */
public final class KioskFixture {

    private static Designer designer;

    private KioskFixture() {
    }

    public static synchronized Designer designer() {
        if (designer == null) {
            try {
                designer = ((Shop.Opening.Open) Shop.open(Optional.empty(), Optional.empty())).designer();
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        return designer;
    }
}
