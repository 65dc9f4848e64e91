import { z } from 'zod';
import { zCone } from './cone.ts';
import { zCheck, zFinding } from './finding.ts';
import { zOptions } from './options.ts';
import {
  zCelsius,
  zCelsiusDelta,
  zCelsiusPerHour,
  zCount,
  zId,
  zSeconds,
  zShare,
  zSpan,
} from './scalars.ts';
import { zSchedule } from './schedule.ts';
import { zSource } from './source.ts';
import { zTraceSummary } from './trace.ts';

export const SCHEMA_VERSION = 1;

export const zCurve = z.strictObject({
  atSeconds: z.array(zSeconds),
  celsius: z.array(zCelsius),
  slopeCPerHour: z.array(zCelsiusPerHour),
  /** Actual minus planned; null where the plan says nothing, and as a whole without a schedule. */
  differenceC: z.array(zCelsiusDelta.nullable()).nullable(),
});
export type Curve = z.infer<typeof zCurve>;

export const zZone = z.strictObject({
  channel: z.string(),
  peakC: zCelsius,
  cone: zCone.nullable(),
  position: z.number().nullable(),
  /** Mean of this zone minus the main channel while heating. */
  meanDifferenceC: zCelsiusDelta,
});
export type Zone = z.infer<typeof zZone>;

export const LEG_VERDICTS = [
  'as-planned',
  'slow',
  'fast',
  'short',
  'long',
  /** A hold that stood, or ran, off its level. */
  'off-level',
  'not-reached',
  'missing',
] as const;

const zLegCourse = {
  startSeconds: zSeconds,
  endSeconds: zSeconds,
  startC: zCelsius,
  endC: zCelsius,
};

export const zAlignedLeg = z.strictObject({
  /** Index into schedule.segments; null for the final natural cooling. */
  segment: zCount.nullable(),
  kind: z.enum(['ramp', 'hold', 'cooling']),
  planned: z.strictObject({ ...zLegCourse, rateCPerHour: zCelsiusPerHour.nullable() }),
  actual: z.strictObject({ ...zLegCourse, rateCPerHour: zCelsiusPerHour }).nullable(),
  verdict: z.enum(LEG_VERDICTS),
});
export type AlignedLeg = z.infer<typeof zAlignedLeg>;

export const zAlignment = z.strictObject({
  confidence: zShare,
  legs: z.array(zAlignedLeg),
  planned: z.array(z.strictObject({ atSeconds: zSeconds, celsius: zCelsius })),
  /** The largest gap between the logged setpoint's corners and these legs; null without a setpoint. */
  setpointDisagreementSeconds: zSeconds.nullable(),
});
export type Alignment = z.infer<typeof zAlignment>;

export const zRemedy = z.strictObject({
  kind: z.enum(['longer-hold', 'higher-peak', 'slower-last-ramp', 'shorter-hold', 'lower-peak']),
  amount: z.number(),
  lowAmount: z.number(),
  /** Null where no amount within reason is certain to do it. */
  highAmount: z.number().nullable(),
  /** `min` more or less at the peak, `C` more or less at the peak, `C/h` over the last 100 °C. */
  unit: z.enum(['min', 'C', 'C/h']),
});
export type Remedy = z.infer<typeof zRemedy>;

/** An error with its 80 % range. */
const zErrorRange = { estimate: zCelsiusDelta, low: zCelsiusDelta, high: zCelsiusDelta };

export const zHeatWork = z.strictObject({
  cone: z.strictObject({
    /** The hottest cone brought fully down; null below the coolest. */
    label: zCone.nullable(),
    position: z.number().nullable(),
    lowPosition: z.number().nullable(),
    highPosition: z.number().nullable(),
    /** `at-least`: the record stops before the heat-work did, so the position is a lower bound. */
    bound: z.enum(['both-ways', 'at-least']),
  }),
  equivalentC: zCelsius.nullable(),
  byCone: z.array(
    z.strictObject({ cone: zCone, dose: z.number(), marginC: zCelsiusDelta.nullable() }),
  ),
  target: z
    .strictObject({
      cone: zCone,
      dose: z.number(),
      marginC: zCelsiusDelta.nullable(),
      verdict: z.enum(['under', 'within', 'over']),
    })
    .nullable(),
  accumulated: z.array(z.strictObject({ atSeconds: zSeconds, dose: z.number() })),
  parts: z.array(
    z.strictObject({
      kind: z.enum(['ramp', 'hold', 'cooling']),
      fromSeconds: zSeconds,
      toSeconds: zSeconds,
      doseShare: zShare,
      positions: z.number().nullable(),
    }),
  ),
  remedies: z.array(zRemedy),
  /** The couple's error that the observed cones imply (reading minus truth); null without cones. */
  coupleErrorC: z
    .strictObject({
      ...zErrorRange,
      /** What the cones of each place imply by themselves. */
      byPlace: z.array(z.strictObject({ place: z.string(), ...zErrorRange })),
      /** Whether one offset could explain every place; null where only one was seen. */
      oneOffset: z.boolean().nullable(),
    })
    .nullable(),
  assumptions: z.array(zId),
});
export type HeatWork = z.infer<typeof zHeatWork>;

