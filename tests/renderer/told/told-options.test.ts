import { describe, expect, it } from 'vitest';
import { zOptions, type Options } from '../../../core/model/options.ts';
import { celsius, celsiusDelta, celsiusPerHour } from '../../../core/units.ts';
import {
  changedWitness,
  meantCone,
  toldCouple,
  toldCoupleType,
  toldKiln,
  toldWitnesses,
  withoutWitness,
} from '../../../renderer/told/told-options.ts';

const sound = (options: Options): Options => zOptions.parse(options);

const witness = { cone: '6', place: 'top', bendDegrees: 40 } as const;

describe('the couple', () => {
  it('takes class and offset with its type, and back again', () => {
    const typed = toldCoupleType({ cone: '6' }, 'K');
    const full = toldCouple(toldCouple(typed, { class: 'class-1' }), { offsetC: celsiusDelta(-3) });
    expect(sound(full)).toEqual({
      cone: '6',
      couple: { type: 'K', class: 'class-1', offsetC: -3 },
    });
    expect(toldCouple(full, { class: undefined }).couple).toEqual({ type: 'K', offsetC: -3 });
    expect(toldCoupleType(full, 'S').couple).toEqual({ type: 'S', class: 'class-1', offsetC: -3 });
    expect(toldCoupleType(full, null)).toEqual({ cone: '6' });
  });

  it('says nothing of class or offset while the type is not told', () => {
    expect(toldCouple({}, { class: 'class-2' })).toEqual({});
  });
});

describe('the kiln', () => {
  it('is told of bit by bit, and forgotten with its last bit', () => {
    const electric = toldKiln(toldKiln({}, { heat: 'electric' }), { ratedWatts: 9600 });
    expect(sound(electric).kiln).toEqual({ heat: 'electric', ratedWatts: 9600 });
    const bare = toldKiln(toldKiln(electric, { heat: undefined }), { ratedWatts: undefined });
    expect(bare).toEqual({});
  });
});

describe('witness cones', () => {
  it('come, change and go; none is the same as nothing told', () => {
    const one = toldWitnesses({}, [witness]);
    expect(sound(changedWitness(one, 0, { ...witness, bendDegrees: 90 })).observedCones).toEqual([
      { ...witness, bendDegrees: 90 },
    ]);
    const two = toldWitnesses(one, [witness, { ...witness, cone: '7' }]);
    expect(withoutWitness(two, 0).observedCones?.map(({ cone }) => cone)).toEqual(['7']);
    expect(withoutWitness(one, 0)).toEqual({});
  });
});

describe('meantCone', () => {
  it('is the one told, else the schedule’s', () => {
    const schedule = {
      name: '',
      cone: '04' as const,
      segments: [
        { rateCPerHour: celsiusPerHour(60), minutes: null, targetC: celsius(1060), holdMinutes: 0 },
      ],
    };
    expect(meantCone({ schedule })).toBe('04');
    expect(meantCone({ schedule, cone: '6' })).toBe('6');
    expect(meantCone({})).toBeNull();
  });
});
