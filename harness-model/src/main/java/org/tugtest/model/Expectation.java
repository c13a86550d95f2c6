package org.tugtest.model;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Something the team wants to stay true. Which fields count depends on {@code that}.
 *
 * @param in state
 * @param first first list of {@code wires} or {@code circuits}
 * @param second second list of {@code wires} or {@code circuits}
 * @param byCircuit the two lists name circuits, not wires
 */
public record Expectation(
    String id,
    @Nullable That that,
    @Nullable Ref at,
    @Nullable String in,
    @Nullable Double minV,
    List<Ref> points,
    @Nullable Ref fuse,
    List<String> first,
    List<String> second,
    boolean byCircuit,
    @Nullable String loom,
    @Nullable Double grams,
    @Nullable String reason) {

  public Expectation {
    points = List.copyOf(points);
    first = List.copyOf(first);
    second = List.copyOf(second);
  }

  /** What is expected. */
  public enum That implements Word {
    FED,
    DEAD,
    JOINED,
    APART,
    FUSED_BY,
    ROUTES_APART,
    LIGHTER_THAN
  }
}
