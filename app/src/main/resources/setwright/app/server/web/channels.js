// What each trace is called, in which unit it is shown, and how far its axis reaches.
import { units } from "./ask.js";

const imperial = units === "imperial";
const speed = imperial ? { unit: "mph", factor: 3600 / 1609.344 } : { unit: "km/h", factor: 3.6 };
const distance = imperial ? { unit: "ft", factor: 1 / 0.3048 } : { unit: "m", factor: 1 };

export const stationUnit = distance;
export const speedUnit = speed;

/** Those with a range of their own keep it; others show what the window holds. */
export const channels = [
  { name: "speed", title: "Speed", ...speed, decimals: 0, least: 20, shown: true },
  { name: "steering", title: "Steering wheel, left +", unit: "deg", factor: 1, decimals: 0, least: 30, shown: true },
  { name: "throttle", title: "Throttle", unit: "%", factor: 100, decimals: 0, range: [-3, 103], shown: true },
  { name: "brake", title: "Brake", unit: "% of its greatest", factor: 100, decimals: 0, range: [-3, 103], shown: true },
  { name: "balance", title: "Balance against a balanced car, understeer +", unit: "deg", factor: 1, decimals: 2, least: 1.5, shown: true },
  { name: "frontUse", title: "Front axle: slip, of that at its greatest force", unit: "%", factor: 100, decimals: 0, least: 40, shown: true },
  { name: "rearUse", title: "Rear axle: slip, of that at its greatest force", unit: "%", factor: 100, decimals: 0, least: 40, shown: true },
  { name: "offset", title: "Line, left of the usual one +", ...distance, decimals: 1, least: imperial ? 6 : 2, shown: true },
  { name: "lateral", title: "Lateral acceleration, left +", unit: "m/s\u00b2", factor: 1, decimals: 1, least: 5, shown: false },
  { name: "yaw", title: "Yaw rate, left +", unit: "deg/s", factor: 1, decimals: 1, least: 10, shown: false },
];

/** Returns how far an axis reaches that shows these curves, in the unit shown; no nearer than the least that is worth a look. */
export function rangeOf(channel, curves) {
  if (channel.range) return channel.range;
  let low = Infinity;
  let high = -Infinity;
  for (const curve of curves) {
    for (const value of curve) {
      if (value === null) continue;
      if (value < low) low = value;
      if (value > high) high = value;
    }
  }
  if (low > high) return [0, 1];
  const missing = Math.max(0, channel.least - (high - low));
  const room = 0.06 * (high - low + missing) + 0.5 * missing;
  return [low - room, high + room];
}
