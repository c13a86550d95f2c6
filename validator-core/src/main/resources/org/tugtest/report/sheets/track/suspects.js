'use strict';
// Which single faults fit what a person saw, and what to look at next.
//
// A fault is [text, kind, effect, readings]. An effect is a list of [state, dead, dim, live], each a
// list of load numbers. Readings give for each state the number of a list of [contact, class, ...]
// that read otherwise than in the whole harness, or -1; classes: 0 nothing, 1 volts, 2 anything.
// What was seen is {state, load, saw} or {state, contact, saw}.
const Suspects = (() => {
  const WHOLE = {w: 'works', r: 'off'};
  const CLASSES = ['nothing', 'volts', 'unsure'];
  const ANSWERS = {w: ['works', 'dim', 'dead'], r: ['off', 'live'], contact: ['nothing', 'volts']};

  // Of a load in a state: what it does with the fault; '' where it is not watched.
  function outcome(clues, fault, state, load) {
    const whole = WHOLE[clues.whole[state][load]] || '';
    if (!whole) return '';
    for (const [at, dead, dim, live] of clues.effects[clues.faults[fault][2]]) {
      if (at === state) {
        if (dead.includes(load)) return 'dead';
        if (dim.includes(load)) return 'dim';
        if (live.includes(load)) return 'live';
      }
    }
    return whole;
  }

  function reading(clues, fault, state, contact) {
    const list = clues.readings.length ? clues.faults[fault][3][state] : -1;
    if (list >= 0) {
      const differs = clues.differs[list];
      for (let i = 0; i < differs.length; i += 2) {
        if (differs[i] === contact) return CLASSES[differs[i + 1]];
      }
    }
    return CLASSES[Number(clues.readings[state][contact])];
  }

  // A load that gets fewer volts than it works with may well be dead to the eye.
  function fits(clues, fault, seen) {
    if (seen.contact !== undefined) {
      const is = reading(clues, fault, seen.state, seen.contact);
      return is === 'unsure' || is === seen.saw;
    }
    const is = outcome(clues, fault, seen.state, seen.load);
    return is === seen.saw || (seen.saw === 'dead' && is === 'dim');
  }

  // How much a fault would do that nobody said: the less, the better it fits.
  function unsaid(clues, fault, seen) {
    let more = 0;
    for (const [state, dead, dim, live] of clues.effects[clues.faults[fault][2]]) {
      more += dead.length + dim.length + live.length;
      for (const one of seen) {
        if (one.load !== undefined && one.state === state) {
          if (dead.includes(one.load) || live.includes(one.load)) more -= 1;
          else if (dim.includes(one.load) && one.saw === 'dim') more -= 1;
        }
      }
    }
    return more;
  }

  // The faults that fit everything; when none does, those that fit most, with how much they miss.
  function find(clues, seen) {
    const all = clues.faults.map((_, fault) => ({
      fault, misses: seen.filter(one => !fits(clues, fault, one)).length, more: unsaid(clues, fault, seen),
    }));
    const least = all.reduce((best, one) => Math.min(best, one.misses), seen.length);
    const found = least < seen.length || !seen.length ? all.filter(one => one.misses === least) : [];
    found.sort((one, other) => one.more - other.more
      || clues.faults[one.fault][1] - clues.faults[other.fault][1] || one.fault - other.fault);
    return {misses: least, found};
  }

  // How many suspects are left after each answer; null when an answer tells nothing.
  function split(counts, answers, total) {
    const left = answers.map(answer => (counts[answer] || 0) + (counts.unsure || 0)
      + (answer === 'dead' ? counts.dim || 0 : 0));
    const most = Math.max(...left);
    return most < total ? {most, squares: left.reduce((sum, n) => sum + n * n, 0), left} : null;
  }

  // The one thing to look at or measure after which the fewest suspects are left at worst; of
  // several as good, what needs no meter, then states the vehicle was in already.
  function next(clues, suspects, seen) {
    const total = suspects.length;
    const visited = new Set(seen.map(one => one.state));
    const order = clues.states.map((_, state) => state)
      .sort((one, other) => visited.has(other) - visited.has(one) || one - other);
    let best = null;
    const offer = (what, counts, answers, meter) => {
      const told = split(counts, answers, total);
      if (told && (!best || told.most < best.most || (told.most === best.most
          && (told.squares < best.squares || (told.squares === best.squares && meter < best.meter))))) {
        best = {...what, ...told, answers, meter};
      }
    };
    for (const state of order) {
      const asked = new Set(seen.filter(one => one.state === state && one.load !== undefined).map(one => one.load));
      const differ = new Map();
      const note = (thing, word) => {
        if (!differ.has(thing)) differ.set(thing, {});
        const counts = differ.get(thing);
        counts[word] = (counts[word] || 0) + 1;
      };
      for (const fault of suspects) {
        for (const [at, dead, dim, live] of clues.effects[clues.faults[fault][2]]) {
          if (at === state) {
            dead.forEach(load => note(load, 'dead'));
            dim.forEach(load => note(load, 'dim'));
            live.forEach(load => note(load, 'live'));
          }
        }
      }
      [...differ.keys()].sort((one, other) => one - other).forEach(load => {
        const whole = clues.whole[state][load];
        if (asked.has(load) || !WHOLE[whole]) return;
        const counts = differ.get(load);
        counts[WHOLE[whole]] = total - Object.values(counts).reduce((sum, n) => sum + n, 0);
        offer({state, load}, counts, ANSWERS[whole], 0);
      });
    }
    for (const state of clues.readings.length ? order : []) {
      const asked = new Set(seen.filter(one => one.state === state && one.contact !== undefined)
        .map(one => one.contact));
      const differ = new Map();
      for (const fault of suspects) {
        const list = clues.faults[fault][3][state];
        const differs = list < 0 ? [] : clues.differs[list];
        for (let i = 0; i < differs.length; i += 2) {
          if (!differ.has(differs[i])) differ.set(differs[i], {});
          const counts = differ.get(differs[i]);
          counts[CLASSES[differs[i + 1]]] = (counts[CLASSES[differs[i + 1]]] || 0) + 1;
        }
      }
      [...differ.keys()].sort((one, other) => one - other).forEach(contact => {
        if (asked.has(contact)) return;
        const counts = differ.get(contact);
        const whole = CLASSES[Number(clues.readings[state][contact])];
        const told = Object.values(counts).reduce((sum, n) => sum + n, 0);
        counts[whole] = (counts[whole] || 0) + total - told;
        offer({state, contact}, counts, ANSWERS.contact, 1);
      });
    }
    return best;
  }

  return {outcome, reading, fits, unsaid, find, next};
})();
