import type { AlignedLeg, Alignment } from '../../model/document.ts';
import { purposeOf } from '../../model/purpose.ts';
import type { Trace } from '../../model/trace.ts';
import { SECONDS_PER_HOUR, SECONDS_PER_MINUTE } from '../../units.ts';
import { clear, defineDetector, foundAny, notApplicable, type Draft } from '../detector.ts';
import { evidenceOf, lengthMinutes } from '../legs.ts';
import { USABLE_CONFIDENCE_PERCENT } from '../schedule-detector.ts';
import { passageThrough } from '../ware.ts';

/** Glaze crystals and matte surfaces grow here on cooling (reference notes, seen). */
const CRYSTALS = { highC: 1025, lowC: 800, keptC: 100 } as const;
/**
 * Chosen: closed kilns that cool by themselves go through at 60 to 300 °C/h (common practice: brick
 * slow, small or fibre-lined fast); beyond that a lid, a bung or a fan helped.
 */
const BY_ITSELF_C_PER_HOUR = 300;

/** A controlled fall this much faster than planned, and this much shorter, was not kept (chosen). */
const FASTER_PERCENT = 20;
const EARLY_MINUTES = 10;

/** Controlled falls that the kiln was to keep and outran. */
const outrun = ({ legs, confidence }: Alignment): Draft[] => {
  if (100 * confidence < USABLE_CONFIDENCE_PERCENT) return [];
  return legs.flatMap((leg) => {
    const fast = fasterThanPlanned(leg);
    return fast === null ? [] : [fast];
  });
};

const fasterThanPlanned = ({ segment, kind, planned, actual }: AlignedLeg): Draft | null => {
  if (segment === null || kind !== 'cooling' || actual === null) return null;
  const { rateCPerHour } = planned;
  if (rateCPerHour === null || rateCPerHour >= 0) return null;
  const fellC = actual.startC - actual.endC;
  if (fellC <= 0) return null;
  const tookMinutes = lengthMinutes(actual);
  const dueMinutes = (fellC * SECONDS_PER_HOUR) / -rateCPerHour / SECONDS_PER_MINUTE;
  const fastestCPerHour = (fellC / tookMinutes) * (SECONDS_PER_HOUR / SECONDS_PER_MINUTE);
  const fasterPercent = 100 * (dueMinutes / tookMinutes - 1);
  if (fasterPercent < FASTER_PERCENT || dueMinutes - tookMinutes < EARLY_MINUTES) return null;
  return {
    severity: 'watch',
    evidence: [evidenceOf(actual)],
    figures: { segment, fastestCPerHour, plannedCPerHour: -rateCPerHour, fasterPercent },
    thresholds: { fasterPercent: FASTER_PERCENT },
    instead: ['opened-hot', 'ended-early', 'power-interrupted'],
  };
};

/** A glaze that cooled faster than closed kilns do, through where its surface forms. */
const byItself = (samples: Trace): Draft[] | null => {
  const passage = passageThrough(samples, CRYSTALS.highC, CRYSTALS.lowC, CRYSTALS.keptC);
  if (passage === null) return null;
  const { fastestCPerHour, evidence } = passage;
  if (fastestCPerHour <= BY_ITSELF_C_PER_HOUR) return [];
  return [
    {
      severity: 'note',
      evidence: [evidence],
      figures: { fastestCPerHour },
      thresholds: { fastestCPerHour: BY_ITSELF_C_PER_HOUR },
      instead: ['opened-hot', 'quartz-fast-cooling'],
    },
  ];
};

/**
 * Did the kiln fall faster than its schedule asked, or a glaze cool faster than closed kilns do? Never
 * `act`: whether the surface suffered only the ware shows.
 */
export const coolingFast = defineDetector({
  id: 'cooling-fast',
  needs: ['samples', 'options'],
  wants: ['schedule', 'alignment', 'heatWork'],
  detect: ({ samples, options, schedule, alignment, heatWork }) => {
    const falls = alignment === null ? [] : outrun(alignment);
    if (falls.length > 0) return foundAny(falls);
    const purpose = purposeOf({ options, schedule, heatWork });
    if (purpose?.purpose === 'bisque') return clear('no-glaze');
    const own = byItself(samples);
    if (own === null) return notApplicable('stretch-not-seen');
    return own.length === 0 ? clear() : foundAny(own);
  },
});
