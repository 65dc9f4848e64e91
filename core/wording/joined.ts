import type { AnalysisDocument, Joined } from '../model/document.ts';
import { conePlace, duration, plainNumber, type Speech } from './speech.ts';

/** Under this share a part is told as less than that, and no number more exact is worth telling. */
const NEXT_TO_NOTHING_SHARE = 0.001;
/** Under this the percent have a decimal. */
const SMALL_SHARE = 0.095;

const shareText = (share: number): string => {
  if (share < NEXT_TO_NOTHING_SHARE) return 'less than a thousandth';
  if (share > 1 - NEXT_TO_NOTHING_SHARE) return 'all but a thousandth';
  return `${plainNumber(share * 100, share < SMALL_SHARE ? 1 : 0)} %`;
};

const partText = ({ peakC, position }: Joined['parts'][number], say: Speech): string => {
  const alone =
    position === null ? 'alone not enough for the coolest cone' : `alone ${conePlace(position)}`;
  return `peak ${say.temperature(peakC)}, ${alone}`;
};

const gapSentence = ({ gap, isGapKnown }: Joined): string =>
  isGapKnown
    ? `Between them lie ${duration(gap.toSeconds - gap.fromSeconds)} that nobody recorded, in which the kiln cooled unseen; they are not counted.`
    : 'How long it was between them cannot be told, because their dates do not say; they were taken in the order given, the hole on the curve is only drawn, and nothing is counted in it.';

/** What two joined logs are, how they hang together, and what each gave of the heat-work. */
export const joinedWords = (
  { source, joined, schedule }: AnalysisDocument,
  say: Speech,
): string[] => {
  if (!joined) return [];
  const [first, second] = joined.parts;
  const laid = schedule === null ? [] : ['The schedule is held against the second log alone.'];
  return [
    `Two logs of one load, taken together: ${source.fileName} (${partText(first, say)}), then ${joined.source.fileName} (${partText(second, say)}).`,
    gapSentence(joined),
    `Of the heat-work, the first gave ${shareText(first.doseShare)} and the second ${shareText(second.doseShare)}.`,
    ...laid,
  ];
};
