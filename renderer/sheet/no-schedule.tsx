import { fitsWords } from '../../core/wording/fits.ts';
import { useApp, useAppStore } from '../state/use-app.ts';
import type { ScheduleFit } from '../worker/fitting.ts';

/** More would make a choice of it again (chosen). */
const MOST_FITS = 3;

const Fits = ({ fits }: { readonly fits: readonly ScheduleFit[] }) => {
  const { tell } = useAppStore().getState();
  const { heading, percents, meaning } = fitsWords(fits.map(({ confidence }) => confidence));
  return (
    <>
      <p id="fits-heading">{heading}</p>
      <ul className="fits" aria-labelledby="fits-heading">
        {fits.map(({ schedule }, index) => (
          <li key={schedule.name}>
            <button type="button" className="button" onClick={() => void tell({ schedule })}>
              {schedule.name}
            </button>{' '}
            <span className="tabular">{percents[index]}</span>
          </li>
        ))}
      </ul>
      <p className="muted">{meaning}</p>
    </>
  );
};

/** No schedule: those kept that lie best on this log first, then the way to all others. */
export const NoSchedule = () => {
  const fits = useApp((state) => state.fits);
  const { showTelling } = useAppStore().getState();
  return (
    <div className="no-schedule small">
      <p>
        No schedule to hold the curve against.{' '}
        <button type="button" className="button" onClick={() => showTelling(true)}>
          Choose, open or type one
        </button>
      </p>
      {fits === null || fits.length === 0 ? null : <Fits fits={fits.slice(0, MOST_FITS)} />}
    </div>
  );
};
