/** A value on its way between the processes: JSON, in which bytes stand as base64. */
interface Bytes {
  readonly $bytes: string;
}

const isBytes = (value: unknown): value is Bytes =>
  typeof value === 'object' && value !== null && '$bytes' in value;

/** Writes a value as it would be cloned; throws for what cannot be. */
export const encoded = (value: unknown): string =>
  JSON.stringify(structuredClone(value) ?? null, (_key, part: unknown) =>
    part instanceof Uint8Array ? { $bytes: Buffer.from(part).toString('base64') } : part,
  );

/** Reads a value that {@link encoded} wrote, here or in the page. */
export const decoded = (text: string): unknown =>
  JSON.parse(text, (_key, part: unknown) =>
    isBytes(part) ? new Uint8Array(Buffer.from(part.$bytes, 'base64')) : part,
  );
