package bandwright.pipeline.tile;

/** One sheet while it is being filled. */
sealed interface Board permits FreeBoard, CutBoard {
    /** Which of the free places a picture takes. */
    enum Rule {
        SHORT_SIDE,
        AREA,
        BOTTOM_LEFT,
        CONTACT
    }

    void clear(Rule rule);

    /** Lays one picture of that kind on the best free place, if there is one. */
    boolean place(int kind);

    Layout layout();

    /** How many places were looked at since the board was made; the search is limited by it, never by a clock. */
    long steps();

    /**
     * Fills a cleared board with copies that are left, in the order given (kinds may stand there several times), and
     * takes them off.
     *
     * @return how many were laid
     */
    default int fill(int[] order, int length, int[] left, Rule rule) {
        clear(rule);
        int laid = 0;
        // A sheet only gets fuller, so what did not fit is not tried again.
        boolean[] full = new boolean[left.length];
        for (int i = 0; i < length; i++) {
            int kind = order[i];
            if (left[kind] == 0 || full[kind]) {
                continue;
            }
            if (place(kind)) {
                left[kind]--;
                laid++;
            } else {
                full[kind] = true;
            }
        }
        return laid;
    }
}
