package org.tugtest.heat;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** What wires may carry alone in still air, each kind reckoned once. */
public final class FreeAirAmps {
  private final Map<Key, Double> known = new ConcurrentHashMap<>();

  private record Key(Insulated wire, double limitC, double airC) {}

  /** As {@link FreeAir#amps}. */
  public double of(Insulated wire, double limitC, double airC) {
    return known.computeIfAbsent(
        new Key(wire, limitC, airC), key -> FreeAir.amps(wire, limitC, airC));
  }
}
