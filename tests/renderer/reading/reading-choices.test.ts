import { describe, expect, it } from 'vitest';
import { zOptions } from '../../../core/model/options.ts';
import { readLog } from '../../../core/log/read-log.ts';
import {
  decided,
  DELIMITER_CHOICES,
  temperatureChoices,
  timeChoices,
  toldReading,
} from '../../../renderer/reading/reading-choices.ts';
import { exampleDocument } from '../../fixtures/documents/load.ts';

const troubled = exampleDocument('troubled-firing');

describe('toldReading', () => {
  it('takes one thing up and back, and forgets the reading with its last', () => {
    const told = toldReading(toldReading({ cone: '6' }, { unit: 'F' }), { decimalMark: ',' });
    expect(zOptions.parse(told).reading).toEqual({ unit: 'F', decimalMark: ',' });
    expect(toldReading(told, { unit: undefined }).reading).toEqual({ decimalMark: ',' });
    expect(toldReading(toldReading(told, { unit: undefined }), { decimalMark: undefined })).toEqual(
      { cone: '6' },
    );
  });

  it('is what the reader of logs goes by', () => {
    const rows = Array.from({ length: 30 }, (_, k) => `${k * 60},${100 + k},${200 + k}`);
    const bytes = new TextEncoder().encode(['s,kiln,flue', ...rows].join('\n'));
    const read = (decisions?: ReturnType<typeof toldReading>['reading']) =>
      readLog(bytes, 'log.csv', decisions);
    const names = temperatureChoices(read()).map(({ value }) => value);
    expect(names).toContain('flue');
    const flue = read(toldReading({}, { temperatureColumn: 'flue', unit: 'C' }).reading);
    expect(flue.celsius[0]).toBe(200);
  });
});

describe('the choices', () => {
  it('name the columns of the file, the time’s first', () => {
    expect(timeChoices(troubled)[0]?.value).toBe(troubled.source.time.columns[0]);
    const names = timeChoices(troubled).map(({ value }) => value);
    expect(new Set(names).size).toBe(names.length);
  });

  it('say delimiters in words', () => {
    expect(DELIMITER_CHOICES.map(({ label }) => label)).toEqual([
      'Commas',
      'Semicolons',
      'Tabs',
      'Upright bars',
      'Blanks',
    ]);
  });
});

describe('decided', () => {
  it('gives the choice, or null where the matter never came up', () => {
    expect(decided(troubled, 'day-order')).toBe('day-first');
    expect(decided(troubled, 'interval')).toBeNull();
  });
});
