import { text, under } from '../../codes/sections.ts';
import { all, any, atMost, is, isKnown, not, over, under as below, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

/** Only a gate stands in a pool barrier; nobody is asked about one at a room door. */
const poolGate = all(is('doorType', 'gateSwing', 'gateSlide'), yes('poolBarrierGate'));

export const R09 = defineRule({
  id: 'R-09',
  title: 'Egress hardware is 34 to 48 in high',
  family: 'foundations',
  book: 'ibc',
  cites: [under('hardwareHeightIbc'), under('hardwareHeightNfpa'), text('ada', '404.2.7', 'Door hardware')],
  confidence: 'read',
  note: 'Exceptions from general knowledge. The pool-gate exception of the ADA reaches only latches that do not lock themselves by key, code or electric opener, so on an access-controlled gate it is put to the reviewer. Locks used for security only are not measured here.',
  why: 'Hardware that is too high or too low is out of reach for a child or for a person in a wheelchair.',
  clauses: [
    {
      key: 'a',
      effect: 'modify',
      trade: 'locksmith',
      when: all(
        yes('isEgress'),
        // A height nobody measured is told as a caution below: it can be set when the hardware goes on.
        isKnown('egressHardwareHeightIn'),
        any(
          below('egressHardwareHeightIn', 'hardwareLowIn'),
          all(
            over('egressHardwareHeightIn', 'hardwareHighIn'),
            not(all(poolGate, atMost('egressHardwareHeightIn', 'poolLatchHighIn'))),
          ),
        ),
        not(
          all(
            is('workStatus', 'existing', 'altered'),
            any(is('leafMaterial', 'glassFrameless'), is('doorType', 'overhead', 'grille')),
          ),
        ),
      ),
      says: 'The lever or bar is at {egressHardwareHeightIn}; whatever lock is chosen, move it to between 34 and 48 in above the floor. In a labeled leaf do so only as its listing allows.',
    },
    {
      key: 'b',
      effect: 'signOff',
      grade: 'must',
      when: all(
        yes('isEgress'),
        poolGate,
        over('egressHardwareHeightIn', 'hardwareHighIn'),
        atMost('egressHardwareHeightIn', 'poolLatchHighIn'),
      ),
      of: { release: ['free', 'stairReentry', 'doorSwitch', 'delayed'] },
      says: 'A pool gate may have its latch release up to 54 in, but not if the latch also locks itself by key, code or electric opener; a reviewer decides whether {egressHardwareHeightIn} can stay.',
    },
    {
      key: 'c',
      effect: 'caution',
      when: all(yes('isEgress'), not(isKnown('egressHardwareHeightIn'))),
      of: { release: ['free', 'stairReentry', 'doorSwitch', 'delayed'] },
      says: 'The height of the lever or bar was not measured; it must be between 34 and 48 in above the floor.',
    },
  ],
});
