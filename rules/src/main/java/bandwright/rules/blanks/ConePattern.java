package bandwright.rules.blanks;

import bandwright.rules.units.Length;

/**
 * The flat pattern of a band on a cone: an annular sector. The band's edges are arcs about one apex, its ends radial
 * lines.
 *
 * @param rimRadius the pattern radius of the band's edge towards the rim, bleed not counted
 * @param footRadius the pattern radius of its edge towards the foot
 * @param sweepRadians the angle between its ends, overlap not counted; positive
 */
public record ConePattern(Length rimRadius, Length footRadius, double sweepRadians) {
    /** Whether the edge towards the rim is the outer arc; a cone that widens downwards has it inside. */
    public boolean rimIsOuter() {
        return rimRadius.longerThan(footRadius);
    }
}
