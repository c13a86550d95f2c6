'use strict';
// What a typed reading says of a row, in the words of the rules on readings.
//
// A row is {kind: 'joined' | 'apart', limit, open, insulation}: from `open` ohms on two points are
// not joined; under `insulation` they are when insulation was measured; over `limit` a joint is high;
// null: not known. A reading is {ohms, joined, method}.
const Judge = (() => {
  const MOST_OHMS = 1e10;
  const OPEN = ['open', 'ol', 'o.l', 'o.l.', 'no', 'n', '∞', '-'];
  const JOINED = ['joined', 'ok', 'yes', 'y', 'beep', 'beeps'];
  const FACTOR = {'': 1, k: 1e3, m: 1e6, g: 1e9};

  // What a person typed; null: nothing, and 'wrong' for what cannot be read.
  function typed(text) {
    const word = text.trim().toLowerCase().replace(/\s+/g, '').replace(/(ohms?|ω|Ω)$/u, '');
    if (!word) return null;
    if (OPEN.includes(word)) return {ohms: null, joined: false};
    if (JOINED.includes(word)) return {ohms: null, joined: true};
    const number = /^>?(\d{1,12}(?:[.,]\d{1,12})?)([kmg]?)$/.exec(word);
    if (!number || (number[2] === 'm' && !/M\s*(ohms?|Ω)?\s*$/u.test(text))) return 'wrong';
    const ohms = Number(number[1].replace(',', '.')) * FACTOR[number[2]];
    return ohms <= MOST_OHMS ? {ohms, joined: null} : 'wrong';
  }

  function joins(reading, open, insulation) {
    if (reading.joined !== null) return reading.joined;
    return reading.ohms < (reading.method === 'insulation' ? insulation : open);
  }

  function of(row, reading) {
    if (row.kind !== 'joined') return joins(reading, row.open, row.insulation) ? 'joined' : 'OK';
    if (!joins(reading, row.open, row.open)) return 'open';
    const judged = reading.ohms !== null && reading.method !== 'insulation' && row.limit !== null;
    return judged && reading.ohms > row.limit ? 'high' : 'OK';
  }

  // A plain number as the format of readings wants it.
  function plain(ohms) {
    const text = String(ohms);
    return /e/.test(text) ? ohms.toFixed(12).replace(/\.?0+$/, '') : text;
  }

  const field = text => (/[",\r\n]/.test(text) ? '"' + text.replace(/"/g, '""') + '"' : text);

  // The file that the goal as-built reads.
  function csv(readings) {
    const lines = readings.map(one => [one.from, one.to, one.ohms === null ? '' : plain(one.ohms),
      one.joined === null ? '' : one.joined ? 'yes' : 'no', one.method, one.by, one.date, one.note]);
    return [['from', 'to', 'ohms', 'joined', 'method', 'by', 'date', 'note'], ...lines]
      .map(line => line.map(field).join(',')).join('\n') + '\n';
  }

  return {typed, of, csv};
})();
