import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { bendDegrees } from '../../core/report/chart/bend.ts';
import type { AnalysisDocument } from '../../core/model/document.ts';
import type { Words } from '../../core/wording/wording.ts';
import { allSaid, plain, said } from './sheet.ts';
import { readout } from './window.ts';

/** A number of the readout, which writes a true minus. */
const numberIn = (text = ''): number => Number.parseFloat(text.replace('−', '-'));

/** The plan at a reading, straight between its corners; null outside of it. */
const plannedAt = ({ alignment, trace }: AnalysisDocument, at: number): number | null => {
  const corners = alignment?.planned ?? [];
  const end = corners.at(-1);
  // The reading nearest to the plan's end may lie just past it.
  const isEnd = end !== undefined && Math.abs(at - end.atSeconds) < trace.medianIntervalSeconds / 2;
  if (isEnd) return end.celsius;
  const next = corners.findIndex(({ atSeconds }) => atSeconds >= at);
  const [a, b] = [corners[next - 1], corners[next]];
  if (!a || !b) return null;
  const share = (at - a.atSeconds) / (b.atSeconds - a.atSeconds);
  return a.celsius + share * (b.celsius - a.celsius);
};

/** The crosshair put on a share of the curve's width reads what the record and the plan say there. */
const expectReadout = async (page: Page, firing: AnalysisDocument, share: number) => {
  const surface = page.locator('#crosshair');
  const box = (await surface.boundingBox())!;
  await page.mouse.move(box.x + box.width * share, box.y + 60);
  const at = Number(await surface.getAttribute('aria-valuenow'));
  const read = await readout(page);
  expect(Object.keys(read)).toEqual(['time', 'kiln', 'planned', 'difference', 'slope']);
  const { atSeconds, celsius } = firing.curve;
  const after = Math.max(
    1,
    atSeconds.findIndex((moment) => moment >= at),
  );
  // The document's curve is thinned: between two of its points the reading lies within reach of both.
  const [low, high] = [celsius[after - 1]!, celsius[after]!].sort((a, b) => a - b);
  const kiln = numberIn(read['kiln']);
  expect(kiln).toBeGreaterThan(low! - 6);
  expect(kiln).toBeLessThan(high! + 6);
  const planned = plannedAt(firing, at);
  if (planned === null) {
    expect([read['planned'], read['difference']]).toEqual(['–', '–']);
    return;
  }
  expect(Math.abs(numberIn(read['planned']) - planned)).toBeLessThanOrEqual(2);
  expect(numberIn(read['difference'])).toBeCloseTo(kiln - numberIn(read['planned']), -0.5);
  expect(read['slope']).toMatch(/^[+−]?[\d. ]+ °C\/h$/);
  expect(await surface.getAttribute('aria-valuetext')).toContain(
    `difference ${read['difference']}`,
  );
};

/** Curve, lanes, ribbon and letters. */
export const expectCurve = async (page: Page, firing: AnalysisDocument, words: Words) => {
  const lanes = page.locator('.lane');
  expect(await allSaid(lanes.locator('.lane-name'))).toEqual([
    ...['°C', 'kiln minus plan, °C', 'slope, °C/h'],
  ]);
  const clocks = await lanes
    .locator('.u-over')
    .evaluateAll((areas) =>
      areas.map((area) => [area.getBoundingClientRect().left, area.getBoundingClientRect().right]),
    );
  expect(clocks).toHaveLength(3);
  for (const clock of clocks) expect(clock).toEqual(clocks[0]);
  const isInked = await lanes.locator('canvas').evaluateAll((canvases) =>
    canvases.map((canvas) => {
      const it = canvas as HTMLCanvasElement;
      const { data } = it.getContext('2d')!.getImageData(0, 0, it.width, it.height);
      return data.some((value) => value > 0);
    }),
  );
  expect(isInked).toEqual([true, true, true]);

  const legs = firing.alignment?.legs ?? [];
  const rows = page.locator('.ribbon-row');
  expect(await allSaid(rows.locator('.ribbon-name'))).toEqual(['plan', 'kiln']);
  // A leg that takes no time, as a heat-off that ends the plan, has no room on a clock.
  const lasting = (side: 'planned' | 'actual'): number =>
    legs.filter((leg) => {
      const course = leg[side];
      return course !== null && course.endSeconds > course.startSeconds;
    }).length;
  expect(await rows.first().locator('.leg').count()).toBe(lasting('planned'));
  expect(await rows.last().locator('.leg').count()).toBe(lasting('actual'));

  const letters = await page
    .locator('.letter-mark')
    .evaluateAll((marks) => marks.map((mark) => mark.getAttribute('aria-label') ?? ''));
  expect(letters.map(plain)).toEqual(
    words.findings.map(({ letter, severityWord, title }) =>
      plain(`${letter}, ${severityWord}: ${title.text}`),
    ),
  );
  for (const share of [0.2, 0.45, 0.7]) await expectReadout(page, firing, share);
};

/** Each finding's note: what was measured, against what, what else, what to do, the caution. */
export const expectNotes = async (page: Page, words: Words) => {
  expect(await allSaid(page.locator('.note-title'))).toEqual(
    words.findings.map(({ title }) => plain(title.text)),
  );
  for (const finding of words.findings) {
    const head = page.locator(`#finding-${finding.letter}`);
    expect(plain(await head.innerText())).toContain(finding.severityWord);
    await head.click();
    const body = await said(page, '.note-open .note-body');
    expect(body).toContain(plain(finding.why));
    expect(body).toContain(plain(finding.remedy));
    if (finding.caution !== null) expect(body).toContain(`Caution. ${plain(finding.caution)}`);
    for (const { cause, tell } of finding.couldBe) {
      expect(body).toContain(`${plain(cause)} To tell: ${plain(tell)}`);
    }
    const measured = page.locator('.note-open .note-table tbody tr');
    expect(await measured.count()).toBe(finding.measured.length);
    for (const [row, { label, value, limit }] of finding.measured.entries()) {
      expect(await allSaid(measured.nth(row).locator('th, td'))).toEqual(
        [label, value, limit ?? ''].map(plain),
      );
    }
    expect(await page.locator('.note-dim').count()).toBe(words.findings.length - 1);
  }
  await page.keyboard.press('Escape');
  expect(await page.locator('.note-open').count()).toBe(0);
};

