package org.tugtest.model;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The skeleton along which wires run: nodes and segments. */
public record Layout(Map<String, Node> nodes, Map<String, Segment> segments) {
  /** No layout. */
  public static final Layout NONE = new Layout(Map.of(), Map.of());

  public Layout {
    nodes = Ordered.copyOf(nodes);
    segments = Ordered.copyOf(segments);
  }

  /**
   * A point where segments meet or end.
   *
   * @param held fixed to the vehicle
   * @param xyzMm where it is, three figures, or empty
   * @param coverings boot over the breakout
   */
  public record Node(
      String id, @Nullable String zone, boolean held, List<Double> xyzMm, List<String> coverings) {
    public Node {
      xyzMm = List.copyOf(xyzMm);
      coverings = List.copyOf(coverings);
    }
  }

  /**
   * A stretch between two nodes.
   *
   * @param zone null: the worse of its nodes, field by field
   * @param coverings inside first
   * @param supports count between the nodes
   * @param bendRadiusMm the tightest bend on it
   * @param clearanceMm to what is near
   */
  public record Segment(
      String id,
      @Nullable String loom,
      @Nullable String from,
      @Nullable String to,
      @Nullable Double lengthMm,
      @Nullable String zone,
      List<String> coverings,
      @Nullable Integer supports,
      @Nullable String supportPart,
      @Nullable Double bendRadiusMm,
      boolean flexes,
      Map<Near, Double> clearanceMm) {
    public Segment {
      coverings = List.copyOf(coverings);
      clearanceMm = Map.copyOf(clearanceMm);
    }
  }
}
