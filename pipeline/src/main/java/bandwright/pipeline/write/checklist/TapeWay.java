package bandwright.pipeline.write.checklist;

import bandwright.rules.blanks.Blank;
import bandwright.rules.words.Words;

/** Where a transfer is taped: a mug's to both sides of the handle, a tumbler's along its seam, a coaster's flat. */
enum TapeWay {
    FLAT("checklist.tape-flat"),
    HANDLE("checklist.tape-handle"),
    ROUND("checklist.tape-round");

    private final String key;

    TapeWay(String key) {
        this.key = key;
    }

    static TapeWay of(Blank blank) {
        if (blank.form().isFlat()) {
            return FLAT;
        }
        return blank.hasHandle() ? HANDLE : ROUND;
    }

    String words() {
        return Words.say(key);
    }
}
