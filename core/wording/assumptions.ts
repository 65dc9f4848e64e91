import { idAsWords } from './checks.ts';

/** What the reckoning of heat-work takes for granted, by assumption id. */
const ASSUMPTIONS: Readonly<Record<string, string>> = {
  'couple-type-assumed':
    'No couple was named: ordinary type K wire is taken for granted, whose tolerance alone is worth about half a cone.',
  'couple-class-assumed':
    'No tolerance class was given that is published for this couple: the ordinary one is taken.',
  'couple-beyond-class':
    'The firing went hotter than the couple’s tolerance class reaches: its last figure is carried on.',
  'chart-self-supporting':
    'Cones are self-supporting cones, by their maker’s published end points.',
  'chart-large': 'Cones are large cones, by their maker’s published end points.',
  'chart-small': 'Cones are small cones, by their maker’s published end points.',
  'chart-iron-free': 'Cones are iron-free cones, by their maker’s published end points.',
  'cone-activation-borrowed':
    'For a cone near the result the chart does not show how rate matters; that is borrowed from another cone.',
  'cone-between-neighbours':
    'The chart leaves out a cone near the result; it is placed midway between its neighbours.',
  'cone-borrowed':
    'A cone near the result lies beyond this chart; the self-supporting cone stands in for it.',
  'rate-outside-chart':
    'The last stretch was slower or faster than the chart’s rates, so the range is wider.',
  'hold-rules-conflict':
    'A hold added heat-work, on which published rules disagree, so the range is wider.',
  'gap-interpolated':
    'A hole in the log near the peak is bridged in a straight line, so the range is wider.',
  'logs-joined':
    'Two logs of one load are added up; the time between them, in which nobody looked, is not counted.',
  'record-starts-hot': 'The record begins near its top; what went before is not counted.',
  'record-ends-hot': 'The record ends near its top; what came after is not counted.',
  'beyond-hottest-cone': 'Even the hottest cone of the chart is down.',
  'corrected-by-cones': 'The readings were corrected by the witness cones that were seen.',
};

/** An assumption of the heat-work as a sentence. */
export const assumptionSentence = (id: string): string =>
  ASSUMPTIONS[id] ?? `Taken for granted: ${idAsWords(id)}.`;

/** Whether an assumption has a sentence of its own. */
export const knowsAssumption = (id: string): boolean => id in ASSUMPTIONS;
