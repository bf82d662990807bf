package bandwright.pipeline.type;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BreaksTest {
    @ParameterizedTest
    @CsvSource({
        "Ada Fell, Ada |Fell",
        "Mary-Jane Fell, Mary-|Jane |Fell",
        "10/12/2024 and/or, 10/12/2024 |and/or",
        "C'est l'été !, C'est |l'été !",
        "\u00AB Ada \u00BB, \u00AB Ada \u00BB",
        "A.B. Fell, A.B. |Fell",
        "Ada\u00A0Fell Pell, Ada\u00A0Fell |Pell",
        "Ada\u2014Bob, Ada|\u2014|Bob",
        "1998-2024, 1998-2024",
        "\u0E2A\u0E27\u0E31\u0E2A\u0E14\u0E35\u0E04\u0E23\u0E31\u0E1A, "
                + "\u0E2A\u0E27\u0E31\u0E2A\u0E14\u0E35|\u0E04\u0E23\u0E31\u0E1A",
        "\uD83D\uDE00\uD83D\uDC15, \uD83D\uDE00|\uD83D\uDC15",
        "\uD83D\uDC69\u200D\uD83C\uDF73 \uD83D\uDC4D\uD83C\uDFFD, \uD83D\uDC69\u200D\uD83C\uDF73 |\uD83D\uDC4D\uD83C\uDFFD"
    })
    void aLineEndsWhereItMay(String text, String pieces) {
        String shown = Breaks.pieces(text).stream()
                .map(piece -> piece.text() + (piece.isSpaced() ? " |" : "|"))
                .collect(Collectors.joining());
        assertThat(shown.replaceAll(" ?\\|$", "")).isEqualTo(pieces);
    }

    @Test
    void linesAreAsEvenAsTheLongestLets() {
        List<Breaks.Piece> pieces = Breaks.pieces("aaaaaaaa bb cc dd ee");
        double[] widths = {8, 2, 2, 2, 2};
        assertThat(new Lines(pieces, widths, 0).balanced(3)).containsExactly("aaaaaaaa", "bb cc", "dd ee");
    }

    @Test
    void aHyphenatedNameIsPartedWithoutASpace() {
        List<Breaks.Piece> pieces = Breaks.pieces("Mary-Jane Fell");
        double[] widths = new double[3];
        Arrays.fill(widths, 4);
        assertThat(new Lines(pieces, widths, 1).balanced(3)).containsExactly("Mary-", "Jane", "Fell");
        assertThat(new Lines(pieces, widths, 1).balanced(1)).containsExactly("Mary-Jane Fell");
    }
}
