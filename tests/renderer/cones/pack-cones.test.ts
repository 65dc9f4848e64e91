import { describe, expect, it } from 'vitest';
import { wording } from '../../../core/wording/wording.ts';
import { packCones, seenCones } from '../../../renderer/cones/pack-cones.ts';
import { exampleDocument } from '../../fixtures/documents/load.ts';

const troubled = exampleDocument('troubled-firing');
const words = wording(troubled, 'C');
const seen = {
  ...troubled,
  options: {
    ...troubled.options,
    observedCones: [
      { cone: '6' as const, place: 'top', bendDegrees: 40 },
      { cone: '9' as const, place: '', bendDegrees: 0 },
    ],
  },
};

describe('packCones', () => {
  it('bends guide, firing and guard as their margins say', () => {
    const cones = packCones(troubled, words.heatWork);
    expect(cones.map(({ name }) => name)).toEqual(['cone 5½', 'cone 6', 'cone 7']);
    const [guide, firing, guard] = cones.map(({ predictedDegrees }) => predictedDegrees);
    // The hotter the cone, the straighter it stands.
    expect(guide).toBeGreaterThan(firing!);
    expect(firing).toBeGreaterThan(guard!);
    expect(cones.every((cone) => cone.seen.length === 0)).toBe(true);
  });

  it('draws a seen cone over its own, and over no other', () => {
    const cones = packCones(seen, words.heatWork);
    expect(cones.map((cone) => cone.seen.map(({ bendDegrees }) => bendDegrees))).toEqual([
      [],
      [40],
      [],
    ]);
  });

  it('is empty where the heat-work could not be worked out', () => {
    expect(packCones({ ...troubled, heatWork: null }, null)).toEqual([]);
  });
});

describe('seenCones', () => {
  it('lists also those outside the pack, with what the log predicts of them', () => {
    const [six, nine] = seenCones(seen);
    expect(six).toMatchObject({ name: 'cone 6', place: 'top', seenDegrees: 40 });
    expect(six?.predictedDegrees).toBe(packCones(seen, words.heatWork)[1]?.predictedDegrees);
    expect(nine).toMatchObject({ name: 'cone 9', predictedDegrees: 0 });
    const without = seenCones({ ...seen, heatWork: null });
    expect(without.map(({ predictedDegrees }) => predictedDegrees)).toEqual([null, null]);
  });
});
