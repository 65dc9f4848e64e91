const isMotionWanted = (): boolean => !matchMedia('(prefers-reduced-motion: reduce)').matches;

/** Where the focus goes in a part of the sheet: to itself if it can have it, else to its heading. */
const focusable = (target: HTMLElement): HTMLElement => {
  if (target.matches('button, a, input, [tabindex]')) return target;
  const heading = target.querySelector<HTMLElement>('h2, h3') ?? target;
  if (!heading.hasAttribute('tabindex')) heading.tabIndex = -1;
  return heading;
};

/** Brings a part of the sheet into view and puts the focus there. */
export const goTo = (id: string): void => {
  const target = document.getElementById(id);
  if (!target) return;
  focusable(target).focus({ preventScroll: true });
  target.scrollIntoView({
    behavior: isMotionWanted() ? 'smooth' : 'instant',
    block: target.matches('.note-head') ? 'nearest' : 'start',
  });
};
