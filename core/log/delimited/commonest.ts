/** The commonest of several keys and how often it comes, of equals the first; null for none. */
export const commonest = <Key>(keys: readonly Key[]): { key: Key; count: number } | null => {
  const counts = new Map<Key, number>();
  for (const key of keys) counts.set(key, (counts.get(key) ?? 0) + 1);
  let best: { key: Key; count: number } | null = null;
  for (const [key, count] of counts) if (count > (best?.count ?? 0)) best = { key, count };
  return best;
};
