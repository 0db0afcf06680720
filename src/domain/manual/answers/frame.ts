import { type AnswersTo, plain, trade } from './said.ts';

type Keys = 'frameMaterial' | 'strikePrep' | 'wallConstruction';

export const frameAnswers: AnswersTo<Keys> = {
  frameMaterial: {
    hollowMetal: trade('Folded sheet steel, the usual commercial frame; a magnet sticks to it.'),
    wood: trade('A wood jamb, usually with a casing nailed over its edge.'),
    aluminium: trade('Square aluminum tube, as in a storefront; a magnet does not stick to it.'),
    none: trade('A glass leaf that closes against glass, wall or floor, with nothing to hold a strike.'),
    posts: trade('Steel posts set in the ground.'),
    track: trade('Rails or guides at the edges of what slides or rolls.'),
  },
  strikePrep: {
    ansi478: trade(
      'The full-size cutout of commercial steel frames, for mortise and bored locks; most electric strikes go in.',
    ),
    light234: trade(
      'A small cutout for a bored latch or a deadbolt; few electric strikes fit without cutting.',
    ),
    residential: trade(
      'A small plate with a long curved lip, about 2-1/4 × 1-3/4 in; no room for a strike body without cutting.',
    ),
    aluminium458: trade(
      'A tall slot in an aluminum jamb, nearly as wide as the tube, for a narrow-stile latch.',
    ),
    none: trade('The frame is smooth where a latch would go in.'),
  },
  wallConstruction: {
    gypsum: trade('Board on steel or wood studs; hollow when knocked, and cables can run inside.'),
    masonry: trade('Block, brick or cast wall; cables need a conduit or a surface raceway.'),
    glass: trade('Glazing from floor to ceiling; cables run in its aluminum tubes only.'),
    other: plain,
  },
};
