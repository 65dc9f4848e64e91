import { ipcMain, type IpcMainInvokeEvent, type WebContents } from 'electron';
import { isOfPage } from './app-page.ts';
import {
  EVENTS,
  REQUESTS,
  type Answered,
  type EventName,
  type RequestName,
  type Sent,
  type Told,
} from './host/contract.ts';
import { REQUEST_NAMES } from './host/message-names.ts';

/** What answers each request of the page. */
export type Answers = {
  readonly [Name in RequestName]: (sent: Sent<Name>) => Promise<Answered<Name>>;
};

/** Only the page itself is answered: the top frame of a window, at the page's own address. */
const isFromPage = ({ senderFrame }: IpcMainInvokeEvent): boolean =>
  senderFrame !== null && senderFrame.parent === null && isOfPage(senderFrame.url);

const answerOne = <Name extends RequestName>(name: Name, answer: Answers[Name]): void => {
  ipcMain.handle(name, async (event, sent: unknown): Promise<unknown> => {
    if (!isFromPage(event)) throw new Error('not a page of this program');
    return answer(REQUESTS[name].sent.parse(sent) as Sent<Name>);
  });
};

/**
 * Answers the page's requests. This module alone listens to messages: each is checked for who sent
 * it and parsed by the contract before anything is done.
 */
export const answerPage = (answers: Answers): void => {
  for (const name of REQUEST_NAMES) answerOne(name, answers[name]);
};

/** Tells the page something that it did not ask. */
export const tellPage = <Name extends EventName>(
  page: WebContents,
  name: Name,
  told: Told<Name>,
): void => {
  page.send(name, EVENTS[name].parse(told));
};
