package org.tugtest.model;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * One way the vehicle is operated.
 *
 * @param set device to position, or one contact to {@code on} / {@code off}
 * @param on loads meant to work; a device: all its loads but the free ones
 * @param running generators that turn
 * @param volts open volts of a source in this state
 * @param from the state it is entered from, where relays that hold themselves make it matter
 * @param brief under two minutes
 */
public record State(
    String id,
    Map<Ref, String> set,
    List<Ref> on,
    List<Ref> running,
    Map<Ref, Double> volts,
    @Nullable String from,
    boolean brief) {

  public State {
    set = sorted(set);
    on = List.copyOf(on);
    running = List.copyOf(running);
    volts = sorted(volts);
  }

  private static <V> Map<Ref, V> sorted(Map<Ref, V> map) {
    return Collections.unmodifiableMap(new TreeMap<>(map));
  }
}
