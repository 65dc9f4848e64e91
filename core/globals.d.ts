/**
 * The one platform object core may use, declared narrowly here so that core compiles without the
 * DOM's or Node's types: every runtime this project knows has it.
 */
declare class TextDecoder {
  readonly encoding: string;
  constructor(label?: string, options?: { fatal?: boolean; ignoreBOM?: boolean });
  decode(input?: Uint8Array, options?: { stream?: boolean }): string;
}
