/**
 * The words by which loggers and controllers name their columns, in English, German, French,
 * Spanish, Italian and Dutch, without accents and in lower case; common practice, no source.
 * `stems` match anywhere in a name (German and Dutch join words); `words` match whole words.
 */
export interface Vocabulary {
  readonly stems: readonly string[];
  readonly words: readonly string[];
}

export const COLD_JUNCTION: Vocabulary = {
  stems: [
    ...['coldjunction', 'cold junction', 'reference junction', 'refjunction', 'ref junction'],
    ...['vergleichsstelle', 'kaltstelle', 'soudure froide', 'jonction froide', 'union fria'],
    ...['klemmentemp', 'anschlusstemp', 'referenzstelle', 'terminal temp', 'punto freddo'],
    ...['junta fria', 'giunto freddo', 'giunzione fredda', 'koude las', 'koudelas', 'koude punt'],
  ],
  words: ['cj', 'cjc', 'cjt'],
};

/** Numbers made from a temperature, or bounds on it: never the reading itself. */
export const DERIVED: Vocabulary = {
  stems: [
    ...[
      'average',
      'minim',
      'maxim',
      'massim',
      'hochst',
      'tiefst',
      'hoogst',
      'laagst',
      'mittelwert',
      'durchschnitt',
      'moyenne',
      'promedio',
    ],
    ...['gemiddeld', 'dewpoint', 'dew point', 'taupunkt', 'rosee', 'rocio', 'rugiada', 'dauwpunt'],
    ...['alarm', 'limit', 'grenzwert', 'seuil', 'soglia', 'umbral', 'difference', 'differenz'],
    ...['diferencia', 'differenza', 'verschil', 'abweichung', 'deviation', 'desviacion', 'ecart'],
    ...['gradient', 'heating rate', 'ramp rate', 'rate of', 'heizrate', 'aufheizrate', 'vitesse'],
    ...['velocidad', 'velocita', 'snelheid', 'calibration', 'correction', 'offset', 'deadband'],
    ...['mittlere temp', 'temperatur mittel', 'lowest', 'highest', 'dew pt', 'temperature moy'],
    ...['hysteres', 'humidex', 'heat index', 'wet bulb', 'windchill', 'wind chill'],
  ],
  words: [
    ...['mini', 'maxi', 'moy', 'prom', 'gem'],
    ...['avg', 'ave', 'mean', 'min', 'max', 'tmin', 'tmax', 'tavg', 'tave', 'std', 'stdev', 'sd'],
    ...['media', 'mittel', 'delta', 'diff', 'dt', 'slope', 'rate', 'ramp', 'error', 'err', 'dev'],
    ...['hilim', 'lolim', 'range', 'count', 'counts', 'variance', 'median'],
  ],
};

export const SETPOINT: Vocabulary = {
  stems: [
    ...['setpoint', 'set point', 'setvalue', 'set value', 'settemp', 'set temp', 'sollwert'],
    ...[
      'solltemp',
      'soll temp',
      'target',
      'programme',
      'programm',
      'consigne',
      'temperature visee',
    ],
    ...['consigna', 'objetivo', 'punto de ajuste', 'impostat', 'obiettivo', 'ingesteld'],
    ...[
      'zielwert',
      'zieltemp',
      'souhaite',
      'desead',
      'desiderat',
      'instelwaarde',
      'streefwaarde',
      'streeftemp',
      'gewenst',
      'setpunt',
      'desired',
      'temp set',
      'doeltemp',
      'temperatura programada',
      'temperatura program',
      'profile temp',
    ],
  ],
  words: [
    ...['sp', 'sv', 'set', 'soll', 'program', 'prog', 'programa', 'programma', 'cible', 'doel'],
    ...['wsp', 'tsp', 'setp', 'spt', 'tset', 'tsoll', 'setting', 'commanded', 'command', 'prg'],
    ...['profile', 'profil', 'programada', 'programado', 'programmata', 'geprogrammeerd'],
  ],
};

export const OUTPUT: Vocabulary = {
  stems: [
    ...['output', 'ausgang', 'leistung', 'stellgrad', 'stellwert', 'stellgro', 'sortie'],
    ...['puissance', 'salida', 'potencia', 'uscita', 'potenza', 'uitgang', 'vermogen'],
    ...['duty', 'heat %', 'heating %', 'power'],
  ],
  words: ['out', 'op', 'pwm', 'ssr', 'load', 'heater', 'elements', 'element', 'relay', 'mv'],
};

/** Temperatures of something other than the kiln's inside. */
export const ELSEWHERE: Vocabulary = {
  stems: [
    ...[
      'ambient',
      'ambiant',
      'umgebung',
      'raumtemp',
      'omgeving',
      'outdoor',
      'outside',
      'aussen',
      'exterieur',
    ],
    ...[
      'esterno',
      'esterna',
      'exterior',
      'buiten',
      'enclosure',
      'heatsink',
      'heat sink',
      'exhaust',
    ],
    ...['combustor', 'intern', 'housing', 'gehause', 'innentemp', 'kamertemp', 'flue', 'coolant'],
  ],
  words: [
    ...['amb', 'room', 'raum', 'ambiante', 'ambiente', 'cpu', 'board', 'pcb', 'case', 'device'],
    ...['shell', 'wall', 'chip', 'mcu', 'ref', 'reference', 'logger', 'water', 'oat'],
  ],
};

