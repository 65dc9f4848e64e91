import { createContext, useContext } from 'react';
import { useStore } from 'zustand';
import type { AppState, AppStore } from './store.ts';

export const AppContext = createContext<AppStore | null>(null);

/** The store itself, for what acts and does not show. */
export const useAppStore = (): AppStore => {
  const store = useContext(AppContext);
  if (!store) throw new Error('there is no store above this component');
  return store;
};

/** A part of the window's state; the component is drawn again when that part changes. */
export const useApp = <Part>(part: (state: AppState) => Part): Part =>
  useStore(useAppStore(), part);
