import { describe, expect, it } from 'vitest';
import type { Schedule } from '../../../core/model/schedule.ts';
import { celsius } from '../../../core/units.ts';
import { shapeOfFile } from '../../../core/log/rules.ts';
import { Refusal } from '../../../core/model/refusal.ts';
import { buffersOf, createAnswerer, refusedBy } from '../../../renderer/worker/answerer.ts';
import { CUT_SHORT, RUN_AGAIN, writtenRun } from '../../builders/runs.ts';
import type { AnalysisRequest, Stage } from '../../../renderer/worker/protocol.ts';

/** A climb to 1000 °C and down again, a reading a minute. */
const rows = Array.from(
  { length: 600 },
  (_, i) => `${i * 60},${20 + 980 * Math.sin((i * Math.PI) / 599)}`,
);
const text = ['seconds,temperature (°C)', ...rows, ''].join('\n');
const log = { fileName: 'a.csv', content: { blob: new Blob([text]) } };
const request = (rest: Partial<AnalysisRequest> = {}): AnalysisRequest => ({
  kind: 'analyse',
  id: 1,
  logKey: 1,
  log,
  options: {},
  ...rest,
});
const surroundings = { sha256: () => Promise.resolve('abc') };

type Answer = ReturnType<typeof createAnswerer>['answer'];

const asked = async (answer: Answer, what: AnalysisRequest) => {
  const stages: Stage[] = [];
  const kept: Blob[] = [];
  const answered = await answer(what, {
    stage: (stage) => stages.push(stage),
    kept: (blob) => kept.push(blob),
  });
  return { ...answered, stages, kept };
};

describe('the answerer', () => {
  it('reads, repairs and judges a log, and sends the columns that are drawn', async () => {
    const answered = await asked(createAnswerer(surroundings).answer, request());
    expect(answered.stages).toEqual(['fetching', 'reading', 'repairing', 'judging']);
    expect(answered.document.source).toMatchObject({ fileName: 'a.csv', sha256: 'abc' });
    expect(answered.trace?.celsius).toHaveLength(600);
    expect(answered.trace).not.toHaveProperty('smoothC');
  });

  it('does not read a log again for another question about it, nor send its columns', async () => {
    const { answer } = createAnswerer(surroundings);
    await asked(answer, request());
    const again = await asked(answer, request({ options: { cone: '06' } }));
    expect(again.stages).toEqual(['judging']);
    expect(again.trace).toBeNull();
    expect(again.document.heatWork?.target?.cone).toBe('06');
  });

  it('reads it again when it is to be read differently, or is another log', async () => {
    const { answer } = createAnswerer(surroundings);
    await asked(answer, request());
    const inFahrenheit = await asked(answer, request({ options: { reading: { unit: 'F' } } }));
    expect(inFahrenheit.trace).not.toBeNull();
    expect(inFahrenheit.document.trace.peakC).toBeCloseTo((1000 - 32) / 1.8, 0);
    const other = await asked(answer, request({ logKey: 2 }));
    expect(other.stages).toContain('reading');
  });

  it('reads bare millivolts by the couple that was told, and again when another is', async () => {
    const { answer } = createAnswerer(surroundings);
    const volts = rows.map(
      (_, i) => `${i * 60},${(40 * Math.sin((i * Math.PI) / 599)).toFixed(3)}`,
    );
    const blob = new Blob([
      ['seconds,couple (mV),cold junction (°C)', ...volts.map((v) => `${v},20`)].join('\n'),
    ]);
    const by = (type: 'K' | 'N') =>
      request({ log: { fileName: 'v.csv', content: { blob } }, options: { couple: { type } } });
    const asK = await asked(answer, by('K'));
    const asN = await asked(answer, by('N'));
    // IEC 60584-1: 40.8 mV is 987 °C of type K; a couple of type N gives 36.3 mV at 1000 °C.
    expect(asK.document.trace.peakC).toBeGreaterThan(960);
    expect(asK.document.trace.peakC).toBeLessThan(1010);
    expect(asN.document.trace.peakC).toBeGreaterThan(1080);
    expect(asN.trace).not.toBeNull();
  });

  it('takes the log of a second run with it, and sends what is drawn whenever that changes', async () => {
    const { answer } = createAnswerer(surroundings);
    const dated = (fileName: string, points: typeof CUT_SHORT, day: number) => ({
      ...{ fileName, key: day },
      blob: new Blob([writtenRun(points, day)]),
    });
    const first = dated('first.csv', CUT_SHORT, 1);
    const of = (rest: Partial<AnalysisRequest>) =>
      request({ log: { fileName: first.fileName, content: { blob: first.blob } }, ...rest });
    const joined = dated('second.csv', RUN_AGAIN, 2);
    const alone = await asked(answer, of({}));
    expect(alone.document.joined).toBeUndefined();
    const both = await asked(answer, of({ joined }));
    expect(both.document.joined?.source.fileName).toBe('second.csv');
    expect(both.trace!.celsius.length).toBeGreaterThan(alone.trace!.celsius.length);
    expect((await asked(answer, of({ joined, options: { cone: '04' } }))).trace).toBeNull();
    const parted = await asked(answer, of({}));
    expect(parted.trace!.celsius).toHaveLength(alone.trace!.celsius.length);
    const empty = { ...joined, key: 3, blob: new Blob(['nothing here']) };
    await expect(asked(answer, of({ joined: empty }))).rejects.toThrow('second.csv: ');
  });

  it('keeps its own columns when those it sent have been taken away', async () => {
    const { answer } = createAnswerer(surroundings);
    const { trace } = await asked(answer, request());
    structuredClone(trace, { transfer: buffersOf(trace!) });
    expect(trace!.celsius).toHaveLength(0);
    const again = await asked(answer, request({ options: { cone: '06' } }));
    expect(again.document.trace.samples).toBe(600);
  });

  it('gives back a blob of bytes that it was handed, and reads a blob as it reads bytes', async () => {
    const bytes = new TextEncoder().encode(text);
    const { answer } = createAnswerer(surroundings);
    const fromBytes = await asked(answer, request({ log: { ...log, content: { bytes } } }));
    expect(await fromBytes.kept[0]!.text()).toBe(text);
    const fromBlob = await asked(createAnswerer(surroundings).answer, request());
    expect(fromBlob.kept).toEqual([]);
    expect(fromBlob.document).toEqual(fromBytes.document);
  });

  it('says no for a log without readings, and answers the next one', async () => {
    const { answer } = createAnswerer(surroundings);
    const bad = { ...log, content: { blob: new Blob(['time,temp\n']) } };
    await expect(asked(answer, request({ log: bad }))).rejects.toThrow(Refusal);
    expect((await asked(answer, request({ logKey: 3 }))).document.trace.samples).toBe(600);
  });
});

