import { type Qty, qty } from '../units/quantity.ts';

/** Gauges used for locks and their transfers. */
export const gauges = [28, 26, 24, 22, 20, 18, 16, 14, 12, 10, 8] as const;
export type Gauge = (typeof gauges)[number];

/** Diameter of a solid wire, in: 0.005 × 92^((36 − AWG) ÷ 39). Exact by definition, ASTM B258. */
export function diameterIn(gauge: Gauge): Qty<'in'> {
  return qty(0.005 * 92 ** ((36 - gauge) / 39), 'in');
}

/** Area in circular mils: (1000 × diameter in inches)². ASTM B258. */
export function circularMils(gauge: Gauge): Qty<'cmil'> {
  return qty((1000 * diameterIn(gauge)) ** 2, 'cmil');
}

/**
 * Resistance of solid uncoated copper at 20 °C, Ω per 1000 ft: 10371 ÷ circular mils.
 * Within 0.1 % of the NBS wire table for the gauges listed here. A cable’s own data sheet goes before it.
 */
export function ohmsPerKft20(gauge: Gauge): Qty<'Ω/kft'> {
  return qty(10371 / circularMils(gauge), 'Ω/kft');
}

/** Metric, solid copper at 20 °C, Ω/km: 17.241 ÷ area in mm². IEC 60028 standard annealed copper. */
export function ohmsPerKm20(area: Qty<'mm²'>): Qty<'Ω/km'> {
  return qty(17.241 / area, 'Ω/km');
}

/**
 * Factor from 20 °C to another conductor temperature: 1 + 0.00393 × (T − 20). Copper, −40 to 90 °C. The coefficient is
 * from general knowledge and agrees with the published factor of 0.820 from 75 back to 20 °C (IEC 60228 tables).
 */
export function temperatureFactor(conductor: Qty<'°C'>): number {
  return 1 + 0.00393 * (conductor - 20);
}

/** Resistance at a temperature, same unit as given at 20 °C. */
export function atTemperature(at20: Qty<'Ω/kft'>, conductor: Qty<'°C'>): Qty<'Ω/kft'> {
  return qty(at20 * temperatureFactor(conductor), 'Ω/kft');
}

/** Printed with every voltage drop: the default, and the two figures beside it. Policy of this schedule. */
export const conductorTemperatures = {
  catalog: qty(20, '°C'),
  usual: qty(50, '°C'),
  nec: qty(75, '°C'),
} as const;

/** Ω per 1000 ft at 75 °C. NEC chapter 9 Table 8, uncoated solid, uncoated 7-strand, coated 7-strand; read. */
export const necTable8 = {
  18: { solid: 7.77, stranded: 7.95, coated: 8.45 },
  16: { solid: 4.89, stranded: 4.99, coated: 5.29 },
  14: { solid: 3.07, stranded: 3.14, coated: 3.26 },
  12: { solid: 1.93, stranded: 1.98, coated: 2.05 },
  10: { solid: 1.21, stranded: 1.24, coated: 1.29 },
  8: { solid: 0.764, stranded: 0.778, coated: 0.809 },
} as const;

/** Greatest Ω/km at 20 °C, plain copper. IEC 60228, classes 1 and 2, and 5 and 6; read. Keys are mm². */
export const iec60228 = {
  '0.5': { solidOrStranded: 36.0, flexible: 39.0 },
  '0.75': { solidOrStranded: 24.5, flexible: 26.0 },
  '1': { solidOrStranded: 18.1, flexible: 19.5 },
  '1.5': { solidOrStranded: 12.1, flexible: 13.3 },
  '2.5': { solidOrStranded: 7.41, flexible: 7.98 },
  '4': { solidOrStranded: 4.61, flexible: 4.95 },
  '6': { solidOrStranded: 3.08, flexible: 3.3 },
} as const;

/** Small bunched conductors, Ω/km at 20 °C, plain to tinned. DIN VDE 0295 extract; read. Keys are mm². */
export const smallBunched = {
  '0.14': [134, 138],
  '0.22': [96, 99],
  '0.25': [76, 79],
  '0.34': [53, 56],
} as const;

/** Ω/km → Ω per 1000 ft: × 0.3048, exact. */
export function perKft(ohmsPerKm: Qty<'Ω/km'>): Qty<'Ω/kft'> {
  return qty(ohmsPerKm * 0.3048, 'Ω/kft');
}

/** Beyond solid copper of the same gauge: 2 to 3 % for the lay of the strands. Worked out from the table’s two columns. */
const stranding = 1.025;

/**
 * Ω per 1000 ft of stranded uncoated copper at a temperature: NEC chapter 9 Table 8 from 18 AWG up, the gauge formula
 * with stranding below it. A cable’s own data sheet goes before it.
 */
export function strandedPerKft(gauge: Gauge, conductor: Qty<'°C'>): Qty<'Ω/kft'> {
  const tabulated = gauge in necTable8 ? necTable8[gauge as keyof typeof necTable8].stranded : undefined;
  const { nec } = conductorTemperatures;
  const at75 = tabulated ?? atTemperature(ohmsPerKft20(gauge), nec) * stranding;
  return qty((at75 * temperatureFactor(conductor)) / temperatureFactor(nec), 'Ω/kft');
}

export type MetricSize = keyof typeof iec60228;
/** Thinnest first. */
export const metricSizes: readonly MetricSize[] = ['0.5', '0.75', '1', '1.5', '2.5', '4', '6'];

/** Ω per 1000 ft of flexible copper, IEC 60228 class 5, at a temperature. */
export function flexiblePerKft(size: MetricSize, conductor: Qty<'°C'>): Qty<'Ω/kft'> {
  return qty(perKft(qty(iec60228[size].flexible, 'Ω/km')) * temperatureFactor(conductor), 'Ω/kft');
}
