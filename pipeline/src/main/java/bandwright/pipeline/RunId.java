package bandwright.pipeline;

import java.time.LocalDate;

/** The name of a run and of its folder: 2026-03-02-1, the number counted within the day. */
public record RunId(LocalDate date, int number) {
    @Override
    public String toString() {
        return date + "-" + number;
    }
}
