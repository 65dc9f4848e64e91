import { describe, expect, test } from 'vitest';
import { FINDING_IDS } from '../../../core/model/finding.ts';
import { canHave, heatSourceOf } from '../../../core/model/heat-source.ts';

describe('a kiln’s heat source', () => {
  test('is electric until something else is told', () => {
    expect(heatSourceOf({})).toBe('electric');
    expect(heatSourceOf({ kiln: { circuits: 3 } })).toBe('electric');
    expect(heatSourceOf({ kiln: { heat: 'fuel' } })).toBe('fuel');
  });

  test('decides what can be found in it: an electric kiln can have everything', () => {
    expect(FINDING_IDS.filter((id) => !canHave('electric', id))).toEqual([]);
  });

  test('leaves a kiln that burns fuel all that has nothing to do with wire and supply', () => {
    expect(FINDING_IDS.filter((id) => !canHave('fuel', id))).toEqual([
      'elements-weak',
      'element-lost',
      'power-stuck-on',
      'power-interrupted',
      'ceiling-near',
      'supply-varies',
    ]);
  });
});
