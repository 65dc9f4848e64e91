import { join } from 'node:path';
import type { Locator, Page } from 'playwright-core';
import { describe, expect, test, vi } from 'vitest';
import type { AnalysisDocument } from '../../core/model/document.ts';
import type { Options } from '../../core/model/options.ts';
import { scheduleFromCone } from '../../core/schedule/from-cone.ts';
import { readSchedule } from '../../core/schedule/read-schedule.ts';
import { celsiusPerHour } from '../../core/units.ts';
import { wording } from '../../core/wording/wording.ts';
import { overBothHosts } from './hosts.ts';
import { documentOf, pickFrom, plain, said, tell, trySample } from './sheet.ts';
import { dropFiles, sampleFile, SAMPLES, sampleText, settled, textFile } from './window.ts';

/** All that the answer is told by: the verdict, the load, the heat-work and what it rests on. */
const answerOf = (document: AnalysisDocument): string[] => {
  const { verdict, load, heatWork, legs } = wording(document, 'C');
  return [
    ...verdict.map(({ text }) => text),
    ...[load.answer, load.advice, heatWork?.headline.text, heatWork?.target, heatWork?.coupleError],
    ...(heatWork?.assumptions ?? []),
    ...(heatWork?.remedies ?? []),
    ...legs.rows.map(({ verdict: leg }) => leg),
  ].flatMap((text) => (typeof text === 'string' ? [plain(text)] : []));
};

/** Waits until the sheet answers as the core does. */
const expectAnswer = (page: Page, document: AnalysisDocument): Promise<void> =>
  vi.waitFor(
    async () => {
      const sheet = plain((await page.locator('main').textContent()) ?? '');
      const missing = answerOf(document).filter((text) => !sheet.includes(text));
      expect(missing).toEqual([]);
      const verdict = await page.locator('.verdict > p').count();
      expect(verdict).toBe(wording(document, 'C').verdict.length + 1);
    },
    { timeout: 15_000, interval: 100 },
  );

interface Telling {
  readonly what: string;
  readonly logName: string;
  readonly scheduleName: string;
  readonly tell: (told: Locator) => Promise<void>;
  readonly told: Options;
}

const UNDERFIRED = {
  logName: 'underfired-glaze.txt',
  scheduleName: 'underfired-glaze.schedule.json',
};
const GOOD = { logName: 'good-glaze.csv', scheduleName: 'good-glaze.schedule.csv' };
const SLOW_COOLED = {
  logName: 'slow-cooled-glaze.csv',
  scheduleName: 'slow-cooled-glaze.schedule.csv',
};

const seeCone = async (told: Locator): Promise<void> => {
  await told.getByRole('button', { name: 'Add a cone that was seen' }).click();
  const witness = told.getByRole('group', { name: 'A cone that was seen' });
  await pickFrom(witness, /Cone/, 'cone 6');
  await witness.getByLabel('Where it stood').fill('top shelf');
  await witness.getByRole('textbox', { name: /How far down/ }).fill('40');
  await witness.getByRole('button', { name: 'Add this cone' }).click();
};

const couple = (told: Locator): Locator => told.getByRole('region', { name: 'Thermocouple' });

const TELLINGS: readonly Telling[] = [
  {
    ...GOOD,
    what: 'the cone that was meant',
    tell: (told) =>
      pickFrom(told.getByRole('region', { name: 'What was meant' }), /Cone$/, 'cone 9'),
    told: { cone: '9' },
  },
  {
    ...GOOD,
    what: 'the kind of cones',
    tell: (told) => pickFrom(told, /Kind of cones/, 'small'),
    told: { coneType: 'small' },
  },
  {
    ...UNDERFIRED,
    what: 'the purpose',
    tell: (told) => told.getByText('bisque', { exact: true }).click(),
    told: { purpose: 'bisque' },
  },
  {
    ...GOOD,
    what: 'the couple’s type',
    tell: (told) => pickFrom(couple(told), /Type/, 'type S'),
    told: { couple: { type: 'S' } },
  },
  {
    ...SLOW_COOLED,
    what: 'the couple’s class',
    tell: async (told) => {
      await pickFrom(couple(told), /Type/, 'type K');
      await pickFrom(told, /Tolerance class/, 'IEC 60584, class 1');
    },
    told: { couple: { type: 'K', class: 'class-1' } },
  },
  {
    ...GOOD,
    what: 'witness cones: which, where, how far down',
    tell: seeCone,
    told: { observedCones: [{ cone: '6', place: 'top shelf', bendDegrees: 40 }] },
  },
];

