package org.tugtest.network;

import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.tugtest.model.Harness;
import org.tugtest.model.Ref;
import org.tugtest.model.Wire;
import org.tugtest.text.NaturalOrder;

/**
 * In a sketch, the connectors and splices that exist only because wires name them: an unknown owner
 * that any wire names with a cavity is a connector; one that is only ever named alone is a splice.
 *
 * @param connectors ids in natural order
 * @param splices ids in natural order
 */
record Implied(Set<String> connectors, Set<String> splices) {
  static Implied by(Harness harness) {
    Set<String> connectors = new TreeSet<>(NaturalOrder.NATURAL);
    Set<String> splices = new TreeSet<>(NaturalOrder.NATURAL);
    if (harness.sketch()) {
      for (Wire wire : harness.wires().values()) {
        sort(harness, wire.from(), connectors, splices);
        sort(harness, wire.to(), connectors, splices);
      }
      splices.removeAll(connectors);
    }
    return new Implied(connectors, splices);
  }

  private static void sort(
      Harness harness, @Nullable Ref ref, Set<String> connectors, Set<String> splices) {
    if (ref == null || ref.member() != null || ref.owner().isEmpty() || isDefined(harness, ref)) {
      return;
    }
    String pin = ref.pin();
    if (pin == null) {
      splices.add(ref.owner());
    } else if (!pin.isEmpty()) {
      connectors.add(ref.owner());
    }
  }

  private static boolean isDefined(Harness harness, Ref ref) {
    String owner = ref.owner();
    return harness.connectors().containsKey(owner)
        || harness.devices().containsKey(owner)
        || harness.splices().containsKey(owner)
        || harness.wires().containsKey(owner)
        || harness.groups().containsKey(owner);
  }
}
