package setwright.logbook.row;

/**
 * A problem that was found.
 *
 * @param place        in the ranking, from 1
 * @param phase        in words, as all that follow
 * @param speed        class of corners
 * @param corners      their numbers, with commas
 * @param lapShare     of the laps that show it, 0..1
 * @param probability  0..1
 * @param priceS       of it, s a lap
 */
public record FindingRow(
        long id,
        long diagnosisId,
        int place,
        String phase,
        String speed,
        String balance,
        String setOffBy,
        String cause,
        String corners,
        double lapShare,
        boolean lapWide,
        double probability,
        double priceS,
        double priceLowS,
        double priceHighS) {}