describe('a log of two firings', () => {
  const two = [
    rows,
    rows.map((row) => `${Number(row.split(',')[0]) + 60_000},${row.split(',')[1]!}`),
  ];
  const both = ['seconds,temperature (°C)', ...two.flat(), ''].join('\n');
  const of = (rest: Partial<AnalysisRequest>) =>
    request({ log: { fileName: 'two.csv', content: { blob: new Blob([both]) } }, ...rest });

  it('is read once for whichever of them is judged, and shows which lines are the other’s', async () => {
    const { answer } = createAnswerer(surroundings);
    const first = await asked(answer, of({ wantsReading: true }));
    expect(first.document.source.firings?.map(({ chosen }) => chosen)).toEqual([false, true]);
    const fates = (reading: typeof first.reading) =>
      [1, -1].map((at) => reading!.lines.at(at)!.fate.kind);
    expect(fates(first.reading)).toEqual(['other-firing', 'kept']);
    const again = await asked(answer, of({ options: { reading: { firing: 1 } } }));
    expect(again.stages).toEqual(['judging']);
    expect(again.document.source.firings?.map(({ chosen }) => chosen)).toEqual([true, false]);
    expect(fates(again.reading)).toEqual(['kept', 'other-firing']);
    expect(again.trace?.celsius).toHaveLength(600);
    await expect(asked(answer, of({ options: { reading: { firing: 3 } } }))).rejects.toThrow(
      'there is no firing 3',
    );
  });
});

describe('how a schedule lies on the log', () => {
  const climbTo = (targetC: number): Schedule => ({
    ...{ name: String(targetC), cone: null },
    segments: [
      { rateCPerHour: null, minutes: 300, targetC: celsius(targetC), holdMinutes: 0 },
      { rateCPerHour: null, minutes: 300, targetC: celsius(20), holdMinutes: 0 },
    ],
  });
  const fitOf = (logKey: number, schedule: Schedule) =>
    ({ kind: 'fit', id: 1, logKey, schedule }) as const;

  it('is the confidence with which the analysis itself lays it', async () => {
    const { answer, fit } = createAnswerer(surroundings);
    for (const schedule of [climbTo(1000), climbTo(600)]) {
      const { document } = await asked(answer, request({ options: { schedule } }));
      expect(document.alignment?.confidence).toBeGreaterThan(0);
      expect(fit(fitOf(1, schedule))).toBe(document.alignment?.confidence);
    }
  });

  it('is not told of a log that was not the last', async () => {
    const { answer, fit } = createAnswerer(surroundings);
    expect(fit(fitOf(1, climbTo(1000)))).toBeNull();
    await asked(answer, request({ logKey: 2 }));
    expect(fit(fitOf(1, climbTo(1000)))).toBeNull();
  });
});

