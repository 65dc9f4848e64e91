import { expect, test } from 'vitest';
import {
  areLabelled,
  arrange,
  glueLabels,
  labelsOf,
} from '../../../../core/log/delimited/labels.ts';

test('lines whose cells carry their names', () => {
  expect(areLabelled(['06:30 temp=20.5 set=21', '06:31 temp=21.5 set=22'])).toBe(true);
  expect(areLabelled(['Temp: 20.5 C', 'Temp: 21.5 C'])).toBe(true);
  expect(areLabelled(['t:0,c:20', 't:1,c:21'])).toBe(true);
  expect(areLabelled(['06:30 20.5', '06:31 21.5'])).toBe(false);
  expect(areLabelled(['Serial: 12', '06:30 20.5', '06:31 21.5'])).toBe(false);
  expect(areLabelled(['2024-03-14T06:30,20', '2024-03-14T06:31,21'])).toBe(false);
});

test('names come right before their values, inside their quotes', () => {
  expect(glueLabels('Time: 12 s\tTemp = 20.5 C')).toBe('Time=12 s\tTemp=20.5 C');
  expect(glueLabels('msg="kiln reading" c=20')).toBe('"msg=kiln reading" c=20');
  expect(glueLabels('06:30:00 kiln: warm')).toBe('06:30:00 kiln: warm');
});

test('the names are those of most lines', () => {
  const cells = ['06:30', 'temp=20', 'set=21'];
  expect(labelsOf([['Kiln log'], cells, cells, ['06:30', 'set=21']])).toEqual(['', 'temp', 'set']);
  expect(labelsOf([['06:30', '20']])).toEqual([]);
});

test('a cell stands where its name does, be others missing or in another order', () => {
  const labels = ['', 'temp', 'set'];
  expect(arrange(['06:30', 'set=21', 'temp=20'], labels)).toEqual(['06:30', '20', '21']);
  expect(arrange(['06:30', 'set=21'], labels)).toEqual(['06:30', '', '21']);
  expect(arrange(['06:30', 'temp=20', 'rate=3', '7'], labels)).toEqual([
    '06:30',
    '20',
    '',
    '3',
    '7',
  ]);
  expect(arrange(['06:30', 'temp=20', 'temp=99'], labels)).toEqual(['06:30', '20', '', '99']);
});
