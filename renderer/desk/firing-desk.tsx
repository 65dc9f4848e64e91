import type { OpenFiring, RefusedFiring } from '../state/firing.ts';
import { useApp, useAppStore } from '../state/use-app.ts';
import { retold } from '../state/told.ts';
import { Desk } from './desk.tsx';

/** The reading desk of the firing on the sheet. */
export const FiringDesk = ({ firing }: { readonly firing: OpenFiring }) => {
  const store = useAppStore();
  const told = useApp((state) => state.told);
  const unit = useApp((state) => state.preferences.unit);
  const { setTold, showDesk } = store.getState();
  const { document, misread, isWorking } = firing;
  return (
    <Desk
      reading={misread?.reading ?? firing.reading}
      account={firing.words.reading.account.slice(1, 3)}
      misread={misread?.message ?? null}
      options={told}
      onOptions={(next) => void setTold(next)}
      onTakeBack={() => void setTold(retold(told, { reading: document.options.reading }))}
      onClose={() => void showDesk(false)}
      {...{ document, unit, isWorking }}
    />
  );
};

/** The reading desk of a log that was refused: here it may be read after all. */
export const RefusedDesk = ({ firing }: { readonly firing: RefusedFiring }) => {
  const store = useAppStore();
  const told = useApp((state) => state.told);
  const unit = useApp((state) => state.preferences.unit);
  const { setTold } = store.getState();
  return (
    <div className="sheet refused-desk">
      <Desk
        reading={firing.reading ?? null}
        document={null}
        account={[
          'No curve can be drawn yet. Where the file was misunderstood, put it right here.',
        ]}
        misread={null}
        options={told}
        onOptions={(next) => void setTold(next)}
        onTakeBack={() => undefined}
        isWorking={firing.isWorking}
        unit={unit}
      />
    </div>
  );
};
