package bandwright.rules.paper;

import bandwright.rules.table.Word;

/** Who flips the picture: our file, or the printer driver. */
public enum MirrorBy implements Word {
    FILE("file"),
    DRIVER("driver");

    private final String word;

    MirrorBy(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
