import { createContext, useContext } from 'react';
import type { Actions } from './actions.ts';

export const ActionsContext = createContext<Actions | null>(null);

export const useActions = (): Actions => {
  const actions = useContext(ActionsContext);
  if (!actions) throw new Error('there are no actions above this component');
  return actions;
};
