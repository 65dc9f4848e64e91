import { expect, test } from 'vitest';
import { readLog } from '../../../core/log/read-log.ts';
import { typedFile } from '../../../renderer/typed/typed-files.ts';
import { NOTHING_TYPED, typedLog, typedName } from '../../../renderer/typed/typed-draft.ts';

test('a firing is named by the hour at which it was typed, as files may be named anywhere', () => {
  const name = typedName(new Date(2026, 2, 14, 9, 5));
  expect(name).toBe('Typed in at 9h05');
  expect(name).not.toMatch(/[<>:"/\\|?*.]/);
});

test('of a table the unit is told; typed readings say it themselves', () => {
  const table = 'Time,Temp\n8:00,20\n9:00,100\n';
  expect(typedLog({ text: table, unit: 'F' })).toEqual({ text: table, decisions: { unit: 'F' } });
  expect(typedLog({ text: '8:00 68\n9:00 212', unit: 'F' })).toEqual({
    text: '8:00 68 °F\n9:00 212 °F',
    decisions: {},
  });
});

test('what is saved is read as what was opened', () => {
  const draft = { ...NOTHING_TYPED, text: '8:00 68\n11:00 1112\n17:00 2232', unit: 'F' as const };
  const file = typedFile(draft, new Date(2026, 2, 14, 18, 0));
  expect(file).toMatchObject({ fileName: 'Typed in at 18h00.txt', kind: 'text/plain' });
  const { celsius, source } = readLog(new TextEncoder().encode(file.text), file.fileName);
  expect([...celsius].map(Math.round)).toEqual([20, 600, 1222]);
  expect(source.decisions.find(({ what }) => what === 'unit')?.why).toBe('in-cell');
  expect(typedFile({ ...draft, name: 'mine.txt' }, new Date()).fileName).toBe('mine.txt');
});
