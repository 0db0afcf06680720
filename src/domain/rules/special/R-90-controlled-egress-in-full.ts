import { text, under } from '../../codes/sections.ts';
import { all, ibc, is, no, not, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';
import { abductionExcuse, releaseExcuse } from './conditions.ts';

export const R90 = defineRule({
  id: 'R-90',
  title: 'Controlled egress is a complete set',
  family: 'special',
  book: 'ibc',
  cites: [
    under('controlledEgress'),
    under('controlledEgressNfpa'),
    text('ifc', 'chapter 4', 'Emergency planning'),
  ],
  confidence: 'secondary',
  note: 'The exception for psychiatric areas was read for 2018; a state’s text that also names cognitive areas is no model text. The exception for child abduction was read in a text amended by a state. The NFPA 101 list for security-needs locks is from general knowledge; beside NFPA 101 a nursery keeps its automatic release, the safe side.',
  why: 'People who cannot let themselves out depend on fire detection, on power loss and on staff to open.',
  clauses: [
    {
      key: 'a',
      effect: 'prohibit',
      when: all(is('clinicalNeed', 'none'), not(abductionExcuse)),
      of: { release: ['controlled'] },
      says: 'No clinical need to keep people in is recorded, and without one no one may be kept in.',
    },
    {
      key: 'b',
      effect: 'prohibit',
      when: all(no('fullSprinklers'), no('detectionThroughout')),
      of: { release: ['controlled'] },
      says: 'The building has neither a full sprinkler system (NFPA 13) nor smoke or heat detection throughout, so nothing would open the door in a fire.',
    },
    {
      key: 'c',
      effect: 'prohibit',
      when: not(releaseExcuse),
      of: { release: ['controlled'], failMode: ['secure'] },
      says: 'A controlled door here must unlock when its power is lost, and this device stays locked.',
    },
    {
      key: 'd',
      effect: 'prohibit',
      when: no('staffCanUnlock'),
      of: { release: ['controlled'] },
      says: 'Not all clinical staff carry the key or know the code, so release could not be counted on.',
    },
    {
      key: 'e',
      effect: 'require',
      when: yes('isEgress'),
      of: { release: ['controlled'] },
      items: ['staffMeans', 'emergencyLighting', 'listedLock'],
      says: 'All clinical staff can unlock at all times, the procedure is in the approved emergency plan, and the egress side has emergency lighting.',
    },
    {
      key: 'f',
      effect: 'require',
      when: all(yes('isEgress'), not(releaseExcuse)),
      of: { release: ['controlled'] },
      items: ['detectionRelease', 'powerLossRelease', 'remoteRelease'],
      says: 'Sprinklers or automatic detection, loss of lock power, and a switch at the nursing station or command center that breaks lock power each unlock it.',
    },
    {
      key: 'g',
      effect: 'signOff',
      grade: 'must',
      when: yes('isEgress'),
      of: { release: ['controlled'] },
      says: 'Controlled egress keeps people in, so a life-safety reviewer signs for the need, the plan and the release.',
    },
    {
      key: 'h',
      effect: 'caution',
      when: all(ibc(), is('clinicalNeed', 'securityThreat', 'protection')),
      of: { release: ['controlled'] },
      says: 'The section on controlled egress speaks of patients who need containment. A patient who is a threat is named only beside the clinical lock (IBC 2021 on), one who needs protection only beside the child-abduction system; say which section is used.',
    },
    {
      key: 'i',
      effect: 'signOff',
      grade: 'must',
      when: all(ibc({ from: 2021, readTo: 2024 }), yes('isEgress'), is('clinicalArea', 'cognitive')),
      of: { release: ['controlled'] },
      says: 'The whole release set is required here. Whether the printed exception of this edition names cognitive areas beside psychiatric ones was not read; a reviewer reads it before anything is left out.',
    },
    {
      key: 'j',
      effect: 'caution',
      when: all(ibc({ to: 2018 }), is('clinicalArea', 'cognitive')),
      of: { release: ['controlled'] },
      says: 'The 2018 edition excepts psychiatric areas only, so memory care has the whole release set.',
    },
  ],
});
