import type { RuleCase } from '../rule.ts';
import { B01Cases } from './B-01-rating-on-a-leaf-without-labels.cases.ts';
import { B02Cases } from './B-02-rating-on-wide-storefront.cases.ts';
import { B03Cases } from './B-03-rating-above-what-wood-carries.cases.ts';
import { B04Cases } from './B-04-rating-that-is-not-made.cases.ts';
import { B05Cases } from './B-05-frame-label-below-the-door.cases.ts';
import { B06Cases } from './B-06-glazed-assembly-without-listing.cases.ts';
import { B07Cases } from './B-07-door-too-low-for-a-fire-barrier.cases.ts';
import { B08Cases } from './B-08-door-too-low-for-an-exit-enclosure.cases.ts';
import { B09Cases } from './B-09-door-too-low-for-a-corridor.cases.ts';
import { B10Cases } from './B-10-door-too-low-for-a-fire-partition.cases.ts';
import { B11Cases } from './B-11-door-too-low-for-a-fire-wall.cases.ts';
import { B12Cases } from './B-12-horizontal-exit-too-weak.cases.ts';
import { B13Cases } from './B-13-door-too-low-for-a-smoke-barrier.cases.ts';
import { B14Cases } from './B-14-door-low-for-an-exterior-wall.cases.ts';
import { B15Cases } from './B-15-ordinary-wall-with-a-rating.cases.ts';
import { B16Cases } from './B-16-fire-wall-without-a-rating.cases.ts';
import { B17Cases } from './B-17-wood-frame-rated-high.cases.ts';
import { B18Cases } from './B-18-rated-without-a-frame.cases.ts';
import { B19Cases } from './B-19-thin-leaf-rated-over-20.cases.ts';
import { B20Cases } from './B-20-wedge-on-a-rated-door.cases.ts';
import { B21Cases } from './B-21-strike-preparation-at-frameless-glass.cases.ts';
import { B22Cases } from './B-22-leaf-latch-in-frameless-glass.cases.ts';
import { B23Cases } from './B-23-wide-lock-in-a-narrow-stile.cases.ts';
import { B24Cases } from './B-24-posts-on-a-room-door.cases.ts';
import { B25Cases } from './B-25-chain-link-in-a-wall.cases.ts';
import { B26Cases } from './B-26-gate-in-a-door-frame.cases.ts';
import { B27Cases } from './B-27-rolling-steel-that-swings.cases.ts';
import { B28Cases } from './B-28-coiling-door-at-a-stair.cases.ts';
import { B29Cases } from './B-29-push-bar-where-none-fits.cases.ts';
import { B30Cases } from './B-30-stair-lock-without-stories.cases.ts';
import { B31Cases } from './B-31-stair-of-one-story.cases.ts';
import { B32Cases } from './B-32-stair-lock-nobody-can-release.cases.ts';
import { B33Cases } from './B-33-stair-lock-without-fire-alarm.cases.ts';
import { B34Cases } from './B-34-stair-wish-on-another-door.cases.ts';
import { B35Cases } from './B-35-card-to-leave-the-stair.cases.ts';
import { B36Cases } from './B-36-pair-without-its-second-leaf.cases.ts';
import { B37Cases } from './B-37-second-leaf-on-a-single-door.cases.ts';
import { B38Cases } from './B-38-coordinator-or-mullion-without-a-pair.cases.ts';
import { B39Cases } from './B-39-mullion-behind-vertical-rods.cases.ts';
import { B40Cases } from './B-40-push-bar-with-a-lever-latch.cases.ts';
import { B41Cases } from './B-41-exit-device-without-a-bar.cases.ts';
import { B42Cases } from './B-42-label-or-rods-without-an-exit-device.cases.ts';
import { B43Cases } from './B-43-key-lock-wanted-on-a-side-door.cases.ts';
import { B44Cases } from './B-44-delay-wanted-in-high-hazard.cases.ts';
import { B45Cases } from './B-45-delay-wanted-in-assembly.cases.ts';
import { B46Cases } from './B-46-delay-wanted-in-a-school.cases.ts';
import { B47Cases } from './B-47-delay-without-sprinklers-or-detection.cases.ts';
import { B48Cases } from './B-48-details-of-a-delay-nobody-wants.cases.ts';
import { B50Cases } from './B-50-controlled-egress-outside-care.cases.ts';
import { B51Cases } from './B-51-controlled-egress-without-a-need.cases.ts';
import { B52Cases } from './B-52-clinical-need-outside-care.cases.ts';
import { B53Cases } from './B-53-delayed-and-controlled-together.cases.ts';
import { B54Cases } from './B-54-high-rise-of-two-stories.cases.ts';
import { B55Cases } from './B-55-tall-building-said-to-be-low.cases.ts';
import { B56Cases } from './B-56-voice-alarm-without-alarm.cases.ts';
import { B57Cases } from './B-57-command-center-without-high-rise.cases.ts';
import { B58Cases } from './B-58-release-from-a-place-that-is-not-there.cases.ts';
import { B59Cases } from './B-59-single-exit-stair-in-a-high-rise.cases.ts';
import { B60Cases } from './B-60-swing-operator-on-a-barrier.cases.ts';
import { B61Cases } from './B-61-leaf-width-out-of-range.cases.ts';
import { B62Cases } from './B-62-leaf-too-low-to-leave-by.cases.ts';
import { B63Cases } from './B-63-hardware-out-of-reach.cases.ts';
import { B64Cases } from './B-64-outside-door-without-an-outside.cases.ts';
import { B65Cases } from './B-65-exit-for-nobody.cases.ts';
import { B66Cases } from './B-66-crowd-against-the-swing.cases.ts';
import { B67Cases } from './B-67-dangerous-room-that-opens-inward.cases.ts';
import { B69Cases } from './B-69-nobody-inside-but-people-counted.cases.ts';
import { B70Cases } from './B-70-nobody-inside-an-occupied-room.cases.ts';
import { B71Cases } from './B-71-roof-door-without-the-roof.cases.ts';
import { B72Cases } from './B-72-lobby-without-its-other-way-out.cases.ts';
import { B73Cases } from './B-73-operator-without-power.cases.ts';
import { B74Cases } from './B-74-automatic-sliding-without-operator.cases.ts';
import { B75Cases } from './B-75-held-open-with-nothing-to-close.cases.ts';
import { B76Cases } from './B-76-automatic-closing-with-nothing-held.cases.ts';
import { B77Cases } from './B-77-hinges-on-a-sliding-door.cases.ts';
import { B78Cases } from './B-78-stadium-group-indoors.cases.ts';
import { B79Cases } from './B-79-double-acting-door-that-must-latch.cases.ts';
import { B80Cases } from './B-80-interlock-that-is-not-there.cases.ts';
import { B81Cases } from './B-81-private-terrace-too-large.cases.ts';
import { B82Cases } from './B-82-pool-gate-that-is-no-gate.cases.ts';
import { B83Cases } from './B-83-breakaway-or-rails-on-the-wrong-leaf.cases.ts';
import { B84Cases } from './B-84-locked-both-ways-and-free-latch.cases.ts';
import { B85Cases } from './B-85-a-rated-door-in-an-ordinary-wall.cases.ts';
import { B86Cases } from './B-86-a-label-on-a-door-of-zero-minutes.cases.ts';
import { B87Cases } from './B-87-a-push-bar-that-draws-no-latch.cases.ts';
import { B88Cases } from './B-88-more-people-than-the-leaf-passes.cases.ts';
import { B89Cases } from './B-89-a-release-on-alarm-without-an-alarm.cases.ts';
import { B90Cases } from './B-90-a-reader-at-a-sealed-opening.cases.ts';
import { B95Cases } from './B-95-the-plan-says-otherwise.cases.ts';

