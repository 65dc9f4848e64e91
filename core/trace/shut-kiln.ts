/**
 * No shut kiln loses more than this share an hour of what it stands above the room (chosen: the
 * test kilns lose at most 0.3 right under the peak, and a quarter once their walls are warm) …
 */
const SHUT_PER_HOUR = 0.4;
/** … which is taken to be this warm (chosen). */
const ROOM_C = 20;

/** Whether a kiln falls faster than a shut one can, so that it was opened or its couple pulled. */
export const fallsAsOpened = (fallCPerHour: number, fromC: number): boolean =>
  fallCPerHour > SHUT_PER_HOUR * (fromC - ROOM_C);
