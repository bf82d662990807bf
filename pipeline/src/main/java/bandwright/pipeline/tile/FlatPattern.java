package bandwright.pipeline.tile;

import bandwright.pipeline.size.Transfer;
import bandwright.rules.blanks.Sector;
import bandwright.rules.paper.FlagLaw;
import bandwright.rules.paper.Footprint;
import bandwright.rules.units.Box;
import bandwright.rules.units.Length;
import java.util.Optional;

/**
 * The shape of a printed picture, by which transfers are interchangeable: its upright box and, for a cone, the sector in
 * it.
 */
record FlatPattern(Box box, Optional<Sector> sector) {
    static FlatPattern of(Transfer transfer) {
        return new FlatPattern(transfer.box(), transfer.sector());
    }

    static FlatPattern straight(Length width, Length height) {
        return new FlatPattern(Box.of(width, height), Optional.empty());
    }

    Footprint footprint(FlagLaw law) {
        return sector.map(bent -> Footprint.bent(bent, law))
                .orElseGet(() -> Footprint.straight(box.width(), box.height(), law));
    }

    /** Whether a turn by a quarter looks like no turn. */
    boolean isSquare() {
        return sector.isEmpty() && box.width().equals(box.height());
    }
}
