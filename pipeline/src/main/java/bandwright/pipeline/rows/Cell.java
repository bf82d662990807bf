package bandwright.pipeline.rows;

import java.time.LocalDate;
import java.util.Optional;

/**
 * One cell of an order file.
 *
 * @param text as a person sees it, never null; a number without its format's rounding
 * @param date the day, where the cell is a date cell
 * @param isDamagedNumber whether the file keeps it as a number of more than 15 digits, the last of which are lost
 */
public record Cell(String text, Optional<LocalDate> date, boolean isDamagedNumber) {
    public static final Cell EMPTY = new Cell("", Optional.empty(), false);

    public static Cell of(String text) {
        return text.isEmpty() ? EMPTY : new Cell(text, Optional.empty(), false);
    }

    public boolean isBlank() {
        return text.isBlank();
    }
}
