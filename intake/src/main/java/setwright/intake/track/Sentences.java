package setwright.intake.track;

import java.util.Optional;
import java.util.OptionalLong;
import net.sf.marineapi.nmea.parser.DataNotAvailableException;
import net.sf.marineapi.nmea.parser.SentenceFactory;
import net.sf.marineapi.nmea.sentence.GGASentence;
import net.sf.marineapi.nmea.sentence.PositionSentence;
import net.sf.marineapi.nmea.sentence.RMCSentence;
import net.sf.marineapi.nmea.sentence.Sentence;
import net.sf.marineapi.nmea.sentence.SentenceValidator;
import net.sf.marineapi.nmea.sentence.TimeSentence;
import net.sf.marineapi.nmea.sentence.VTGSentence;
import net.sf.marineapi.nmea.util.DataStatus;
import net.sf.marineapi.nmea.util.Date;
import net.sf.marineapi.nmea.util.GpsFixQuality;
import net.sf.marineapi.nmea.util.Position;
import setwright.intake.table.Table;

/**
 * Puts the sentences of a receiver together to fixes: all that tell one time of day, or none, belong to one moment.
 *
 * <p>Only RMC tells the date. Until it does, midnight is seen by a time of day that falls by more than half a day.
 */
final class Sentences {
    private static final double DAY_S = 86_400.0;
    /** International nautical mile an hour. */
    private static final double KNOT_MPS = 1852.0 / 3600.0;

    private final Fixes fixes;
    private Optional<Fix> open = Optional.empty();
    private OptionalLong dayOfDate = OptionalLong.empty();
    private long days;
    private double lastOfDayS = Double.NaN;
    private double lastS = Double.NEGATIVE_INFINITY;
    private long met;
    private long torn;

    Sentences(Fixes fixes) {
        this.fixes = fixes;
    }

    /** How many lines looked like a sentence. */
    long met() {
        return met;
    }

    /** How many of them were damaged. */
    long torn() {
        return torn;
    }

    /** Takes a line; what stands before the sentence, such as a logger's stamp, is passed over. */
    void take(String line) {
        int start = line.indexOf('$');
        if (start < 0) {
            return;
        }
        met++;
        String text = line.substring(start).strip();
        // Without a check sum nothing tells a torn sentence from a whole one.
        if (text.indexOf('*') < 0 || !SentenceValidator.isValid(text)) {
            torn++;
            return;
        }
        if (!text.matches("\\$..(RMC|GGA|VTG),.*")) {
            return;
        }
        try {
            understand(SentenceFactory.getInstance().createParser(text));
        } catch (DataNotAvailableException e) {
            // An empty field: the receiver knows nothing yet.
            return;
        } catch (RuntimeException e) {
            torn++;
        }
    }

    private void understand(Sentence sentence) {
        if (sentence instanceof TimeSentence timed && !open(timed, sentence)) {
            return;
        }
        if (open.isEmpty()) {
            return;
        }
        if (isFixed(sentence) && sentence instanceof PositionSentence placed) {
            Position position = placed.getPosition();
            open = open.map(fix -> fix.in(position.getLatitude(), position.getLongitude()));
        }
        if (sentence instanceof RMCSentence rmc && isFixed(rmc)) {
            double speed = rmc.getSpeed() * KNOT_MPS;
            open = open.map(fix -> fix.going(speed));
        } else if (sentence instanceof VTGSentence vtg) {
            double speed = vtg.getSpeedKnots() * KNOT_MPS;
            open = open.map(fix -> fix.going(speed));
        } else if (sentence instanceof GGASentence gga && isFixed(gga)) {
            double altitude = gga.getAltitude();
            open = open.map(fix -> fix.above(altitude));
        }
    }

    private static boolean isFixed(Sentence sentence) {
        if (sentence instanceof RMCSentence rmc) {
            return rmc.getStatus() == DataStatus.ACTIVE;
        }
        return !(sentence instanceof GGASentence gga) || gga.getFixQuality() != GpsFixQuality.INVALID;
    }

    /** Goes on to the moment of a sentence; tells whether it is the present one or a later. */
    private boolean open(TimeSentence timed, Sentence sentence) {
        var time = timed.getTime();
        double ofDayS = time.getHour() * 3600.0 + time.getMinutes() * 60.0 + time.getSeconds();
        if (ofDayS < lastOfDayS - DAY_S / 2.0) {
            days++;
        }
        lastOfDayS = ofDayS;
        if (sentence instanceof RMCSentence rmc && dayOfDate.isEmpty()) {
            begin(rmc.getDate());
        }
        double atS = (dayOfDate.orElse(0) + days) * DAY_S + ofDayS;
        if (open.isPresent() && open.get().timeS() == atS) {
            return true;
        }
        if (atS <= lastS) {
            torn++; // time that runs back
            return false;
        }
        close();
        open = Optional.of(Fix.at(atS));
        lastS = atS;
        return true;
    }

    /** Takes the first date: what came before it without one is put on that day. */
    private void begin(Date date) {
        long day = java.time.LocalDate.of(date.getYear(), date.getMonth(), date.getDay())
                .toEpochDay();
        dayOfDate = OptionalLong.of(day - days);
        fixes.shift((day - days) * DAY_S);
        open = open.map(fix -> new Fix(
                fix.timeS() + (day - days) * DAY_S,
                fix.latitudeDeg(),
                fix.longitudeDeg(),
                fix.speedMps(),
                fix.altitudeM()));
        lastS += (day - days) * DAY_S;
    }

    private void close() {
        open.ifPresent(fixes::add);
        open = Optional.empty();
    }

    Table done() {
        close();
        return fixes.table();
    }
}
