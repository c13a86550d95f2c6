package org.tugtest.model;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A permanent joint of wires away from any connector.
 *
 * @param at node, or null when it sits {@code on} a segment, {@code offsetMm} from its start
 * @param endCap closes one dead end instead of joining two or more
 */
public record Splice(
    String id,
    @Nullable String loom,
    @Nullable String at,
    @Nullable String on,
    @Nullable Double offsetMm,
    @Nullable String part,
    boolean endCap,
    List<String> coverings,
    @Nullable String label) {

  public Splice {
    coverings = List.copyOf(coverings);
  }
}
