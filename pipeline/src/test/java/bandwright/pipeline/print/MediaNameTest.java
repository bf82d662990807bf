package bandwright.pipeline.print;

import static org.assertj.core.api.Assertions.assertThat;

import bandwright.pipeline.shop.SamplePaper;
import bandwright.rules.paper.MirrorBy;
import bandwright.rules.paper.Paper;
import bandwright.rules.paper.PaperRoom;
import bandwright.rules.paper.Printer;
import bandwright.rules.units.Length;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The names are those of PWG 5101.1, Media Standardized Names, from memory; CUPS takes them in the tests of the checks. */
final class MediaNameTest {
    private static final Printer DESK = SamplePaper.printer("desk", List.of("any"), MirrorBy.FILE);

    @ParameterizedTest
    @CsvSource({
        "letter,  215.9, 279.4,  na_letter_8.5x11in",
        "legal,   215.9, 355.6,  na_legal_8.5x14in",
        "tabloid, 279.4, 431.8,  na_ledger_11x17in",
        "13x19,   330.2, 482.6,  na_super-b_13x19in",
        "A4,      210,   297,    iso_a4_210x297mm",
        "a3,      297,   420,    iso_a3_297x420mm",
        "a4,      210,   298,    custom_a4_210x298mm",
        "across,  297,   210,    custom_across_297x210mm",
        "Pad 7,   110.25,279.4,  custom_pad-7_110.25x279.4mm",
        "Möwe_9,  300,   100,    custom_m-we-9_300x100mm"
    })
    void aPaperIsNamedByItsSizeAsItIsFed(String id, double width, double height, String name) {
        Paper paper = SamplePaper.of(
                id, id, Length.mm(width), Optional.of(Length.mm(height)), Length.mm(6), Optional.empty());
        assertThat(MediaName.of(PaperRoom.of(paper, DESK))).isEqualTo(name);
    }

    @Test
    void aPageOfARollIsAsLongAsItIsCut() {
        Paper roll = SamplePaper.roll("roll-24", Length.inches(24), Optional.empty(), Length.mm(6), Optional.empty());
        PaperRoom room = PaperRoom.of(roll, DESK).cutAfter(Length.mm(812.34));
        assertThat(MediaName.of(room)).isEqualTo("custom_roll-24_609.6x812.34mm");
    }
}
