import { type AnswersTo, plain, standard, trade } from './said.ts';

type Keys = 'sprinklerKind' | 'supplyVolts' | 'lockPowerSource' | 'operator' | 'workStatus';

export const siteAnswers: AnswersTo<Keys> = {
  sprinklerKind: {
    nfpa13: standard('Every part of the building is protected; the only kind some sections count.'),
    nfpa13R: standard('For residences of up to four stories; closets, attics and such may be left out.'),
    nfpa13D: standard('For one- and two-family dwellings and small homes; made to let people get out.'),
  },
  supplyVolts: {
    '12': trade('Direct current; twice the current of 24 V, so long cables lose more.'),
    '24': trade('Direct current; the usual choice, and the only choice for most latch retraction.'),
  },
  lockPowerSource: {
    dedicated: standard(
      'A box with a supply listed for access control (UL 294), its battery, and an input for the fire alarm.',
    ),
    fireAlarmPanel: trade(
      'The lock is powered from an output of the fire alarm panel; only where its listing says so.',
    ),
    poe: standard('Power over the network cable (IEEE 802.3); the network switch then needs the battery.'),
    other: plain,
  },
  operator: {
    none: plain,
    lowEnergy: standard(
      'Opens slowly, at a push plate or a light push, and stops when something is in its way (A156.19).',
    ),
    fullPower: standard(
      'Opens fast when someone approaches; has sensors or mats that guard the swing (A156.10).',
    ),
    powerAssist: standard('The leaf is pushed by hand and a motor makes it light (A156.19).'),
  },
  workStatus: {
    new: trade('Not built yet, or built with this work: leaf and frame can be ordered prepared.'),
    altered: trade('It exists, and this work changes it.'),
    existing: trade('It exists and stays as it is.'),
  },
};
