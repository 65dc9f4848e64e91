import {
  EVENTS,
  REQUESTS,
  type Answered,
  type EventName,
  type RequestName,
  type Sent,
  type Told,
} from '../../electron/host/contract.ts';

/** A way to the host, as far as it goes: unparsed. */
export interface Wire {
  readonly ask: (name: RequestName, sent: unknown) => Promise<unknown>;
  readonly listen: (name: EventName, listener: (told: unknown) => void) => () => void;
}

/** Asks over a wire; what comes back is parsed by the contract. */
export const ask = async <Name extends RequestName>(
  wire: Wire,
  name: Name,
  sent: Sent<Name>,
): Promise<Answered<Name>> =>
  REQUESTS[name].answered.parse(await wire.ask(name, sent)) as Answered<Name>;

/** Listens over a wire; what is told is parsed by the contract. Returns what ends the listening. */
export const listen = <Name extends EventName>(
  wire: Wire,
  name: Name,
  listener: (told: Told<Name>) => void,
): (() => void) =>
  wire.listen(name, (told) => {
    listener(EVENTS[name].parse(told) as Told<Name>);
  });
