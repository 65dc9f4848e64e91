/** Reads one log and tells the most memory that the process held at once, in kilobytes. */
import { readFileSync } from 'node:fs';
import { readLog } from '../../core/log/read-log.ts';

/**
 * On Linux the kernel's own mark: what the call for usage tells there is never below the memory of
 * the parent.
 */
const peakKilobytes = (): number => {
  try {
    const [, mark] = /VmHWM:\s*(\d+)/.exec(readFileSync('/proc/self/status', 'utf8'))!;
    return Number(mark);
  } catch {
    return process.resourceUsage().maxRSS;
  }
};

const file = process.argv[2]!;
// A buffer is such an array already: another would hold the file twice.
const { source } = readLog(readFileSync(file), file);
if (source.rowsKept < 2) throw new Error('nothing was read');
process.stdout.write(String(peakKilobytes()));
