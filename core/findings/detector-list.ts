import type { Detector } from './detector.ts';
import { burnoutFast } from './detectors/burnout-fast.ts';
import { ceilingNear } from './detectors/ceiling-near.ts';
import { clockJump } from './detectors/clock-jump.ts';
import { coolingDiffers } from './detectors/cooling-differs.ts';
import { coolingFast } from './detectors/cooling-fast.ts';
import { dryingFast } from './detectors/drying-fast.ts';
import { elementLost } from './detectors/element-lost.ts';
import { elementsWeak } from './detectors/elements-weak.ts';
import { endedEarly } from './detectors/ended-early.ts';
import { heavyLoad } from './detectors/heavy-load.ts';
import { holdDrift } from './detectors/hold-drift.ts';
import { holdShort } from './detectors/hold-short.ts';
import { logCoarse } from './detectors/log-coarse.ts';
import { logEndsEarly } from './detectors/log-ends-early.ts';
import { logGap } from './detectors/log-gap.ts';
import { logStartsHot } from './detectors/log-starts-hot.ts';
import { openedHot } from './detectors/opened-hot.ts';
import { overfired } from './detectors/overfired.ts';
import { overshoot } from './detectors/overshoot.ts';
import { peakNotReached } from './detectors/peak-not-reached.ts';
import { powerInterrupted } from './detectors/power-interrupted.ts';
import { powerStuckOn } from './detectors/power-stuck-on.ts';
import { quartzFastCooling } from './detectors/quartz-fast-cooling.ts';
import { quartzFastHeating } from './detectors/quartz-fast-heating.ts';
import { rampFast } from './detectors/ramp-fast.ts';
import { rampSlow } from './detectors/ramp-slow.ts';
import { scheduleSuspect } from './detectors/schedule-suspect.ts';
import { segmentMissing } from './detectors/segment-missing.ts';
import { sensorDrift } from './detectors/sensor-drift.ts';
import { sensorFlat } from './detectors/sensor-flat.ts';
import { sensorLag } from './detectors/sensor-lag.ts';
import { sensorOpen } from './detectors/sensor-open.ts';
import { sensorReversed } from './detectors/sensor-reversed.ts';
import { sensorSpikes } from './detectors/sensor-spikes.ts';
import { sensorWrongType } from './detectors/sensor-wrong-type.ts';
import { severalFirings } from './detectors/several-firings.ts';
import { underfired } from './detectors/underfired.ts';
import { wrongEndCone } from './detectors/wrong-end-cone.ts';
import { zonesApart } from './detectors/zones-apart.ts';

/** Every detector, in the order of FINDING_IDS; the checks of a document come in this order. */
export const DETECTORS: readonly Detector[] = [
  // heat-work
  underfired,
  overfired,
  wrongEndCone,
  // schedule
  rampSlow,
  rampFast,
  holdShort,
  holdDrift,
  segmentMissing,
  endedEarly,
  overshoot,
  peakNotReached,
  scheduleSuspect,
  // kiln
  elementsWeak,
  elementLost,
  powerStuckOn,
  powerInterrupted,
  heavyLoad,
  ceilingNear,
  // thermocouple
  sensorOpen,
  sensorSpikes,
  sensorFlat,
  sensorReversed,
  sensorWrongType,
  sensorLag,
  sensorDrift,
  zonesApart,
  // log
  logGap,
  logStartsHot,
  logEndsEarly,
  clockJump,
  logCoarse,
  severalFirings,
  // ware
  dryingFast,
  burnoutFast,
  quartzFastHeating,
  quartzFastCooling,
  coolingFast,
  coolingDiffers,
  openedHot,
];
