import type { EndPointTable } from './published-table.ts';

/**
 * Refractory test cones, hotter than pottery goes but for the first three.
 */
export const ASTM_C24_END_POINTS: EndPointTable = {
  title:
    'ASTM C24, Standard Test Method for Pyrometric Cone Equivalent (PCE) of Fireclay and High-Alumina Refractory Materials',
  publisher: 'ASTM International',
  edition: 'not known',
  table: 'cones 12–37 at 150 °C per hour, 38 at 100, 39–42 at 600',
  obtained: 'memory',
  obtainedNote: 'recalled; not compared with print. Cone 13 is the one row also seen on a page',
  ratesCPerHour: [100, 150, 600],
  rows: [
    ['12', [null, 1337, null]],
    ['13', [null, 1349, null], 'seen'],
    ['14', [null, 1398, null]],
    ['15', [null, 1430, null]],
    ['16', [null, 1491, null]],
    ['17', [null, 1512, null]],
    ['18', [null, 1522, null]],
    ['19', [null, 1541, null]],
    ['20', [null, 1564, null]],
    ['23', [null, 1605, null]],
    ['26', [null, 1621, null]],
    ['27', [null, 1640, null]],
    ['28', [null, 1646, null]],
    ['29', [null, 1659, null]],
    ['30', [null, 1665, null]],
    ['31', [null, 1683, null]],
    ['31.5', [null, 1699, null]],
    ['32', [null, 1717, null]],
    ['32.5', [null, 1724, null]],
    ['33', [null, 1743, null]],
    ['34', [null, 1763, null]],
    ['35', [null, 1785, null]],
    ['36', [null, 1804, null]],
    ['37', [null, 1820, null]],
    ['38', [1835, null, null]],
    ['39', [null, null, 1865]],
    ['40', [null, null, 1885]],
    ['41', [null, null, 1970]],
    ['42', [null, null, 2015]],
  ],
};
