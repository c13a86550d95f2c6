// Readings that are typed in, answered on the spot, counted, kept and saved.
(() => {
  const {byId, data, sign} = Elements;
  const SIGNS = {OK: 'ok', open: 'error', joined: 'error', high: 'warning', wrong: 'guess'};
  const SAYS = {OK: 'OK', open: 'open', joined: 'joined', high: 'high', wrong: 'not a reading'};
  const rows = [...document.querySelectorAll('[data-row]')].map((line, i) => {
    const [kind, from, to, limit, open, insulation, what] = data.rows[Number(line.dataset.row)];
    return {line, number: i, kind, from, to, limit, open, insulation, what,
      box: line.querySelector('.typed'), note: line.querySelector('.note'), out: line.querySelector('.answer')};
  });

  const method = row => byId('method-' + row.kind).value;
  function reading(row) {
    const typed = Judge.typed(row.box.value);
    return typed === null || typed === 'wrong' ? typed : {...typed, method: method(row)};
  }

  function answer(row) {
    const read = reading(row);
    const said = read === null ? '' : read === 'wrong' ? 'wrong' : Judge.of(row, read);
    row.said = said;
    row.out.replaceChildren(...(said ? [sign(SIGNS[said]), SAYS[said]] : []));
    row.line.dataset.said = said;
    row.box.setAttribute('aria-invalid', String(said === 'wrong'));
  }

  function count() {
    const done = rows.filter(row => row.said && row.said !== 'wrong');
    const bad = done.filter(row => row.said !== 'OK').length;
    byId('progress').textContent = done.length + ' of ' + rows.length + ' measured'
      + (bad ? ', ' + bad + ' not OK' : done.length ? ', all OK' : '');
    byId('bar').value = done.length;
    byId('save').disabled = !done.length;
  }

  // Kept in this browser, so that a page that is closed by mistake loses nothing.
  const key = 'tugtest ring-out ' + data.key;
  function keep() {
    const kept = {by: byId('by').value, date: byId('date').value,
      rows: rows.filter(row => row.box.value || row.note.value).map(row => [row.number, row.box.value, row.note.value])};
    try {
      localStorage.setItem(key, JSON.stringify(kept));
    } catch (full) {
      byId('kept').textContent = 'This browser keeps nothing: save before you close the page.';
    }
  }

  function restore() {
    try {
      const kept = JSON.parse(localStorage.getItem(key));
      if (!kept) return;
      byId('by').value = kept.by;
      byId('date').value = kept.date;
      kept.rows.filter(([number]) => rows[number]).forEach(([number, value, note]) => {
        rows[number].box.value = value;
        rows[number].note.value = note;
      });
    } catch (nothing) {
      // Nothing usable is kept.
    }
  }

  // Of many nets tied together one pair stands in the file; a bad tie names no pair, so none does.
  function saved() {
    return rows.filter(row => row.said && row.said !== 'wrong' && row.from && !(row.kind === 'tie' && row.said !== 'OK'))
      .map(row => ({from: row.from, to: row.to, ...reading(row), by: byId('by').value.trim(),
        date: byId('date').value, note: [row.kind === 'tie' ? row.what : '', row.note.value.trim()].filter(Boolean).join('; ')}));
  }

  function save() {
    const link = document.createElement('a');
    link.href = URL.createObjectURL(new Blob([Judge.csv(saved())], {type: 'text/csv'}));
    link.download = data.file;
    link.click();
    setTimeout(() => URL.revokeObjectURL(link.href), 1000);
    const left = rows.filter(row => row.kind === 'tie' && row.said === 'joined').length;
    byId('kept').textContent = 'Saved as ' + data.file + ': put it into the folder readings beside the harness.'
      + (left ? ' ' + left + ' bad tie' + (left === 1 ? ' is' : 's are') + ' not in it: find the pair, and measure that as a row of its own.' : '');
  }

  function fresh() {
    rows.forEach(answer);
    count();
    left();
  }

  function left() {
    const only = byId('left').checked;
    rows.forEach(row => row.line.classList.toggle('done', only && row.said === 'OK'));
  }

  rows.forEach((row, i) => {
    row.box.addEventListener('input', () => {
      answer(row);
      count();
      keep();
    });
    row.note.addEventListener('input', keep);
    row.box.addEventListener('keydown', event => {
      if (event.key === 'Enter') {
        event.preventDefault();
        const next = rows.slice(i + 1).find(other => !other.line.classList.contains('done'));
        if (next) next.box.focus();
      }
    });
    row.line.querySelectorAll('[data-put]').forEach(button => button.addEventListener('click', () => {
      row.box.value = row.box.value === button.dataset.put ? '' : button.dataset.put;
      row.box.dispatchEvent(new Event('input'));
    }));
  });
  document.querySelectorAll('.setup select').forEach(choose => choose.addEventListener('change', fresh));
  byId('by').addEventListener('input', keep);
  byId('date').addEventListener('input', keep);
  byId('left').addEventListener('change', left);
  byId('save').addEventListener('click', save);
  byId('clear').addEventListener('click', () => {
    if (!confirm('Take away all readings on this page?')) return;
    rows.forEach(row => { row.box.value = ''; row.note.value = ''; });
    keep();
    fresh();
  });
  byId('bar').max = rows.length;
  restore();
  fresh();
})();
