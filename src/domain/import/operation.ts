/**
 * Values of IfcDoorTypeOperationEnum (IFC2x3 TC1, IFC4, IFC4.3) as kinds of door. A null is a value that names a door
 * of ours only in part, with what a person has to say.
 */
const swing = 'single';
const says = {
  slides: 'The model says that the door slides; say whether by hand or automatically.',
  both: 'The model says two leaves that swing both ways; say whether it is a pair or double-acting.',
  fixed: 'The model says one leaf beside a fixed panel, so its width is not that of a leaf.',
};
const operations: readonly (readonly [RegExp, string | null, string])[] = [
  [/^SINGLE_SWING_(LEFT|RIGHT)$/, swing, ''],
  [/^DOUBLE_(DOOR|PANEL)_SINGLE_SWING$/, 'pair', ''],
  [/^DOUBLE_(DOOR|PANEL)_SINGLE_SWING_OPPOSITE_(LEFT|RIGHT)$/, 'doubleEgressPair', ''],
  [/^DOUBLE_SWING_(LEFT|RIGHT)$/, 'doubleActing', ''],
  [/^DOUBLE_(DOOR|PANEL)_DOUBLE_SWING$/, null, says.both],
  [/^(SLIDING_TO_(LEFT|RIGHT)|DOUBLE_(DOOR|PANEL)_SLIDING)$/, null, says.slides],
  [/^(FOLDING_TO_(LEFT|RIGHT)|DOUBLE_(DOOR|PANEL)_FOLDING)$/, 'folding', ''],
  [/^REVOLVING(_HORIZONTAL|_VERTICAL)?$/, 'revolving', ''],
  [/^(ROLLINGUP|LIFTING_VERTICAL_(LEFT|RIGHT|TOP)|LIFTING_HORIZONTAL)$/, 'overhead', ''],
  [/^SWING_FIXED_(LEFT|RIGHT)$/, null, says.fixed],
];

export interface Operation {
  /** Null where the word leaves it open. */
  readonly doorType: string | null;
  readonly says: string;
}

/** Undefined where the model says nothing: not defined, or a word of its own. */
export function operationOf(text: string): Operation | undefined {
  const word = text.trim().toUpperCase();
  if (word === '' || word === 'NOTDEFINED') return undefined;
  const found = operations.find(([pattern]) => pattern.test(word));
  if (found) return { doorType: found[1], says: found[2] };
  return { doorType: null, says: `“${text.trim()}” does not say how the door moves; it stays open.` };
}

export const isTrue = (text: string) => /^(yes|y|true|t|\.t\.)$/i.test(text.trim());
export const isFalse = (text: string) => /^(no|n|false|f|\.f\.)$/i.test(text.trim());