/** What says that a column is the reading itself. */
export const MEASURED: Vocabulary = {
  stems: [
    ...['process value', 'processvalue', 'actual', 'measured', 'istwert', 'isttemp', 'ist temp'],
    ...['mesure', 'medida', 'medido', 'misurat', 'misura', 'effettiv', 'gemeten', 'werkelijk'],
    ...['kiln', 'furnace', 'ofen', 'forno', 'horno', 'thermocouple', 'thermoelement', 'termopar'],
    ...['termocoppia', 'thermokoppel', 'reading', 'messwert', 'brennraum', 'kammer'],
  ],
  words: [
    ...['pv', 'act', 'ist', 'tist', 'meas', 'sample', 'chamber', 'oven', 'four', 'reelle', 'reel'],
    ...['real', 'ware', 'current', 'now'],
  ],
};

export const TEMPERATURE_WORDS: Vocabulary = {
  stems: ['temperat', 'temper'],
  words: ['temp', 'temps', 'tmp'],
};

export const HUMIDITY: Vocabulary = {
  stems: ['humid', 'feucht', 'humedad', 'umidita', 'vochtig'],
  words: ['rh'],
};

export const TEMPERATURE: Vocabulary = {
  stems: ['temperat', 'temper', 'celsius', 'fahrenheit', 'kelvin', '°c', '°f', '℃', '℉'],
  words: ['temp', 'temps', 'tmp', 'tc', 'degc', 'degf', 'tempc', 'tempf'],
};

/** Places and probes: likely a temperature in a log of temperatures. */
export const PROBE: Vocabulary = {
  stems: [
    'sensor',
    'probe',
    'sonde',
    'sonda',
    'fuhler',
    'fuehler',
    'channel',
    'kanal',
    'canal',
    'zone',
  ],
  words: [
    ...[
      't',
      'ch',
      'couple',
      'top',
      'middle',
      'bottom',
      'upper',
      'lower',
      'centre',
      'center',
      'oben',
    ],
    ...['mitte', 'unten', 'haut', 'milieu', 'bas', 'arriba', 'medio', 'abajo', 'alto', 'basso'],
    ...['boven', 'midden', 'onder', 'front', 'back', 'value', 'wert', 'valeur', 'valor', 'valore'],
    ...['waarde', 'lesen', 'ts', 'tr', 'voie', 'canale', 'zona', 'kanaal', 'shelf', 'rear'],
  ],
};

/** Quantities that no temperature can be taken for. */
export const OTHER_QUANTITY: Vocabulary = {
  stems: [
    ...['humid', 'feucht', 'humedad', 'umidita', 'vochtig', 'pressure', 'druck', 'pression'],
    ...[
      'presion',
      'pressione',
      'voltage',
      'spannung',
      'tension',
      'spanning',
      'battery',
      'batterie',
    ],
    ...['weight', 'gewicht', 'masse', 'oxygen', 'sauerstoff', 'oxigeno', 'ossigeno', 'zuurstof'],
    ...['flow', 'durchfluss', 'debit', 'caudal', 'portata', 'signal', 'latitude', 'longitude'],
    ...['status', 'quality', 'qualitat', 'qualite', 'calidad', 'kwaliteit', 'validity', 'estado'],
    ...['illumin', 'energy', 'energie', 'energia', 'capacity', 'segment', 'serial'],
  ],
  words: [
    ...['rh', 'volt', 'volts', 'amps', 'amp', 'mass', 'o2', 'co', 'co2', 'gas', 'fan', 'valve'],
    ...[
      'rssi',
      'lux',
      'ph',
      'lat',
      'lon',
      'kwh',
      'wh',
      'watt',
      'watts',
      'kw',
      'step',
      'mode',
      'seg',
    ],
    ...['strom', 'corriente', 'courant', 'corrente', 'stroom', 'cost', 'cycle', 'cycles', 'code'],
  ],
};

export const INDEX: Vocabulary = {
  stems: [
    'index',
    'record',
    'datapoint',
    'data point',
    'sequence',
    'row number',
    'rowid',
    'laufende',
  ],
  words: [
    ...['no', 'nr', 'num', 'number', 'id', 'rec', 'row', 'n', 'point', 'points', 'line', 'seq'],
    ...[
      'zeile',
      'nummer',
      'ligne',
      'linea',
      'riga',
      'regel',
      'sample no',
      'counter',
      'item',
      'lfd',
    ],
  ],
};

export const TIME: Vocabulary = {
  stems: [
    ...['time', 'zeit', 'datum', 'fecha', 'tiempo', 'timestamp', 'elapsed', 'epoch', 'datetime'],
    ...['uhrzeit', 'duree', 'duracion', 'durata', 'heure', 'horodat', 'tijd', 'dauer', 'duration'],
    ...['seconds', 'sekunden', 'minuten', 'runtime', 'seconde', 'segundo', 'secondi', 'minutes'],
  ],
  words: [
    ...['date', 'data', 'hora', 'ora', 'tempo', 'temps', 'clock', 'stamp', 'unix', 'duur', 'uur'],
    ...['sec', 'secs', 's', 'min', 'mins', 'h', 'hr', 'hrs', 'hours', 'ms', 't', 'x', 'when', 'ts'],
    ...['jour', 'jours', 'dag', 'tag', 'dia', 'giorno', 'day', 'dt', 'msec', 'millis', 'horas'],
  ],
};