export const contradictionsCases: Readonly<Record<string, readonly RuleCase[]>> = {
  'B-01': B01Cases,
  'B-02': B02Cases,
  'B-03': B03Cases,
  'B-04': B04Cases,
  'B-05': B05Cases,
  'B-06': B06Cases,
  'B-07': B07Cases,
  'B-08': B08Cases,
  'B-09': B09Cases,
  'B-10': B10Cases,
  'B-11': B11Cases,
  'B-12': B12Cases,
  'B-13': B13Cases,
  'B-14': B14Cases,
  'B-15': B15Cases,
  'B-16': B16Cases,
  'B-17': B17Cases,
  'B-18': B18Cases,
  'B-19': B19Cases,
  'B-20': B20Cases,
  'B-21': B21Cases,
  'B-22': B22Cases,
  'B-23': B23Cases,
  'B-24': B24Cases,
  'B-25': B25Cases,
  'B-26': B26Cases,
  'B-27': B27Cases,
  'B-28': B28Cases,
  'B-29': B29Cases,
  'B-30': B30Cases,
  'B-31': B31Cases,
  'B-32': B32Cases,
  'B-33': B33Cases,
  'B-34': B34Cases,
  'B-35': B35Cases,
  'B-36': B36Cases,
  'B-37': B37Cases,
  'B-38': B38Cases,
  'B-39': B39Cases,
  'B-40': B40Cases,
  'B-41': B41Cases,
  'B-42': B42Cases,
  'B-43': B43Cases,
  'B-44': B44Cases,
  'B-45': B45Cases,
  'B-46': B46Cases,
  'B-47': B47Cases,
  'B-48': B48Cases,
  'B-50': B50Cases,
  'B-51': B51Cases,
  'B-52': B52Cases,
  'B-53': B53Cases,
  'B-54': B54Cases,
  'B-55': B55Cases,
  'B-56': B56Cases,
  'B-57': B57Cases,
  'B-58': B58Cases,
  'B-59': B59Cases,
  'B-60': B60Cases,
  'B-61': B61Cases,
  'B-62': B62Cases,
  'B-63': B63Cases,
  'B-64': B64Cases,
  'B-65': B65Cases,
  'B-66': B66Cases,
  'B-67': B67Cases,
  'B-69': B69Cases,
  'B-70': B70Cases,
  'B-71': B71Cases,
  'B-72': B72Cases,
  'B-73': B73Cases,
  'B-74': B74Cases,
  'B-75': B75Cases,
  'B-76': B76Cases,
  'B-77': B77Cases,
  'B-78': B78Cases,
  'B-79': B79Cases,
  'B-80': B80Cases,
  'B-81': B81Cases,
  'B-82': B82Cases,
  'B-83': B83Cases,
  'B-84': B84Cases,
  'B-85': B85Cases,
  'B-86': B86Cases,
  'B-87': B87Cases,
  'B-88': B88Cases,
  'B-89': B89Cases,
  'B-90': B90Cases,
  'B-95': B95Cases,
};
