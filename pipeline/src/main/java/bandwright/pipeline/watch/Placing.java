package bandwright.pipeline.watch;

import java.nio.file.Path;

/** Where a drop belongs once it has been looked into. */
sealed interface Placing {
    /** The drop as it was when that was decided: if it has changed since, it is another drop. */
    Sighting drop();

    default Path path() {
        return drop().path();
    }

    /** It went into a run. */
    record Done(Sighting drop, String run) implements Placing {}

    /** It didn't: why, and what to do. */
    record NotTaken(Sighting drop, String why, String cure) implements Placing {}
}
