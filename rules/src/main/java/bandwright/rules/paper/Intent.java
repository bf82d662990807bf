package bandwright.rules.paper;

import bandwright.rules.table.Word;

/** The ICC rendering intent of a conversion by profile. */
public enum Intent implements Word {
    PERCEPTUAL("perceptual"),
    RELATIVE_COLORIMETRIC("relative colorimetric"),
    SATURATION("saturation"),
    ABSOLUTE_COLORIMETRIC("absolute colorimetric");

    private final String word;

    Intent(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
