import type { FactKey } from '../model/fields.ts';

/** What is drawn beside a question, so that nobody has to know the word for it. */
export type DrawingOfLook = 'edges' | 'label' | 'strike' | 'rods' | 'tap' | 'stile';

const ofFact: { readonly [K in FactKey]?: DrawingOfLook } = {
  latch: 'edges',
  fireLabel: 'label',
  fireRatingMin: 'label',
  frameLabelMin: 'label',
  strikePrep: 'strike',
  framePrepared: 'strike',
  lessBottomRod: 'rods',
  inactiveBolts: 'rods',
  frameGrouted: 'tap',
  leafMaterial: 'stile',
};

export function drawingOfFact(key: FactKey): DrawingOfLook | undefined {
  return ofFact[key];
}