export const zBand = z.strictObject({
  name: zId,
  fromC: zCelsius,
  toC: zCelsius,
  direction: z.enum(['heating', 'cooling']),
  seconds: zSeconds,
  meanCPerHour: zCelsiusPerHour,
  fastestCPerHour: zCelsiusPerHour,
});
export type Band = z.infer<typeof zBand>;

export const zLoad = z.strictObject({
  state: z.enum(['as-meant', 'short', 'beyond', 'cannot-tell']),
  refireTo: zCone.nullable(),
});
export type Load = z.infer<typeof zLoad>;

export const zOvershoot = z.strictObject({
  segment: zCount,
  overC: zCelsiusDelta,
  atSeconds: zSeconds,
  aboveForSeconds: zSeconds,
});
export type Overshoot = z.infer<typeof zOvershoot>;

/** What stays of a kiln from firing to firing, and what was in it this time. */
export const zKilnFit = z.strictObject({
  wall: z.strictObject({ memorySeconds: z.number().positive(), conductivityRise: z.number() }),
  load: z.strictObject({ share: z.number().positive(), coupling: z.number().positive() }),
  power: z.number().positive(),
  powerErrorGivenWall: z.number(),
  misfitShare: z.number(),
});

export const zElements = z.strictObject({
  limited: z.array(
    z.strictObject({
      fromSeconds: zSeconds,
      toSeconds: zSeconds,
      fromC: zCelsius,
      toC: zCelsius,
      plannedCPerHour: zCelsiusPerHour.nullable(),
      achievedCPerHour: zCelsiusPerHour,
    }),
  ),
  capability: z.array(
    z.strictObject({
      celsius: zCelsius,
      heatingCPerHour: zCelsiusPerHour,
      coolingCPerHour: zCelsiusPerHour,
      powerToLoss: z.number(),
      low: z.number(),
      high: z.number(),
    }),
  ),
  /** Where power and loss are equal, so that the kiln can go no hotter; null where not known. */
  ceilingC: zCelsius.nullable(),
  /** 80 % interval of `ceilingC`. */
  ceilingRange: z.strictObject({ lowC: zCelsius, highC: zCelsius }).nullable(),
  /** Where the ceiling is not known, what it is no lower than: the hottest the kiln got. */
  ceilingAtLeastC: zCelsius.nullable(),
  /** The hottest cone whose end point a last ramp of 60 °C/h still reaches. */
  hottestCone: zCone.nullable(),
  /** The kiln as fitted to this firing; powers in °C/s of its wall (core/thermal/README.md). */
  fit: zKilnFit.nullable(),
  /** Why `fit`, and with it the capability and the ceiling, are not known. */
  fitReason: zId.nullable(),
  /** Power over the reference firing's, with an 80 % interval. */
  relativePower: z
    .strictObject({ value: z.number(), low: z.number(), high: z.number() })
    .nullable(),
  relativePowerReason: zId.nullable(),
  /** Heat capacity of ware and shelves over that of the reference firing. */
  relativeLoad: z.number().nullable(),
});
export type Elements = z.infer<typeof zElements>;

/** One of two logs of a load, on the clock that both share. */
export const zJoinedPart = zSpan.extend({
  peakC: zCelsius,
  /** What it gave of the whole dose: of the target cone, else of the nearest. */
  doseShare: zShare,
  /** The cone scale's position that it came to alone; null below the coolest cone. */
  position: z.number().nullable(),
});

/**
 * Two logs of one load taken together: `source` is the earlier one's, and the document's clock begins
 * with it. The schedule is laid on the later one alone.
 */
export const zJoined = z.strictObject({
  /** The later log's account of reading. */
  source: zSource,
  /** From the earlier log's last reading to the later one's first, in which nobody looked. */
  gap: zSpan,
  /** When heating began again in the later log; null where it begins hot. */
  startSeconds: zSeconds.nullable(),
  /** Whether dates say how long the gap was; if not, its length on the clock is only drawn. */
  isGapKnown: z.boolean(),
  parts: z.tuple([zJoinedPart, zJoinedPart]),
});
export type Joined = z.infer<typeof zJoined>;

/** One firing's analysis. Everything that shows a firing shows this; nothing else computes. */
export const zAnalysisDocument = z.strictObject({
  schemaVersion: z.literal(SCHEMA_VERSION),
  options: zOptions,
  source: zSource,
  /** Left out where one log is all there is. */
  joined: zJoined.optional(),
  trace: zTraceSummary,
  curve: zCurve,
  zones: z.array(zZone),
  schedule: zSchedule.nullable(),
  alignment: zAlignment.nullable(),
  heatWork: zHeatWork.nullable(),
  bands: z.array(zBand),
  load: zLoad,
  overshoots: z.array(zOvershoot),
  elements: zElements.nullable(),
  findings: z.array(zFinding),
  checks: z.array(zCheck),
});
export type AnalysisDocument = z.infer<typeof zAnalysisDocument>;
