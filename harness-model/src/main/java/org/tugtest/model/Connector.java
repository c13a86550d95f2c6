package org.tugtest.model;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * One half of a plug connection on a loom.
 *
 * @param loom the loom it belongs to; null: loose
 * @param mates a connector, a device with one port, or a port; null: nothing said on this side
 * @param at node; null: that of its mate
 * @param terminals in order of choice; empty: the housing's
 * @param seals in order of choice; empty: the housing's
 * @param blanked every unused cavity is plugged
 * @param label null: the id; empty: none fitted
 * @param pinMap cavity to contact of the mate, for adaptors
 */
public record Connector(
    String id,
    @Nullable String loom,
    @Nullable String housing,
    @Nullable Ref mates,
    @Nullable String at,
    @Nullable Parked parked,
    List<String> terminals,
    List<String> seals,
    boolean blanked,
    Map<String, Cavity> cavities,
    @Nullable String label,
    @Nullable String boot,
    @Nullable Double breakoutMm,
    @Nullable Double serviceMm,
    Map<String, String> pinMap) {

  public Connector {
    terminals = List.copyOf(terminals);
    seals = List.copyOf(seals);
    cavities = Ordered.copyOf(cavities);
    pinMap = Ordered.copyOf(pinMap);
  }

  /** What is printed on its label; empty when none is fitted. */
  public String labelText() {
    return label == null ? id : label;
  }

  /** What is done with a connector while nothing mates with it. */
  public enum Parked implements Word {
    CAPPED,
    OPEN
  }

  /** Where one cavity differs from the connector. {@code blank} null: as the connector says. */
  public record Cavity(
      @Nullable String terminal,
      @Nullable String seal,
      @Nullable Boolean blank,
      @Nullable Evidence evidence) {}
}
