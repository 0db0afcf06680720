import { text } from '../../codes/sections.ts';
import { all, is, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

const inPlace = all(yes('fireRated'), is('workStatus', 'existing', 'altered'));

export const R40 = defineRule({
  id: 'R-40',
  title: 'Round holes for surface hardware may be drilled',
  family: 'fire',
  book: 'nfpa80',
  cites: [text('nfpa80', '4.1.3', 'Preparation on site')],
  confidence: 'secondary',
  note: 'Editions before 2016 stop at 1 in except for cylinders; later ones follow the hardware’s listing. The clause number moved in 2022.',
  why: 'The fire-door standard leaves small round holes to the installer, so surface hardware needs no laboratory.',
  clauses: [
    {
      key: 'a',
      effect: 'permit',
      when: inPlace,
      of: { device: ['strikeRim', 'exitTrim', 'batteryLock'] },
      says: 'The round holes for this surface hardware may be drilled in the field, as far as its fire listing allows.',
    },
    {
      key: 'b',
      effect: 'require',
      when: inPlace,
      of: { device: ['strikeRim', 'exitTrim', 'batteryLock', 'magnet', 'delayedMagnet'] },
      items: ['holeRecord'],
      says: 'Record every hole drilled in the labeled door, with size and location, for the annual inspection.',
    },
  ],
});
