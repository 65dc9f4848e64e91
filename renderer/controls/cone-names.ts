import { CONES, type Cone, type ConeType } from '../../core/model/cone.ts';
import { coneName } from '../../core/wording/speech.ts';
import type { ChoiceOf } from './choice.tsx';

/** Every cone, the hottest last, as a list to choose from. */
export const CONE_CHOICES: readonly ChoiceOf<Cone>[] = CONES.map((cone) => ({
  value: cone,
  label: coneName(cone),
}));

export const CONE_TYPE_CHOICES: readonly ChoiceOf<ConeType>[] = [
  { value: 'self-supporting', label: 'self-supporting' },
  { value: 'large', label: 'large' },
  { value: 'small', label: 'small' },
  { value: 'iron-free', label: 'iron-free' },
];
