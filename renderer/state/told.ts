import type { Options } from '../../core/model/options.ts';

/** A change to what was told; a key that is `undefined` is taken back. */
export type OptionsChange = { readonly [Key in keyof Options]?: Options[Key] | undefined };

/** What was told, with a change worked in; keys that hold nothing are left out. */
export const retold = (told: Options, change: OptionsChange): Options => {
  const merged = Object.entries({ ...told, ...change });
  return Object.fromEntries(merged.filter(([, value]) => value !== undefined));
};

/**
 * What stays true when another log is opened: the kiln, its couple, the kind of cones in use.
 * Schedule, cone, purpose, ware and seen cones belong to one firing, the reading to one file; held
 * against another they would give false findings.
 */
export const toldOfTheKiln = ({ kiln, couple, coneType }: Options): Options =>
  retold({}, { kiln, couple, coneType });