describe('the lines of a log', () => {
  it('come along where they are wanted, and once', async () => {
    const { answer } = createAnswerer(surroundings);
    expect((await asked(answer, request())).reading).toBeUndefined();
    const wanted = await asked(answer, request({ wantsReading: true }));
    expect(wanted.reading?.lineCount).toBe(601);
    expect(wanted.reading?.lines[1]?.fate).toEqual({ kind: 'kept', atSeconds: 0, celsius: 20 });
    const again = await asked(answer, request({ wantsReading: true, options: { cone: '6' } }));
    expect(again.stages).toEqual(['judging']);
    expect(again.reading).toBeUndefined();
  });

  it('come by themselves where something about them is a guess', async () => {
    const unsure = ['when,a,b', ...rows.map((row) => `${row},${row.split(',')[1]}`)].join('\n');
    const { answer } = createAnswerer(surroundings);
    const { reading, document } = await asked(
      answer,
      request({ log: { ...log, content: { blob: new Blob([unsure]) } } }),
    );
    expect(document.source.decisions.some(({ certainty }) => certainty < 0.6)).toBe(true);
    expect(reading?.columns.map(({ name }) => name)).toEqual(['when', 'a', 'b']);
  });

  it('come with a refusal of the log', async () => {
    const { answer } = createAnswerer(surroundings);
    const bad = { ...log, content: { blob: new Blob(['time,temp\n']) } };
    const cause: unknown = await asked(answer, request({ log: bad })).catch((it: unknown) => it);
    expect(refusedBy(cause)).toMatchObject({ code: 'header-only', reading: { lineCount: 1 } });
  });
});

describe('a rule for a shape of file', () => {
  const bytes = new TextEncoder().encode(text);
  const rule = { name: 'x', shape: shapeOfFile(bytes), decisions: { unit: 'F' as const } };

  it('is used where nothing is told, and said', async () => {
    const { answer } = createAnswerer(surroundings);
    const byRule = await asked(answer, request({ rules: [rule] }));
    expect(byRule.rule).toEqual(rule);
    expect(byRule.document.options.reading).toEqual({ unit: 'F' });
    expect(byRule.document.trace.peakC).toBeCloseTo((1000 - 32) / 1.8, 0);
    // The page then tells what the rule says, for which nothing is read again.
    const again = await asked(answer, request({ options: { reading: { unit: 'F' } } }));
    expect(again.stages).toEqual(['judging']);
  });

  it('gives way to what is told, and to another shape', async () => {
    const told = { options: { reading: { unit: 'K' as const } }, rules: [rule] };
    const asTold = await asked(createAnswerer(surroundings).answer, request(told));
    expect(asTold.rule).toBeUndefined();
    expect(asTold.shape).toBe(rule.shape);
    const other = { rules: [{ ...rule, shape: 'another' }] };
    const byItself = await asked(createAnswerer(surroundings).answer, request(other));
    expect(byItself.rule).toBeUndefined();
    expect(byItself.document.trace.peakC).toBeCloseTo(1000, 0);
  });

  it('that a log cannot be read by is left out', async () => {
    const rules = [{ ...rule, decisions: { temperatureColumn: 'no such column' } }];
    const { rule: used, document } = await asked(
      createAnswerer(surroundings).answer,
      request({ rules }),
    );
    expect(used).toBeUndefined();
    expect(document.options.reading).toBeUndefined();
  });
});

describe('what is told when there is no answer', () => {
  it('is the refusal itself, or for anything else a fault of the program', () => {
    const refusal = new Refusal('no-time', 'no column looks like times', 3);
    expect(refusedBy(refusal)).toEqual({
      code: 'no-time',
      message: 'no column looks like times',
      line: 3,
    });
    const fault = refusedBy(new TypeError('x is not a function'));
    expect(fault).toMatchObject({ code: 'internal', line: null });
    expect(fault.message).not.toContain('function');
  });
});
