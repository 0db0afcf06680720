import { type AnswersTo, plain, trade } from './said.ts';

type Keys = 'latch' | 'lockFunction' | 'closing' | 'existingArrangement';

export const latchAnswers: AnswersTo<Keys> = {
  latch: {
    bored: trade(
      'A lock through a round hole in the face of the leaf; its faceplate on the edge is about 2-1/4 in tall.',
    ),
    mortise: trade('A lock case sunk into the edge of the leaf; its faceplate is about 8 in tall.'),
    mortiseDeadbolt: trade(
      'A mortise lock whose tall faceplate shows a square bolt beside the sloped latch.',
    ),
    boredPlusDeadbolt: trade('Two holes in the leaf: the lever, and a deadbolt of its own above it.'),
    deadboltOnly: trade('Only a square bolt, thrown by key or thumbturn; not self-latching.'),
    rimExit: trade(
      'A bar whose latch sits on the face of the leaf and catches a strike on the face of frame or mullion.',
    ),
    verticalRods: trade(
      'A bar that operates rods up, and usually down as well, on the face of the leaf or hidden inside it.',
    ),
    rimPlusRods: trade('A pair without a mullion: one leaf has rods, the other a latch that catches on it.'),
    deadlatch: trade('A sloped latch in the narrow edge of a glass leaf, operated by paddle or lever.'),
    hookbolt: trade(
      'A hook or a square bolt swung out of the narrow stile by key or thumbturn; it does not latch.',
    ),
    patch: trade('A bolt in the corner clamp or the bottom rail of a glass leaf, mostly into the floor.'),
    railExit: trade('A bar fixed to the rails of a glass leaf; it mostly latches at the head.'),
    roller: trade(
      'A roller on a spring, or a magnetic catch: a firm pull opens it, so it is not a latch in a fire.',
    ),
    gateLock: trade('A weatherproof lock box welded or bolted to the gate leaf.'),
    operatorLock: trade('A bolt or brake that belongs to the motor of a sliding or rolling door.'),
    pushPull: trade('Plates or handles that do not move; only a closer keeps the leaf shut.'),
  },
  lockFunction: {
    storeroom: trade('The outside lever never turns; each entry takes a key, or a strike that releases.'),
    classroom: trade('A key in the outside lever locks and unlocks it; the inside lever always opens.'),
    office: trade('A button or thumbturn inside locks the outside lever; the inside lever always opens.'),
    passage: trade('Both levers always turn; it latches and never locks.'),
    none: trade('Nothing to turn or to pull outside, as on an exit-only door.'),
  },
  closing: {
    selfClosing: trade('A closer arm, a floor closer or spring hinges shut the leaf each time it is let go.'),
    automaticClosing: trade(
      'It stands open on a magnet or holder and shuts by itself once smoke is detected.',
    ),
    none: trade('The leaf stays where it is left.'),
  },
  existingArrangement: {
    none: plain,
    freeLever: trade('However it is locked outside, turning the inside lever opens it at once.'),
    freeBar: trade('However it is locked outside, pushing the bar opens it at once.'),
    doubleCylinder: trade('Keyed inside as well as outside: without a key no one leaves.'),
    deadboltPlusLatch: trade(
      'Leaving takes two movements, such as turning the thumbturn and then the lever.',
    ),
    padlock: trade('No one opens it without its key or a tool.'),
    slideBolt: trade('Added beside the latch and undone by hand from inside, without a key or a tool.'),
    barricade: trade('A bar, wedge or sleeve made to keep an intruder out of a room, put on from inside.'),
    magnetNoSensor: trade('Leaving takes a press on the wall button; no sensor detects people.'),
    magnetAlarmOnly: trade('On an ordinary day nothing at the door lets anyone out.'),
    magnetFullSet: trade(
      'Sensor over the door, push-to-exit button beside it, and it lets go on fire alarm: all three.',
    ),
    failSafeStrike: trade(
      'A strike that unlocks when power is removed; it draws current all the time it is locked.',
    ),
    cardToExit: trade('A reader or keypad inside that must be used before the door lets anyone out.'),
    buttonBeforeBar: trade('The push bar does nothing until a button or switch is pressed.'),
    electricBolt: trade('A bolt that a solenoid or a motor throws into the edge or the top of the leaf.'),
    stairSideLocked: trade(
      'Inside the stair the lever does not turn, and no command from anywhere frees it.',
    ),
  },
};
