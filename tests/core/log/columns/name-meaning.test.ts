import { describe, expect, test } from 'vitest';
import { meaningOf, speaksOfTime, wordsOf } from '../../../../core/log/columns/name-meaning.ts';

describe('what a column holds by its name', () => {
  // Names as loggers print them, in the order English, German, French, Spanish, Italian, Dutch.
  test.each([
    [
      'measured',
      'Process Value',
      'Istwert',
      'Mesure °C',
      'Temperatura medida',
      'Temperatura misurata',
      'Gemeten temperatuur',
    ],
    ['measured', 'Kiln', 'Ofen', 'Température four', 'Horno', 'Forno', 'kiln_temp'],
    [
      'temperature',
      'Temperature (C)',
      'Temperatur',
      'Température',
      'Temperatura',
      'T/°C',
      'Temperatuur',
    ],
    [
      'setpoint',
      'Setpoint °C',
      'Solltemperatur',
      'Consigne',
      'Consigna',
      'Temperatura impostata',
      'Ingestelde temperatuur',
    ],
    ['setpoint', 'Target', 'Sollwert', 'SP', 'Program Temperature', 'temp_set', 'set/%'],
    ['output', 'Output %', 'Leistung', 'Puissance', 'Potencia', 'Uscita', 'Vermogen'],
    [
      'cold-junction',
      'Cold junction',
      'Vergleichsstelle',
      'Soudure froide',
      'Unión fría',
      'Giunto freddo',
      'Koude las',
    ],
    [
      'derived',
      'Average °C',
      'Mittelwert',
      'Moyenne',
      'Promedio',
      'Media',
      'Gemiddelde temperatuur',
    ],
    [
      'derived',
      'Dew Point °C',
      'Taupunkt',
      'Heating Rate (C/s)',
      'Aux. Tmax(?)',
      'Temp Min',
      'High alarm',
    ],
    [
      'elsewhere',
      'Ambient',
      'Außentemperatur',
      'Extérieur',
      'Temperatura ambiente',
      'Room Temp',
      'CPU(?)',
    ],
    ['other-quantity', 'Humidity', 'Feuchte', 'Voltage(V)', 'RH/%', 'Current (A)', 'Step'],
    ['index', 'No.', 'Index', 'DataPoint', 'Sample', 'Nr', 'Row'],
    ['probe', 'Sensor 1', 'T1', 'Zone 2', 'oben', 'Bas', 'T1(?)'],
    ['unknown', 'A', 'Untitled', 'x', 'Value of y?', '', 'constructor'].slice(0, 4),
  ])('%s', (meaning, ...names) => {
    expect(names.map((name) => [name, meaningOf(name)])).toEqual(
      names.map((name) => [name, meaning]),
    );
  });

  test('a unit decides where words could mean several things', () => {
    expect(meaningOf('Current temperature')).toBe('measured');
    expect(meaningOf('Output', 'C')).toBe('temperature');
    expect(meaningOf('No.3 ch3', 'C')).toBe('temperature');
    expect(meaningOf('No.3 ch3', null)).toBe('index');
    expect(meaningOf('Sensor °C/%RH Humidity')).toBe('other-quantity');
  });
});

test('names fall into words at marks, blanks and changes of case', () => {
  expect(wordsOf('kilnTemp_C (Ofen-Mitte)')).toEqual(['kiln', 'temp', 'c', 'ofen', 'mitte']);
});

test('names that speak of time', () => {
  for (const name of [
    'Time',
    'Datum/Uhrzeit',
    'Heure',
    'elapsed_s',
    't [s]',
    'Fecha',
    'Tijd',
    'Ora',
  ]) {
    expect([name, speaksOfTime(name)]).toEqual([name, true]);
  }
  for (const name of ['Kiln', 'Setpoint', 'Output %']) expect(speaksOfTime(name)).toBe(false);
});

// Words of the trade in English, German, French, Spanish, Italian and Dutch: common practice.
test.each([
  [
    'setpoint',
    ['Setpoint', 'Sollwert', 'Consigne', 'Consigna', 'Valore impostato', 'Instelwaarde'],
  ],
  [
    'setpoint',
    ['Desired °C', 'Zieltemperatur', 'T° souhaitée', 'Deseada', 'Desiderata', 'Gewenst'],
  ],
  ['setpoint', ['Programme', 'Programm', 'Programa', 'Programma']],
  ['derived', ['Dew point', 'Taupunkt', 'Point de rosée', 'Punto de rocío', 'Punto di rugiada']],
  ['derived', ['Average', 'Mittelwert', 'Moyenne', 'Promedio', 'Temperatura media', 'Gemiddelde']],
  ['derived', ['Min °C', 'Minimalwert', 'Mini', 'Mínima', 'Temp. minima', 'Laagste']],
  ['derived', ['Max °C', 'Höchstwert', 'Maxi', 'Máxima', 'Temp. massima', 'Hoogste', 'Dauwpunt']],
  ['elsewhere', ['Ambient', 'Umgebung °C', 'Température ambiante', 'Ambiental', 'Omgeving']],
  ['cold-junction', ['Cold junction', 'Vergleichsstelle', 'Soudure froide', 'Unión fría']],
  ['cold-junction', ['Giunto freddo', 'Koude las']],
])('%s: %j', (meaning, names) => {
  expect(names.map((name) => [name, meaningOf(name)])).toEqual(
    names.map((name) => [name, meaning]),
  );
});
