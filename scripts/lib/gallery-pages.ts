import { createElement as h, type FunctionComponent, type ReactElement } from 'react';
import type { FactValues } from '../../src/domain/model/fields.ts';
import { elevation } from '../../src/exporting/drawing/elevation.ts';
import type { Choice } from '../../src/exporting/drawing/locks.ts';
import { planView } from '../../src/exporting/drawing/plan.ts';
import { drawingSizes } from '../../src/exporting/drawing/paper.ts';
import type { DeviceId, FailMode } from '../../src/domain/devices/devices.ts';
import { type StatusWord, statusSymbols } from '../../src/exporting/drawing/word-symbols.ts';
import { DeviceSymbol, FailModeSymbol, StatusMark } from '../../src/ui/face/Mark.tsx';
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
      fireLabel: 'seen',
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
    'Pair of aluminum',
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

const legendRow = (status: StatusWord) => h(StatusMark, { key: status, status });

function Parts() {
  const cell = (label: string, value: string, className = '') =>
    h('div', { className }, h('dt', null, label), h('dd', null, value));
  const row = (
    mark: string,
    room: string,
    device: DeviceId,
    failMode: FailMode,
    status: StatusWord,
    selected = false,
  ) =>
    h(
      'tr',
      { key: mark, ...(selected ? { 'aria-selected': true } : {}) },
      h('th', { scope: 'row', className: 'mark' }, mark),
      h('td', { 'data-head': 'Room' }, room),
      h('td', { 'data-head': 'Width', className: 'num dim' }, `3'-0"`),
      h('td', { 'data-head': 'Device' }, h(DeviceSymbol, { device })),
      h('td', { 'data-head': 'Power lost' }, h(FailModeSymbol, { failMode })),
      h('td', { 'data-head': 'Standing' }, h(StatusMark, { status })),
    );
  return h(
    'div',
    null,
    h(
      'header',
      { className: 'masthead' },
      h('a', { className: 'masthead-name', href: '#top' }, 'Latchward'),
      h(
        'ul',
        { className: 'masthead-links' },
        ...['Openings', 'Building', 'Review', 'Print'].map((word, i) =>
          h(
            'li',
            { key: word },
            h('a', { href: '#x', ...(i === 0 ? { 'aria-current': 'page' } : {}) }, word),
          ),
        ),
      ),
    ),
    h(
      'div',
      { className: 'sheet' },
      h(
        'div',
        { className: 'sheet-frame' },
        h(
          'div',
          { className: 'sheet-body stack stack-wide' },
          h(
            'div',
            { className: 'row row-baseline' },
            h('span', { className: 'mark mark-large' }, '101A'),
            h('span', { className: 'lead' }, 'Corridor to stair B, level 1'),
            h('span', { className: 'row-end' }, h(StatusMark, { status: 'needsSignOff', large: true })),
          ),
          h('div', { className: 'row' }, ...(Object.keys(statusSymbols) as StatusWord[]).map(legendRow)),
          h(
            'div',
            { className: 'tabs', role: 'tablist' },
            ...['Survey', 'Decision', 'What happens when', 'Hardware'].map((word, i) =>
              h('button', { key: word, role: 'tab', className: 'tab', 'aria-selected': i === 1 }, word),
            ),
          ),
          h(
            'div',
            { className: 'toolbar' },
            h('button', { className: 'button button-main' }, 'Add opening'),
            h('button', { className: 'button' }, 'Copy the last door'),
            h('button', { className: 'button button-quiet' }, 'Import'),
            h('button', { className: 'button button-remove' }, 'Remove opening'),
            h('button', { className: 'button', disabled: true }, 'Undo'),
          ),
          h(
            'table',
            { className: 'schedule schedule-rows-open schedule-folds' },
            h('caption', null, 'Door opening schedule'),
            h(
              'thead',
              null,
              h(
                'tr',
                null,
                ...['Mark', 'Room', 'Width', 'Locking device', 'Power lost', 'Standing'].map((word) =>
                  h(
                    'th',
                    { key: word, scope: 'col', ...(word === 'Width' ? { className: 'num' } : {}) },
                    word,
                  ),
                ),
              ),
            ),
            h(
              'tbody',
              null,
              h('tr', { className: 'group-row' }, h('th', { colSpan: 6, scope: 'rowgroup' }, 'Level 1')),
              row('101A', 'Corridor to stair B', 'exitTrim', 'safe', 'needsSignOff'),
              row('102', 'Server room', 'strikeMortise', 'secure', 'settled', true),
              row('103', 'Lobby', 'magnet', 'safe', 'provisional'),
              row('104', 'Storage', 'mechanicalLock', 'none', 'stale'),
              row('105', 'Patient unit', 'delayedMagnet', 'safe', 'refused'),
            ),
          ),
          h(
            'div',
            { className: 'columns' },
            h(
              'div',
              { className: 'stack' },
              h(
                'fieldset',
                { className: 'field' },
                h('legend', null, 'What holds it shut now?'),
                h(
                  'span',
                  { className: 'field-help' },
                  'A tall faceplate on the door edge is a mortise lock.',
                ),
                h(
                  'div',
                  { className: 'choices' },
                  ...['Bored latch', 'Mortise latch', 'Rim exit device'].map((word, i) =>
                    h(
                      'label',
                      { key: word, className: 'choice' },
                      h('input', { type: 'radio', name: 'latch', defaultChecked: i === 1 }),
                      word,
                    ),
                  ),
                ),
              ),
              h(
                'div',
                { className: 'field' },
                h('span', { className: 'field-label' }, 'Is there an exit sign over it?'),
                h(
                  'div',
                  { className: 'answer' },
                  ...['Yes', 'No', 'Not known'].map((word, i) =>
                    h('button', { key: word, 'aria-pressed': i === 0 }, word),
                  ),
                ),
              ),
              h(
                'div',
                { className: 'field' },
                h('label', { htmlFor: 'w' }, 'Leaf width'),
                h(
                  'div',
                  { className: 'with-unit' },
                  h('input', { id: 'w', className: 'input', defaultValue: '36', 'aria-invalid': true }),
                  'in',
                ),
                h('span', { className: 'field-error' }, 'Leaf width cannot be above 240 in; check the unit.'),
              ),
              h(
                'label',
                { className: 'choice' },
                h('input', { type: 'checkbox', defaultChecked: true }),
                'Fire label seen',
              ),
            ),
            h(
              'div',
              { className: 'stack' },
              h(
                'section',
                { className: 'section' },
                h('h3', null, 'Why'),
                h(
                  'p',
                  null,
                  'The stair side must open on command. ',
                  h('a', { href: '#r' }, 'R-31, IBC 1010.2.7'),
                  '.',
                ),
              ),
              h(
                'dl',
                { className: 'leaders' },
                h('div', null, h('dt', null, 'Security'), h('dd', null, '8.2')),
                h('div', null, h('dt', null, 'Installed effort'), h('dd', null, '2.5 h')),
              ),
              h(
                'div',
                { className: 'remark' },
                h('span', { className: 'lettering' }, 'Runner-up'),
                'Electric strike: the label of the frame was not seen.',
              ),
              h(
                'div',
                { className: 'remark remark-accent' },
                h('span', { className: 'lettering' }, 'Changed since sign-off'),
                'The fire rating went from 45 to 90 min.',
              ),
              h(
                'p',
                { className: 'caution' },
                'This is a working paper. The authority having jurisdiction decides.',
              ),
              h(
                'div',
                { className: 'empty' },
                h('h3', null, 'No openings yet'),
                h('p', null, 'Add the first door, or open the demonstration building.'),
                h('button', { className: 'button button-main' }, 'Add the first door'),
              ),
            ),
          ),
          h(
            'div',
            { className: 'dialog' },
            h('h2', null, 'Sign off 101A'),
            h('p', null, 'Your name and today’s date go into the review log.'),
            h(
              'div',
              { className: 'dialog-actions' },
              h('button', { className: 'button' }, 'Cancel'),
              h('button', { className: 'button button-main' }, 'Sign off'),
            ),
          ),
        ),
        h(
          'dl',
          { className: 'title-block' },
          cell('Project', 'Northgate Office Building', 'title-block-wide'),
          cell('Code basis', 'IBC 2021, NFPA 101 2021'),
          cell('Issue', 'Addendum 2, 14 March'),
          cell('Drawn by', 'R. Okafor'),
          cell('Sheet', 'D-101A', 'title-block-sheet'),
        ),
      ),
    ),
  );
}

export const pages: Record<string, FunctionComponent> = {
  symbols: () => h(Legend),
  parts: Parts,
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
