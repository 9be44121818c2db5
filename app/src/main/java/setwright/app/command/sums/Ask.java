package setwright.app.command.sums;

import setwright.core.car.worked.Unit;

/**
 * A value that a sum needs.
 *
 * @param symbol  letter in the formulas
 * @param words   what it is
 * @param unit    that the option takes
 * @param least   that makes sense, in the unit
 * @param most    that makes sense, in the unit
 * @param option  that gives it
 */
record Ask(String symbol, String words, Unit unit, double least, double most, String option) {}
