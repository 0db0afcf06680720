export type BaseMetal = 'brass or bronze' | 'steel' | 'stainless steel' | 'aluminum' | 'any';

export interface Finish {
  /** Older US number: the look only. */
  readonly us?: string;
  readonly look: string;
  readonly metal: BaseMetal;
}

/** BHMA finish codes, A156.18: the code names the look AND the base metal. Read on makers’ charts, 689 from memory. */
export const finishes = {
  600: { us: 'USP', look: 'primed', metal: 'steel' },
  605: { us: 'US3', look: 'bright brass', metal: 'brass or bronze' },
  606: { us: 'US4', look: 'satin brass', metal: 'brass or bronze' },
  612: { us: 'US10', look: 'satin bronze', metal: 'brass or bronze' },
  613: { us: 'US10B', look: 'oil-rubbed bronze', metal: 'brass or bronze' },
  618: { us: 'US14', look: 'bright nickel', metal: 'brass or bronze' },
  619: { us: 'US15', look: 'satin nickel', metal: 'brass or bronze' },
  622: { us: 'US19', look: 'flat black', metal: 'brass or bronze' },
  625: { us: 'US26', look: 'bright chromium', metal: 'brass or bronze' },
  626: { us: 'US26D', look: 'satin chromium', metal: 'brass or bronze' },
  627: { us: 'US27', look: 'satin aluminum', metal: 'aluminum' },
  628: { us: 'US28', look: 'satin anodized aluminum', metal: 'aluminum' },
  629: { us: 'US32', look: 'bright stainless', metal: 'stainless steel' },
  630: { us: 'US32D', look: 'satin stainless', metal: 'stainless steel' },
  631: { us: 'US19', look: 'flat black', metal: 'steel' },
  632: { us: 'US3', look: 'bright brass', metal: 'steel' },
  652: { us: 'US26D', look: 'satin chromium', metal: 'steel' },
  689: { look: 'aluminum painted', metal: 'any' },
  695: { look: 'dark bronze painted', metal: 'any' },
} as const satisfies Record<number, Finish>;
export type FinishCode = keyof typeof finishes;
