package org.tugtest.report.sheets.track;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.tugtest.bench.whatif.ContactVolts;
import org.tugtest.bench.whatif.Effect;
import org.tugtest.bench.whatif.Fault;
import org.tugtest.bench.whatif.Symptoms;
import org.tugtest.bench.whatif.WhatIfTable;
import org.tugtest.facts.Facts;
import org.tugtest.model.Element;
import org.tugtest.network.Edge;
import org.tugtest.network.Point;
import org.tugtest.operate.OperatingPoint;

/**
 * What single faults do to loads and to the readings of a voltmeter, in the numbers that the script
 * of the page works with. Things name each other by their number in the lists.
 *
 * @param leftOut why there is none of it; empty when there is
 * @param states names
 * @param loads of all loads, in the order of the network
 * @param whole for each state a character for each load: {@code w} works, {@code r} rests, {@code
 *     -} is not watched
 * @param faults that show in a state
 * @param effects what they do, each once
 * @param contacts where a meter can be held
 * @param readings for each state a digit for each contact of the whole harness; empty: too many
 * @param differs stretches of contact and digit, each once, that faults read otherwise
 * @param silent faults that show in no state
 * @param black where the black lead is held; empty without a source
 */
record Clues(
    String leftOut,
    List<String> states,
    List<Edge.OfElement> loads,
    List<String> whole,
    List<Culprit> faults,
    List<List<Effect.InState>> effects,
    List<Point> contacts,
    List<String> readings,
    List<List<Integer>> differs,
    List<Fault> silent,
    String black) {

  /** Numbers over which the readings are left out, to keep a page small. */
  static final int MOST_DIFFERENCES = 600_000;

  /**
   * A fault that shows.
   *
   * @param effect number of what it does
   * @param readings for each state the number of what reads otherwise, or -1; none when left out
   */
  record Culprit(Fault fault, int effect, List<Integer> readings) {
    Culprit {
      readings = List.copyOf(readings);
    }
  }

  /** The clues of a harness. */
  static Clues of(Facts facts) {
    WhatIfTable table = WhatIfTable.of(facts);
    List<OperatingPoint> states = facts.operating().all();
    List<Edge.OfElement> loads = loads(facts);
    Map<List<Effect.InState>, Integer> effects = new LinkedHashMap<>();
    List<Fault> showing = new ArrayList<>();
    List<Fault> silent = new ArrayList<>();
    List<Integer> does = new ArrayList<>();
    for (Effect effect : table.effects()) {
      if (effect.shows()) {
        showing.add(effect.fault());
        does.add(number(effects, effect.states()));
      } else {
        silent.add(effect.fault());
      }
    }
    Meterings meterings = Meterings.of(facts, states, showing);
    List<Culprit> faults = new ArrayList<>();
    for (int i = 0; i < showing.size(); i++) {
      faults.add(
          new Culprit(
              showing.get(i),
              does.get(i),
              meterings.readings().isEmpty() ? List.of() : meterings.ofFault().get(i)));
    }
    boolean none = !table.leftOut().isEmpty();
    return new Clues(
        table.leftOut(),
        states.stream().map(OperatingPoint::state).toList(),
        loads,
        none ? List.of() : states.stream().map(state -> whole(facts, state, loads)).toList(),
        faults,
        List.copyOf(effects.keySet()),
        meterings.contacts(),
        meterings.readings(),
        meterings.differs(),
        silent,
        meterings.black());
  }

  private static <T> int number(Map<T, Integer> numbers, T thing) {
    Integer known = numbers.putIfAbsent(thing, numbers.size());
    return known == null ? numbers.size() - 1 : known;
  }

  private static List<Edge.OfElement> loads(Facts facts) {
    List<Edge.OfElement> loads = new ArrayList<>();
    for (Edge edge : facts.network().edges()) {
      if (edge instanceof Edge.OfElement inside && inside.element() instanceof Element.Load) {
        loads.add(inside);
      }
    }
    return List.copyOf(loads);
  }

  private static String whole(Facts facts, OperatingPoint state, List<Edge.OfElement> loads) {
    Symptoms symptoms = new Symptoms(facts, state);
    Set<Edge> working = Set.copyOf(symptoms.working());
    Set<Edge> resting = Set.copyOf(symptoms.resting());
    StringBuilder whole = new StringBuilder();
    loads.forEach(
        load -> whole.append(working.contains(load) ? 'w' : resting.contains(load) ? 'r' : '-'));
    return whole.toString();
  }

  /** What the meter shows, contact by contact. */
  private record Meterings(
      List<Point> contacts,
      List<String> readings,
      List<List<Integer>> differs,
      List<List<Integer>> ofFault,
      String black) {

    static Meterings of(Facts facts, List<OperatingPoint> states, List<Fault> faults) {
      List<Point> contacts =
          facts.network().points().stream()
              .filter(point -> point.kind() != Point.Kind.SPLICE)
              .filter(point -> !facts.wiring().endsAt(point).isEmpty())
              .toList();
      Map<List<Integer>, Integer> differs = new LinkedHashMap<>();
      List<String> readings = new ArrayList<>();
      List<List<Integer>> ofFault = new ArrayList<>();
      faults.forEach(fault -> ofFault.add(new ArrayList<>()));
      String black = "";
      int size = 0;
      for (OperatingPoint state : faults.isEmpty() ? List.<OperatingPoint>of() : states) {
        ContactVolts volts = new ContactVolts(facts.network(), state);
        black = black.isEmpty() ? volts.blackOn().map(Point::text).orElse("") : black;
        int[] at = contacts.stream().mapToInt(facts.network()::index).toArray();
        List<ContactVolts.Reads> whole = volts.whole();
        StringBuilder digits = new StringBuilder();
        for (int point : at) {
          digits.append(digit(whole.get(point)));
        }
        readings.add(digits.toString());
        for (int i = 0; i < faults.size(); i++) {
          List<Integer> differ = differ(at, whole, volts.after(faults.get(i)));
          int before = differs.size();
          ofFault.get(i).add(differ.isEmpty() ? -1 : number(differs, differ));
          size += differs.size() > before ? differ.size() : 0;
          if (size > MOST_DIFFERENCES) {
            return new Meterings(List.of(), List.of(), List.of(), List.of(), black);
          }
        }
      }
      return new Meterings(contacts, readings, List.copyOf(differs.keySet()), ofFault, black);
    }

    private static int digit(ContactVolts.Reads reads) {
      return switch (reads) {
        case NOTHING -> 0;
        case VOLTS -> 1;
        case UNSURE -> 2;
      };
    }

    private static List<Integer> differ(
        int[] at, List<ContactVolts.Reads> whole, List<ContactVolts.Reads> now) {
      List<Integer> differ = new ArrayList<>();
      for (int contact = 0; contact < at.length; contact++) {
        if (whole.get(at[contact]) != now.get(at[contact])) {
          differ.add(contact);
          differ.add(digit(now.get(at[contact])));
        }
      }
      return List.copyOf(differ);
    }
  }
}
