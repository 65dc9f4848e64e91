import type { Refused } from '../worker/protocol.ts';

/** What to try when a log could not be used, by why. */
export const REFUSAL_ADVICE: Readonly<Record<Refused['code'], readonly string[]>> = {
  empty: ['Look at the file’s size where it came from, and copy or export it again.'],
  binary: [
    'Export the log as CSV or text from the program it came from; its own format cannot be read.',
    'A spreadsheet can be saved as CSV.',
  ],
  'too-large': ['Cut the firing out of the file, or export only its days.'],
  'header-only': ['The names are there and the readings are not: export the log again.'],
  'no-time': [
    'See whether the export can write a column of times, or choose the columns by hand once it can be read.',
  ],
  'no-temperature': ['See whether the export left the thermocouple’s column out.'],
  'too-few-rows': ['Export the whole firing; a few readings do not make a curve.'],
  'not-readable': [
    'Open the file in a text editor: there should be one reading a line.',
    'Export the log as CSV, with the names of the columns in the first line.',
  ],
  'bad-option': ['Take back what was told last, and open the log again.'],
  'cannot-join': ['Open the two logs one by one.'],
  'bad-schedule': ['Open the log without its schedule, and type the schedule in.'],
  'unknown-cone': ['Write the cone as it stands on the box: 06, 5½, 10.'],
  'file-missing': ['See whether the file was moved or renamed, and open it again.'],
  'file-unreadable': ['Copy the file to a folder of your own, and open it from there.'],
  internal: ['Try the log once more. If it happens again, please report it.'],
};
