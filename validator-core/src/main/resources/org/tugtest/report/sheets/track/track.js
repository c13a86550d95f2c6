// The rooms of the page as tabs, and the search. Texts only ever become text nodes.
const Page = (() => {
  const KIND = 0, OWNER_ID = 1, OWNER_FACTS = 2;
  const P_OWNER = 0, P_NAME = 1, P_MEETS = 2, P_NET = 3, P_PLUGGED = 4;
  const W_ID = 0, W_ENDS = 1, W_SAYS = 3, W_COLOUR = 5, W_SIZE = 6, W_CIRCUIT = 7, W_GUESS = 8,
    W_LABEL = 9, W_PROTECTED = 10;
  const E_NAME = 0, E_WHAT = 1, E_ENDS = 2, E_CIRCUIT = 4;
  const MOST_ANSWERS = 12, MOST_PINS = 80;
  const byId = id => document.getElementById(id);
  const data = JSON.parse(byId('data').textContent);
  document.documentElement.classList.add('js');

  function el(tag, attributes, ...inner) {
    const node = document.createElement(tag);
    for (const [name, value] of Object.entries(attributes || {})) {
      if (value !== null && value !== false) node.setAttribute(name, value === true ? '' : value);
    }
    node.append(...inner.flat(3).filter(part => part !== null && part !== undefined && part !== ''));
    return node;
  }

  function sign(name) {
    const svg = document.createElementNS('http://www.w3.org/2000/svg', 'svg');
    const use = document.createElementNS('http://www.w3.org/2000/svg', 'use');
    svg.setAttribute('class', 'sign sign-' + name);
    svg.setAttribute('aria-hidden', 'true');
    use.setAttribute('href', '#i-' + name);
    svg.append(use);
    return svg;
  }

  function swatch(letters) {
    if (!letters) return [el('span', {class: 'letters'}, 'no colour')];
    const codes = letters === 'GNYE' ? ['GN', 'YE'] : letters.split('/');
    const known = code => (Object.hasOwn(data.colours, code) ? code : 'none');
    const stripe = codes.length > 1 ? ' s-' + known(codes.slice(1).join('/')) : '';
    return [el('span', {class: 'sw b-' + known(codes[0]) + stripe, 'aria-hidden': 'true'}),
      el('span', {class: 'letters'}, letters)];
  }

  const colourName = letters => (letters === 'GNYE' ? ['GN', 'YE'] : letters.split('/'))
    .map((code, i) => (Object.hasOwn(data.colours, code) ? data.colours[code] : code)
      + (i ? ' stripe' : '')).join(', ');

  // What hangs where.
  const wiresAt = data.points.map(() => []);
  data.wires.forEach((wire, w) => {
    for (const end of [0, 1]) if (wire[W_ENDS + end] >= 0) wiresAt[wire[W_ENDS + end]].push([w, end]);
  });
  const elementsAt = data.points.map(() => []);
  data.elements.forEach((element, e) => {
    for (const end of [0, 1]) if (element[E_ENDS + end] >= 0) elementsAt[element[E_ENDS + end]].push(e);
  });
  const pointsOf = data.owners.map(() => []);
  data.points.forEach((point, p) => pointsOf[point[P_OWNER]].push(p));
  const pointsIn = data.nets.map(() => []);
  data.points.forEach((point, p) => { if (point[P_NET] >= 0) pointsIn[point[P_NET]].push(p); });
  const faceOf = new Map(data.faces.map(face => [face[0], face]));
  const pointText = p => {
    const owner = data.owners[data.points[p][P_OWNER]];
    return owner[KIND] === 'splice' ? owner[OWNER_ID] : owner[OWNER_ID] + ':' + data.points[p][P_NAME];
  };

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
  function reveal(fragment) {
    const target = fragment ? byId(decodeURIComponent(fragment.slice(1))) : null;
    const room = target && target.closest('[data-tab]');
    if (!room) return;
    show(room);
    for (let up = target; up; up = up.parentElement) if (up.tagName === 'DETAILS') up.open = true;
    target.scrollIntoView();
  }

  function ask(text, shown) {
    const button = el('button', {type: 'button', class: 'ask-for'}, shown || text);
    button.addEventListener('click', () => lookUp(text, true));
    return button;
  }
  const pointButton = p => ask(pointText(p));

  // Answers.
  const otherEnd = (wire, end) => {
    const other = 1 - end;
    if (wire[W_ENDS + other] >= 0) return pointButton(wire[W_ENDS + other]);
    return wire[W_SAYS + other] ? wire[W_SAYS + other] + ' (not known)' : 'nothing';
  };

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
  const fold = text => text.trim().toLowerCase().replace(/[\s:]+/g, ' ');
  let index = null;
  function things() {
    if (index) return index;
    index = [];
    const put = (name, noun, about) => index.push([fold(name), noun, about]);
    data.points.forEach((point, p) => {
      if (data.owners[point[P_OWNER]][KIND] !== 'splice') put(pointText(p), 'contact', () => aboutPoint(p));
    });
    data.wires.forEach((wire, w) => {
      put(wire[W_ID], 'wire', () => aboutWire(w));
      if (wire[W_LABEL]) put(wire[W_LABEL], 'wire', () => aboutWire(w));
    });
    data.owners.forEach((owner, o) => put(owner[OWNER_ID], owner[KIND],
      owner[KIND] === 'splice' && pointsOf[o].length ? () => aboutPoint(pointsOf[o][0]) : () => aboutOwner(o)));
    data.elements.forEach((element, e) => put(element[E_NAME], 'part of a device', () => aboutElement(e)));
    const circuits = new Map();
    data.wires.forEach((wire, w) => {
      const name = fold(wire[W_CIRCUIT]);
      if (name) circuits.set(name, [...(circuits.get(name) || []), w]);
    });
    circuits.forEach(wires => {
      const name = data.wires[wires[0]][W_CIRCUIT];
      put(name, 'circuit', () => aboutCircuit(name, wires));
    });
    data.nets.forEach((name, net) => {
      if (pointsIn[net].length) put('net ' + name, 'net', () => aboutPoint(pointsIn[net][0]));
    });
    return index;
  }

  function find(text) {
    const key = fold(text);
    const exact = things().filter(thing => thing[0] === key);
    if (exact.length) return exact;
    const begins = things().filter(thing => thing[0].startsWith(key));
    return begins.length ? begins : things().filter(thing => thing[0].includes(key));
  }

  function lookUp(text, go) {
    const answer = byId('ask-answer');
    const status = byId('ask-status');
    if (go) {
      byId('ask-box').value = text;
      document.querySelectorAll('details.losses').forEach(fold => { fold.open = false; });
  show(byId('ask'));
    }
    if (!fold(text)) {
      answer.replaceChildren();
      status.textContent = '';
      return;
    }
    const found = find(text);
    status.textContent = found.length
      ? 'Found ' + found.length + (found.length > MOST_ANSWERS ? '; the first ' + MOST_ANSWERS + ' are shown.' : '.')
      : 'Nothing is called ' + text.trim() + '.';
    answer.replaceChildren(...found.slice(0, MOST_ANSWERS)
      .map(thing => el('article', {class: 'card answer', tabindex: '-1'}, thing[2]())));
    if (go) {
      scrollTo(0, byId('tabs').offsetTop);
      (answer.firstElementChild || byId('ask-box')).focus({preventScroll: true});
    }
  }

  document.querySelectorAll('[data-ask]').forEach(place =>
    place.replaceChildren(ask(place.dataset.ask, place.textContent)));
  const box = byId('ask-box');
  let waiting = 0;
  box.addEventListener('input', () => {
    clearTimeout(waiting);
    waiting = setTimeout(() => lookUp(box.value, false), 150);
  });
  byId('ask-form').addEventListener('submit', event => {
    event.preventDefault();
    clearTimeout(waiting);
    lookUp(box.value, false);
    if (byId('ask-answer').firstElementChild) byId('ask-answer').firstElementChild.focus({preventScroll: true});
  });
  document.querySelectorAll('details.losses').forEach(fold => { fold.open = false; });
  show(byId('ask'));
  // By the click itself: a second click on the same link changes no fragment.
  document.addEventListener('click', event => {
    const link = event.target.closest('a[href^="#"]');
    const elsewhere = event.button || event.ctrlKey || event.metaKey || event.shiftKey || event.altKey;
    if (link && !elsewhere && !event.defaultPrevented) reveal(link.getAttribute('href'));
  });
  addEventListener('hashchange', () => reveal(location.hash));
  addEventListener('beforeprint', () => document.querySelectorAll('details.losses')
    .forEach(fold => { fold.open = true; }));
  reveal(location.hash);
  return {data, el, sign, swatch, ask, pointText, wiresAt, byId};
})();
