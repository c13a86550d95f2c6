package org.tugtest.rule.body;

import java.util.HashSet;
import java.util.Set;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Subject;
import org.tugtest.model.Layout;
import org.tugtest.model.Wire;
import org.tugtest.route.NoRoute;

/**
 * The wires of which nobody knows where they run, so that a bundle may be thicker than it seems.
 */
final class Wayward {
  private final Facts facts;
  private final Set<String> looms = new HashSet<>();

  Wayward(Facts facts) {
    this.facts = facts;
    for (Wire wire : facts.harness().wires().values()) {
      NoRoute none = facts.routes().missing(wire.id()).orElse(null);
      boolean stays = wire.decision() != Wire.Decision.REMOVE;
      if (stays && none != null && none.why() != NoRoute.Why.NO_LAYOUT) {
        looms.add(wire.loom() == null ? "" : wire.loom());
      }
    }
  }

  /** Whether one of them may run along a segment, or a segment at a node; never at a connector. */
  boolean mayRunIn(Subject subject) {
    if (looms.isEmpty() || subject.section().equals("connectors")) {
      return false;
    }
    Layout.Segment segment =
        subject.section().equals("segments")
            ? facts.harness().layout().segments().get(subject.id())
            : null;
    return segment == null || segment.loom() == null || looms.contains(segment.loom());
  }
}
