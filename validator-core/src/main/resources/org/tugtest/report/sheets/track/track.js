// The rooms of the page as tabs, and what the search answers.
(() => {
  const {byId, data, el, sign} = Elements;
  const {KIND, OWNER_ID, P_OWNER, P_NAME, P_MEETS, P_PLUGGED, P_NET, W_ID, W_ENDS, W_COLOUR, W_SIZE, W_CIRCUIT,
    W_LABEL, W_OWN, swatch, colourName, wiresAt, pointsOf, pointsIn, pointText, pointButton, otherEnd, ask} = Wiring;
  // What stands where in the lists of the data block, beside what Wiring knows.
  const OWNER_FACTS = 2;
  const W_GUESS = W_OWN, W_PROTECTED = W_OWN + 1;
  const E_NAME = 0, E_WHAT = 1, E_ENDS = 2, E_CIRCUIT = 4;
  const MOST_PINS = 80;

  const elementsAt = data.points.map(() => []);
  data.elements.forEach((element, e) => {
    for (const end of [0, 1]) if (element[E_ENDS + end] >= 0) elementsAt[element[E_ENDS + end]].push(e);
  });
  const faceOf = new Map(data.faces.map(face => [face[0], face]));

  // Tabs: one room at a time on a screen, all of them on paper and without script.
  const rooms = [...document.querySelectorAll('[data-tab]')];
  const tabs = rooms.map(room => {
    const tab = el('button', {type: 'button', class: 'tab'}, room.dataset.tab);
    tab.addEventListener('click', () => { show(room); scrollTo(0, byId('tabs').offsetTop); });
    return tab;
  });
  byId('tabs').append(...tabs);
  function show(room) {
    rooms.forEach((one, i) => {
      one.classList.toggle('away', one !== room);
      tabs[i].setAttribute('aria-current', one === room ? 'true' : 'false');
    });
    tabs[rooms.indexOf(room)].scrollIntoView({block: 'nearest', inline: 'center'});
  }

  // Answers.
  const line = (head, ...what) => el('div', {class: 'line-of'}, el('span', {class: 'soft'}, head + ' '), what);

  function wireCard(w, end) {
    const wire = data.wires[w];
    const guard = wire[W_PROTECTED] >= 0 ? data.protecting[wire[W_PROTECTED]] : '';
    return el('div', {class: 'wire'},
      el('p', {class: 'big'}, swatch(wire[W_COLOUR]), ' ', ask(wire[W_ID]), ' ',
        wire[W_GUESS] ? el('b', {class: 'guess'}, sign('guess'), 'guess') : null),
      wire[W_COLOUR] ? line('colour', colourName(wire[W_COLOUR])) : null,
      end === null ? null : line('goes to', otherEnd(wire, end)),
      line('size', wire[W_SIZE] || 'not given'),
      wire[W_CIRCUIT] ? line('circuit', ask(wire[W_CIRCUIT])) : null,
      wire[W_LABEL] ? line('label', wire[W_LABEL]) : null,
      guard ? line('protected by', guard) : null);
  }

  function voltsTable(p) {
    const rows = data.states.map((state, s) => [state, data.volts[s][p]]);
    if (!rows.length) return null;
    return el('details', {class: 'volts', open: true}, el('summary', {}, 'Volts in each state, computed'),
      el('table', {}, el('tbody', {}, rows.map(([state, volts]) => el('tr', {}, el('th', {scope: 'row'}, state),
        el('td', {class: 'num'}, volts === null ? 'not live' : (volts / 100).toFixed(2) + ' V'))))));
  }

  function cavity(p, here) {
    if (p < 0) return el('td', {class: 'gap'});
    return el('td', {class: ['cav', wiresAt[p].length ? '' : 'empty', p === here ? 'here' : ''].filter(Boolean).join(' '),
      'aria-current': p === here ? 'true' : null},
    el('b', {class: 'no'}, ask(pointText(p), data.points[p][P_NAME])),
    wiresAt[p].length ? null : el('span', {class: 'soft'}, data.points[p][P_PLUGGED] ? [sign('plug'), 'plugged'] : 'free'),
    wiresAt[p].map(([w]) => el('span', {class: 'w'}, el('span', {class: 'id'}, data.wires[w][W_ID]), ' ',
      el('span', {class: 'col'}, swatch(data.wires[w][W_COLOUR])))));
  }

  const side = (name, rows, known, here) => el('div', {class: 'scroll', tabindex: '0', role: 'region', 'aria-label': name},
    el('table', {class: 'cavities' + (known ? ' latch' : '')}, el('caption', {}, name),
      el('tbody', {}, rows.map(row => el('tr', {}, row.map(p => cavity(p, here)))))));

  function sides(owner, here) {
    const face = faceOf.get(owner);
    if (!face) return null;
    const [, rows, known] = face;
    return el('div', {class: 'sides'}, known
      ? [side('Wire side', rows, true, here), side('Mating side, mirrored', rows.map(row => [...row].reverse()), true, here)]
      : side('Cavities in order of their names; how they lie is not known', rows, false, here));
  }

  const ownerFacts = o => [data.owners[o][KIND], ...data.owners[o][OWNER_FACTS]].join(' · ');

  function elementLines(elements) {
    return elements.slice(0, MOST_PINS).map(e => {
      const element = data.elements[e];
      return el('div', {class: 'line-of'}, ask(element[E_NAME]), ' ', element[E_WHAT],
        element[E_CIRCUIT] ? [' · ', el('a', {href: '#circuit-' + element[E_CIRCUIT]}, 'its circuit')] : null);
    });
  }

  function netPart(p) {
    const net = data.points[p][P_NET];
    if (net < 0) return null;
    const all = pointsIn[net];
    return el('details', {}, el('summary', {}, 'Net ' + data.nets[net] + ': ' + all.length + ' points joined'),
      el('p', {class: 'ids'}, all.slice(0, MOST_PINS).map(q => [el('span', {}, q === p ? el('b', {}, pointText(q)) : pointButton(q)), ' ']),
        all.length > MOST_PINS ? 'and ' + (all.length - MOST_PINS) + ' more' : null));
  }

  function aboutPoint(p) {
    const o = data.points[p][P_OWNER];
    const meets = data.points[p][P_MEETS];
    return [el('h3', {}, pointText(p)), el('p', {class: 'soft'}, ownerFacts(o)),
      wiresAt[p].length ? wiresAt[p].map(([w, end]) => wireCard(w, end))
        : el('p', {}, data.points[p][P_PLUGGED] ? 'No wire: plugged with a blank.' : 'No wire ends here.'),
      meets >= 0 ? [el('h4', {}, 'Across the plug'), el('p', {}, 'Meets ', pointButton(meets), ', ',
        ownerFacts(data.points[meets][P_OWNER]), '.'), wiresAt[meets].map(([w, end]) => wireCard(w, end)),
      elementLines(elementsAt[meets])]
        : data.owners[o][KIND] === 'connector' ? el('p', {class: 'soft'}, 'Nothing meets this cavity.') : null,
      elementsAt[p].length ? [el('h4', {}, 'Inside the device'), elementLines(elementsAt[p])] : null,
      voltsTable(p), netPart(p), sides(o, p)];
  }

  function aboutWire(w) {
    const wire = data.wires[w];
    const p = Math.max(wire[W_ENDS], wire[W_ENDS + 1]);
    return [el('h3', {}, wire[W_ID]), wireCard(w, null),
      [0, 1].map(end => {
        const at = wire[W_ENDS + end];
        const meets = at >= 0 ? data.points[at][P_MEETS] : -1;
        return line(end ? 'to' : 'from', otherEnd(wire, 1 - end),
          meets >= 0 ? [', which meets ', pointButton(meets)] : null,
          at >= 0 ? el('span', {class: 'soft'}, ' (' + ownerFacts(data.points[at][P_OWNER]) + ')') : null);
      }), p >= 0 ? [voltsTable(p), netPart(p)] : null];
  }

  function aboutOwner(o) {
    const points = pointsOf[o];
    return [el('h3', {}, data.owners[o][OWNER_ID]), el('p', {class: 'soft'}, ownerFacts(o)), sides(o, -1),
      points.slice(0, MOST_PINS).map(p => el('div', {class: 'row'}, el('b', {}, pointButton(p)),
        el('span', {}, wiresAt[p].length ? wiresAt[p].map(([w, end]) => [...swatch(data.wires[w][W_COLOUR]), ' ',
          ask(data.wires[w][W_ID]), ' to ', otherEnd(data.wires[w], end), ' '])
          : data.points[p][P_PLUGGED] ? 'plugged' : data.points[p][P_MEETS] >= 0 ? ['meets ', pointButton(data.points[p][P_MEETS])] : 'free'))),
      points.length > MOST_PINS ? el('p', {}, 'and ' + (points.length - MOST_PINS) + ' more contacts') : null];
  }

  function aboutElement(e) {
    const element = data.elements[e];
    return [el('h3', {}, element[E_NAME]), el('p', {}, element[E_WHAT]),
      element[E_CIRCUIT] ? el('p', {}, el('a', {href: '#circuit-' + element[E_CIRCUIT]}, 'Its circuit from source to load to earth')) : null,
      [0, 1].filter(end => element[E_ENDS + end] >= 0).map(end => {
        const p = element[E_ENDS + end];
        return [el('h4', {}, 'Pin ', pointButton(p)), wiresAt[p].map(([w, at]) => wireCard(w, at)),
          data.points[p][P_MEETS] >= 0 ? line('meets', pointButton(data.points[p][P_MEETS])) : null, voltsTable(p)];
      })];
  }

  const aboutCircuit = (name, wires) => [el('h3', {}, name), el('p', {class: 'soft'}, 'circuit'),
    wires.map(w => el('div', {class: 'row'}, el('b', {}, ask(data.wires[w][W_ID])), el('span', {},
      [...swatch(data.wires[w][W_COLOUR]), ' from ', otherEnd(data.wires[w], 1), ' to ', otherEnd(data.wires[w], 0)])))];

  // The search.
  function more(put) {
    data.elements.forEach((element, e) => put(element[E_NAME], 'part of a device', () => aboutElement(e)));
    data.nets.forEach((name, net) => {
      if (pointsIn[net].length) put('net ' + name, 'net', () => aboutPoint(pointsIn[net][0]));
    });
  }
  const says = (found, text, most) => (found.length
    ? 'Found ' + found.length + (found.length > most ? '; the first ' + most + ' are shown.' : '.')
    : 'Nothing is called ' + text + '.');
  const foldLosses = () => document.querySelectorAll('details.losses').forEach(fold => { fold.open = false; });
  Wiring.search({about: {point: aboutPoint, wire: aboutWire, owner: aboutOwner, circuit: aboutCircuit}, more, says,
    still: true,
    leave: () => { foldLosses(); show(byId('ask')); },
    arrive: () => scrollTo(0, byId('tabs').offsetTop)});

  document.querySelectorAll('[data-ask]').forEach(place =>
    place.replaceChildren(ask(place.dataset.ask, place.textContent)));
  foldLosses();
  show(byId('ask'));
  addEventListener('beforeprint', () => document.querySelectorAll('details.losses')
    .forEach(fold => { fold.open = true; }));
  Wiring.follow(target => {
    const room = target.closest('[data-tab]');
    if (room) show(room);
    for (let up = target; up; up = up.parentElement) if (up.tagName === 'DETAILS') up.open = true;
  });
})();
