package org.tugtest.report.html.volts;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.tugtest.bench.whatif.WhatIfTable;
import org.tugtest.facts.Facts;
import org.tugtest.network.Edge;
import org.tugtest.protect.Outages;
import org.tugtest.report.Tally;
import org.tugtest.report.html.circuits.Circuit;
import org.tugtest.report.html.text.Few;

/**
 * What changes when one thing fails.
 *
 * @param solved whether every fault was solved in every state; else by what hangs on what alone
 * @param whyNot why it was not; empty when it was
 * @param groups one for each sort of fault that changes something
 */
public record WhatIfRoom(boolean solved, String whyNot, List<Group> groups) {
  /** Over so many wires times states nothing is solved for this room. */
  static final int MOST_SOLVED = 12_000;

  static final int MOST_LOSSES = 250;
  private static final int MOST_USERS = 24;
  private static final int MOST_THINGS = 40;

  /**
   * Faults of one sort.
   *
   * @param title what happens
   * @param counted what the number of losses counts
   * @param name of what fails
   * @param idle how many others change nothing
   * @param idleSaid what they are
   */
  public record Group(
      String title, String counted, String name, Few<Loss> losses, int idle, String idleSaid) {}

  /**
   * What changes.
   *
   * @param by the things any of which does it
   * @param dead what gets nothing any more
   * @param weak what gets too few volts
   * @param live what gets volts and should not
   */
  public record Loss(Few<String> by, Few<User> dead, Few<User> weak, Few<User> live) {}

  /**
   * A load or coil.
   *
   * @param circuit number of its circuit on this page; 0 when it is not shown
   * @param states in which it is so; empty: in all in which it should work
   */
  public record User(String name, int circuit, String states) {}

  public WhatIfRoom {
    groups = List.copyOf(groups);
  }

  /** The room of a harness. */
  public static WhatIfRoom of(Facts facts, List<Circuit> circuits) {
    int states = facts.operating().all().size();
    int wires = facts.harness().wires().size();
    if ((long) wires * states > MOST_SOLVED) {
      String many = wires + " wires in " + Tally.counted(states, "state") + " are many";
      return new WhatIfRoom(false, many, hanging(facts, circuits));
    }
    WhatIfTable table = WhatIfTable.of(facts);
    return table.leftOut().isEmpty()
        ? new WhatIfRoom(true, "", new SolvedFaults(facts, circuits).groups(table.effects()))
        : new WhatIfRoom(false, table.leftOut(), hanging(facts, circuits));
  }

  /** The number of the circuit of each load. */
  static Map<String, Integer> numbers(List<Circuit> circuits) {
    Map<String, Integer> numbers = new LinkedHashMap<>();
    circuits.forEach(circuit -> numbers.put(circuit.load(), circuit.number()));
    return numbers;
  }

  private static List<Group> hanging(Facts facts, List<Circuit> circuits) {
    Map<String, Integer> numbers = numbers(circuits);
    Outages outages = Outages.of(facts.network());
    Map<String, List<Edge>> pairs = new LinkedHashMap<>();
    Map<List<Edge.OfElement>, List<String>> byLoss = new LinkedHashMap<>();
    int idle = 0;
    for (Edge edge : facts.network().edges()) {
      if (edge instanceof Edge.OfMating mating) {
        String pair = mating.a().owner() + " from " + mating.b().owner();
        pairs.computeIfAbsent(pair, none -> new ArrayList<>()).add(edge);
      } else if (edge instanceof Edge.OfWire) {
        List<Edge.OfElement> users = outages.without(List.of(edge)).users();
        if (users.isEmpty()) {
          idle++;
        } else {
          byLoss.computeIfAbsent(users, none -> new ArrayList<>()).add(edge.text());
        }
      }
    }
    List<Loss> plugs = new ArrayList<>();
    pairs.forEach(
        (pair, edges) -> {
          List<Edge.OfElement> users = outages.without(edges).users();
          if (!users.isEmpty()) {
            plugs.add(loss(List.of(pair), users, numbers));
          }
        });
    List<Loss> wires = new ArrayList<>();
    byLoss.forEach((users, by) -> wires.add(loss(by, users, numbers)));
    List<Group> groups = new ArrayList<>();
    if (!plugs.isEmpty()) {
      groups.add(
          new Group(
              "A connector is unplugged",
              "that something hangs on",
              "Unplug",
              Few.of(plugs, MOST_LOSSES),
              0,
              ""));
    }
    if (!wires.isEmpty()) {
      groups.add(
          new Group(
              "A wire opens",
              "different losses",
              "Any of these wires",
              Few.of(wires, MOST_LOSSES),
              idle,
              "With %d other wires no load is lost: signals, spares, and wires beside which another"
                  + " one feeds."));
    }
    return groups;
  }

  private static Loss loss(
      List<String> by, List<Edge.OfElement> users, Map<String, Integer> numbers) {
    List<User> dead =
        users.stream()
            .map(user -> new User(user.text(), numbers.getOrDefault(user.text(), 0), ""))
            .toList();
    return loss(by, dead, List.of(), List.of());
  }

  /** A loss with no more of anything than a reader wants. */
  static Loss loss(List<String> by, List<User> dead, List<User> weak, List<User> live) {
    return new Loss(
        Few.of(by, MOST_THINGS),
        Few.of(dead, MOST_USERS),
        Few.of(weak, MOST_USERS),
        Few.of(live, MOST_USERS));
  }
}
