import { useCallback, useEffect, useLayoutEffect, useSyncExternalStore } from 'react';
import type { Preferences } from '../host/host.ts';

const darkWanted = (): MediaQueryList => window.matchMedia('(prefers-color-scheme: dark)');

const watch = (onChange: () => void): (() => void) => {
  const query = darkWanted();
  query.addEventListener('change', onChange);
  return () => query.removeEventListener('change', onChange);
};

/** The theme that is on the screen; `system` follows the system's own, also while the page is open. */
export const useTheme = (theme: Preferences['theme']): 'light' | 'dark' => {
  const isSystemDark = useSyncExternalStore(watch, () => darkWanted().matches);
  useEffect(() => {
    if (theme === 'system') delete document.documentElement.dataset['theme'];
    else document.documentElement.dataset['theme'] = theme;
  }, [theme]);
  if (theme !== 'system') return theme;
  return isSystemDark ? 'dark' : 'light';
};

/**
 * Chromium goes on asking its container queries by the size of text before, until the containers are
 * made anew: for one layout there are none.
 */
const askContainersAnew = (root: HTMLElement): void => {
  root.classList.add('without-containers');
  root.getBoundingClientRect();
  root.classList.remove('without-containers');
};

/** Sets the size from which every other one is reckoned, upon what the reader's browser has. */
export const useTextSize = (textPercent: number): void => {
  useLayoutEffect(() => {
    const root = document.documentElement;
    root.style.fontSize = `${textPercent}%`;
    askContainersAnew(root);
  }, [textPercent]);
};

/** From this width on, in sizes of the text, a panel has room beside the sheet (chosen). */
const ROOMY_REM = 52;

/**
 * Whether the window is too narrow for a panel beside the sheet. A media query's rem is the
 * browser's own size of text, so the size chosen here is put into the width.
 */
export const useIsNarrow = (textPercent: number): boolean => {
  const query = `(max-width: ${(ROOMY_REM * textPercent) / 100}rem)`;
  const watchWidth = useCallback(
    (onChange: () => void): (() => void) => {
      const list = window.matchMedia(query);
      list.addEventListener('change', onChange);
      return () => list.removeEventListener('change', onChange);
    },
    [query],
  );
  return useSyncExternalStore(watchWidth, () => window.matchMedia(query).matches);
};
