import type { AnalysisDocument } from '../../core/model/document.ts';
import { htmlReport } from '../../core/report/html-report.ts';
import { styleSheet } from '../../core/report/html/style.ts';
import type { TemperatureUnit } from '../../core/units.ts';

/**
 * The report's style for a shadow tree: its page becomes the tree's host. The page's policy forbids
 * style in markup; a constructed sheet is no markup.
 */
export const hostStyle = (style: string): string =>
  style.replace(/:root\b/g, ':host').replace(/(^|[\s,{}])(html|body)(?=\s*\{)/g, '$1:host');

/** What the report's style says of the paper. A shadow tree has none: the page itself is printed. */
export const paperStyle = (style: string): string =>
  (style.match(/@page\b[^{]*\{[^}]*\}/g) ?? []).join('\n');

const styleFrom = (text: string): CSSStyleSheet => {
  const sheet = new CSSStyleSheet();
  sheet.replaceSync(text);
  return sheet;
};

/**
 * Prints the report and not the window: what comes out of the printer is what would be saved. It
 * stands on the page only while the print dialog is open.
 */
export const printReport = (firing: AnalysisDocument, unit: TemperatureUnit): void => {
  const bare = htmlReport(firing, unit).replace(/<style>[\s\S]*?<\/style>/, '');
  const page = new DOMParser().parseFromString(bare, 'text/html');
  const holder = document.createElement('div');
  holder.className = 'print-only';
  const paper = styleFrom(paperStyle(styleSheet()));
  const tree = holder.attachShadow({ mode: 'open' });
  tree.adoptedStyleSheets = [styleFrom(hostStyle(styleSheet()))];
  tree.append(...Array.from(page.body.childNodes, (node) => document.importNode(node, true)));
  document.body.append(holder);
  document.adoptedStyleSheets.push(paper);
  const title = document.title;
  document.title = page.title;
  const tidy = (): void => {
    holder.remove();
    document.adoptedStyleSheets = document.adoptedStyleSheets.filter((one) => one !== paper);
    document.title = title;
  };
  window.addEventListener('afterprint', tidy, { once: true });
  window.print();
};
