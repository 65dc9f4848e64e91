import { Button } from 'react-aria-components';
import { sentence } from '../../core/wording/topic.ts';
import { useApp, useAppStore } from '../state/use-app.ts';
import { decisionsSaid } from './rule-words.ts';
import { SettledText } from './settled-text.tsx';

/** Every reading rule that is kept: what it says, its name, and a way to be rid of it. */
export const RulesList = () => {
  const rules = useApp((state) => state.rules);
  const { keepRule, forgetRule } = useAppStore().getState();
  if (rules.length === 0) {
    return (
      <p className="quiet">
        None yet. Whatever you put right at the reading desk is kept for files of the same shape.
      </p>
    );
  }
  return (
    <ul className="rule-list">
      {rules.map((rule) => (
        <li key={rule.shape} className="rule">
          <SettledText
            label="Name"
            value={rule.name}
            judge={() => null}
            onSettled={(name) => {
              if (name !== null) void keepRule({ ...rule, name });
            }}
          />
          <p className="quiet">{sentence(decisionsSaid(rule.decisions))}.</p>
          <Button className="button" onPress={() => void forgetRule(rule.shape)}>
            Forget “{rule.name}”
          </Button>
        </li>
      ))}
    </ul>
  );
};
