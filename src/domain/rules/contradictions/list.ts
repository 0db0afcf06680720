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
import { B28 } from './B-28-coiling-door-at-a-stair.ts';
import { B29 } from './B-29-push-bar-where-none-fits.ts';
import { B30 } from './B-30-stair-lock-without-stories.ts';
import { B31 } from './B-31-stair-of-one-story.ts';
import { B32 } from './B-32-stair-lock-nobody-can-release.ts';
import { B33 } from './B-33-stair-lock-without-fire-alarm.ts';
import { B34 } from './B-34-stair-wish-on-another-door.ts';
import { B35 } from './B-35-card-to-leave-the-stair.ts';
import { B36 } from './B-36-pair-without-its-second-leaf.ts';
import { B37 } from './B-37-second-leaf-on-a-single-door.ts';
import { B38 } from './B-38-coordinator-or-mullion-without-a-pair.ts';
import { B39 } from './B-39-mullion-behind-vertical-rods.ts';
import { B40 } from './B-40-push-bar-with-a-lever-latch.ts';
import { B41 } from './B-41-exit-device-without-a-bar.ts';
import { B42 } from './B-42-label-or-rods-without-an-exit-device.ts';
import { B43 } from './B-43-key-lock-wanted-on-a-side-door.ts';
import { B44 } from './B-44-delay-wanted-in-high-hazard.ts';
import { B45 } from './B-45-delay-wanted-in-assembly.ts';
import { B46 } from './B-46-delay-wanted-in-a-school.ts';
import { B47 } from './B-47-delay-without-sprinklers-or-detection.ts';
import { B48 } from './B-48-details-of-a-delay-nobody-wants.ts';
import { B50 } from './B-50-controlled-egress-outside-care.ts';
import { B51 } from './B-51-controlled-egress-without-a-need.ts';
import { B52 } from './B-52-clinical-need-outside-care.ts';
import { B53 } from './B-53-delayed-and-controlled-together.ts';
import { B54 } from './B-54-high-rise-of-two-stories.ts';
import { B55 } from './B-55-tall-building-said-to-be-low.ts';
import { B56 } from './B-56-voice-alarm-without-alarm.ts';
import { B57 } from './B-57-command-center-without-high-rise.ts';
import { B58 } from './B-58-release-from-a-place-that-is-not-there.ts';
import { B59 } from './B-59-single-exit-stair-in-a-high-rise.ts';
import { B60 } from './B-60-swing-operator-on-a-barrier.ts';
import { B61 } from './B-61-leaf-width-out-of-range.ts';
import { B62 } from './B-62-leaf-too-low-to-leave-by.ts';
import { B63 } from './B-63-hardware-out-of-reach.ts';
import { B64 } from './B-64-outside-door-without-an-outside.ts';
import { B65 } from './B-65-exit-for-nobody.ts';
import { B66 } from './B-66-crowd-against-the-swing.ts';
import { B67 } from './B-67-dangerous-room-that-opens-inward.ts';
import { B69 } from './B-69-nobody-inside-but-people-counted.ts';
import { B70 } from './B-70-nobody-inside-an-occupied-room.ts';
import { B71 } from './B-71-roof-door-without-the-roof.ts';
import { B72 } from './B-72-lobby-without-its-other-way-out.ts';
import { B73 } from './B-73-operator-without-power.ts';
import { B74 } from './B-74-automatic-sliding-without-operator.ts';
import { B75 } from './B-75-held-open-with-nothing-to-close.ts';
import { B76 } from './B-76-automatic-closing-with-nothing-held.ts';
import { B77 } from './B-77-hinges-on-a-sliding-door.ts';
import { B78 } from './B-78-stadium-group-indoors.ts';
import { B79 } from './B-79-double-acting-door-that-must-latch.ts';
import { B80 } from './B-80-interlock-that-is-not-there.ts';
import { B81 } from './B-81-private-terrace-too-large.ts';
import { B82 } from './B-82-pool-gate-that-is-no-gate.ts';
import { B83 } from './B-83-breakaway-or-rails-on-the-wrong-leaf.ts';
import { B84 } from './B-84-locked-both-ways-and-free-latch.ts';
import { B85 } from './B-85-a-rated-door-in-an-ordinary-wall.ts';
import { B86 } from './B-86-a-label-on-a-door-of-zero-minutes.ts';
import { B87 } from './B-87-a-push-bar-that-draws-no-latch.ts';
import { B88 } from './B-88-more-people-than-the-leaf-passes.ts';
import { B89 } from './B-89-a-release-on-alarm-without-an-alarm.ts';
import { B90 } from './B-90-a-reader-at-a-sealed-opening.ts';
import { B95 } from './B-95-the-plan-says-otherwise.ts';

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
  B28,
  B29,
  B30,
  B31,
  B32,
  B33,
  B34,
  B35,
  B36,
  B37,
  B38,
  B39,
  B40,
  B41,
  B42,
  B43,
  B44,
  B45,
  B46,
  B47,
  B48,
  B50,
  B51,
  B52,
  B53,
  B54,
  B55,
  B56,
  B57,
  B58,
  B59,
  B60,
  B61,
  B62,
  B63,
  B64,
  B65,
  B66,
  B67,
  B69,
  B70,
  B71,
  B72,
  B73,
  B74,
  B75,
  B76,
  B77,
  B78,
  B79,
  B80,
  B81,
  B82,
  B83,
  B84,
  B85,
  B86,
  B87,
  B88,
  B89,
  B90,
  B95,
];
