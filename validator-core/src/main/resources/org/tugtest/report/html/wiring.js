// What the report and the track page share: colours, what hangs where, the search.
const Wiring = (() => {
  const {byId, data, el} = Elements;
  // What stands where in the lists that the data blocks of both pages have; a page's own follow.
  const AT = {KIND: 0, OWNER_ID: 1, P_OWNER: 0, P_NAME: 1, P_MEETS: 2, P_PLUGGED: 3, P_NET: 4,
    W_ID: 0, W_ENDS: 1, W_SAYS: 3, W_COLOUR: 5, W_SIZE: 6, W_CIRCUIT: 7, W_LABEL: 8, W_OWN: 9};
  const {KIND, OWNER_ID, P_OWNER, P_NAME, P_NET, W_ID, W_ENDS, W_SAYS, W_CIRCUIT, W_LABEL} = AT;
  const MOST_ANSWERS = 12;

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
  const pointsOf = data.owners.map(() => []);
  data.points.forEach((point, p) => pointsOf[point[P_OWNER]].push(p));
  const pointsIn = data.nets.map(() => []);
  data.points.forEach((point, p) => { if (point[P_NET] >= 0) pointsIn[point[P_NET]].push(p); });
  const pointText = p => {
    const owner = data.owners[data.points[p][P_OWNER]];
    return owner[KIND] === 'splice' ? owner[OWNER_ID] : owner[OWNER_ID] + ':' + data.points[p][P_NAME];
  };

  function ask(text, shown) {
    const button = el('button', {type: 'button', class: 'ask-for'}, shown || text);
    button.addEventListener('click', () => lookUp(text, true));
    return button;
  }
  const pointButton = p => ask(pointText(p));
  const otherEnd = (wire, end) => {
    const other = 1 - end;
    if (wire[W_ENDS + other] >= 0) return pointButton(wire[W_ENDS + other]);
    return wire[W_SAYS + other] ? wire[W_SAYS + other] + ' (not known)' : 'nothing';
  };

  // The index of the search: folded name, what it is, how to tell of it.
  const fold = text => text.trim().toLowerCase().replace(/[\s:]+/g, ' ');
  let page = null;
  let index = null;
  function things() {
    if (index) return index;
    index = [];
    const {about} = page;
    const put = (name, noun, tell) => index.push([fold(name), noun, tell]);
    data.points.forEach((point, p) => {
      if (data.owners[point[P_OWNER]][KIND] !== 'splice') put(pointText(p), 'contact', () => about.point(p));
    });
    data.wires.forEach((wire, w) => {
      put(wire[W_ID], 'wire', () => about.wire(w));
      if (wire[W_LABEL]) put(wire[W_LABEL], 'wire', () => about.wire(w));
    });
    data.owners.forEach((owner, o) => put(owner[OWNER_ID], owner[KIND],
      owner[KIND] === 'splice' && pointsOf[o].length ? () => about.point(pointsOf[o][0]) : () => about.owner(o)));
    const circuits = new Map();
    data.wires.forEach((wire, w) => {
      const name = fold(wire[W_CIRCUIT]);
      if (name) circuits.set(name, [...(circuits.get(name) || []), w]);
    });
    circuits.forEach(wires => {
      const name = data.wires[wires[0]][W_CIRCUIT];
      put(name, 'circuit', () => about.circuit(name, wires));
    });
    page.more(put);
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
      page.leave();
    }
    if (!fold(text)) {
      answer.replaceChildren();
      status.textContent = '';
      return;
    }
    const found = find(text);
    status.textContent = page.says(found, text.trim(), MOST_ANSWERS);
    answer.replaceChildren(...found.slice(0, MOST_ANSWERS)
      .map(thing => el('article', {class: 'card answer', tabindex: '-1'}, thing[2]())));
    if (go) {
      page.arrive();
      (answer.firstElementChild || byId('ask-box')).focus({preventScroll: true});
    }
  }

  // Makes the search of a page work: how it tells of things (about), what else can be found (more),
  // what the live region says (says), and how it goes to the answer of a button elsewhere (leave
  // before, arrive after).
  function search(of) {
    page = of;
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
      const first = byId('ask-answer').firstElementChild;
      if (first) first.focus({preventScroll: page.still});
    });
  }

  // An anchor that is folded or put away is brought to light by bring(), now and at each link.
  function follow(bring) {
    const reveal = fragment => {
      const target = fragment ? byId(decodeURIComponent(fragment.slice(1))) : null;
      if (!target) return;
      bring(target);
      target.scrollIntoView();
    };
    // By the click itself: a second click on the same link changes no fragment.
    document.addEventListener('click', event => {
      const link = event.target.closest('a[href^="#"]');
      const elsewhere = event.button || event.ctrlKey || event.metaKey || event.shiftKey || event.altKey;
      if (link && !elsewhere && !event.defaultPrevented) reveal(link.getAttribute('href'));
    });
    addEventListener('hashchange', () => reveal(location.hash));
    reveal(location.hash);
  }

  return {...AT, swatch, colourName, wiresAt, pointsOf, pointsIn, pointText, pointButton, otherEnd, ask, search, follow};
})();
