import type { CouplePlan } from './couple.ts';
import type { Fault } from './faults.ts';
import type { KilnPlan } from './kiln.ts';
import type { Tuning } from './pid.ts';
import type { WareState } from './ware.ts';

/** A schedule as its JSON file holds it; rates and targets in `unit`. */
export interface ScheduleFile {
  readonly name: string;
  readonly cone?: string;
  readonly unit: 'C' | 'F';
  readonly segments: readonly ScheduleSegment[];
}

/** To a target at a rate, at full power (heat off, downwards), or in a time; then perhaps a hold. */
export interface ScheduleSegment {
  readonly ratePerHour?: number | 'full';
  readonly minutes?: number;
  readonly target: number;
  readonly holdMinutes?: number;
}

export interface ControllerPlan {
  /** Whether the setpoint's ramp is held back while the kiln is behind it by more than the band. */
  readonly waits: boolean;
  readonly waitBandC: number;
  /** The relays close once a cycle, for the share that the controller asks for. */
  readonly cycleSeconds: number;
  /** After so long the programme gives up and shuts off. */
  readonly limitMinutes?: number;
  /** Its own tuning; found from kiln and a middling load where left out. */
  readonly tuning?: Tuning;
}

export interface LoggerPlan {
  readonly intervalSeconds: number;
  /** Standard deviation of the moments of sampling, s. */
  readonly jitterSeconds: number;
  /** Standard deviation of white noise on a reading. */
  readonly noiseC: number;
  readonly rounding: Rounding | null;
}

/** Readings are rounded to whole steps of a unit. */
export interface Rounding {
  readonly unit: 'C' | 'F';
  readonly step: number;
}

export interface Setup {
  readonly seed: number;
  readonly kiln: KilnPlan;
  readonly schedule: ScheduleFile;
  readonly loadKg: number;
  readonly ware?: WareState;
  /** Free water in green ware as a share of its mass. */
  readonly dampShare?: number;
  /** 1 (usual): ware in plain view of the elements; 0.3: loosely coupled. */
  readonly coupling?: number;
  readonly roomC: number;
  /** By how much the kiln's own heat warms the room in the end. */
  readonly roomWarmsC?: number;
  /** Temperature of the whole kiln at the beginning; the room's where left out. */
  readonly startC?: number;
  readonly controller?: Partial<ControllerPlan>;
  readonly supply?: {
    /** Voltage over the rated one. */
    readonly factor?: number;
    /** Standard deviation of its slow wandering, as a share. */
    readonly wander?: number;
  };
  /** Cold resistance of the elements over that of new ones. */
  readonly elementWear?: number;
  /** The couple that the controller goes by and the log's main one. */
  readonly couple?: Partial<CouplePlan>;
  /** Further couples that the log records. */
  readonly zones?: readonly Partial<CouplePlan>[];
  readonly logger?: Partial<LoggerPlan>;
  /** The logger runs so long before the programme is started. */
  readonly idleMinutes?: number;
  readonly record?: {
    /** The logger stops when the kiln has cooled to this after the programme's end. */
    readonly untilC?: number;
    readonly atMostHours?: number;
  };
  readonly faults?: readonly Fault[];
  /** Internal step; 5 s where left out. */
  readonly stepSeconds?: number;
}

/** A stretch of the controller's programme as it really ran. */
export interface LegTruth {
  /** Index into the schedule's segments. */
  readonly segment: number;
  readonly kind: 'ramp' | 'hold';
  readonly startSeconds: number;
  /** When the controller switched to what came next (or was stopped). */
  readonly endSeconds: number;
  /** Setpoint at the start. */
  readonly startC: number;
  readonly targetC: number;
  /**
   * When the couple (without noise and rounding) first came within 1 °C of the target, from the
   * ramp's start to the end of its segment's hold; null if it never did. Null for holds.
   */
  readonly arrivalSeconds: number | null;
  /** Whether the leg ran to its own end, rather than being cut by an abort or a time limit. */
  readonly complete: boolean;
}

export interface Stretch {
  readonly fromSeconds: number;
  readonly toSeconds: number;
}

export interface FaultTruth extends Stretch {
  readonly kind: Fault['kind'];
}

export interface Truth {
  readonly programmeStartSeconds: number;
  readonly legs: readonly LegTruth[];
  readonly ended: 'complete' | 'aborted' | 'timed-out' | 'still-running';
  /** When the programme ended or was stopped; null if the record ends before. */
  readonly shutOffSeconds: number | null;
  /** When a relay was last closed: natural cooling from here on. */
  readonly lastHeatSeconds: number;
  /** Stretches of two minutes or more in which the controller asked for all there was. */
  readonly fullPower: readonly Stretch[];
  /** Time for which the setpoint's ramp was held back, s. */
  readonly waitedSeconds: number;
  readonly faults: readonly FaultTruth[];
  /** Reading less truth of the main couple, apart from lag, wander and noise. */
  readonly couple: { readonly atPeakC: number; readonly at100C: number; readonly driftC: number };
  /** Power that the elements could draw at the peak over that of new ones at the rated voltage. */
  readonly relativePower: number;
}

/** One simulated firing; every array has a row for each sample that the logger kept. */
export interface Firing {
  /** From the first sample. */
  readonly atSeconds: Float64Array;
  /** What the logger wrote down, °C; NaN where the couple gave no reading. */
  readonly readingC: Float64Array;
  /** The same for each further couple. */
  readonly zoneReadingsC: readonly Float64Array[];
  /** Mean of the ware. */
  readonly trueWareC: Float64Array;
  readonly trueUpperWareC: Float64Array;
  readonly trueLowerWareC: Float64Array;
  /** The temperature to which the main couple's place would bring a perfect sensor. */
  readonly trueSensorSpotC: Float64Array;
  /** NaN before and after the programme, and while the controller had no power. */
  readonly setpointC: Float64Array;
  readonly outputPercent: Float64Array;
  readonly truth: Truth;
}