overBothHosts((window) => {
  describe('changes the answer at once', () => {
    test.each(TELLINGS)('$what', async ({ logName, scheduleName, tell: deed, told }) => {
      const { page } = window();
      const [before, after] = [
        documentOf(logName, scheduleName),
        documentOf(logName, scheduleName, told),
      ];
      expect(answerOf(after)).not.toEqual(answerOf(before));
      await trySample(page, logName);
      await expectAnswer(page, before);
      await deed(await tell(page));
      await expectAnswer(page, after);
      // A screen reader is told the new verdict without being sent there.
      await settled(page);
      const announced = plain((await page.locator('#announcer').textContent()) ?? '');
      expect(announced).toContain(plain(wording(after, 'C').verdict[0]?.text ?? '?'));
    });

    test('a cone that was seen is drawn over the predicted one, and can be taken back', async () => {
      const { page } = window();
      await trySample(page, GOOD.logName);
      await seeCone(await tell(page));
      const pack = page.locator('.cones-pack');
      await pack.locator('.cone-seen').waitFor();
      expect(await pack.locator('title').textContent()).toContain('seen bent 40° at top shelf');
      const seen = page.getByRole('table', { name: 'Witness cones, seen and predicted' });
      expect(plain(await seen.locator('tbody').innerText())).toMatch(/^cone 6 top shelf 40° \d+°$/);
      await page.getByRole('button', { name: /^Remove cone 6/ }).click();
      await expectAnswer(page, documentOf(GOOD.logName, GOOD.scheduleName));
      expect(await pack.locator('.cone-seen').count()).toBe(0);
    });
  });

  describe('a schedule', () => {
    const LOG = GOOD.logName;
    const withoutSchedule = async (): Promise<{ page: Page; told: Locator }> => {
      const { page } = window();
      await dropFiles(page, [sampleFile(LOG)]);
      await settled(page);
      expect(await said(page, '.verdict')).toContain('No schedule was given');
      expect(await page.locator('.ribbon-row').count()).toBe(1);
      await page.getByRole('button', { name: 'Choose, open or type one' }).click();
      return { page, told: page.locator('#told') };
    };

    test('is chosen from those at hand', async () => {
      const { page, told } = await withoutSchedule();
      await told.getByRole('button', { name: /^Choose/ }).click();
      const { name } = readSchedule(sampleText(GOOD.scheduleName), GOOD.scheduleName);
      await page.getByRole('menuitem', { name, exact: true }).click();
      await expectAnswer(page, documentOf(LOG, GOOD.scheduleName));
      expect(await page.locator('.ribbon-row').count()).toBe(2);
    });

    test('is opened, and refused where it is none, with the line to blame', async () => {
      const { page, told } = await withoutSchedule();
      await dropFiles(page, [textFile('odd.schedule.csv', 'rate_per_hour,target\n100,hot\n')]);
      const alert = told.getByRole('alert');
      await alert.waitFor();
      expect(plain(await alert.innerText())).toMatch(/“odd\.schedule\.csv” cannot be used.*line 2/);
      const open = told.getByRole('button', { name: 'Open a file' });
      await window().choose([join(SAMPLES, GOOD.scheduleName)], () => open.click());
      await expectAnswer(page, documentOf(LOG, GOOD.scheduleName));
      expect(await alert.count()).toBe(0);
    });

    test('is made by typing its legs, drawn as they are typed, and saved', async () => {
      const { page, told } = await withoutSchedule();
      await told.getByRole('button', { name: 'Type one' }).click();
      await told.getByLabel('Name').fill('Typed');
      const line = told.locator('.told-curve .planned');
      const drawn: (string | null)[] = [];
      const legs = [
        ['110', '135', '20'],
        ['175', '1095', '0'],
        ['60', '1210', '14'],
      ] as const;
      for (const [index, [rate, target, hold]] of legs.entries()) {
        const leg = `Leg ${index + 1}`;
        await told.getByLabel(`${leg}, rate`).fill(rate);
        if (index === 0) expect(await line.count()).toBe(0);
        await told.getByLabel(`${leg}, target`).fill(target);
        drawn.push(await line.getAttribute('d'));
        await told.getByLabel(`${leg}, hold`).fill(hold);
        drawn.push(await line.getAttribute('d'));
        if (index < legs.length - 1) await told.getByRole('button', { name: 'Add a leg' }).click();
      }
      // The second leg has no hold: what is drawn stays as it is there, and changes everywhere else.
      expect(new Set(drawn).size).toBe(drawn.length - 1);
      await pickFrom(told.locator('.told-editor'), /Meant to reach/, 'cone 6');
      await told.getByText('The answer goes by this schedule.').waitFor();
      const { segments } = readSchedule(sampleText(GOOD.scheduleName), GOOD.scheduleName);
      const schedule = { name: 'Typed', cone: '6', segments } as const;
      await expectAnswer(page, documentOf(LOG, null, { schedule }));
      const save = told.getByRole('button', { name: 'Save as JSON' });
      const file = await window().save(() => save.click());
      expect(file.fileName).toBe('Typed.schedule.json');
      expect(readSchedule(file.text, file.fileName)).toEqual(schedule);
    });

    test('is made from a cone, the rate of the last climb and a hold', async () => {
      const { page, told } = await withoutSchedule();
      await told.getByRole('button', { name: 'Make one from a cone' }).click();
      const form = told.getByRole('group', { name: 'A schedule from a cone' });
      await pickFrom(form, /Cone to reach/, 'cone 5');
      await form.getByLabel('Rate of the last climb').fill('80');
      const before = await form.locator('.planned').getAttribute('d');
      await form.getByLabel('Hold at the top').fill('25');
      expect(await form.locator('.planned').getAttribute('d')).not.toBe(before);
      expect(plain(await form.innerText())).toContain('Caution.');
      await form.getByRole('button', { name: 'Use this schedule' }).click();
      const schedule = scheduleFromCone({
        ...{ cone: '5', holdMinutes: 25 },
        lastRampCPerHour: celsiusPerHour(80),
      });
      await expectAnswer(page, documentOf(LOG, null, { schedule }));
      expect(await said(page, '.sheet-head')).toContain('cone 5 meant');
    });
  });
});
