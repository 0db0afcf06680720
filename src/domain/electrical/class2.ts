import { type Qty, qty } from '../units/quantity.ts';
import { refuse, type Told } from '../units/told.ts';

export type Class2 = Told<{
  /** Nameplate limits of one output. */
  voltAmps: Qty<'VA'>;
  current: Qty<'A'>;
  /** Current the output may give into any load. */
  anyLoad: Qty<'A'>;
}>;

/**
 * Limits of one Class 2 output, by its greatest volts. Source: NEC chapter 9 Tables 11(A) and 11(B): up to 20 V
 * 5 × V volt-amperes (60 VA at 12 V, not 100), 5 A and 8 A, read; 20 to 30 V 100 VA, 100 ÷ V, 8 A, read; 30 to 60 V DC
 * 100 VA, 100 ÷ V, 150 ÷ V, from general knowledge. Each output counts alone and outputs are not paralleled.
 */
export function class2Limits(greatest: Qty<'V'>): Class2 {
  if (!(greatest > 0 && greatest <= 60))
    return refuse('Class 2 limits are tabulated for more than 0 up to 60 V DC.');
  if (greatest <= 20)
    return { ok: true, voltAmps: qty(5 * greatest, 'VA'), current: qty(5, 'A'), anyLoad: qty(8, 'A') };
  return {
    ok: true,
    voltAmps: qty(100, 'VA'),
    current: qty(100 / greatest, 'A'),
    anyLoad: qty(greatest <= 30 ? 8 : 150 / greatest, 'A'),
  };
}
