package org.tugtest.rule.body;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.tugtest.facts.Facts;
import org.tugtest.model.Layout;
import org.tugtest.model.Support;
import org.tugtest.text.NaturalOrder;

/** The longest stretch without support on or through each segment. */
final class FreeSpans {
  /** Segments that are followed from one end of a stretch. */
  private static final int MOST = 500;

  private static final String NO_SUPPORTS = "it gives no count of supports";
  private static final String BEYOND = "a segment beyond a node that is not held gives no supports";

  private final Facts facts;
  private final Map<String, List<Layout.Segment>> at = new HashMap<>();

  /**
   * A stretch.
   *
   * @param segments those it lies on, in natural order
   * @param nodes those that it goes through, since they are not held; in natural order
   * @param lacking why there may be more of it; empty when all is known
   * @param ties count of ties on the segment that are no supports
   */
  record Span(double mm, List<String> segments, List<String> nodes, String lacking, int ties) {}

  /** How far a stretch goes on from a node. */
  private record Reach(double mm, Set<String> segments, Set<String> nodes, boolean known) {
    static final Reach NONE = new Reach(0, Set.of(), Set.of(), true);
  }

  FreeSpans(Facts facts) {
    this.facts = facts;
    for (Layout.Segment segment : facts.harness().layout().segments().values()) {
      if (!facts.bundles().of(segment.id()).isEmpty()) {
        put(segment.from(), segment);
        put(segment.to(), segment);
      }
    }
  }

  private void put(@Nullable String node, Layout.Segment segment) {
    if (node != null) {
      at.computeIfAbsent(node, id -> new ArrayList<>()).add(segment);
    }
  }

  /** The longest stretch on or through a segment. */
  Span of(Layout.Segment segment) {
    Double length = segment.lengthMm();
    if (length == null) {
      return new Span(0, List.of(segment.id()), List.of(), Unjudged.NO_LENGTH, 0);
    }
    int ties = ties(segment);
    if (segment.supports() == null) {
      return new Span(0, List.of(segment.id()), List.of(), NO_SUPPORTS, 0);
    }
    int count = segment.supports() - ties;
    double gap = length / (count + 1);
    Reach from = beyond(segment.from(), segment, new HashSet<>(Set.of(segment.id())));
    Reach to = beyond(segment.to(), segment, new HashSet<>(Set.of(segment.id())));
    double mm;
    Set<String> through = new TreeSet<>(NaturalOrder.NATURAL);
    through.add(segment.id());
    Set<String> nodes = new TreeSet<>(NaturalOrder.NATURAL);
    if (count == 0) {
      mm = gap + from.mm() + to.mm();
      through.addAll(from.segments());
      through.addAll(to.segments());
      nodes.addAll(from.nodes());
      nodes.addAll(to.nodes());
    } else {
      Reach longer = from.mm() >= to.mm() ? from : to;
      mm = gap + longer.mm();
      through.addAll(longer.segments());
      nodes.addAll(longer.nodes());
    }
    String lacking = from.known() && to.known() ? "" : BEYOND;
    return new Span(mm, List.copyOf(through), List.copyOf(nodes), lacking, ties);
  }

  private int ties(Layout.Segment segment) {
    Support part =
        segment.supportPart() == null
            ? null
            : facts.harness().parts().supports().get(segment.supportPart());
    Integer count = segment.supports();
    return part != null && part.kind() == Support.Kind.TIE && count != null ? count : 0;
  }

  /** How far a stretch goes on past a node; not at all when it is held. */
  private Reach beyond(@Nullable String node, Layout.Segment from, Set<String> seen) {
    Layout.Node found = node == null ? null : facts.harness().layout().nodes().get(node);
    if (node == null || found == null || found.held()) {
      return Reach.NONE;
    }
    Reach longest = Reach.NONE;
    boolean known = true;
    for (Layout.Segment next : at.getOrDefault(node, List.of())) {
      if (next.id().equals(from.id()) || seen.size() > MOST || !seen.add(next.id())) {
        continue;
      }
      Double length = next.lengthMm();
      Integer supports = next.supports();
      if (length == null || supports == null) {
        known = false;
        continue;
      }
      int count = supports - ties(next);
      Set<String> on = new HashSet<>(Set.of(next.id()));
      Set<String> past = new HashSet<>(Set.of(node));
      double mm = length / (count + 1);
      if (count == 0) {
        String other = node.equals(next.from()) ? next.to() : next.from();
        Reach further = beyond(other, next, seen);
        mm += further.mm();
        on.addAll(further.segments());
        past.addAll(further.nodes());
        known &= further.known();
      }
      if (mm > longest.mm()) {
        longest = new Reach(mm, on, past, true);
      }
    }
    return new Reach(longest.mm(), longest.segments(), longest.nodes(), known);
  }
}
