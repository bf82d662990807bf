package bandwright.pipeline.write.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bandwright.rules.Rulebook;
import bandwright.rules.RulebookFaults;
import bandwright.rules.blanks.Band;
import bandwright.rules.blanks.BandLaw;
import bandwright.rules.blanks.Blank;
import bandwright.rules.heat.HeatSource;
import bandwright.rules.paper.Paper;
import bandwright.rules.paper.PaperRoom;
import bandwright.rules.units.Box;
import bandwright.rules.units.Length;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

final class StripShapeTest {
    private static StripShape shape(String sku, String source) throws RulebookFaults {
        Rulebook rules = Rulebook.read(Optional.empty());
        Blank blank = rules.blanks().find(sku).orElseThrow();
        HeatSource heat = rules.heatSources().find(source).orElseThrow();
        Band band = BandLaw.of(blank, heat).orElseThrow();
        return StripShape.of(blank, heat, band);
    }

    @ParameterizedTest
    @CsvSource({"MUG-11-W, clamp, 12.7", "MUG-11-W, oven, 0", "TUM-20-W, tumbler, 0", "COAST-R, flat, 0"})
    void theWhiteOnEachSideIsTheClearance(String sku, String source, double clearance) throws RulebookFaults {
        assertThat(shape(sku, source).reach()).isCloseTo(clearance, within(0.01));
    }

    /** Foot 62 and rim 88 over a wall of 101.83: the band ends 6 mm up it, where 62 + 26 x 6 / 101.83 = 63.53 mm are left. */
    @Test
    void onAConeItIsTheClearanceWhereTheBandIsNarrowest() throws RulebookFaults {
        StripShape cone = shape("CONE-12-W", "clamp");
        double foot = Math.hypot(cone.x(0, 0) - cone.x(-cone.reach(), 0), cone.y(0, 0) - cone.y(-cone.reach(), 0));
        assertThat(foot).isCloseTo(12.7, within(0.02));
    }

    /** 50 marks of the rim's own scale are 50 mm of its arc. */
    @Test
    void theScaleOfAnEdgeIsTrueAtThatEdge() throws RulebookFaults {
        StripShape cone = shape("CONE-12-W", "oven");
        for (double v : new double[] {0, cone.height()}) {
            double arc = 0;
            for (int i = 0; i < 500; i++) {
                double from = i * 0.1 * cone.alongAt(v);
                double to = (i + 1) * 0.1 * cone.alongAt(v);
                arc += Math.hypot(cone.x(to, v) - cone.x(from, v), cone.y(to, v) - cone.y(from, v));
            }
            assertThat(arc).as("at " + v).isCloseTo(50, within(0.001));
        }
    }

    @Test
    void aStripThatIsTooLongTakesTheFewestSheets() throws RulebookFaults {
        Rulebook rules = Rulebook.read(Optional.empty());
        Paper letter = rules.papers().find("letter").orElseThrow();
        PaperRoom room = PaperRoom.of(letter, rules.printers().list().get(0));
        // 266.7 along: one sheet; two with one lap reach 523.4.
        assertThat(tiles(266.7, room)).isEqualTo(1);
        assertThat(tiles(266.8, room)).isEqualTo(2);
        assertThat(tiles(523.4, room)).isEqualTo(2);
        assertThat(tiles(523.5, room)).isEqualTo(3);
    }

    private static int tiles(double width, PaperRoom room) {
        return Tiles.of(Box.of(Length.mm(width), Length.mm(90)), room).count();
    }

    @ParameterizedTest
    @ValueSource(strings = {"../../etc/hosts", "a/b\\c:d*?\"<>|", "\u0000\u001b[31m", "..", "\u202eNOC", "COM1 "})
    void noSkuLeavesTheFolder(String sku) {
        assertThat(OwnFile.name(OwnFile.Kind.STRIP, sku)).matches("strip-[A-Za-z0-9._-]+\\.pdf");
    }

    @Test
    void aLongSkuStillMakesAName() {
        assertThat(OwnFile.name(OwnFile.Kind.STRIP, "M".repeat(5000))).hasSizeLessThan(100);
    }
}
