import { goTo } from '../sheet/go-to.ts';
import type { AppStore } from '../state/store.ts';

/** Opens the reading desk and goes there. */
export const openDesk = (store: AppStore): void => {
  void store.getState().showDesk(true);
  // It is drawn first.
  requestAnimationFrame(() => goTo('desk'));
};
