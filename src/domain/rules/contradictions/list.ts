import type { Rule } from '../rule.ts';
import { B01 } from './B-01-rating-on-a-leaf-without-labels.ts';
import { B02 } from './B-02-rating-on-wide-storefront.ts';
import { B03 } from './B-03-rating-above-what-wood-carries.ts';
import { B04 } from './B-04-rating-that-is-not-made.ts';
import { B05 } from './B-05-frame-label-below-the-door.ts';
import { B06 } from './B-06-glazed-assembly-without-listing.ts';
import { B07 } from './B-07-door-too-low-for-a-fire-barrier.ts';
import { B08 } from './B-08-door-too-low-for-an-exit-enclosure.ts';
import { B09 } from './B-09-door-too-low-for-a-corridor.ts';
import { B10 } from './B-10-door-too-low-for-a-fire-partition.ts';
import { B11 } from './B-11-door-too-low-for-a-fire-wall.ts';
import { B12 } from './B-12-horizontal-exit-too-weak.ts';
import { B13 } from './B-13-door-too-low-for-a-smoke-barrier.ts';
import { B14 } from './B-14-door-low-for-an-exterior-wall.ts';
import { B15 } from './B-15-ordinary-wall-with-a-rating.ts';
import { B16 } from './B-16-fire-wall-without-a-rating.ts';
import { B17 } from './B-17-wood-frame-rated-high.ts';
import { B18 } from './B-18-rated-without-a-frame.ts';
import { B19 } from './B-19-thin-leaf-rated-over-20.ts';
import { B20 } from './B-20-wedge-on-a-rated-door.ts';
import { B21 } from './B-21-strike-preparation-at-frameless-glass.ts';
import { B22 } from './B-22-leaf-latch-in-frameless-glass.ts';
import { B23 } from './B-23-wide-lock-in-a-narrow-stile.ts';
import { B24 } from './B-24-posts-on-a-room-door.ts';
import { B25 } from './B-25-chain-link-in-a-wall.ts';
import { B26 } from './B-26-gate-in-a-door-frame.ts';
import { B27 } from './B-27-rolling-steel-that-swings.ts';

export const contradictionsRules: readonly Rule[] = [
  B01,
  B02,
  B03,
  B04,
  B05,
  B06,
  B07,
  B08,
  B09,
  B10,
  B11,
  B12,
  B13,
  B14,
  B15,
  B16,
  B17,
  B18,
  B19,
  B20,
  B21,
  B22,
  B23,
  B24,
  B25,
  B26,
  B27,
];
