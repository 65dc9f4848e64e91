import type { Page } from 'playwright-core';

/** What a page complains of from now on: errors and warnings of its console, its policy, its scripts. */
export const complaintsOf = (page: Page): string[] => {
  const complaints: string[] = [];
  page.on('console', (message) => {
    if (['error', 'warning'].includes(message.type())) complaints.push(message.text());
  });
  page.on('pageerror', (error) => complaints.push(error.message));
  return complaints;
};
