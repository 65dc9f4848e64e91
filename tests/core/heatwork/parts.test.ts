import { describe, expect, test } from 'vitest';
import { coneKinetics, kineticsOf } from '../../../core/cones/cone-kinetics.ts';
import { partsOf } from '../../../core/heatwork/parts.ts';
import { traceFrom } from '../../builders/trace.ts';
import { cone6, measure } from './measuring.ts';

const cones = coneKinetics('self-supporting');
const six = kineticsOf('self-supporting', '6');
const trace = traceFrom(cone6(1215, 15), { intervalSeconds: 20 });
const parts = partsOf(trace, trace.summary.legs, cones, six, (readC) => readC);

describe('the parts of the heat-work', () => {
  test('are the legs in order of time, whatever order they come in', () => {
    expect(parts.map(({ kind }) => kind)).toEqual(['ramp', 'ramp', 'hold', 'cooling']);
    const shuffled = [...trace.summary.legs].reverse();
    expect(partsOf(trace, shuffled, cones, six, (readC) => readC)).toEqual(parts);
  });

  test('have shares that add up to one where the legs leave nothing out', () => {
    expect(parts.reduce((sum, { doseShare }) => sum + doseShare, 0)).toBeCloseTo(1, 6);
  });

  test('lead from cone to cone to where the firing stands', () => {
    const placed = parts.filter(({ positions }) => positions !== null);
    const { position } = measure(cone6(1215, 15)).cone;
    // The first ramp ends at 1100 °C: the part from there on begins at its position.
    const first = measure([...cone6(1215, 15).slice(0, 2)]).cone.position!;
    const sum = placed.reduce((total, { positions }) => total + positions!, first);
    expect(sum).toBeCloseTo(position!, 2);
  });

  test('are not placed before a first cone is reached', () => {
    expect(parts[0]!.positions).toBeNull();
  });

  test('a hold of 15 min at the top gives about a third, the climb before it all but nothing', () => {
    expect(parts[0]!.doseShare).toBeLessThan(0.01);
    expect(parts[2]!.doseShare).toBeGreaterThan(0.25);
    expect(parts[2]!.doseShare).toBeLessThan(0.4);
  });
});
