import { type AnswersTo, plain, trade } from './said.ts';

type Keys = 'doorType' | 'leafMaterial' | 'handing' | 'visionPanel' | 'hinges' | 'glassRails';

export const doorAnswers: AnswersTo<Keys> = {
  doorType: {
    single: trade('One leaf on hinges or pivots; the ordinary door.'),
    pair: trade('Two leaves in one frame that swing the same way and meet in the middle.'),
    doubleEgressPair: trade(
      'Two leaves that swing in opposite directions, so that people push their own leaf from either side.',
    ),
    doubleActing: trade(
      'The leaf swings both ways through the frame and comes to rest in the middle; there is no stop to close against.',
    ),
    balanced: trade(
      'The leaf hangs on arms inboard of its edge, so that part of it swings in while the rest swings out.',
    ),
    slidingManual: trade('Slides along the wall on a track and is moved by hand.'),
    slidingAutomatic: trade('Slides by motor when someone approaches; the usual shop entrance.'),
    folding: trade('Folds up or slides together like a curtain; horizontal, on a track overhead.'),
    revolving: trade('Wings that turn around a center post inside a drum.'),
    overhead: trade('Goes up: sections on tracks, or slats that roll around a barrel above the opening.'),
    grille: trade('An open curtain of rods and links that rolls up or to the side, as in front of a shop.'),
    gateSwing: trade('A leaf of a fence that turns on hinges.'),
    gateSlide: trade('A leaf of a fence that rolls sideways.'),
    turnstile: trade('Arms at hip height that let one person through at a time; can be climbed over.'),
    turnstileFull: trade('A turning cage from floor to above head height; no one can climb over it.'),
    turnstileSecurity: trade('A lane between two cabinets whose glass wings or flaps are moved by motor.'),
  },
  leafMaterial: {
    hollowMetal: trade('Sheet steel folded around a core; a magnet sticks to it and it sounds hollow.'),
    woodMineralCore: trade(
      'Wood faces on a core of mineral board; the usual wood door rated 45 minutes or more.',
    ),
    woodSolidCore: trade(
      'Wood faces on a full core of wood or particle board; heavy, and dull when knocked.',
    ),
    woodHollowCore: trade(
      'Thin faces on a paper honeycomb, or thin panels; light, hollow when knocked, no hold for a lock.',
    ),
    aluminiumNarrow: trade('Glass leaf whose stile is about 2 in wide; only narrow-stile locks go in.'),
    aluminiumMedium: trade('Glass leaf whose stile is about 3-1/2 to 4 in wide.'),
    aluminiumWide: trade('Glass leaf whose stile is about 5 in wide; takes some mortise locks.'),
    glassFrameless: trade('A sheet of tempered glass with no stile; whatever is attached to it is clamped.'),
    glazedFireAssembly: trade(
      'Fire-resistive glass and its frame, tested and listed as one; the mark is etched into the glass.',
    ),
    gateFramed: trade('Tubes or bars welded into a stiff frame that can carry a lock.'),
    chainLink: trade('Wire mesh in a light tube frame; it bends, and a hand reaches through it.'),
    rollingSteel: trade('Interlocking steel slats that roll up on a barrel.'),
  },
  handing: {
    LH: trade('Left hand: seen from the secure side the hinges are on the left and you push the leaf away.'),
    RH: trade(
      'Right hand: seen from the secure side the hinges are on the right and you push the leaf away.',
    ),
    LHR: trade('Left hand reverse: seen from the secure side, hinges on the left, and you pull the leaf.'),
    RHR: trade('Right hand reverse: seen from the secure side, hinges on the right, and you pull the leaf.'),
  },
  visionPanel: {
    none: plain,
    narrow: trade('A slit of glass beside the lock.'),
    half: trade('Glass in the upper half of the leaf.'),
    full: trade('Glass over nearly the whole leaf.'),
  },
  hinges: {
    butt: trade('Two to four separate hinges; their barrels show between leaf and frame.'),
    continuous: trade('One hinge along the whole height of the leaf.'),
    pivot: trade('Pins at top and bottom that the leaf turns on, set in floor and head.'),
    swingClear: trade('Bent hinges that move an open leaf right out of the opening, for more clear width.'),
    track: trade('Rollers in a rail above or below, for what slides or folds.'),
  },
  glassRails: {
    none: trade('Only clamps at the corners; the glass edge is bare between them.'),
    top: trade('A metal rail across the top edge and none at the bottom.'),
    both: trade('Metal rails across the top and the bottom edge; a bar or a lock can be fixed to them.'),
  },
};
