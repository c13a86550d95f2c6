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
import org.tugtest.report.html.text.Few;

/**
 * What is lost when one thing opens.
 *
 * @param plugs each plugged pair that something hangs on
 * @param wires each set of loads that is lost together, with the wires any of which loses it
 * @param idle wires that nothing is lost with
 */
public record WhatIfRoom(Few<Loss> plugs, Few<Loss> wires, int idle) {
  private static final int MOST_LOSSES = 250;
  private static final int MOST_USERS = 24;
  private static final int MOST_THINGS = 40;

  /**
   * A loss.
   *
   * @param by the things any of which loses it
   * @param users what is lost
   */
  public record Loss(Few<String> by, Few<User> users) {}

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
    return new WhatIfRoom(Few.of(plugs, MOST_LOSSES), Few.of(wires, MOST_LOSSES), idle);
  }

  private static Loss loss(
      List<String> by, List<Edge.OfElement> users, Map<String, Integer> numbers) {
    return new Loss(
        Few.of(by, MOST_THINGS),
        Few.of(
            users.stream()
                .map(user -> new User(user.text(), numbers.getOrDefault(user.text(), 0)))
                .toList(),
            MOST_USERS));
  }
}
