package bandwright.pipeline.watch;

import java.time.Duration;

/**
 * May it be taken? Decided by two looks: the first at which it was as large and as old as now, and the last.
 *
 * <p>A workbook of 20 kB at 09:00:00 and at 09:00:05, with the directory that ends a zip file, is ready; one without it
 * is cut short, and refused after ten minutes.
 */
enum Readiness {
    GROWING,
    /** It has stopped growing, and isn't whole. */
    NOT_YET,
    READY,
    REFUSED;

    static Readiness of(Look first, Look last, Pace pace) {
        Duration steady = Duration.between(first.at(), last.at());
        if (!first.isLike(last) || steady.compareTo(pace.looks()) < 0) {
            return GROWING;
        }
        if (last.seen() == Seen.WHOLE) {
            return READY;
        }
        return switch (last.seen().patience()) {
            case NONE -> REFUSED;
            case A_WHILE -> steady.compareTo(Pace.PATIENCE) < 0 ? NOT_YET : REFUSED;
            case FOR_EVER -> NOT_YET;
        };
    }
}
