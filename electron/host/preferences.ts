import { zPreferences } from './contract.ts';
import { keptJson } from './kept-json.ts';

/** What the person set for all firings; see `DEFAULT_PREFERENCES` for where nothing is kept. */
export const keptPreferences = keptJson('preferences.json', zPreferences);
