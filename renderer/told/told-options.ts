import type { Cone } from '../../core/model/cone.ts';
import type { CoupleType, ObservedCone, Options } from '../../core/model/options.ts';
import { retold } from '../state/told.ts';

type Couple = NonNullable<Options['couple']>;
type Kiln = NonNullable<Options['kiln']>;

/** The couple's type; without it neither class nor offset says anything, so they go with it. */
export const toldCoupleType = (options: Options, type: CoupleType | null): Options =>
  retold(options, { couple: type === null ? undefined : { ...options.couple, type } });

/** The couple's class or offset; nothing changes while its type is not told. */
export const toldCouple = (
  options: Options,
  change: { readonly [Key in 'class' | 'offsetC']?: Couple[Key] | undefined },
): Options => {
  if (!options.couple) return options;
  const { type, class: wireClass, offsetC } = { ...options.couple, ...change };
  return retold(options, {
    couple: {
      type,
      ...(wireClass === undefined ? {} : { class: wireClass }),
      ...(offsetC === undefined ? {} : { offsetC }),
    },
  });
};

/** One thing about the kiln; when nothing is left of it, the kiln is not told of. */
export const toldKiln = (
  options: Options,
  change: { readonly [Key in keyof Kiln]?: Kiln[Key] | undefined },
): Options => {
  const said = Object.entries({ ...options.kiln, ...change }).filter(
    ([, value]) => value !== undefined,
  );
  const kiln: Kiln = Object.fromEntries(said);
  return retold(options, { kiln: said.length === 0 ? undefined : kiln });
};

/** The cone that was meant: as told, else as the schedule says. */
export const meantCone = ({ cone, schedule }: Options): Cone | null =>
  cone ?? schedule?.cone ?? null;

/** The witness cones that were seen; none at all is the same as nothing told. */
export const toldWitnesses = (options: Options, cones: readonly ObservedCone[]): Options =>
  retold(options, { observedCones: cones.length === 0 ? undefined : [...cones] });

/** One witness cone put in another's place. */
export const changedWitness = (options: Options, index: number, witness: ObservedCone): Options =>
  toldWitnesses(options, (options.observedCones ?? []).with(index, witness));

export const withoutWitness = (options: Options, index: number): Options =>
  toldWitnesses(options, (options.observedCones ?? []).toSpliced(index, 1));
