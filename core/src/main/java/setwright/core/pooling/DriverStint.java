package setwright.core.pooling;

import setwright.core.judgement.Diagnosis;

/**
 * One stint and who drove it.
 *
 * @param driver     a name; stints with the same name are of the same driver
 * @param diagnosis  of that stint alone
 */
public record DriverStint(String driver, Diagnosis diagnosis) {}
