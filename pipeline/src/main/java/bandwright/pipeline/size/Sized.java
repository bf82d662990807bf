package bandwright.pipeline.size;

import bandwright.rules.blanks.Band;
import bandwright.rules.paper.PaperRoom;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** All that units of one blank, heat source, design and picture have in common. */
record Sized(
        Band band,
        Transfer transfer,
        List<PaperRoom> rooms,
        OptionalInt ppi,
        Optional<BigDecimal> colourShift,
        List<Note> notes) {}
