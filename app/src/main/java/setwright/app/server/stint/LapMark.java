package setwright.app.server.stint;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import setwright.core.handling.CornerEvents;
import setwright.core.handling.CornerPass;
import setwright.core.handling.HandsEvent;
import setwright.core.handling.Slide;

/**
 * Something that happened in a lap, for the page to draw.
 *
 * @param lap       number
 * @param corner    number
 * @param row       in which row it is drawn, in words
 * @param what      in words
 * @param stationM  where, m along the line
 */
record LapMark(int lap, int corner, String row, String what, double stationM) {

    /** Gathers those of all passes. */
    static List<LapMark> of(List<CornerPass> passes) {
        List<LapMark> marks = new ArrayList<>();
        for (CornerPass pass : passes) {
            CornerEvents events = pass.events();
            add(marks, pass, "brake on", events.brakeOn());
            add(marks, pass, "turn-in", events.turnIn());
            add(marks, pass, "brake off", events.brakeOff());
            add(marks, pass, "slowest", events.lowestSpeed());
            add(marks, pass, "pick-up", events.throttlePickUp());
            add(marks, pass, "full throttle", events.fullThrottle());
            for (HandsEvent event : pass.hands()) {
                marks.add(new LapMark(
                        pass.lap(), pass.corner(), "hands", event.kind().words(), event.stationM()));
            }
            for (Slide slide : pass.slides()) {
                String axle = slide.axle() == Slide.Axle.FRONT ? "front" : "rear";
                marks.add(
                        new LapMark(pass.lap(), pass.corner(), axle + " lets go", axle + " lets go", slide.stationM()));
            }
        }
        return marks;
    }

    private static void add(List<LapMark> marks, CornerPass pass, String what, OptionalDouble stationM) {
        stationM.ifPresent(station -> marks.add(new LapMark(pass.lap(), pass.corner(), what, what, station)));
    }
}
