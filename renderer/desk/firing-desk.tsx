import { Button } from 'react-aria-components';
import { clean } from '../../core/report/clean.ts';
import type { OpenFiring, RefusedFiring } from '../state/firing.ts';
import { FiringChoice } from '../reading/firing-choice.tsx';
import { toldReading } from '../reading/reading-choices.ts';
import { useApp, useAppStore } from '../state/use-app.ts';
import { retold } from '../state/told.ts';
import { Desk } from './desk.tsx';
import { decisionsSaid } from './rule-words.ts';

/** What is kept of the corrections for the next file of this shape. */
const KeptRule = ({ firing }: { readonly firing: OpenFiring }) => {
  const rules = useApp((state) => state.rules);
  const { showDialog } = useAppStore().getState();
  const kept = rules.find(({ shape }) => shape === firing.shape);
  if (rules.length === 0) return null;
  return (
    <p className="quiet">
      {kept === undefined ? '' : `Kept for files of this shape as “${clean(kept.name)}”. `}
      <Button className="button-plain" onPress={() => showDialog('rules')}>
        reading rules ({rules.length})
      </Button>
    </p>
  );
};

/** Says that a log was read by a rule, with one click to read it without. */
export const ReadByRule = ({ firing }: { readonly firing: OpenFiring }) => {
  const { tell } = useAppStore().getState();
  if (firing.rule === null) return null;
  const { name, decisions } = firing.rule;
  return (
    <p className="read-by-rule small">
      <span>
        Read by your rule “{clean(name)}”: {decisionsSaid(decisions)}.
      </span>{' '}
      <Button className="button" onPress={() => void tell({ reading: undefined })}>
        Read it without
      </Button>
    </p>
  );
};

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
      firings={
        <FiringChoice
          choices={firing.words.reading.firingChoices}
          onFiring={(number) => void setTold(toldReading(told, { firing: number }))}
        />
      }
      {...{ document, unit, isWorking }}
    >
      <KeptRule firing={firing} />
    </Desk>
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
