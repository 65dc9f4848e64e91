import { Button, Menu, MenuItem, MenuTrigger, Popover, Separator } from 'react-aria-components';
import { openFiring, TEXT_STEPS } from '../state/store.ts';
import { useApp, useAppStore } from '../state/use-app.ts';
import { useHistory } from '../history/use-history.ts';
import { useActions } from './use-actions.ts';
import './bar.css';

interface Choice {
  readonly id: string;
  readonly label: string;
  readonly isOn?: boolean;
  readonly act: () => void;
}

interface BarMenuProps {
  readonly label: string;
  readonly groups: readonly (readonly Choice[])[];
}

/** A menu of the bar; what is on is ticked. */
const BarMenu = ({ label, groups }: BarMenuProps) => {
  const act = (id: string): void =>
    groups
      .flat()
      .find((choice) => choice.id === id)
      ?.act();
  return (
    <MenuTrigger>
      <Button className="button">
        {label} <span aria-hidden="true">▾</span>
      </Button>
      <Popover className="menu-popover" placement="bottom end">
        <Menu className="menu" aria-label={label} onAction={(key) => act(String(key))}>
          {groups.flatMap((choices, index) => [
            ...(index === 0 ? [] : [<Separator key={`line-${index}`} className="menu-line" />]),
            ...choices.map(({ id, label: text, isOn }) => (
              <MenuItem key={id} id={id} className="menu-item" textValue={text}>
                <span className="menu-tick" aria-hidden="true">
                  {isOn === true ? '✓' : ''}
                </span>
                {text}
                {isOn === true ? <span className="unseen"> (chosen)</span> : null}
              </MenuItem>
            )),
          ])}
        </Menu>
      </Popover>
    </MenuTrigger>
  );
};

const SaveMenu = () => {
  const actions = useActions();
  return (
    <BarMenu
      label="Save"
      groups={[
        [
          { id: 'report', label: 'Report as HTML…', act: actions.saveReport },
          { id: 'print', label: 'Print the report…', act: actions.print },
          { id: 'copy', label: 'Copy the verdict as text', act: actions.copyVerdict },
        ],
        [
          { id: 'curve', label: 'Curve as CSV…', act: actions.saveCurve },
          { id: 'legs', label: 'Legs as CSV…', act: actions.saveLegs },
        ],
      ]}
    />
  );
};

const THEMES = [
  ['system', 'As the system'],
  ['light', 'Light'],
  ['dark', 'Dark'],
] as const;

const ViewMenu = () => {
  const store = useAppStore();
  const { theme, textPercent } = useApp((state) => state.preferences);
  const { setPreferences, showDialog } = store.getState();
  return (
    <BarMenu
      label="View"
      groups={[
        THEMES.map(([name, label]) => ({
          id: name,
          label,
          isOn: theme === name,
          act: () => setPreferences({ theme: name }),
        })),
        TEXT_STEPS.map((step) => ({
          id: `text-${step}`,
          label: `Text at ${step} %`,
          isOn: textPercent === step,
          act: () => setPreferences({ textPercent: step }),
        })),
        [
          { id: 'rules', label: 'Reading rules…', act: () => showDialog('rules') },
          { id: 'about', label: 'About Afterfire', act: () => showDialog('about') },
        ],
      ]}
    />
  );
};

const UnitSwitch = () => {
  const unit = useApp((state) => state.preferences.unit);
  const { setPreferences } = useAppStore().getState();
  return (
    <div className="unit-switch" role="group" aria-label="Unit of temperature">
      {(['C', 'F'] as const).map((name) => (
        <button
          key={name}
          type="button"
          className="button"
          aria-pressed={unit === name}
          aria-label={name === 'C' ? 'Degrees Celsius' : 'Degrees Fahrenheit'}
          onClick={() => setPreferences({ unit: name })}
        >
          °{name}
        </button>
      ))}
    </div>
  );
};

/** Back from the sheet of one firing to the history that it belongs to. */
const HistoryButton = () => {
  const { backToHistory } = useActions();
  const isAway = useHistory(({ isShown, history }) => !isShown && history.kind !== 'none');
  const count = useHistory(({ logs }) => logs.length);
  return isAway ? (
    <button type="button" className="button" onClick={backToHistory}>
      History of {count}
    </button>
  ) : null;
};

/** The one bar of the window: open, tell, unit, save, view, keys. */
export const Bar = () => {
  const actions = useActions();
  const store = useAppStore();
  const isTelling = useApp((state) => state.isTelling);
  const isHistory = useHistory(({ isShown }) => isShown);
  const hasFiring = useApp((state) => openFiring(state) !== null) && !isHistory;
  const { showTelling, showDialog } = store.getState();
  return (
    <header className="bar">
      <span className="bar-name">Afterfire</span>
      <button type="button" className="button" onClick={actions.openLogs}>
        Open a log…
      </button>
      <button type="button" className="button" onClick={actions.typeIn}>
        Type readings in…
      </button>
      <button
        type="button"
        className="button"
        aria-expanded={isTelling}
        aria-controls="telling"
        onClick={() => showTelling(!isTelling)}
      >
        Schedule and kiln
      </button>
      <HistoryButton />
      <span className="bar-space" />
      <UnitSwitch />
      {hasFiring ? <SaveMenu /> : null}
      <ViewMenu />
      <button type="button" className="button" onClick={() => showDialog('keys')}>
        Keys
      </button>
    </header>
  );
};
