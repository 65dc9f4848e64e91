import { describe, expect, it } from 'vitest';
import { htmlReport } from '../../../core/report/html-report.ts';
import { EXAMPLE_DOCUMENTS, exampleDocument } from '../../fixtures/documents/load.ts';
import { everyFinding } from '../wording/builders.ts';

const HOSTILE = '"><script>alert(1)</script><img src=x onerror=alert(1)>\u202e';

/** Text content, with the attributes and the style left out. */
const visible = (page: string): string =>
  page.replace(/<style>.*?<\/style>/s, '').replace(/<[^>]*>/g, ' ');

describe.each([...EXAMPLE_DOCUMENTS])('the report of %s', (name) => {
  const page = htmlReport(exampleDocument(name), 'C');

  it('is one file that runs nothing and loads nothing', () => {
    expect(page).not.toMatch(/<script|<link|<iframe|<object|<img|javascript:|\son\w+=/i);
    expect(page).not.toMatch(/(?:src|href)="(?!#)/);
    expect(page).not.toMatch(/https?:|url\(/);
    expect(page.includes('default-src &#39;none&#39;')).toBe(true);
  });

  it('is well-formed: every element that opens closes, in order', () => {
    const open: string[] = [];
    for (const [, close, tag, self] of page.matchAll(/<(\/?)([a-z][a-z0-9]*)\b[^>]*?(\/?)>/g)) {
      if (self === '/' || tag === 'meta') continue;
      if (close === '/') expect(open.pop()).toBe(tag);
      else open.push(tag!);
    }
    expect(open).toEqual([]);
  });

  it('has unique ids, and every link leads to one', () => {
    const ids = [...page.matchAll(/ id="([^"]*)"/g)].map(([, id]) => id);
    expect(new Set(ids).size).toBe(ids.length);
    const targets = [...page.matchAll(/href="#([^"]*)"/g)].map(([, id]) => id);
    expect(targets.length).toBeGreaterThan(1);
    expect(targets.filter((id) => !ids.includes(id))).toEqual([]);
    const labels = [...page.matchAll(/aria-labelledby="([^"]*)"/g)].flatMap(([, list]) =>
      list!.split(' '),
    );
    expect(labels.filter((id) => !ids.includes(id))).toEqual([]);
  });

  it('shows a Fahrenheit reader no Celsius number', () => {
    const text = visible(htmlReport(exampleDocument(name), 'F')).replace(/“[^”]*”/g, '');
    expect(text).toContain('°F');
    expect(text).not.toContain('°C');
  });

  it('ends with the cautions', () => {
    expect(visible(page)).toContain('advice, not protection');
  });
});

describe('a hostile file', () => {
  const document = exampleDocument('troubled-firing');
  document.source.fileName = HOSTILE;
  document.source.channels[1]!.name = HOSTILE;
  document.source.decisions[6]!.choice = HOSTILE;
  document.source.rejected[0]!.text = HOSTILE;
  document.schedule!.name = HOSTILE;
  const page = htmlReport(document, 'C');

  it('is data wherever it is named', () => {
    expect(page).not.toMatch(/<script|<img|\u202e/i);
    expect(page.match(/&lt;script&gt;/g)!.length).toBeGreaterThanOrEqual(5);
  });
});

it('a report with every finding is still whole', () => {
  const page = htmlReport(everyFinding(), 'F');
  expect(page.match(/<article/g)).toHaveLength(everyFinding().findings.length);
});
