(() => {
  const {byId, data, el, sign} = Elements;
  const {KIND, OWNER_ID, P_OWNER, P_NAME, P_MEETS, P_PLUGGED, P_NET, W_ID, W_ENDS, W_SAYS, W_COLOUR, W_SIZE,
    W_CIRCUIT, W_LABEL, W_OWN, swatch, colourName, wiresAt, pointsOf, pointsIn, pointText, pointButton, otherEnd,
    ask} = Wiring;
  // What stands where in the lists of the data block, beside what Wiring knows.
  const OWNER_LOOM = 2, OWNER_FACTS = 3, OWNER_FACE = 4;
  const W_DRAWN = W_OWN, W_EVIDENCE = W_OWN + 1, W_LOOM = W_OWN + 2, W_RUN = W_OWN + 3;
  const MOST_PINS = 80;
  const SECTIONS = {connector: 'connectors', device: 'devices', splice: 'splices'};

  // Places, and the findings on them.
  const pointPlace = p =>
    SECTIONS[data.owners[data.points[p][P_OWNER]][KIND]] + '/' + pointText(p);
  const marks = new Map();
  const mark = (place, finding) => marks.set(place, [...(marks.get(place) || []), finding]);
  data.marks.forEach(([finding, runs, places]) => {
    for (let i = 0; i < runs.length; i += 2) {
      for (let p = runs[i]; p <= runs[i + 1]; p++) mark(pointPlace(p), finding);
    }
    places.forEach(place => mark(place, finding));
  });
  const marksOf = place => marks.get(place) || [];
  const LEVELS = ['error', 'warning', 'note'];
  const unshown = new Map();
  data.unshown.forEach(([points, wires, owners], level) => [...points.map(pointPlace),
    ...wires.map(w => 'wires/' + data.wires[w][W_ID]),
    ...owners.map(o => SECTIONS[data.owners[o][KIND]] + '/' + data.owners[o][OWNER_ID])]
    .forEach(place => { if (!unshown.has(place)) unshown.set(place, level); }));

  // The gravest finding on a place: its level, its anchor, its word.
  function markOf(place) {
    const shown = marksOf(place).map(n => byId('finding-' + n))
      .map(article => [LEVELS.indexOf(article.dataset.level), article.id, article.dataset.rule]);
    const best = shown.sort((a, b) => a[0] - b[0])[0];
    const rest = unshown.has(place) ? unshown.get(place) : LEVELS.length;
    if (!best || rest < best[0]) return rest < LEVELS.length ? [LEVELS[rest], 'findings-left', LEVELS[rest]] : null;
    return [LEVELS[best[0]], best[1], best[2] === 'cavity-doubled' ? 'doubled' : LEVELS[best[0]]];
  }

  function evidence(wire) {
    if (wire[W_EVIDENCE] !== 'guess') return wire[W_EVIDENCE].replace('-', ' ') || 'not said';
    return el('b', {class: 'guess'}, sign('guess'), 'guess');
  }

  function colourCell(wire) {
    const drawn = wire[W_DRAWN];
    return el('td', {}, swatch(wire[W_COLOUR]),
      wire[W_COLOUR] ? el('span', {class: 'soft sum'}, colourName(wire[W_COLOUR])) : null,
      drawn ? el('span', {class: 'soft sum'}, 'drawn as ' + drawn) : null);
  }

  function findingLinks(places) {
    const numbers = [...new Set(places.flatMap(marksOf))].sort((a, b) => a - b);
    const rest = Math.min(...places.map(place => (unshown.has(place) ? unshown.get(place) : LEVELS.length)));
    if (!numbers.length && rest >= LEVELS.length) return null;
    return el('ul', {class: 'found'}, numbers.map(n => {
      const article = byId('finding-' + n);
      return el('li', {}, sign(article.dataset.level),
        el('a', {href: '#finding-' + n}, byId('says-' + n).textContent));
    }), rest >= LEVELS.length ? null : el('li', {}, sign(LEVELS[rest]), el('a', {href: '#findings-left'},
      (numbers.length ? 'and more' : 'at least one ' + LEVELS[rest]) + ' that this page does not show: report.json has them all')));
  }

  // On a narrow screen its rows are blocks; the roles keep it a table for those who hear it.
  function table(caption, heads, rows) {
    rows.forEach(row => {
      row.setAttribute('role', 'row');
      [...row.children].forEach((cell, i) => {
        cell.setAttribute('role', cell.tagName === 'TH' ? 'rowheader' : 'cell');
        if (cell.tagName === 'TD') cell.dataset.head = heads[i].toLowerCase();
      });
    });
    return el('div', {class: 'scroll', tabindex: '0', role: 'region', 'aria-label': caption},
      el('table', {class: 'stack', role: 'table'}, el('caption', {}, caption),
        el('thead', {role: 'rowgroup'}, el('tr', {role: 'row'},
          heads.map(head => el('th', {scope: 'col', role: 'columnheader'}, head)))),
        el('tbody', {role: 'rowgroup'}, rows)));
  }

  function wireTable(caption, ends) {
    return table(caption, ['Wire', 'Colour', 'Size', 'Goes to', 'Circuit', 'Evidence'],
      ends.map(([w, end]) => {
        const wire = data.wires[w];
        return el('tr', {}, el('th', {scope: 'row'}, ask(wire[W_ID]),
          wire[W_LABEL] ? el('span', {class: 'soft sum'}, 'label ' + wire[W_LABEL]) : null),
        colourCell(wire), el('td', {}, wire[W_SIZE] || 'not given'),
        el('td', {}, otherEnd(wire, end)),
        el('td', {}, wire[W_CIRCUIT] ? ask(wire[W_CIRCUIT]) : ''),
        el('td', {}, evidence(wire)));
      }));
  }

  // A connector face, as the page draws it too.
  function cavity(p, here) {
    if (p < 0) return el('td', {class: 'gap'});
    const mark = markOf(pointPlace(p));
    const level = mark ? mark[0] : '';
    const classes = ['cav', mark ? 'is-' + level : '', wiresAt[p].length ? '' : 'empty', p === here ? 'here' : ''];
    return el('td', {class: classes.filter(Boolean).join(' '), 'aria-current': p === here ? 'true' : null},
      el('b', {class: 'no'}, data.points[p][P_NAME]), ' ',
      mark ? el('a', {class: 'mark', href: '#' + mark[1]}, sign(level), mark[2]) : null,
      wiresAt[p].length ? null : el('span', {class: 'soft'},
        data.points[p][P_PLUGGED] ? [sign('plug'), 'plugged'] : 'free'),
      wiresAt[p].map(([w]) => {
        const wire = data.wires[w];
        return el('span', {class: 'w'}, el('span', {class: 'id'}, wire[W_ID]), ' ',
          wire[W_EVIDENCE] === 'guess' ? el('span', {class: 'guess'}, sign('guess'), 'guess') : null, ' ',
          el('span', {class: 'col'}, swatch(wire[W_COLOUR])), ' ', el('span', {class: 'size'}, wire[W_SIZE]));
      }));
  }

  function side(name, owner, rows, known, here) {
    return el('div', {class: 'scroll', tabindex: '0', role: 'region', 'aria-label': owner + ', ' + name},
      el('table', {class: 'cavities' + (known ? ' latch' : '')}, el('caption', {}, name),
        el('tbody', {}, rows.map(row => el('tr', {}, row.map(p => cavity(p, here)))))));
  }

  function sides(number, here) {
    const [owner, rows, known] = data.faces[number - 1];
    const id = data.owners[owner][OWNER_ID];
    if (!known) return [side('Cavities in order of their names', id, rows, false, here)];
    return [side('Wire side', id, rows, true, here),
      side('Mating side, mirrored', id, rows.map(row => [...row].reverse()), true, here)];
  }

  // Answers.
  function ownerFacts(o) {
    const owner = data.owners[o];
    const loom = owner[OWNER_LOOM] >= 0 ? ['loom ' + data.looms[owner[OWNER_LOOM]]] : [];
    return [owner[KIND], ...loom, ...owner[OWNER_FACTS]].join(' · ');
  }

  function netOf(p) {
    const net = data.points[p][P_NET];
    return net === undefined || net < 0 ? null : [data.nets[net], pointsIn[net]];
  }

  function netPart(p) {
    const net = netOf(p);
    if (!net) return [];
    return [el('h4', {}, 'Net ' + net[0]),
      el('p', {}, net[1].length + ' points joined by wires, contacts and splices: ',
        net[1].slice(0, MOST_PINS).map(q => [q === p ? el('b', {}, pointText(q)) : pointButton(q), ' ']).flat(),
        net[1].length > MOST_PINS ? 'and ' + (net[1].length - MOST_PINS) + ' more' : '')];
  }

  const circuitsAt = data.points.map(() => []);
  data.circuits.forEach((circuit, c) => circuit[1].forEach(p => { if (p >= 0) circuitsAt[p].push(c); }));
  function circuitLinks(through) {
    if (!through.length) return [];
    return [el('h4', {}, 'Circuits through it'), el('p', {}, through.slice(0, MOST_PINS)
      .flatMap(c => [el('a', {href: '#circuit-' + (c + 1)}, data.circuits[c][0]), ' ']),
    through.length > MOST_PINS ? 'and ' + (through.length - MOST_PINS) + ' more' : '')];
  }

  function aboutPoint(p) {
    const o = data.points[p][P_OWNER];
    const meets = data.points[p][P_MEETS];
    const splice = data.owners[o][KIND] === 'splice';
    const places = [pointPlace(p), ...wiresAt[p].map(([w]) => 'wires/' + data.wires[w][W_ID])];
    const parts = [el('h3', {}, pointText(p)), el('p', {class: 'soft'}, ownerFacts(o)), findingLinks(places)];
    parts.push(wiresAt[p].length ? wireTable('Wires on ' + pointText(p), wiresAt[p])
      : el('p', {}, splice ? 'No wire ends here.' : data.points[p][P_PLUGGED]
        ? 'No wire: plugged with a blank.' : 'No wire ends here.'));
    if (meets >= 0) {
      parts.push(el('h4', {}, 'Across the mated pair'), el('p', {}, 'Meets ', pointButton(meets), ', ',
        ownerFacts(data.points[meets][P_OWNER]), '.'));
      if (wiresAt[meets].length) parts.push(wireTable('Wires on ' + pointText(meets), wiresAt[meets]));
    } else if (!splice && data.owners[o][KIND] === 'connector') {
      parts.push(el('p', {class: 'soft'}, 'Nothing meets this cavity.'));
    }
    parts.push(...circuitLinks(circuitsAt[p]), ...netPart(p));
    if (data.owners[o][OWNER_FACE]) parts.push(el('div', {class: 'sides'}, sides(data.owners[o][OWNER_FACE], p)));
    return parts;
  }

  // Only what passes both of its ends passes the wire.
  const bothOn = wire => (wire[W_ENDS] < 0 || wire[W_ENDS + 1] < 0 ? []
    : circuitsAt[wire[W_ENDS]].filter(c => circuitsAt[wire[W_ENDS + 1]].includes(c)));

  function runLink(w) {
    const link = el('a', {href: '#loom'}, 'Show its run in the loom drawing');
    link.addEventListener('click', () => {
      byId('run-wire').value = String(w);
      byId('run-arm').value = '';
      chosenRun();
    });
    return link;
  }

  function aboutWire(w) {
    const wire = data.wires[w];
    const facts = ['wire', wire[W_LOOM] >= 0 ? 'loom ' + data.looms[wire[W_LOOM]] : '',
      wire[W_CIRCUIT] ? 'circuit ' + wire[W_CIRCUIT] : '', wire[W_LABEL] ? 'label ' + wire[W_LABEL] : ''];
    const rows = [0, 1].map(end => {
      const p = wire[W_ENDS + end];
      const meets = p >= 0 ? data.points[p][P_MEETS] : -1;
      return el('tr', {}, el('th', {scope: 'row'}, end ? 'to' : 'from'), el('td', {}, otherEnd(wire, 1 - end)),
        el('td', {}, meets >= 0 ? pointButton(meets) : 'nothing'));
    });
    const p = Math.max(wire[W_ENDS], wire[W_ENDS + 1]);
    return [el('h3', {}, wire[W_ID]), el('p', {class: 'soft'}, facts.filter(Boolean).join(' · ')),
      findingLinks(['wires/' + wire[W_ID]]),
      el('p', {}, swatch(wire[W_COLOUR]), wire[W_COLOUR] ? ' (' + colourName(wire[W_COLOUR]) + ')' : '',
        wire[W_DRAWN] ? ', drawn as ' + wire[W_DRAWN] : '', ', ', wire[W_SIZE] || 'no size given',
        ', evidence: ', evidence(wire)),
      table('Ends of ' + wire[W_ID], ['End', 'On', 'Meets'], rows),
      wire[W_RUN] >= 0 ? el('p', {}, runLink(w)) : null,
      ...circuitLinks(bothOn(wire)), ...(p >= 0 ? netPart(p) : [])];
  }

  function aboutOwner(o) {
    const owner = data.owners[o];
    const points = pointsOf[o];
    const place = SECTIONS[owner[KIND]] + '/' + owner[OWNER_ID];
    const rows = points.slice(0, MOST_PINS).map(p => el('tr', {}, el('th', {scope: 'row'}, pointButton(p)),
      el('td', {}, wiresAt[p].length ? wiresAt[p].map(([w]) => [ask(data.wires[w][W_ID]), ' ',
        ...swatch(data.wires[w][W_COLOUR]), ' ', data.wires[w][W_SIZE], ' ']).flat()
        : data.points[p][P_PLUGGED] ? 'plugged' : 'free'),
      el('td', {}, data.points[p][P_MEETS] >= 0 ? pointButton(data.points[p][P_MEETS]) : '')));
    return [el('h3', {}, owner[OWNER_ID]), el('p', {class: 'soft'}, ownerFacts(o)), findingLinks([place]),
      points.length ? table('Contacts of ' + owner[OWNER_ID], ['Contact', 'Wires', 'Meets'], rows) : null,
      points.length > MOST_PINS ? el('p', {}, 'and ' + (points.length - MOST_PINS) + ' more contacts') : null,
      owner[OWNER_FACE] ? el('div', {class: 'sides'}, sides(owner[OWNER_FACE], -1)) : null];
  }

  const aboutCircuit = (name, wires) => [el('h3', {}, name), el('p', {class: 'soft'}, 'circuit'),
    table('Wires of circuit ' + name, ['Wire', 'Colour', 'Size', 'From', 'To', 'Evidence'], wires.map(w => {
      const wire = data.wires[w];
      return el('tr', {}, el('th', {scope: 'row'}, ask(wire[W_ID])), colourCell(wire),
        el('td', {}, wire[W_SIZE] || 'not given'), el('td', {}, otherEnd(wire, 1)),
        el('td', {}, otherEnd(wire, 0)), el('td', {}, evidence(wire)));
    }))];

  // The search.
  const counted = (n, noun) => n + ' ' + noun + (n === 1 ? '' : noun.endsWith('ch') ? 'es' : 's');
  const says = (found, text, most) => {
    const kinds = new Map();
    found.forEach(thing => kinds.set(thing[1], (kinds.get(thing[1]) || 0) + 1));
    const told = [...kinds].map(([noun, n]) => counted(n, noun)).join(', ');
    return found.length
      ? 'Found ' + told + (found.length > most ? '; the first ' + most + ' are shown' : '') + '.'
      : 'Nothing is called ' + text + '. Type a contact such as R1:3, a wire, a circuit, a connector, a device or a splice.';
  };
  Wiring.search({about: {point: aboutPoint, wire: aboutWire, owner: aboutOwner, circuit: aboutCircuit},
    more: () => {}, says, still: false, leave: () => {}, arrive: () => byId('ask').scrollIntoView()});

  // Filters of the findings.
  function filter(form) {
    const levels = [...form.querySelectorAll('[name=level]:checked')].map(box => box.value);
    const waived = !form.elements.waived || form.elements.waived.checked;
    const loom = form.elements.loom.value;
    const rule = form.elements.rule.value;
    let shown = 0;
    let all = 0;
    const fits = article => levels.includes(article.dataset.level)
      && (waived || article.dataset.waived === 'no')
      && (rule === '*' || article.dataset.rule === rule)
      && (loom === '*' || (loom === '' ? !article.dataset.looms : article.dataset.looms.split(' ').includes(loom)));
    document.querySelectorAll('.list > .finding').forEach(article => {
      const follow = [...article.querySelectorAll('.finding')];
      follow.forEach(child => { child.hidden = !fits(child); });
      const below = follow.filter(child => !child.hidden).length;
      const own = fits(article);
      article.hidden = !own && !below;
      if (!own && below) article.querySelector('details.follow').open = true;
      shown += (own ? 1 : 0) + below;
      all += 1 + follow.length;
    });
    const left = form.dataset.left;
    byId('filter-status').textContent = (shown === all ? 'All ' : shown + ' of ') + counted(all, 'finding')
      + (left ? ' of this page shown; ' + left + ' in report.json.' : ' shown.');
  }

  // The runs of wires in the loom drawing.
  const wiresIn = data.arms.map(() => []);
  data.wires.forEach((wire, w) => {
    if (wire[W_RUN] >= 0) new Set(data.runs[wire[W_RUN]]).forEach(arm => wiresIn[arm].push(w));
  });

  function light(arms) {
    const ends = new Map();
    arms.forEach(arm => data.arms[arm].slice(1).forEach(knot => ends.set(knot, (ends.get(knot) || 0) + 1)));
    document.querySelectorAll('.loomsvg').forEach(svg => svg.classList.toggle('lighting', arms.length > 0));
    document.querySelectorAll('.arm').forEach(g => g.classList.toggle('lit', arms.includes(Number(g.dataset.arm))));
    document.querySelectorAll('.knot').forEach(g =>
      g.classList.toggle('tip', (ends.get(Number(g.dataset.knot)) || 0) % 2 === 1));
  }

  const runOf = w => (data.wires[w][W_RUN] < 0 ? [] : data.runs[data.wires[w][W_RUN]]);
  function runText(w) {
    const wire = data.wires[w];
    const ends = [0, 1].map(end => (wire[W_ENDS + end] < 0 ? wire[W_SAYS + end] || 'nothing'
      : pointText(wire[W_ENDS + end])));
    const arms = runOf(w).map(arm => data.arms[arm][0]);
    return wire[W_ID] + ' from ' + ends[0] + ' to ' + ends[1]
      + (arms.length ? ', through ' + arms.join(', ') : ', stays at its node or has no known run') + '.';
  }

  function showRun(w) {
    byId('run-status').textContent = w < 0 ? 'Nothing is lit.' : runText(w);
    light(w < 0 ? [] : runOf(w));
  }

  function wireButton(w) {
    const button = el('button', {type: 'button', class: 'ask-for'}, data.wires[w][W_ID]);
    ['pointerenter', 'focus'].forEach(name => button.addEventListener(name, () => showRun(w)));
    button.addEventListener('click', () => {
      byId('run-wire').value = String(w);
      byId('run-arm').value = '';
      showRun(w);
    });
    return el('span', {}, button);
  }

  function showArm(arm) {
    const more = byId('run-more');
    more.replaceChildren(...wiresIn[arm].slice(0, MOST_PINS).flatMap(w => [wireButton(w), ' ']),
      wiresIn[arm].length > MOST_PINS ? 'and ' + (wiresIn[arm].length - MOST_PINS) + ' more, all in the list of wires' : '');
    byId('run-status').textContent = counted(wiresIn[arm].length, 'wire') + ' in ' + data.arms[arm][0]
      + (wiresIn[arm].length ? '. Point at one or step to it to light up its run.' : '.');
    light([arm]);
  }

  function chosenRun() {
    const wire = byId('run-wire').value;
    const arm = byId('run-arm').value;
    byId('run-more').replaceChildren();
    if (arm !== '') showArm(Number(arm));
    else showRun(wire === '' ? -1 : Number(wire));
  }

  function runs(form) {
    byId('run-wire').append(...data.wires.map((wire, w) => el('option', {value: String(w)},
      wire[W_ID] + (wire[W_CIRCUIT] ? ' · ' + wire[W_CIRCUIT] : ''))));
    byId('run-arm').append(...data.arms.map((arm, a) => el('option', {value: String(a)}, arm[0])));
    byId('run-wire').addEventListener('change', () => {
      byId('run-arm').value = '';
      chosenRun();
    });
    byId('run-arm').addEventListener('change', () => {
      byId('run-wire').value = '';
      chosenRun();
    });
    form.addEventListener('submit', event => event.preventDefault());
    form.addEventListener('reset', () => setTimeout(chosenRun));
    document.querySelectorAll('.arm').forEach(g => {
      const arm = Number(g.dataset.arm);
      g.addEventListener('pointerenter', () => {
        if (byId('run-wire').value === '') light([arm]);
      });
      g.addEventListener('pointerleave', () => {
        if (byId('run-wire').value === '') light(byId('run-arm').value === '' ? [] : [Number(byId('run-arm').value)]);
      });
      g.addEventListener('click', () => {
        byId('run-wire').value = '';
        byId('run-arm').value = String(arm);
        showArm(arm);
      });
    });
    document.querySelectorAll('[data-more-of]').forEach(more => {
      const button = el('button', {type: 'button', class: 'ask-for'}, more.textContent);
      button.addEventListener('click', () => more.replaceWith(...wiresIn[more.dataset.moreOf].slice(12)
        .flatMap(w => [el('span', {}, data.wires[w][W_ID]), ' '])));
      more.replaceChildren(button);
    });
  }

  const form = byId('filter');
  if (form) {
    form.addEventListener('change', () => filter(form));
    form.addEventListener('reset', () => setTimeout(() => filter(form)));
    form.addEventListener('submit', event => event.preventDefault());
  }
  document.querySelectorAll('.subject[data-ask]').forEach(subject => {
    if (subject.dataset.ask) subject.replaceChildren(ask(subject.dataset.ask, subject.textContent));
  });
  document.querySelectorAll('[data-list]').forEach(more => {
    const button = el('button', {type: 'button', class: 'ask-for'}, more.textContent);
    button.addEventListener('click', () => {
      const all = more.parentElement;
      all.replaceChildren(...data.lists[more.dataset.list].flatMap(id => [el('span', {}, id), ' ']));
    });
    more.replaceChildren(button);
  });
  document.querySelectorAll('[data-draw]').forEach(place => {
    const button = el('button', {type: 'button'}, 'Draw both sides');
    button.addEventListener('click', () => place.replaceChildren(...sides(Number(place.dataset.draw), -1)));
    place.append(button);
  });
  if (byId('run-form')) runs(byId('run-form'));
  const shading = byId('shade-form');
  function shade() {
    const chosen = shading.elements.shade.value;
    if (chosen) byId('loom').dataset.shade = chosen;
    else delete byId('loom').dataset.shade;
  }
  if (shading) {
    shading.addEventListener('change', shade);
    shading.addEventListener('submit', event => event.preventDefault());
    shade();
  }
  addEventListener('beforeprint', () =>
    document.querySelectorAll('details.follow, details.printed').forEach(fold => { fold.open = true; }));
  Wiring.follow(target => {
    for (let up = target; up; up = up.parentElement) {
      if (up.tagName === 'DETAILS') up.open = true;
      if (up.hidden) up.hidden = false;
    }
  });
})();
