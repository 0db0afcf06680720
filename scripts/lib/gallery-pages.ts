import { createElement as h, type FunctionComponent, type ReactElement } from 'react';
import type { FactValues } from '../../src/domain/model/fields.ts';
import { elevation } from '../../src/exporting/drawing/elevation.ts';
import type { Choice } from '../../src/exporting/drawing/locks.ts';
import { planView } from '../../src/exporting/drawing/plan.ts';
import { drawingSizes } from '../../src/exporting/drawing/paper.ts';
import { DrawingView } from '../../src/ui/face/DrawingView.tsx';
import { Legend } from '../../src/ui/face/Legend.tsx';

type Sample = readonly [caption: string, facts: FactValues, choice?: Choice];

const usual: FactValues = {
  doorType: 'single',
  leafWidthIn: 36,
  leafHeightIn: 84,
  handing: 'LH',
  leafMaterial: 'hollowMetal',
  frameMaterial: 'hollowMetal',
  visionPanel: 'none',
  hinges: 'butt',
  latch: 'mortise',
  closing: 'selfClosing',
  readerSides: 'secure',
  wallConstruction: 'gypsum',
};
const pair: FactValues = {
  ...usual,
  doorType: 'pair',
  latch: 'verticalRods',
  panicPresent: true,
  inactiveBolts: 'rods',
  mullion: false,
};

