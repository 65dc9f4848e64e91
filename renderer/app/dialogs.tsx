import { Caution } from '../controls/caution.tsx';
import { CURVE_KEYS } from '../curve/keys.ts';
import '../desk/desk.css';
import { RulesList } from '../desk/rules-dialog.tsx';
import { useApp, useAppStore } from '../state/use-app.ts';
import { TypedDialog } from '../typed/typed-dialog.tsx';
import { SheetDialog } from './sheet-dialog.tsx';
import { SHORTCUTS } from './shortcuts.ts';

interface KeyListProps {
  readonly title: string;
  readonly keys: readonly { readonly shown: string; readonly does: string }[];
}

const KeyList = ({ title, keys }: KeyListProps) => (
  <section>
    <h3>{title}</h3>
    <dl className="key-list">
      {keys.map(({ shown, does }) => (
        <div key={shown}>
          <dt>
            <kbd>{shown}</kbd>
          </dt>
          <dd>{does}</dd>
        </div>
      ))}
    </dl>
  </section>
);

/** Some people's tools type single keys by accident (WCAG 2.1.4). */
const SingleKeysSwitch = () => {
  const { singleKeys } = useApp((state) => state.preferences);
  const { setPreferences } = useAppStore().getState();
  return (
    <label className="switch">
      <input
        type="checkbox"
        checked={singleKeys}
        onChange={({ target }) => setPreferences({ singleKeys: target.checked })}
      />
      Single keys do things (off where speech or a switch types them by accident)
    </label>
  );
};

const KeysDialog = ({ onClose }: { readonly onClose: () => void }) => (
  <SheetDialog title="Keys" onClose={onClose}>
    <div className="key-columns">
      <KeyList title="Anywhere" keys={SHORTCUTS} />
      <div>
        <KeyList title="On the curve" keys={CURVE_KEYS} />
        <h3>With the pointer</h3>
        <p>
          Turn the wheel to look closer, drag across a stretch to bring it up, drag with Shift to
          move along, double-click for the whole firing. On a touch screen, pinch.
        </p>
        <SingleKeysSwitch />
      </div>
    </div>
  </SheetDialog>
);

const AboutDialog = ({ onClose }: { readonly onClose: () => void }) => (
  <SheetDialog title="About Afterfire" onClose={onClose}>
    <p>
      Afterfire reads the temperature log of a firing after it is over and says what the kiln did,
      how much heat-work the ware got, what went wrong and what to change.
    </p>
    <p>Everything is worked out on this computer. No log and no answer leaves it.</p>
    <Caution>
      A reading of a log is advice, not protection: it replaces neither witness cones nor an
      over-temperature cut-out. Local codes and licensed practice decide.
    </Caution>
  </SheetDialog>
);

/** Whichever dialog is open. */
export const Dialogs = () => {
  const dialog = useApp((state) => state.dialog);
  const { showDialog } = useAppStore().getState();
  const onClose = (): void => showDialog(null);
  if (dialog === 'keys') return <KeysDialog onClose={onClose} />;
  if (dialog === 'typed-in') {
    return (
      <SheetDialog title="Type readings in" onClose={onClose} isWide>
        <TypedDialog />
      </SheetDialog>
    );
  }
  if (dialog === 'rules') {
    return (
      <SheetDialog title="Reading rules" onClose={onClose}>
        <p>Logs of the same shape are read by these without being asked.</p>
        <RulesList />
      </SheetDialog>
    );
  }
  return dialog === 'about' ? <AboutDialog onClose={onClose} /> : null;
};
