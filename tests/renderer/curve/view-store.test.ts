import { describe, expect, it } from 'vitest';
import { seconds } from '../../../core/units.ts';
import { createViewStore, type Motion } from '../../../renderer/curve/view-store.ts';

const still: Motion = { nextFrame: () => undefined, isWanted: () => false };
const span = (from: number, to: number) => ({ fromSeconds: seconds(from), toSeconds: seconds(to) });

/** Frames that come when the test says so. */
const byHand = () => {
  let waiting: ((now: number) => void)[] = [];
  const motion: Motion = { nextFrame: (callback) => waiting.push(callback), isWanted: () => true };
  const frame = (now: number): void => {
    const due = waiting;
    waiting = [];
    for (const callback of due) callback(now);
  };
  return { motion, frame };
};

const begun = (motion: Motion = still) => {
  const store = createViewStore(motion);
  store.getState().reset({ from: 0, to: 36_000 }, 60, 30_000);
  return store;
};

describe('the view', () => {
  it('begins with the whole firing and the crosshair where it is put', () => {
    const { view, atSeconds } = begun().getState();
    expect(view).toEqual({ from: 0, to: 36_000 });
    expect(atSeconds).toBe(30_000);
  });

  it('is at once where it should be if no motion is wanted', () => {
    const store = begun();
    store.getState().show([span(10_000, 11_000)]);
    const { view } = store.getState();
    expect(view.from).toBeGreaterThan(5000);
    expect(view.to).toBeLessThan(16_000);
  });

  it('glides there otherwise, and ends exactly there', () => {
    const { motion, frame } = byHand();
    const store = begun(motion);
    store.getState().showExactly({ from: 10_000, to: 12_000 });
    frame(1000);
    frame(1100);
    const { view } = store.getState();
    expect(view.from).toBeGreaterThan(0);
    expect(view.from).toBeLessThan(10_000);
    frame(2000);
    expect(store.getState().view).toEqual({ from: 10_000, to: 12_000 });
  });

  it('lets a hand on the wheel end a glide', () => {
    const { motion, frame } = byHand();
    const store = begun(motion);
    store.getState().showExactly({ from: 10_000, to: 12_000 });
    frame(0);
    store.getState().zoom(18_000, 0.5);
    const { view } = store.getState();
    frame(5000);
    expect(store.getState().view).toEqual(view);
  });

  it('keeps what is looked at when another plan reaches further, and the whole when all was seen', () => {
    const store = begun();
    store.getState().resize({ from: 0, to: 40_000 }, 60);
    expect(store.getState().view).toEqual({ from: 0, to: 40_000 });
    store.getState().showExactly({ from: 10_000, to: 12_000 });
    store.getState().resize({ from: 0, to: 50_000 }, 60);
    expect(store.getState().view).toEqual({ from: 10_000, to: 12_000 });
  });
});

describe('the crosshair', () => {
  it('stays within the firing', () => {
    const store = begun();
    store.getState().moveTo(-500);
    expect(store.getState().atSeconds).toBe(0);
    store.getState().moveTo(1e9);
    expect(store.getState().atSeconds).toBe(36_000);
  });

  it('takes the view along when it leaves it', () => {
    const store = begun();
    store.getState().showExactly({ from: 10_000, to: 12_000 });
    store.getState().moveTo(12_500);
    expect(store.getState().view).toEqual({ from: 10_500, to: 12_500 });
    store.getState().moveTo(9000);
    expect(store.getState().view).toEqual({ from: 9000, to: 11_000 });
  });
});
