import { expect, test } from 'vitest';
import { overBothHosts } from './hosts.ts';
import { dropFiles, settled, textFile } from './window.ts';

/** Two firings of one kiln in one log, a cold day between them. */
const TWO = [
  'time,temperature °C',
  ...[1060, 1222].flatMap((topC, day) =>
    Array.from({ length: 120 }, (_, i) => {
      const at = new Date(Date.UTC(2026, 2, 3 + 2 * day, 7, i * 10));
      return `${at.toISOString().slice(0, 16)},${Math.round(20 + (topC - 20) * Math.sin((i * Math.PI) / 119))}`;
    }),
  ),
].join('\n');

overBothHosts((window) => {
  test('several firings are offered, kept apart, and chosen on the sheet and at the desk', async () => {
    const { page } = window();
    await dropFiles(page, [textFile('march.csv', TWO)]);
    await settled(page);
    // Which one is meant is asked on the sheet; nothing about the file itself is in doubt.
    expect(await page.locator('#desk').count()).toBe(0);
    const choice = page.getByRole('region', { name: 'This log holds 2 firings' });
    const first = choice.getByRole('button', { name: /2026-03-03 07:00, 19 h 50 min, to 1060/ });
    const second = choice.getByRole('button', { name: /2026-03-05 07:00.*1222/ });
    expect(await second.getAttribute('aria-pressed')).toBe('true');
    await first.click();
    await page.locator('.sheet-head', { hasText: '3 March 2026, 07:00' }).waitFor();
    expect(await page.locator('.sheet-head').innerText()).toMatch(/peak 1060\s°C/);

    await page.keyboard.press('d');
    const lines = page.getByRole('table', { name: /line by line/ });
    const row = lines.getByRole('row').nth(2);
    await row.filter({ hasText: /2026-03-03T07:00,20.*0:00:00\s+20 °C/ }).waitFor();
    await second.press('Enter');
    await page.locator('.sheet-head', { hasText: 'peak 1222' }).waitFor();
    await row.filter({ hasText: 'of another firing' }).waitFor();
    // It is one file's matter, and kept as no rule.
    expect(await page.getByText('Kept for files of this shape').count()).toBe(0);
  });
});
