package setwright.core.judgement;

import java.util.List;

/**
 * A habit of the driver that costs time or hides what the car does.
 *
 * @param kind      what, in plain words, such as {@code throttle picked up, then lifted}
 * @param corners   corner numbers where it happens, ascending
 * @param lapShare  share of the judged passes through these corners, 0..1
 * @param size      how large, in {@code unit}
 * @param unit      unit of {@code size} as shown
 */
public record DrivingFault(String kind, List<Integer> corners, double lapShare, double size, String unit) {
    public DrivingFault {
        corners = List.copyOf(corners);
    }
}
