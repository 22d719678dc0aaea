package boughwright.kit;

/** What came of looking for a kit. */
public sealed interface KitOutcome {

    record Found(Kit kit) implements KitOutcome {
    }

    /** Nothing on the shelf meets everything at once. */
    record NoKitFits(Conflict conflict) implements KitOutcome {
    }
}
