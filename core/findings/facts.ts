import type { AnalysisDocument } from '../model/document.ts';
import type { Trace } from '../model/trace.ts';

/**
 * What detectors may ask for: the measured parts of the document, and `samples`, the full columns
 * behind `trace`. A detector gets only the facts that it names.
 */
export type Facts = Pick<
  AnalysisDocument,
  | 'options'
  | 'source'
  | 'trace'
  | 'zones'
  | 'schedule'
  | 'alignment'
  | 'heatWork'
  | 'bands'
  | 'load'
  | 'overshoots'
  | 'elements'
> & { readonly samples: Trace };
