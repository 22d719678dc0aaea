package boughwright.catalogue;

import java.util.List;

/** What came of reading a catalogue: the whole of it, or every fault and nothing of it. */
public sealed interface CatalogueReading {

    record Read(Catalogue catalogue) implements CatalogueReading {
    }

    record Faulty(List<CatalogueFault> faults) implements CatalogueReading {
    }
}
