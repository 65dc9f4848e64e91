import fc from 'fast-check';
import { CONES } from '../../core/model/cone.ts';
import { LEG_VERDICTS } from '../../core/model/document.ts';
import { REPAIR_KINDS } from '../../core/model/trace.ts';
import { seconds } from '../../core/units.ts';
import {
  PLANNED,
  firingFacts,
  heatWorkAt,
  withConfidence,
  withTrace,
  type LegName,
} from './facts.ts';

/** A firing in which any leg may have gone anyhow, with any log, heat-work and confidence. */
export const anyFiring = fc
  .record({
    legs: fc.array(
      fc.option(
        fc.record({
          minutes: fc.double({ min: 1, max: 2000, noNaN: true }),
          toC: fc.integer({ min: -50, max: 1500 }),
          verdict: fc.constantFrom(...LEG_VERDICTS),
        }),
        { freq: 4 },
      ),
      { minLength: 6, maxLength: 6 },
    ),
    intervalSeconds: fc.constantFrom(30, 120, 900, 7200),
    position: fc.option(fc.double({ min: -21, max: 14, noNaN: true })),
    target: fc.option(fc.constantFrom(...CONES)),
    bound: fc.constantFrom('both-ways' as const, 'at-least' as const),
    confidence: fc.double({ min: 0, max: 1, noNaN: true }),
    offKnown: fc.boolean(),
    spans: fc.array(fc.tuple(fc.nat(90_000), fc.nat(9000)), { maxLength: 60 }),
    repairKind: fc.constantFrom(...REPAIR_KINDS),
  })
  .filter(({ legs }) => legs.some((leg) => leg !== null))
  .map(({ legs, intervalSeconds, spans, ...rest }) => {
    const names = Object.keys(PLANNED) as LegName[];
    const driven = Object.fromEntries(names.map((name, i) => [name, legs[i] ?? null]));
    const base = firingFacts(driven, { intervalSeconds });
    const holes = spans.map(([from, length]) => ({
      fromSeconds: seconds(from),
      toSeconds: seconds(from + length),
    }));
    const troubled = withTrace(base, {
      gaps: holes,
      noReadings: holes.slice(10),
      repairs: holes.map((hole) => ({ ...hole, kind: rest.repairKind, samples: 2 })),
      ...(rest.offKnown ? {} : { offSeconds: null }),
    });
    const heatWork = heatWorkAt(rest.position, rest.target, { bound: rest.bound });
    return withConfidence({ ...troubled, heatWork }, rest.confidence);
  });
