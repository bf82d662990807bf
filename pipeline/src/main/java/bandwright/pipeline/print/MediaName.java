package bandwright.pipeline.print;

import bandwright.rules.paper.PaperRoom;
import bandwright.rules.units.Box;
import bandwright.rules.units.Length;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;

/**
 * What a print system calls a paper: PWG 5101.1, Media Standardized Names. Letter is na_letter_8.5x11in; a pad of 110 x
 * 279.4 mm that no standard names is custom_pad_110x279.4mm.
 */
final class MediaName {
    /** Names of section 5 of PWG 5101.1; each ends in its size. */
    private static final List<String> STANDARD = List.of(
            "na_letter_8.5x11in",
            "na_legal_8.5x14in",
            "na_ledger_11x17in",
            "na_super-b_13x19in",
            "na_arch-b_12x18in",
            "iso_a5_148x210mm",
            "iso_a4_210x297mm",
            "iso_a3_297x420mm",
            "iso_a2_420x594mm",
            "iso_a1_594x841mm",
            "iso_sra3_320x450mm");

    private static final Length SAME = Length.mm(0.1);

    private MediaName() {}

    /** The name of the page as it is fed; of a roll it is as long as it is cut. */
    static String of(PaperRoom room) {
        Box page = room.page();
        return STANDARD.stream()
                .filter(name -> isAbout(width(name), page.width()) && isAbout(height(name), page.height()))
                .findFirst()
                .orElseGet(() ->
                        "custom_" + word(room.paper().id()) + "_" + mm(page.width()) + "x" + mm(page.height()) + "mm");
    }

    private static boolean isAbout(Length one, Length other) {
        return !one.minus(other).longerThan(SAME) && !other.minus(one).longerThan(SAME);
    }

    private static Length width(String name) {
        return length(name, name.lastIndexOf('_') + 1, name.lastIndexOf('x'));
    }

    private static Length height(String name) {
        return length(name, name.lastIndexOf('x') + 1, name.length() - 2);
    }

    private static Length length(String name, int from, int to) {
        double number = Double.parseDouble(name.substring(from, to));
        return name.endsWith("in") ? Length.inches(number) : Length.mm(number);
    }

    /** A custom name has small letters, digits, points and hyphens. */
    private static String word(String id) {
        return id.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9.-]", "-");
    }

    private static String mm(Length length) {
        BigDecimal mm = length.mm2().stripTrailingZeros();
        return mm.toPlainString();
    }
}
