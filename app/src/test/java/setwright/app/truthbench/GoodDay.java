package setwright.app.truthbench;

import setwright.core.simulation.driver.DrivenStint;

/**
 * Another day of the same driver in the car without its fault.
 *
 * @param plan    of that day
 * @param driven  then
 */
record GoodDay(BenchCase plan, DrivenStint driven) {}
