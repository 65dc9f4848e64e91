import type { Sample } from './samples.ts';

const HEADER = ['sample file', 'schedule file', 'what is in it', 'must find', 'cone expected'];
const NOTHING = 'none at act';

const row = ({ file, scheduleFile, story, mustFind, coneExpected }: Sample): string[] => [
  file,
  scheduleFile,
  story,
  mustFind.length === 0 ? NOTHING : mustFind.join(', '),
  coneExpected,
];

/** A table with its columns lined up, as the formatter of this repository wants them. */
const tableOf = (rows: readonly (readonly string[])[]): string => {
  const widths = HEADER.map((_, column) => Math.max(...rows.map((cells) => cells[column]!.length)));
  const [header, ...samples] = rows.map(
    (cells) => `| ${cells.map((cell, column) => cell.padEnd(widths[column]!)).join(' | ')} |`,
  );
  const rule = `| ${widths.map((width) => '-'.repeat(width)).join(' | ')} |`;
  return [header, rule, ...samples].join('\n');
};

/** The README of `sample-traces/`, held by tests against the files and the findings. */
export const sampleReadme = (samples: readonly Sample[]): string => `# Sample traces

${samples.length} logs and their schedules from a studio that does not exist. Kilns, loads, dates and
programmes are invented, and so is every reading: \`npm run samples\` writes the folder, this file
included, from the seeded test kiln in \`tests/kiln/\`, and gives the same bytes each time.

What the tool must find in each. The ids are those of \`core/model/finding.ts\`; \`${NOTHING}\` means that
no finding may have the severity \`act\`. The cone is the hottest that the logged temperature brings
fully down, as the test kiln reckons it from the published chart.

${tableOf([HEADER, ...samples.map(row)])}

## How each file is laid out

${samples.map(({ file, shapeInWords }) => `- \`${file}\`: ${shapeInWords}.`).join('\n')}
`;
