package setwright.core.identification;

/**
 * One quantity of the car before and after looking at the laps, in the unit people use.
 *
 * @param key       name in JSON, such as {@code drag_area}
 * @param words     what it is, in lower case
 * @param unit      as shown, such as {@code m²}; empty for a pure number
 * @param assumed   value before, from the sheet or from the kind of car
 * @param assumedLow  a tenth of the probability lies below
 * @param assumedHigh a tenth of the probability lies above
 * @param value     value after
 * @param low       a tenth of the probability lies below
 * @param high      a tenth of the probability lies above
 * @param told      whether the laps told it: its interval is clearly narrower than before
 * @param why       what told it, or why it could not be told and which channel or manoeuvre would tell it, in a sentence
 */
public record FittedValue(
        String key,
        String words,
        String unit,
        double assumed,
        double assumedLow,
        double assumedHigh,
        double value,
        double low,
        double high,
        boolean told,
        String why) {}
