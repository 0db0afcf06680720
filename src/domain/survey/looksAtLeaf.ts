import type { FactValues } from '../model/fields.ts';
import { labelsAsStamped } from './labels.ts';
import type { Look, Preset } from './look.ts';

/**
 * What a surveyor sees at one glance, in the words of the trade. A label or a preparation stands here only where it is
 * the very thing looked at.
 */

const lever = { existingArrangement: 'freeLever', panicPresent: false } as const;
const bar = { existingArrangement: 'freeBar', panicPresent: true } as const;
const cylindrical = { latch: 'bored', ...lever } as const;
const mortise = { latch: 'mortise', ...lever } as const;

const functions = [
  ['storeroom', 'outside always locked'],
  ['classroom', 'outside locked by key'],
  ['office', 'outside locked by button'],
  ['passage', 'outside always free'],
] as const;

const lockWithFunction = (name: string, facts: FactValues): readonly Preset[] =>
  functions.map(([lockFunction, says]) => ({ label: `${name}, ${says}`, facts: { ...facts, lockFunction } }));

const single = { doorType: 'single', leafWidthIn: 36, leafHeightIn: 84 } as const;
const pair = { doorType: 'pair', leafWidthIn: 36, leafHeightIn: 84 } as const;
const metalFrame = { frameMaterial: 'hollowMetal' } as const;
const storefront = { leafMaterial: 'aluminiumNarrow', frameMaterial: 'aluminium' } as const;

const sizes: readonly (readonly [width: number, height: number])[] = [
  [36, 84],
  [36, 80],
  [32, 80],
  [30, 84],
  [42, 84],
  [48, 84],
  [36, 96],
];

export const looksAtLeaf: readonly Look[] = [
  {
    id: 'wanted',
    station: 'wanted',
    lead: 'control',
    ask: 'What is wanted here?',
    help: 'Where nothing is wanted nothing is bought; only what may keep people in is asked.',
    presets: [
      { label: 'Controlled', facts: { control: 'controlled' } },
      {
        label: 'Not controlled; a lever always opens it from inside',
        facts: { control: 'notControlled', existingArrangement: 'freeLever' },
      },
      {
        label: 'Not controlled; nothing locks it',
        facts: { control: 'notControlled', existingArrangement: 'none' },
      },
      { label: 'Not controlled; something else locks it', facts: { control: 'notControlled' } },
      { label: 'As it is today', facts: { control: 'asToday' } },
    ],
  },
  {
    id: 'wishes',
    station: 'wanted',
    ask: 'What does the owner wish here?',
    presets: [
      {
        label: 'Reader outside, locked at all hours; no lockdown, no delay',
        facts: {
          readerSides: 'secure',
          wishScheduledUnlock: false,
          wishLockdown: false,
          wishDelayedEgress: false,
        },
      },
      {
        label: 'Reader outside, open at set hours; no lockdown, no delay',
        facts: {
          readerSides: 'secure',
          wishScheduledUnlock: true,
          wishLockdown: false,
          wishDelayedEgress: false,
        },
      },
      {
        label: 'Reader outside, open at set hours, lockdown; no delay',
        facts: {
          readerSides: 'secure',
          wishScheduledUnlock: true,
          wishLockdown: true,
          wishDelayedEgress: false,
        },
      },
    ],
  },
  {
    id: 'need',
    station: 'wanted',
    ask: 'What is it for, and how is it used?',
    presets: [
      {
        label: 'Ordinary room, used a little',
        facts: { securityNeed: 'low', traffic: 'light', appearance: 'standard' },
      },
      {
        label: 'Office or tenant, used all day',
        facts: { securityNeed: 'medium', traffic: 'medium', appearance: 'standard' },
      },
      {
        label: 'Entrance seen by visitors, heavy use',
        facts: { securityNeed: 'medium', traffic: 'heavy', appearance: 'visible' },
      },
      {
        label: 'Money, drugs, data or people at risk',
        facts: { securityNeed: 'high', traffic: 'light', appearance: 'standard' },
      },
    ],
  },
  {
    id: 'leafAndFrame',
    station: 'face',
    ask: 'Which door is it?',
    help: 'With the size: 36 × 84 is 3-0 × 7-0. Another size is asked for apart.',
    presets: [
      {
        label: 'Hollow metal leaf in hollow metal frame, 36 × 84',
        facts: { ...single, leafMaterial: 'hollowMetal', ...metalFrame },
      },
      {
        label: 'Solid wood leaf in hollow metal frame, 36 × 84',
        facts: { ...single, leafMaterial: 'woodSolidCore', ...metalFrame },
      },
      { label: 'Storefront leaf, narrow stile, 36 × 84', facts: { ...single, ...storefront } },
      {
        label: 'All-glass leaf without a frame, 36 × 84',
        facts: { ...single, leafMaterial: 'glassFrameless', frameMaterial: 'none' },
      },
      {
        label: 'Hollow metal pair in hollow metal frame, leaves 36 × 84',
        facts: { ...pair, leafMaterial: 'hollowMetal', ...metalFrame },
      },
      { label: 'Storefront pair, narrow stile, leaves 36 × 84', facts: { ...pair, ...storefront } },
    ],
  },
  {
    id: 'size',
    station: 'face',
    ask: 'How large is the leaf?',
    presets: sizes.map(([leafWidthIn, leafHeightIn]) => ({
      label: `${leafWidthIn} × ${leafHeightIn}`,
      facts: { leafWidthIn, leafHeightIn },
    })),
  },
  {
    id: 'lock',
    station: 'edge',
    ask: 'What holds it shut, and what does the outside do?',
    help: 'Only what always opens from inside is offered here. A deadbolt, a padlock or a magnet is asked for apart.',
    drawing: 'edges',
    presets: [
      ...lockWithFunction('Cylindrical lever', cylindrical),
      ...lockWithFunction('Mortise lever', mortise),
      { label: 'Push bar latching at the jamb (rim)', facts: { latch: 'rimExit', ...bar } },
      { label: 'Push bar with rods at top and bottom', facts: { latch: 'verticalRods', ...bar } },
      {
        label: 'Push and pull, nothing latches or locks',
        facts: { latch: 'pushPull', existingArrangement: 'none', panicPresent: false },
      },
    ],
  },
  {
    id: 'label',
    station: 'edge',
    ask: 'What does the fire label say?',
    help: 'Hinge edge of the leaf and hinge jamb of the frame; on some leaves the top edge.',
    drawing: 'label',
    presets: [
      {
        label: 'No label on leaf or frame, and none is called for',
        facts: { fireLabel: 'none', fireRatingMin: 0 },
      },
      ...labelsAsStamped.map(([minutes, stamped]) => ({
        label: `${stamped} on leaf and frame`,
        facts: { fireLabel: 'seen', fireRatingMin: minutes, frameLabelMin: minutes } as const,
      })),
    ],
  },
];
