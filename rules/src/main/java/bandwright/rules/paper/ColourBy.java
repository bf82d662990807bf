package bandwright.rules.paper;

import bandwright.rules.table.Word;

/** Who converts colours: the driver from tagged sRGB, or our file by the shop's profile. */
public enum ColourBy implements Word {
    DRIVER("driver"),
    PROFILE("profile");

    private final String word;

    ColourBy(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
