import { createContext, useContext } from 'react';
import { useStore } from 'zustand';
import type { ViewState, ViewStore } from './view-store.ts';

export const ViewContext = createContext<ViewStore | null>(null);

/** The view's store itself, for what acts and does not show. */
export const useViewStore = (): ViewStore => {
  const store = useContext(ViewContext);
  if (!store) throw new Error('there is no view above this component');
  return store;
};

export const useView = <Part>(part: (state: ViewState) => Part): Part =>
  useStore(useViewStore(), part);
