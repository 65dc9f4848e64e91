import {
  Button,
  Header,
  Menu,
  MenuItem,
  MenuSection,
  MenuTrigger,
  Popover,
} from 'react-aria-components';
import type { OfferedSchedule } from './told-props.ts';

interface OfferedSchedulesProps {
  readonly offered: readonly OfferedSchedule[];
  readonly onChoose: (offered: OfferedSchedule) => void;
}

const ORIGINS = [
  ['kept', 'Kept on this computer'],
  ['sample', 'Samples'],
] as const;

/** The schedules at hand, in a menu. */
export const OfferedSchedules = ({ offered, onChoose }: OfferedSchedulesProps) => (
  <MenuTrigger>
    <Button className="button" isDisabled={offered.length === 0}>
      Choose <span aria-hidden="true">▾</span>
    </Button>
    <Popover className="choice-list">
      <Menu
        onAction={(key) => {
          const chosen = offered.find(({ id }) => id === key);
          if (chosen) onChoose(chosen);
        }}
      >
        {ORIGINS.map(([origin, heading]) => {
          const mine = offered.filter((one) => one.origin === origin);
          return mine.length === 0 ? null : (
            <MenuSection key={origin} id={origin}>
              <Header className="choice-header">{heading}</Header>
              {mine.map(({ id, schedule, fit }) => (
                <MenuItem key={id} id={id} textValue={schedule.name} className="choice-item">
                  {schedule.name}
                  {fit === undefined ? null : (
                    <span className="choice-aside">{`lies on this log with ${fit}`}</span>
                  )}
                </MenuItem>
              ))}
            </MenuSection>
          );
        })}
      </Menu>
    </Popover>
  </MenuTrigger>
);
