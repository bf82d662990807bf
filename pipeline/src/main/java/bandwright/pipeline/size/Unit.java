package bandwright.pipeline.size;

import bandwright.pipeline.match.MatchedLine;
import bandwright.rules.blanks.Band;
import bandwright.rules.paper.PaperRoom;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * One piece of one blank with one design, heat source and text: what gets a transfer.
 *
 * @param id order-line-piece, unique for ever
 * @param piece counted from 1 over the row's whole set
 * @param texts by field of its design, as ordered
 * @param rooms the papers that it may be printed on, the wanted ones first; never empty
 * @param ppi pixels an inch on the blank, the smaller of both directions; empty for vector artwork
 * @param colourShift how far its picture's colours are on its base from those on white, with one decimal: mean CIEDE2000 over
 *     what is inked; empty where the picture can't be looked at
 */
public record Unit(
        String id,
        MatchedLine matched,
        int piece,
        SortedMap<String, String> texts,
        Band band,
        Transfer transfer,
        List<PaperRoom> rooms,
        OptionalInt ppi,
        Optional<BigDecimal> colourShift,
        List<Note> notes) {
    public Unit {
        texts = Collections.unmodifiableSortedMap(new TreeMap<>(texts));
        rooms = List.copyOf(rooms);
        notes = List.copyOf(notes);
        if (rooms.isEmpty()) {
            throw new IllegalArgumentException("no paper takes " + id);
        }
    }

    /** The same with one more thing to know about it. */
    public Unit noted(Note note) {
        List<Note> more = new ArrayList<>(notes);
        more.add(note);
        return new Unit(id, matched, piece, texts, band, transfer, rooms, ppi, colourShift, more);
    }
}
