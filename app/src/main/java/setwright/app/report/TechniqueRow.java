package setwright.app.report;

import setwright.app.story.TechniqueWords;
import setwright.app.units.Figures;
import setwright.core.technique.TechniqueLever;

/**
 * One thing that the driver can do himself.
 *
 * @param move      what, by how much
 * @param where     corners
 * @param purpose   what it is for
 * @param proof     what it does by these laps, or why they cannot say
 * @param laps      that do it already; a dash where none does
 * @param strength  0..1 in words
 * @param weak      whether the laps do not prove it
 */
public record TechniqueRow(
        String move, String where, String purpose, String proof, String laps, String strength, boolean weak) {
    private static final String NOTHING = "\u2013";

    /** Returns the row of a lever. */
    public static TechniqueRow of(TechniqueLever lever, Figures figures) {
        return new TechniqueRow(
                TechniqueWords.move(lever, figures),
                Figures.capital(Figures.corners(TechniqueWords.corners(lever))),
                Figures.capital(TechniqueWords.purpose(lever)),
                TechniqueWords.proof(lever, figures).strip(),
                lever.laps().isEmpty() ? NOTHING : Figures.list(lever.laps()),
                lever.weak() ? "weak" : figures.number(lever.strength(), 2),
                lever.weak());
    }
}
