/** Lower case without accents: `Température` → `temperature`, `Außen` → `aussen`. */
export const fold = (text: string): string =>
  text.normalize('NFKD').replace(/\p{M}/gu, '').toLowerCase().replaceAll('ß', 'ss');
