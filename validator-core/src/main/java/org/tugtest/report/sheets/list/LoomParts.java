package org.tugtest.report.sheets.list;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tugtest.facts.Facts;
import org.tugtest.model.Connector;
import org.tugtest.model.Harness;
import org.tugtest.model.Splice;
import org.tugtest.model.Wire;
import org.tugtest.network.Point;
import org.tugtest.network.WireEnd;
import org.tugtest.report.sheets.Scope;
import org.tugtest.text.NaturalOrder;

/** What belongs to a scope, in natural order. */
final class LoomParts {
  private LoomParts() {}

  static List<Wire> wires(Harness harness, Scope scope) {
    return harness.wires().values().stream().filter(wire -> scope.holds(wire.loom())).toList();
  }

  /** The connectors of a scope, those a sketch names only included. */
  static List<String> connectors(Facts facts, Scope scope) {
    return facts.wiring().connectors().stream()
        .filter(
            id -> {
              Connector written = facts.harness().connectors().get(id);
              return scope.holds(written == null ? loomOfNamed(facts, id) : written.loom());
            })
        .toList();
  }

  /** The splices of a scope, those a sketch names only included. */
  static List<String> splices(Facts facts, Scope scope) {
    return facts.wiring().splices().stream()
        .filter(
            id -> {
              Splice written = facts.harness().splices().get(id);
              return scope.holds(written == null ? loomOfWires(endsIn(facts, id)) : written.loom());
            })
        .toList();
  }

  /** Cavities in natural order, not in that of the rows of a housing. */
  static List<String> sorted(List<String> cavities) {
    return cavities.stream().sorted(NaturalOrder.NATURAL).toList();
  }

  /** The wire ends on a splice. */
  static List<WireEnd> endsIn(Facts facts, String splice) {
    return facts.wiring().endsAt(Point.splice(splice));
  }

  /** The loom of a connector that is only named: that of the first wire that names it. */
  private static @Nullable String loomOfNamed(Facts facts, String connector) {
    return loomOfWires(
        facts.wiring().cavitiesOf(connector).stream()
            .flatMap(cavity -> facts.wiring().endsAt(Point.cavity(connector, cavity)).stream())
            .toList());
  }

  private static @Nullable String loomOfWires(List<WireEnd> ends) {
    return ends.isEmpty() ? null : ends.get(0).wire().loom();
  }
}
