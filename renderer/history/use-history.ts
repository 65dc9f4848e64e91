import { createContext, useContext } from 'react';
import { useStore } from 'zustand';
import type { HistoryState, HistoryStore } from './history-store.ts';

export const HistoryContext = createContext<HistoryStore | null>(null);

/** The store itself, for what acts and does not show. */
export const useHistoryStore = (): HistoryStore => {
  const store = useContext(HistoryContext);
  if (!store) throw new Error('there is no history above this component');
  return store;
};

/** A part of the history's state; the component is drawn again when that part changes. */
export const useHistory = <Part>(part: (state: HistoryState) => Part): Part =>
  useStore(useHistoryStore(), part);
