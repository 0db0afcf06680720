import { type AnswersTo, plain, standard, trade } from './said.ts';

type Keys = 'inactiveBolts' | 'fireLabel' | 'wallKind' | 'holdOpen';

export const pairAndFireAnswers: AnswersTo<Keys> = {
  inactiveBolts: {
    manualFlush: trade('Bolts at top and bottom that a person throws and draws by hand.'),
    automaticFlush: trade('Bolts that go out when the active leaf shuts, and come back when it opens.'),
    constantLatching: trade(
      'The leaf latches at its head by itself each time it shuts; a hand lever on its edge frees it.',
    ),
    rods: trade('An exit device of its own, with rods up and mostly down.'),
    rim: trade('An exit device of its own, latching on a post between the leaves.'),
    none: trade('Nothing holds it but its closer, or the other leaf.'),
  },
  fireLabel: {
    seen: trade('Maker, rating and listing mark can be read, on the leaf and on the frame.'),
    illegible: trade(
      'There is a label, but paint, wear or weld hides what it says; do not scrape a label bare.',
    ),
    removed: trade('Two rivet holes or a clean rectangle show where it was.'),
    none: trade('Edges and jamb were looked at and carry no label.'),
  },
  wallKind: {
    none: plain,
    corridor: standard(
      'The wall of a corridor where the code asks that it withstand fire, mostly for an hour.',
    ),
    otherPartition: standard(
      'A fire partition elsewhere, such as between dwelling units or at an elevator lobby.',
    ),
    fireBarrier: standard(
      'A rated wall that divides fire areas or uses and goes right up to the floor above.',
    ),
    exitEnclosure: standard('The walls round a stair or passageway that people leave by, or round a shaft.'),
    horizontalExit: standard('A rated wall behind which the other part of the building is a safe place.'),
    fireWall: standard(
      'A wall meant to stand although the building on one side of it falls; like two buildings.',
    ),
    smokeBarrier: standard('A rated wall that also keeps smoke back, as between parts of a hospital floor.'),
    smokePartition: standard('A wall that keeps smoke back and needs no fire rating.'),
    exterior: plain,
  },
  holdOpen: {
    none: plain,
    detectorReleased: trade(
      'A magnet or a holder in the closer lets go when smoke is detected or power is lost.',
    ),
    heatOnly: trade(
      'A link of soft metal melts in the heat and only then lets the door close; smoke does not do it.',
    ),
    wedge: trade('It stays open until a person frees it; nothing lets go in a fire.'),
  },
};
