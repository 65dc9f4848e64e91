import { describe, expect, test } from 'vitest';
import { Refusal } from '../../../core/model/refusal.ts';
import { MAX_SCHEDULE_BYTES, scheduleText } from '../../../core/schedule/schedule-text.ts';

/** The bytes that Node writes for a text, as the outside view of an encoding. */
const written = (text: string, encoding: BufferEncoding): Uint8Array => Buffer.from(text, encoding);

describe('the text of a schedule file', () => {
  test.each([
    ['UTF-8', written('Bisque, 5 °C', 'utf8')],
    ['UTF-8 with a byte order mark', written('\uFEFFBisque, 5 °C', 'utf8')],
    ['UTF-16, little end first', written('\uFEFFBisque, 5 °C', 'utf16le')],
    ['UTF-16, big end first', Buffer.from('\uFEFFBisque, 5 °C', 'utf16le').swap16()],
    ['windows-1252', written('Bisque, 5 °C', 'latin1')],
  ])('is read from %s', (_encoding, bytes) => {
    expect(scheduleText(bytes)).toBe('Bisque, 5 °C');
  });

  test('is refused where it is too long to be one', () => {
    expect(scheduleText(new Uint8Array(MAX_SCHEDULE_BYTES).fill(0x20))).toHaveLength(
      MAX_SCHEDULE_BYTES,
    );
    expect(() => scheduleText(new Uint8Array(MAX_SCHEDULE_BYTES + 1))).toThrow(Refusal);
  });
});