const samples: readonly Sample[] = [
  [
    'Office',
    { ...usual, visionPanel: 'narrow', leafMaterial: 'woodSolidCore' },
    { deviceId: 'strikeMortise', failMode: 'secure', release: 'free' },
  ],
  [
    'Stair, 90 min',
    {
      ...usual,
      handing: 'RHR',
      fireRatingMin: 90,
      labelSeen: true,
      latch: 'rimExit',
      panicPresent: true,
      wallConstruction: 'masonry',
      exitSign: true,
    },
    { deviceId: 'exitTrim', failMode: 'safe', release: 'stairReentry' },
  ],
  [
    'Magnet',
    {
      ...usual,
      leafMaterial: 'aluminiumMedium',
      frameMaterial: 'aluminium',
      hinges: 'continuous',
      latch: 'pushPull',
      visionPanel: 'full',
      exitSign: true,
    },
    { deviceId: 'magnet', failMode: 'safe', release: 'sensor' },
  ],
  ['Nothing known', {}],
  [
    'Width unknown',
    { doorType: 'single', leafHeightIn: 84, handing: 'RH', leafMaterial: 'hollowMetal' },
    { deviceId: 'cylindricalLock', failMode: 'secure', release: 'free' },
  ],
  ['Pair, rods', pair, { deviceId: 'latchRetractionMotor', failMode: 'secure', release: 'free' }],
  [
    'Pair, flush bolts',
    {
      ...pair,
      latch: 'mortise',
      panicPresent: false,
      inactiveBolts: 'automaticFlush',
      coordinator: true,
      leafMaterial: 'woodMineralCore',
      fireRatingMin: 45,
      readerSides: 'both',
    },
    { deviceId: 'mortiseLock', failMode: 'secure', release: 'free' },
  ],
  [
    'Pair of aluminium',
    {
      ...pair,
      leafMaterial: 'aluminiumNarrow',
      frameMaterial: 'aluminium',
      hinges: 'pivot',
      latch: 'pushPull',
      inactiveBolts: 'none',
      wallConstruction: 'glass',
    },
    { deviceId: 'magnet', failMode: 'safe', release: 'sensor' },
  ],
  [
    'Double egress',
    {
      ...pair,
      doorType: 'doubleEgressPair',
      leafWidthIn: 44,
      visionPanel: 'narrow',
      operator: 'lowEnergy',
      readerSides: 'none',
    },
  ],
  [
    'Double acting',
    {
      ...usual,
      doorType: 'doubleActing',
      hinges: 'pivot',
      latch: 'pushPull',
      visionPanel: 'half',
      leafMaterial: 'woodHollowCore',
      frameMaterial: 'wood',
    },
    { deviceId: 'shearMagnet', failMode: 'safe', release: 'sensor' },
  ],
  [
    'Balanced',
    {
      ...usual,
      doorType: 'balanced',
      leafMaterial: 'aluminiumWide',
      frameMaterial: 'aluminium',
      hinges: 'pivot',
      latch: 'rimExit',
      panicPresent: true,
    },
    { deviceId: 'latchRetractionSolenoid', failMode: 'secure', release: 'free' },
  ],
  [
    'Delayed',
    { ...usual, latch: 'rimExit', panicPresent: true, handing: 'LHR' },
    { deviceId: 'delayedExitDevice', failMode: 'safe', release: 'delayed' },
  ],
  [
    'Glass',
    {
      ...usual,
      leafMaterial: 'glassFrameless',
      frameMaterial: 'none',
      glassRails: 'both',
      hinges: 'pivot',
      latch: 'railExit',
      visionPanel: 'full',
      closing: 'none',
    },
    { deviceId: 'glassRailExit', failMode: 'secure', release: 'free' },
  ],
  [
    'Glass, patch',
    {
      ...usual,
      leafMaterial: 'glassFrameless',
      frameMaterial: 'none',
      glassRails: 'none',
      hinges: 'pivot',
      latch: 'patch',
      visionPanel: 'full',
      closing: 'none',
    },
    { deviceId: 'glassPatchLock', failMode: 'safe', release: 'sensor' },
  ],
  [
    'Sliding by hand',
    { ...usual, doorType: 'slidingManual', leafWidthIn: 48, hinges: 'track', latch: 'hookbolt' },
    { deviceId: 'boltSolenoid', failMode: 'safe', release: 'sensor' },
  ],
  [
    'Sliding, automatic',
    {
      ...usual,
      doorType: 'slidingAutomatic',
      leafMaterial: 'aluminiumMedium',
      breakaway: true,
      operator: 'fullPower',
    },
    { deviceId: 'boltMotor', failMode: 'safe', release: 'sensor' },
  ],
  ['Folding', { ...usual, doorType: 'folding', leafWidthIn: 120, leafMaterial: 'woodHollowCore' }],
  [
    'Revolving',
    { ...usual, doorType: 'revolving', leafWidthIn: 42 },
    { deviceId: 'boltMotor', failMode: 'safe', release: 'sensor' },
  ],
  [
    'Overhead',
    { ...usual, doorType: 'overhead', leafWidthIn: 120, leafHeightIn: 120, leafMaterial: 'rollingSteel' },
    { deviceId: 'mechanicalLock', failMode: 'none', release: 'keyInside' },
  ],
  ['Grille', { ...usual, doorType: 'grille', leafWidthIn: 144, leafHeightIn: 108 }],
  [
    'Swinging gate',
    {
      ...usual,
      doorType: 'gateSwing',
      leafMaterial: 'gateFramed',
      frameMaterial: 'posts',
      leafHeightIn: 72,
      leafWidthIn: 42,
      latch: 'gateLock',
    },
    { deviceId: 'gateLock', failMode: 'secure', release: 'free' },
  ],
  [
    'Chain-link gate',
    {
      ...usual,
      doorType: 'gateSwing',
      leafMaterial: 'chainLink',
      frameMaterial: 'posts',
      leafHeightIn: 72,
      leafWidthIn: 42,
      latch: 'gateLock',
      handing: 'RH',
    },
    { deviceId: 'magnet', failMode: 'safe', release: 'sensor' },
  ],
  [
    'Sliding gate',
    { ...usual, doorType: 'gateSlide', leafMaterial: 'chainLink', leafWidthIn: 144, leafHeightIn: 72 },
    { deviceId: 'gateLock', failMode: 'secure', release: 'free' },
  ],
  ['Turnstile', { ...usual, doorType: 'turnstile', leafWidthIn: 24, leafHeightIn: 40 }],
  ['Full height', { ...usual, doorType: 'turnstileFull', leafWidthIn: 30, leafHeightIn: 84 }],
  ['Security turnstile', { ...usual, doorType: 'turnstileSecurity', leafWidthIn: 24, leafHeightIn: 42 }],
  [
    'Battery',
    { ...usual, leafMaterial: 'woodHollowCore', frameMaterial: 'wood', latch: 'bored', closing: 'none' },
    { deviceId: 'batteryLock', failMode: 'asIs', release: 'free' },
  ],
  [
    'Narrow stile',
    {
      ...usual,
      leafMaterial: 'aluminiumNarrow',
      frameMaterial: 'aluminium',
      latch: 'deadlatch',
      hinges: 'swingClear',
    },
    { deviceId: 'narrowStileLatch', failMode: 'secure', release: 'free' },
  ],
];

const grid = (children: ReactElement[], className = 'grid') => h('div', { className }, ...children);

export const pages: Record<string, FunctionComponent> = {
  symbols: () => h(Legend),
  elevations: () =>
    grid(
      samples.map(([caption, facts, choice]) =>
        h(DrawingView, { key: caption, caption, drawing: elevation(facts, choice) }),
      ),
    ),
  plans: () =>
    grid(
      samples.map(([caption, facts, choice]) =>
        h(DrawingView, { key: caption, caption, drawing: planView(facts, choice) }),
      ),
    ),
  thumbs: () =>
    grid(
      samples.map(([caption, facts, choice]) =>
        h(DrawingView, { key: caption, caption, drawing: elevation(facts, choice, drawingSizes.thumb) }),
      ),
      'grid fine',
    ),
  phone: () =>
    grid(
      samples
        .slice(0, 6)
        .map(([caption, facts, choice]) =>
          h(DrawingView, { key: caption, caption, drawing: elevation(facts, choice, drawingSizes.phone) }),
        ),
    ),
};
