import { protocol, type Session } from 'electron';
import { answerFromPage, type Page } from './host/page.ts';

const SCHEME = 'app';
const HOST = 'afterfire';

/** Where the window's page is: a scheme of its own, served from memory, with no network behind it. */
export const PAGE_ADDRESS = `${SCHEME}://${HOST}/`;

/** Whether an address is below the page's own. */
export const isOfPage = (address: string): boolean => address.startsWith(PAGE_ADDRESS);

/** Makes the scheme a secure one with an origin. Must be called before the app is ready. */
export const registerPageScheme = (): void => {
  protocol.registerSchemesAsPrivileged([
    { scheme: SCHEME, privileges: { standard: true, secure: true, supportFetchAPI: true } },
  ]);
};

/** Answers the page's requests for its own files. */
export const servePage = (session: Session, page: Page): void => {
  session.protocol.handle(SCHEME, (request) => {
    const [address = ''] = request.url.slice(PAGE_ADDRESS.length).split(/[?#]/);
    const isRead = request.method === 'GET' || request.method === 'HEAD';
    // An address that no file of the page has is answered as not found.
    const wanted = isRead && isOfPage(request.url) ? address : '?';
    const { status, headers, body } = answerFromPage(page, wanted);
    return new Response(body, { status, headers });
  });
};
