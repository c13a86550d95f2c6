package org.tugtest.report.html.volts;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.tugtest.bench.whatif.Effect;
import org.tugtest.bench.whatif.Fault;
import org.tugtest.facts.Facts;
import org.tugtest.network.Edge;
import org.tugtest.operate.OperatingPoint;
import org.tugtest.report.html.circuits.Circuit;
import org.tugtest.report.html.text.Few;

/** The solved faults as a reader wants them: by sort, those of the same effect together. */
final class SolvedFaults {
  private static final int MOST_STATES = 3;
  private final Facts facts;
  private final Map<String, Integer> numbers;

  SolvedFaults(Facts facts, List<Circuit> circuits) {
    this.facts = facts;
    this.numbers = WhatIfRoom.numbers(circuits);
  }

  List<WhatIfRoom.Group> groups(List<Effect> effects) {
    List<WhatIfRoom.Group> groups = new ArrayList<>();
    for (Fault.Kind kind : Fault.Kind.values()) {
      Map<List<Effect.InState>, List<String>> byEffect = new LinkedHashMap<>();
      int idle = 0;
      for (Effect effect : effects) {
        if (effect.fault().kind() == kind && effect.shows()) {
          byEffect
              .computeIfAbsent(effect.states(), none -> new ArrayList<>())
              .add(name(effect.fault()));
        } else if (effect.fault().kind() == kind) {
          idle++;
        }
      }
      if (!byEffect.isEmpty()) {
        groups.add(group(kind, byEffect, idle));
      }
    }
    return groups;
  }

  private static String name(Fault fault) {
    Edge first = fault.edges().get(0);
    if (fault.kind() == Fault.Kind.CONNECTOR_OFF) {
      return first.a().owner() + " from " + first.b().owner();
    }
    return fault.kind() == Fault.Kind.EARTH_OPEN
        ? fault.text().replaceFirst("^earth (.*) loose$", "$1")
        : first.text();
  }

  private WhatIfRoom.Group group(
      Fault.Kind kind, Map<List<Effect.InState>, List<String>> byEffect, int idle) {
    List<WhatIfRoom.Loss> losses = new ArrayList<>();
    byEffect.forEach((states, by) -> losses.add(loss(states, by)));
    String idleSaid =
        kind == Fault.Kind.WIRE_OPEN
            ? "With %d other wires no load changes: signals, spares, coils at rest, and wires"
                + " beside which another one feeds."
            : "%d others change no load.";
    return new WhatIfRoom.Group(
        title(kind),
        "different effects",
        "Any of these",
        Few.of(losses, WhatIfRoom.MOST_LOSSES),
        idle,
        idleSaid);
  }

  private static String title(Fault.Kind kind) {
    return switch (kind) {
      case FUSE_BLOWN -> "A fuse blows or a trip opens";
      case CONNECTOR_OFF -> "A connector is unplugged";
      case EARTH_OPEN -> "An earth is loose";
      case WIRE_OPEN -> "A wire opens";
      case DIODE_SHORTED -> "A diode is shorted";
      case ISOLATOR_WELDED -> "An isolator contact is welded";
    };
  }

  private WhatIfRoom.Loss loss(List<Effect.InState> states, List<String> by) {
    return WhatIfRoom.loss(
        by,
        users(states, Effect.InState::lost, false),
        users(states, Effect.InState::dim, false),
        users(states, Effect.InState::live, true));
  }

  /** Each load once, with the states where these are not all in which it should work. */
  private List<WhatIfRoom.User> users(
      List<Effect.InState> states,
      Function<Effect.InState, List<Edge.OfElement>> which,
      boolean always) {
    Map<String, List<String>> inStates = new LinkedHashMap<>();
    Map<String, Edge.OfElement> loads = new LinkedHashMap<>();
    for (Effect.InState state : states) {
      for (Edge.OfElement load : which.apply(state)) {
        inStates.computeIfAbsent(load.text(), none -> new ArrayList<>()).add(state.state());
        loads.put(load.text(), load);
      }
    }
    List<WhatIfRoom.User> users = new ArrayList<>();
    inStates.forEach(
        (name, in) -> {
          boolean all = !always && in.size() >= wanted(loads, name);
          String said =
              all ? "" : String.join(", ", in.subList(0, Math.min(MOST_STATES, in.size())));
          String more =
              all || in.size() <= MOST_STATES ? "" : " and " + (in.size() - MOST_STATES) + " more";
          users.add(new WhatIfRoom.User(name, numbers.getOrDefault(name, 0), said + more));
        });
    return users;
  }

  private long wanted(Map<String, Edge.OfElement> loads, String name) {
    Edge.OfElement load = loads.get(name);
    List<OperatingPoint> all = facts.operating().all();
    return load == null ? 0 : all.stream().filter(state -> state.wanted(load)).count();
  }
}
