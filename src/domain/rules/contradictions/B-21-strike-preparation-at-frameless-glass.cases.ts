import { cases } from '../rule.ts';

export const B21Cases = cases(
  [
    'strike cutout',
    { leafMaterial: 'glassFrameless', strikePrep: 'ansi478' },
    'yes',
    { does: 'warn strikePrep' },
  ],
  ['strike cutout', { leafMaterial: 'glassFrameless', strikePrep: 'light234' }, 'yes'],
  ['strike cutout', { leafMaterial: 'glassFrameless', strikePrep: 'residential' }, 'yes'],
  ['strike cutout', { leafMaterial: 'glassFrameless', strikePrep: 'aluminium458' }, 'yes'],
  ['none', { leafMaterial: 'glassFrameless', strikePrep: 'none' }, 'no'],
  ['hollow metal', { leafMaterial: 'hollowMetal', strikePrep: 'ansi478' }, 'no'],
  ['preparation not seen', { leafMaterial: 'glassFrameless' }, 'unknown'],
);
