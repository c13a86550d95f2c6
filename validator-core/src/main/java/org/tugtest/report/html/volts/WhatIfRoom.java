package org.tugtest.report.html.volts;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.tugtest.facts.Facts;
import org.tugtest.network.Edge;
import org.tugtest.protect.Outages;
import org.tugtest.report.html.circuits.Circuit;

/**
 * What is lost when one thing opens.
 *
 * @param plugs each plugged pair that something hangs on
 * @param wires each set of loads that is lost together, with the wires any of which loses it
 * @param idle wires that nothing is lost with
 * @param morePlugs pairs left out
 * @param moreWires sets left out
 */
public record WhatIfRoom(
    List<Loss> plugs, List<Loss> wires, int idle, int morePlugs, int moreWires) {
  private static final int MOST_LOSSES = 400;
  private static final int MOST_USERS = 24;
  private static final int MOST_THINGS = 40;

  /**
   * A loss.
   *
   * @param by the things any of which loses it
   * @param moreBy how many more
   * @param users what is lost
   * @param moreUsers how many more
   */
  public record Loss(List<String> by, int moreBy, List<User> users, int moreUsers) {}

  /**
   * A load or coil.
   *
   * @param circuit number of its circuit on this page; 0 when it is not shown
   */
  public record User(String name, int circuit) {}

  /** The room of a harness. */
  public static WhatIfRoom of(Facts facts, List<Circuit> circuits) {
    Map<String, Integer> numbers = new HashMap<>();
    circuits.forEach(circuit -> numbers.put(circuit.load(), circuit.number()));
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
    return new WhatIfRoom(
        plugs.stream().limit(MOST_LOSSES).toList(),
        wires.stream().limit(MOST_LOSSES).toList(),
        idle,
        Math.max(0, plugs.size() - MOST_LOSSES),
        Math.max(0, wires.size() - MOST_LOSSES));
  }

  private static Loss loss(
      List<String> by, List<Edge.OfElement> users, Map<String, Integer> numbers) {
    return new Loss(
        by.stream().limit(MOST_THINGS).toList(),
        Math.max(0, by.size() - MOST_THINGS),
        users.stream()
            .limit(MOST_USERS)
            .map(user -> new User(user.text(), numbers.getOrDefault(user.text(), 0)))
            .toList(),
        Math.max(0, users.size() - MOST_USERS));
  }
}