/** The cone pack bent as predicted, dose against time, the parts, and what would have done it. */
export const expectCones = async (page: Page, firing: AnalysisDocument, words: Words) => {
  const panel = page.locator('#heat-work');
  const text = plain(await panel.innerText());
  for (const remedy of words.heatWork?.remedies ?? []) expect(text).toContain(plain(remedy));
  expect(text).toContain(plain(words.load.advice));
  if (firing.heatWork === null || words.heatWork === null) {
    expect(await panel.locator('.cones-pack').count()).toBe(0);
    return;
  }
  const { byCone, parts } = firing.heatWork;
  const bends = words.heatWork.pack.flatMap(({ cone }) => {
    const got = byCone.find((one) => one.cone === cone);
    return got ? [bendDegrees(got.dose, got.marginC)] : [];
  });
  const pack = panel.locator('.cones-pack');
  // The further a cone is bent, the less it stands above the shelf.
  const heights = await pack
    .locator('.cone-body')
    .evaluateAll((cones) => cones.map((cone) => -(cone as SVGGraphicsElement).getBBox().y));
  expect(heights).toHaveLength(bends.length);
  for (const [i, bend] of bends.entries()) {
    for (const [j, other] of bends.entries()) {
      if (bend > other + 1) expect(heights[i]).toBeLessThan(heights[j]!);
    }
  }
  const title = plain((await pack.locator('svg > title').textContent()) ?? '');
  for (const { name, stands } of words.heatWork.pack) {
    expect(title).toContain(`${name} predicted ${stands}`);
  }
  expect(await panel.locator('.cones-dose .dose-line').getAttribute('d')).toMatch(/^M[\d.]/);
  expect(await panel.locator('.cones-dose .dose-down').count()).toBe(1);
  const rows = panel.locator('.cones-parts tbody tr');
  expect(await rows.count()).toBe(words.heatWork.parts.length);
  expect(words.heatWork.parts.length).toBeLessThanOrEqual(parts.length);
  for (const [row, { name, share, added }] of words.heatWork.parts.entries()) {
    const cells = await allSaid(rows.nth(row).locator('th, td'));
    expect(cells.filter((cell) => cell !== '')).toEqual([name, share, added].map(plain));
  }
};

/** Power and loss: what the kiln can do or why it cannot be told, drawn and as tables. */
export const expectPower = async (page: Page, words: Words) => {
  const panel = page.locator('#power');
  const { answers, fullPower, capability } = words.power;
  const text = plain(await panel.innerText());
  expect(answers.length).toBeGreaterThan(0);
  for (const answer of answers) expect(text).toContain(plain(answer));
  expect(await panel.locator('.power-line').count()).toBe(capability.length < 2 ? 0 : 3);
  const cells = await allSaid(panel.locator('tbody :is(th, td)'));
  expect(cells).toEqual(
    [
      ...fullPower.flatMap(({ stretch, lasted, made, planned }) => [
        stretch,
        lasted,
        made,
        planned,
      ]),
      ...capability.flatMap(({ at, heating, cooling, powerToLoss }) => [
        ...[at, heating, cooling, powerToLoss],
      ]),
    ].map(plain),
  );
};

/** The legs, planned beside driven, and the slopes by stretch on the way up and down. */
export const expectLegs = async (page: Page, words: Words) => {
  const rows = page.locator('.legs-table tbody tr');
  expect(await rows.count()).toBe(words.legs.rows.length);
  for (const [row, leg] of words.legs.rows.entries()) {
    const cells = ({ planned, actual }: typeof leg) =>
      [planned, actual].flatMap((side) =>
        side === null ? Array<string>(4).fill('–') : [side.rate, side.to, side.lasted, side.ended],
      );
    expect(await allSaid(rows.nth(row).locator('th, td'))).toEqual(
      [`${leg.number}`, leg.name, ...cells(leg), leg.verdict].map(plain),
    );
  }
  const slopes = await allSaid(page.locator('.slopes-table tbody tr'));
  for (const { name, stretch, lasted, mean, fastest } of words.bands) {
    const row = plain([name, stretch, lasted, mean, fastest].join(' '));
    expect(slopes.map((text) => text.toLowerCase())).toContain(row.toLowerCase());
  }
};

/** How the log was read: every decision, each rejected row, every check. */
export const expectReading = async (page: Page, words: Words) => {
  const panel = page.locator('#reading');
  const text = plain(await panel.innerText());
  const { account, warnings, decisions, rejected } = words.reading;
  for (const sentence of [...account, ...warnings]) expect(text).toContain(plain(sentence));
  for (const { said: decided, certainty } of decisions) {
    expect(text).toContain(plain(decided));
    expect(text).toContain(certainty);
  }
  const checks = panel.getByRole('table', { name: 'What was looked for' }).locator('tbody tr');
  expect(await checks.count()).toBe(words.checks.length);
  const list = panel.getByRole('table', { name: /^Rejected rows/ });
  expect(await list.count()).toBe(rejected.length === 0 ? 0 : 1);
  for (const { line, reason } of rejected.slice(0, 5)) {
    expect(plain(await list.innerText())).toContain(plain(`${line} ${reason}`));
  }
};
