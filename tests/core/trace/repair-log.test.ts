import { expect, test } from 'vitest';
import { repairLog } from '../../../core/trace/repair-log.ts';
import { firing, traceFrom } from '../../builders/trace.ts';
import { logOf } from '../../builders/log.ts';

const climb = traceFrom(firing(20, { rateCPerHour: 120, toC: 1000 }), { intervalSeconds: 60 });

test('samples know the rows they came from, also newest first and with a spike', () => {
  const celsius = climb.celsius.slice();
  celsius[100]! += 90;
  const last = celsius.length - 1;
  const samples = repairLog(
    logOf({
      atSeconds: climb.atSeconds.map((_, i) => -i * 60),
      celsius: celsius.slice().reverse(),
    }),
  );
  expect(samples.row).toHaveLength(last);
  expect([samples.row[0], samples.row[99], samples.row[100]]).toEqual([
    last,
    last - 99,
    last - 101,
  ]);
  expect(samples.originStamp).toBe(-last * 60);
  expect(samples.onRepairedClock(-last * 60 + 30)).toBe(30);
  expect(samples.removed).toMatchObject([{ atSeconds: 6000, kind: 'spike' }]);
});
