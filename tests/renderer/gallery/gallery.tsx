import '../../../renderer/theme/tokens.css';
import './gallery.css';
import { useState } from 'react';
import { createRoot } from 'react-dom/client';
import '../../../renderer/no-code-from-text.ts';
import type { AnalysisDocument } from '../../../core/model/document.ts';
import type { Options } from '../../../core/model/options.ts';
import type { TemperatureUnit } from '../../../core/units.ts';
import { wording } from '../../../core/wording/wording.ts';
import { ConesPanel } from '../../../renderer/cones/cones-panel.tsx';
import { LegsPanel } from '../../../renderer/legs/legs-panel.tsx';
import { PowerPanel } from '../../../renderer/power/power-panel.tsx';
import { ReadingPanel } from '../../../renderer/reading/reading-panel.tsx';
import { NO_DRAFTS } from '../../../renderer/told/drafts.ts';
import { ToldPanel, type OfferedSchedule } from '../../../renderer/told/told-panel.tsx';
import { DOCUMENTS, documentOf, sampleSchedules } from './states.ts';

/**
 * `?panel=told&document=good-firing&unit=F&theme=dark&text=200&seen` shows one panel;
 * without a panel all are shown, without a document a list of links.
 */
const asked = new URLSearchParams(location.search);
const unit: TemperatureUnit = asked.get('unit') === 'F' ? 'F' : 'C';
const root = document.documentElement;
root.dataset['theme'] = asked.get('theme') ?? 'light';
root.style.fontSize = `${asked.get('text') ?? '100'}%`;

interface ShownProps {
  readonly document: AnalysisDocument;
  readonly offered: readonly OfferedSchedule[];
}

/** What the page under test said last, for the tests to read. */
const say = (what: string, value: unknown) => {
  root.dataset[what] = JSON.stringify(value);
};

const REFUSED = {
  fileName: 'glaze.schedule.csv',
  message: 'the target 2200 °C is hotter than any kiln this tool knows',
  line: 4,
};

const Shown = ({ document, offered }: ShownProps) => {
  const [options, setOptions] = useState<Options>(document.options);
  const [drafts, setDrafts] = useState(NO_DRAFTS);
  const words = wording(document, unit);
  const panel = asked.get('panel');
  const onOptions = (next: Options) => {
    say('options', next);
    setOptions(next);
  };
  const onShowStretch = (span: unknown) => say('stretch', span);
  const shows = (name: string) => panel === null || panel === name;
  return (
    <>
      <h1>{`${name} · ${panel ?? 'all panels'}`}</h1>
      {shows('told') ? (
        <ToldPanel
          options={options}
          unit={unit}
          onOptions={onOptions}
          drafts={drafts}
          onDrafts={(change) => setDrafts((held) => ({ ...held, ...change }))}
          offered={offered}
          onForget={(one) => say('forgotten', one)}
          onOpenSchedule={() => say('opened', true)}
          scheduleRefused={asked.has('refused') ? REFUSED : null}
          onSaveSchedule={(file) => say('saved', file)}
        />
      ) : null}
      {shows('cones') ? (
        <ConesPanel document={document} words={words} unit={unit} onShowStretch={onShowStretch} />
      ) : null}
      {shows('legs') ? (
        <LegsPanel document={document} words={words} unit={unit} onShowStretch={onShowStretch} />
      ) : null}
      {shows('power') ? (
        <PowerPanel document={document} words={words} unit={unit} onShowStretch={onShowStretch} />
      ) : null}
      {shows('reading') ? (
        <ReadingPanel
          document={document}
          words={words}
          unit={unit}
          options={options}
          onOptions={onOptions}
        />
      ) : null}
    </>
  );
};

const SEEN: Options = {
  couple: { type: 'K', class: 'class-2' },
  observedCones: [
    { cone: '6', place: 'top shelf', bendDegrees: 55 },
    { cone: '6', place: 'bottom shelf', bendDegrees: 88 },
    { cone: '7', place: 'top shelf', bendDegrees: 5 },
  ],
};

const name = asked.get('document');
const told: Options = asked.has('seen') ? SEEN : {};
const page = createRoot(document.querySelector('#gallery')!);
if (name === null) {
  page.render(
    <ul>
      {DOCUMENTS.map((one) => (
        <li key={one}>
          <a href={`?document=${one}`}>{one}</a>
        </li>
      ))}
    </ul>,
  );
} else {
  const [shown, schedules] = await Promise.all([documentOf(name, told), sampleSchedules()]);
  const offered = schedules.map((schedule, index) => ({
    id: `s${index}`,
    origin: index === 0 ? ('kept' as const) : ('sample' as const),
    schedule,
  }));
  page.render(<Shown document={shown} offered={offered} />);
  root.dataset['ready'] = 'true';
}
