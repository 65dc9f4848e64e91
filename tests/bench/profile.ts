import type { Profiler } from 'node:inspector';
import { Session } from 'node:inspector/promises';
import { fileURLToPath } from 'node:url';
import path from 'node:path';

const CORE = path.resolve(import.meta.dirname, '../../core');
const SAMPLING_MICROSECONDS = 500;

/** Time spent in one room of core, with everything it called outside core. */
export interface RoomTime {
  readonly room: string;
  readonly ms: number;
}

const roomOfUrl = (url: string): string | null => {
  if (!url.startsWith('file:')) return null;
  const inside = path.relative(CORE, fileURLToPath(url));
  if (inside.startsWith('..')) return null;
  const [room = ''] = inside.split(path.sep);
  return room.replace(/\.ts$/, '');
};

/** The room each node's own time belongs to: that of the nearest caller in core. */
const roomsOfNodes = (nodes: readonly Profiler.ProfileNode[]): Map<number, string> => {
  const byId = new Map(nodes.map((node) => [node.id, node]));
  const rooms = new Map<number, string>();
  const visit = (node: Profiler.ProfileNode, inherited: string): void => {
    const { functionName, url } = node.callFrame;
    const own = functionName === '(garbage collector)' ? 'collecting garbage' : roomOfUrl(url);
    const room = own ?? inherited;
    rooms.set(node.id, room);
    for (const child of node.children ?? []) visit(byId.get(child)!, room);
  };
  const [root] = nodes;
  if (root !== undefined) visit(root, 'outside core');
  return rooms;
};

/**
 * Runs some work under the sampling profiler and says in which rooms of core its time went, the
 * longest first. Packages count for the room that called them.
 */
export const timeByRoom = async (work: () => unknown): Promise<RoomTime[]> => {
  const session = new Session();
  session.connect();
  await session.post('Profiler.enable');
  await session.post('Profiler.setSamplingInterval', { interval: SAMPLING_MICROSECONDS });
  await session.post('Profiler.start');
  await work();
  const { profile } = await session.post('Profiler.stop');
  session.disconnect();
  const rooms = roomsOfNodes(profile.nodes);
  const totals = new Map<string, number>();
  (profile.samples ?? []).forEach((id, index) => {
    const room = rooms.get(id) ?? 'outside core';
    const ms = (profile.timeDeltas?.[index] ?? 0) / 1000;
    totals.set(room, (totals.get(room) ?? 0) + ms);
  });
  return [...totals].map(([room, ms]) => ({ room, ms })).sort((a, b) => b.ms - a.ms);
};
