package org.tugtest.report.sheets.track;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.tugtest.bench.whatif.ContactVolts;
import org.tugtest.bench.whatif.Effect;
import org.tugtest.bench.whatif.Fault;
import org.tugtest.bench.whatif.Symptoms;
import org.tugtest.bench.whatif.WhatIfTable;
import org.tugtest.facts.Facts;
import org.tugtest.network.Edge;
import org.tugtest.network.Point;
import org.tugtest.operate.OperatingPoint;

/**
 * What {@code suspects.js} has to answer, worked out from the table and the voltmeter themselves,
 * without the lists that the page carries: fault by fault, thing by thing; for tests.
 */
final class Diagnosis {
  private final List<OperatingPoint> states;
  private final List<Edge.OfElement> loads;
  private final List<Point> contacts;
  private final List<Effect> faults;
  private final List<Map<Edge.OfElement, String>> whole = new ArrayList<>();
  private final Map<Fault, List<List<ContactVolts.Reads>>> meter = new HashMap<>();
  private final Map<List<Integer>, String> does = new HashMap<>();
  private final Facts facts;

  /** Something that was seen; {@code thing} is the number of a load, or of a contact. */
  record Seen(int state, boolean contact, int thing, String saw) {}

  /** The answer. */
  record Suspected(int misses, List<Integer> faults) {}

  /** What to look at next, and how many are left at worst. */
  record Probe(int state, boolean contact, int thing, int most, int squares) {}

  Diagnosis(Facts facts, List<Edge.OfElement> loads, List<Point> contacts) {
    this.facts = facts;
    this.states = facts.operating().all();
    this.loads = loads;
    this.contacts = contacts;
    this.faults = WhatIfTable.of(facts).effects().stream().filter(Effect::shows).toList();
    for (OperatingPoint state : states) {
      Map<Edge.OfElement, String> words = new HashMap<>();
      Symptoms symptoms = new Symptoms(facts, state);
      symptoms.working().forEach(load -> words.put(load, "works"));
      symptoms.resting().forEach(load -> words.put(load, "off"));
      whole.add(words);
    }
    for (Effect effect : faults) {
      List<List<ContactVolts.Reads>> reads = new ArrayList<>();
      for (OperatingPoint state : states) {
        reads.add(new ContactVolts(facts.network(), state).after(effect.fault()));
      }
      meter.put(effect.fault(), reads);
    }
  }

  int states() {
    return states.size();
  }

  int loads() {
    return loads.size();
  }

  int contacts() {
    return contacts.size();
  }

  List<Effect> faults() {
    return faults;
  }

  /** What a load or contact does with a fault; empty where it is not watched. */
  String with(int fault, int state, boolean contact, int thing) {
    return does.computeIfAbsent(
        List.of(fault, state, contact ? thing : -1 - thing),
        none -> found(fault, state, contact, thing));
  }

  private String found(int fault, int state, boolean contact, int thing) {
    if (contact) {
      return meter
          .get(faults.get(fault).fault())
          .get(state)
          .get(facts.network().index(contacts.get(thing)))
          .name()
          .toLowerCase(Locale.ROOT);
    }
    String sound = whole.get(state).getOrDefault(loads.get(thing), "");
    if (sound.isEmpty()) {
      return "";
    }
    for (Effect.InState in : faults.get(fault).states()) {
      if (in.state().equals(states.get(state).state())) {
        if (in.lost().contains(loads.get(thing))) {
          return "dead";
        }
        if (in.dim().contains(loads.get(thing))) {
          return "dim";
        }
        if (in.live().contains(loads.get(thing))) {
          return "live";
        }
      }
    }
    return sound;
  }

  boolean fits(int fault, Seen seen) {
    String is = with(fault, seen.state(), seen.contact(), seen.thing());
    return is.equals(seen.saw())
        || (seen.contact() && is.equals("unsure"))
        || (seen.saw().equals("dead") && is.equals("dim"));
  }

  private long more(int fault, List<Seen> seen) {
    long more = 0;
    for (int state = 0; state < states.size(); state++) {
      for (int load = 0; load < loads.size(); load++) {
        String is = with(fault, state, false, load);
        int at = state;
        int the = load;
        boolean said =
            seen.stream()
                .anyMatch(
                    one ->
                        !one.contact()
                            && one.state() == at
                            && one.thing() == the
                            && (!is.equals("dim") || one.saw().equals("dim")));
        more += List.of("dead", "dim", "live").contains(is) && !said ? 1 : 0;
      }
    }
    return more;
  }

  Suspected suspected(List<Seen> seen) {
    List<Integer> all = new ArrayList<>();
    Map<Integer, Integer> misses = new LinkedHashMap<>();
    Map<Integer, Long> more = new HashMap<>();
    int least = seen.size();
    for (int fault = 0; fault < faults.size(); fault++) {
      int the = fault;
      int missed = (int) seen.stream().filter(one -> !fits(the, one)).count();
      misses.put(fault, missed);
      least = Math.min(least, missed);
    }
    for (int fault = 0; fault < faults.size(); fault++) {
      if (misses.get(fault) == least && (least < seen.size() || seen.isEmpty())) {
        all.add(fault);
        more.put(fault, more(fault, seen));
      }
    }
    all.sort(
        Comparator.<Integer>comparingLong(more::get)
            .thenComparing(fault -> faults.get(fault).fault().kind())
            .thenComparing(fault -> fault));
    return new Suspected(least, all);
  }

  /** The fewest suspects that can be left at worst, over all that can be looked at. */
  Probe best(List<Integer> suspects, List<Seen> seen) {
    Probe best = null;
    for (boolean contact : new boolean[] {false, true}) {
      for (int state = 0; state < states.size(); state++) {
        for (int thing = 0; thing < (contact ? contacts : loads).size(); thing++) {
          Probe probe = probe(suspects, state, contact, thing);
          int at = state;
          int the = thing;
          boolean asked =
              seen.stream()
                  .anyMatch(
                      one -> one.state() == at && one.contact() == contact && one.thing() == the);
          if (!asked
              && probe != null
              && probe.most() < suspects.size()
              && (best == null
                  || probe.most() < best.most()
                  || (probe.most() == best.most() && probe.squares() < best.squares()))) {
            best = probe;
          }
        }
      }
    }
    return best;
  }

  /** What is left after each answer; null for what is not watched. */
  Probe probe(List<Integer> suspects, int state, boolean contact, int thing) {
    String sound = contact ? "" : whole.get(state).getOrDefault(loads.get(thing), "");
    if (!contact && sound.isEmpty()) {
      return null;
    }
    List<String> answers =
        contact
            ? List.of("nothing", "volts")
            : sound.equals("works") ? List.of("works", "dim", "dead") : List.of("off", "live");
    int most = 0;
    int squares = 0;
    for (String answer : answers) {
      Seen seen = new Seen(state, contact, thing, answer);
      int left = (int) suspects.stream().filter(fault -> fits(fault, seen)).count();
      most = Math.max(most, left);
      squares += left * left;
    }
    return new Probe(state, contact, thing, most, squares);
  }
}
