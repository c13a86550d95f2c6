package org.tugtest.operate;

import java.util.List;
import java.util.Map;
import org.tugtest.facts.Facts;
import org.tugtest.model.Ref;
import org.tugtest.network.Edge;
import org.tugtest.network.Point;
import org.tugtest.rule.Judged;

/** A harness and what flows in it; for tests. */
record Operated(Facts facts) {
  /** A sketch of these sections, each {@code "name": value}; joints have no resistance. */
  static Operated of(String... sections) {
    return json(
        """
        {"format": 1, "sketch": true,
         "defaults": {"contactMilliohm": 0, "crimpMilliohm": 0, "spliceMilliohm": 0,
                      "boltedMilliohm": 0, "ambientC": 20},
        """
            + String.join(", ", sections)
            + "}");
  }

  static Operated json(String json) {
    return new Operated(Judged.facts(Map.of(Judged.ROOT, json)));
  }

  OperatingPoint in(String state) {
    return facts.operating().in(state).orElseThrow(() -> new AssertionError(state));
  }

  OperatingPoint only() {
    List<OperatingPoint> all = facts.operating().all();
    if (all.size() != 1) {
      throw new AssertionError(all.size() + " states");
    }
    return all.get(0);
  }

  Point at(String ref) {
    return facts.wiring().pointOf(Ref.parse(ref)).orElseThrow(() -> new AssertionError(ref));
  }

  Edge.OfElement element(String text) {
    return (Edge.OfElement) edge(text);
  }

  Edge edge(String text) {
    return facts.network().edges().stream()
        .filter(edge -> edge.text().equals(text))
        .findFirst()
        .orElseThrow(() -> new AssertionError(text));
  }
}
