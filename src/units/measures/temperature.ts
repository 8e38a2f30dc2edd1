import type { Measure as Definition } from "convert-units";
import { zeroCelsius } from "../kelvin";
import { multiples } from "../multiples";

/** Degree Celsius, degree Fahrenheit, kelvin. */
export type TemperatureUnit = "degC" | "degF" | "K";

const scale = (id: TemperatureUnit) => ({ [id]: { name: { singular: id, plural: id }, to_anchor: 1 } });

/**
 * Temperatures, each scale a system of its own. t/°C = T/K − 273.15 (SI Brochure, 9th edition, 2.3.1);
 * t/°F = t/°C × 9/5 + 32 = T/K × 9/5 − 459.67 (NIST SP 811, appendix B.8, as tables made of it repeat).
 */
export const temperature = (): Definition<string, string> => ({
  systems: {
    celsius: scale("degC"),
    fahrenheit: scale("degF"),
    kelvin: scale("K"),
  },
  anchors: {
    celsius: {
      fahrenheit: { transform: (t, n) => n.add(n.div(n.mul(t, 9), 5), 32) },
      kelvin: { transform: (t, n) => n.add(t, zeroCelsius) },
    },
    fahrenheit: {
      celsius: { transform: (t, n) => n.div(n.mul(n.sub(t, 32), 5), 9) },
      kelvin: { transform: (t, n) => n.div(n.mul(n.add(t, 459.67), 5), 9) },
    },
    kelvin: {
      celsius: { transform: (t, n) => n.sub(t, zeroCelsius) },
      fahrenheit: { transform: (t, n) => n.sub(n.div(n.mul(t, 9), 5), 459.67) },
    },
  },
});

/** Ninths of a kelvin in a difference of one degree: no offsets, 1 °F = 5/9 K. */
export const temperatureDifference = () =>
  multiples<TemperatureUnit>({
    degC: 9,
    degF: 5,
    K: 9,
  });
