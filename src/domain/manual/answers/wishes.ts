import { needLbf, trafficCyclesK } from '../../decide/score.ts';
import { type AnswersTo, own, plain, trade } from './said.ts';

type Keys = 'control' | 'readerSides' | 'securityNeed' | 'traffic' | 'appearance';

/** The figures the ranking goes by; common practice, no source. */
const against = (need: keyof typeof needLbf) => `ranked against ${needLbf[need]} lbf`;
const openings = (traffic: keyof typeof trafficCyclesK) =>
  `ranked against ${trafficCyclesK[traffic]},000 openings`;

export const wishesAnswers: AnswersTo<Keys> = {
  control: {
    controlled: own('Somebody is to be kept out by a credential, a schedule or a wish of the owner.'),
    notControlled: own('No credential and no wish: nothing is chosen and nothing is bought.'),
    asToday: own('What locks it today stays, electric or not: nothing is chosen and nothing is bought.'),
  },
  readerSides: {
    none: trade('The door is free or key locked; no one presents a card or code.'),
    secure: trade('A card or code to come in; nothing to show when leaving.'),
    both: trade(
      'A card or code also to leave; refused nearly everywhere, unless something else lets people out.',
    ),
    recordOut: trade(
      'A card or code to come in; the inside reader notes who leaves, and the door opens without it too.',
    ),
  },
  securityNeed: {
    low: own(`Keeps people from walking in by mistake; ${against('low')}.`),
    medium: own(`An ordinary office or tenant door; ${against('medium')}.`),
    high: own(`Money, drugs, data or people at risk; ${against('high')}.`),
    critical: own(`What must not be lost at all; ${against('critical')}.`),
  },
  traffic: {
    light: own(`A few people a day, as at a storage or mechanical room; ${openings('light')}.`),
    medium: own(`An office or a suite entrance; ${openings('medium')}.`),
    heavy: own(`A stair or main corridor of a busy building; ${openings('heavy')}.`),
    extreme: own(`A school, station or hospital entrance, open and shut all day; ${openings('extreme')}.`),
  },
  appearance: {
    standard: plain,
    visible: own('Visitors see it up close; bulk counts against a device.'),
    showpiece: own('The architect chose every detail; almost nothing may show.'),
  },
};
