// What a person ticks, which faults fit it, and what to look at next.
(() => {
  const {byId, data, el} = Elements;
  const {W_ID, W_COLOUR, ask, pointText, wiresAt, swatch} = Wiring;
  const clues = data.clues;
  if (clues.leftOut || !clues.faults.length) return;
  const MOST_SUSPECTS = 15;
  const WORDS = {works: 'works', dim: 'dim or weak', dead: 'dead', off: 'off', live: 'live',
    volts: 'volts', nothing: 'nothing'};
  const CHOICES = {w: ['works', 'dim', 'dead'], r: ['off', 'live']};
  let seen = [];
  let state = 0;

  const same = (one, other) => one.state === other.state && one.load === other.load && one.contact === other.contact;
  const sawAt = what => seen.find(one => same(one, what));
  function say(what, saw) {
    seen = seen.filter(one => !same(one, what));
    if (saw) seen.push({...what, saw});
    draw();
  }

  // The buttons of the list stay while one is pressed, so that nothing moves below a thumb.
  let pressed = [];
  function segment(what, answers, big) {
    const now = sawAt(what);
    return el('div', {class: 'segment' + (big ? ' big' : ''), role: 'group'}, answers.map(answer => {
      const on = Boolean(now) && now.saw === answer;
      const button = el('button', {type: 'button', 'aria-pressed': String(on)}, WORDS[answer]);
      button.addEventListener('click', () => {
        const before = sawAt(what);
        say(what, before && before.saw === answer ? null : answer);
      });
      pressed.push(() => {
        const saw = sawAt(what);
        button.setAttribute('aria-pressed', String(Boolean(saw) && saw.saw === answer));
      });
      return button;
    }));
  }

  const thing = one => (one.load !== undefined ? clues.loads[one.load] : pointText(clues.contacts[one.contact]));

  function drawLoads() {
    pressed = [];
    const wanted = byId('load-filter').value.trim().toLowerCase();
    const list = kind => clues.loads.map((name, load) => ({name, load}))
      .filter(({name, load}) => clues.whole[state][load] === kind && name.toLowerCase().includes(wanted))
      .map(({name, load}) => el('div', {class: 'load'}, el('span', {class: 'name'}, name),
        segment({state, load}, CHOICES[kind], false)));
    const works = list('w');
    const rests = list('r');
    byId('load-list').replaceChildren(
      el('h3', {}, 'Should work in this state'), ...(works.length ? works : [el('p', {class: 'soft'}, 'none')]),
      el('h3', {}, 'Should be dead in this state'), ...(rests.length ? rests : [el('p', {class: 'soft'}, 'none')]));
  }

  function drawSeen() {
    const clear = el('button', {type: 'button', class: 'plain'}, 'Begin again');
    clear.addEventListener('click', () => { seen = []; draw(); });
    byId('seen').replaceChildren(...(seen.length ? [el('ul', {class: 'chips'}, seen.map(one => {
      const off = el('button', {type: 'button', 'aria-label': 'take back ' + thing(one) + ' ' + WORDS[one.saw]}, '×');
      off.addEventListener('click', () => say(one, null));
      return el('li', {}, el('b', {}, thing(one)), ' ' + WORDS[one.saw] + ', ' + clues.states[one.state] + ' ', off);
    })), clear] : []));
  }

  function suspect(one, number) {
    const fault = clues.faults[one.fault];
    return el('li', {value: String(number)}, el('b', {}, fault[0]), ' ', ask(fault[4], 'show'),
      one.more ? el('span', {class: 'soft line-of'}, 'does ' + one.more
        + (one.more === 1 ? ' thing' : ' things') + ' more than you ticked') : null);
  }

  function probe(best, total) {
    if (!best) {
      return el('p', {}, total > 1 ? 'No load and no reading that the files know tells these apart: look at them one by one.' : '');
    }
    const where = {state: best.state};
    if (best.load !== undefined) where.load = best.load;
    else where.contact = best.contact;
    const how = best.answers.map((answer, i) => WORDS[answer] + ': ' + best.left[i] + ' left').join(', ');
    const contact = best.contact === undefined ? null : clues.contacts[best.contact];
    return el('div', {class: 'probe card'}, el('h3', {}, 'Look here next'),
      el('p', {}, 'In state ', el('b', {}, clues.states[best.state]), ': ', contact === null
        ? ['what does ', el('b', {}, thing(best)), ' do?']
        : ['black lead on ', el('b', {}, clues.black), ', red lead on ', ask(pointText(contact)), ' ',
          wiresAt[contact].map(([w]) => [...swatch(data.wires[w][W_COLOUR]), ' ', data.wires[w][W_ID], ' ']),
          '. More than half of the battery’s volts, or about nothing?']),
      segment(where, best.answers, true), el('p', {class: 'soft'}, how));
  }

  function drawSuspects() {
    const out = byId('suspects');
    byId('count').hidden = !seen.length;
    if (!seen.length) {
      out.replaceChildren(el('p', {}, 'Choose the state the vehicle is in and tick what is dead, dim, or live though it should not be.'));
      return;
    }
    const {misses, found} = Suspects.find(clues, seen);
    const shown = found.slice(0, MOST_SUSPECTS);
    const head = !found.length ? 'No single fault of the table does any of this'
      : misses ? 'No single fault does all of this; nearest, ' + misses + ' of ' + seen.length + ' against it'
        : found.length === 1 ? 'One suspect' : found.length + ' suspects, the best first';
    byId('count').textContent = (misses ? 'no fault fits; ' : '') + found.length
      + (found.length === 1 ? ' suspect' : ' suspects') + ': show';
    out.replaceChildren(el('div', {class: 'card'}, el('h3', {}, head),
      el('ol', {class: 'suspects'}, shown.map((one, i) => suspect(one, i + 1))),
      found.length > shown.length ? el('p', {class: 'soft'}, 'and ' + (found.length - shown.length) + ' more') : null),
    misses || found.length < 2 ? '' : probe(Suspects.next(clues, found.map(one => one.fault), seen), found.length));
  }

  function draw() {
    const kept = pressed;
    drawSeen();
    drawSuspects();
    pressed = kept;
    pressed.forEach(button => button());
  }

  const choose = byId('state');
  choose.append(...clues.states.map((name, s) => el('option', {value: String(s)}, name)));
  choose.addEventListener('change', () => { state = Number(choose.value); drawLoads(); });
  byId('load-filter').addEventListener('input', drawLoads);
  byId('symptoms').addEventListener('submit', event => event.preventDefault());
  byId('count').addEventListener('click', () => byId('suspects').scrollIntoView());
  drawLoads();
  draw();
})();
