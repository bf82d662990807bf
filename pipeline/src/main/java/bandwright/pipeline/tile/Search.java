package bandwright.pipeline.tile;

/**
 * The best plan for one room's job: several orders of placement first; then, for few kinds and many copies, layouts by
 * price; then sheets repacked. Each is kept only if it needs fewer sheets, or as many of fewer layouts. Ends at the
 * proven bound, else after a set number of places looked at: never by the clock, so every computer finds the same.
 */
final class Search {
    /** Places looked at at most; a warm computer looks at some hundred million a second. */
    private static final long MOST_STEPS = 4_000_000;

    private static final long STEPS_A_PIECE = 40_000;

    private static final long SEED = 20_260_302;

    /** Below so many copies a kind, prices tell too little. */
    private static final int COPIES_FOR_COLUMNS = 2;

    private static final int MOST_KINDS_FOR_COLUMNS = 120;
    private static final int MOST_SHEETS_TO_REPACK = 400;

    private Search() {}

    /** As long a search as the job is worth. */
    static Plan best(Job job, int atLeast) {
        return best(job, atLeast, Math.min(MOST_STEPS, STEPS_A_PIECE * job.pieces()));
    }

    static Plan best(Job job, int atLeast, long steps) {
        Plan best = new Greedy(job).best(atLeast);
        if (best.sheets() <= atLeast) {
            return best;
        }
        int goal = atLeast;
        long kinds = job.kinds().stream().filter(kind -> kind.copies() > 0).count();
        if (kinds <= MOST_KINDS_FOR_COLUMNS && job.pieces() >= COPIES_FOR_COLUMNS * kinds) {
            Columns columns = new Columns(job, best, SEED);
            best = columns.best(best, atLeast, steps);
            goal = Math.max(atLeast, columns.leastOfLayouts());
        }
        if (best.sheets() <= goal || best.sheets() > MOST_SHEETS_TO_REPACK) {
            return best;
        }
        Plan repacked = new Repack(job, SEED).improve(best, atLeast, steps);
        return repacked.isBetterThan(best) ? repacked : best;
    }
}
