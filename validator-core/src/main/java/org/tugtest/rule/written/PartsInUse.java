package org.tugtest.rule.written;

import java.util.ArrayDeque;
import java.util.Collection;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.tugtest.model.Connector;
import org.tugtest.model.DeviceType;
import org.tugtest.model.Harness;
import org.tugtest.model.Housing;
import org.tugtest.model.Parts;
import org.tugtest.model.Splice;
import org.tugtest.model.Wire;

/** The parts that a harness uses, directly or through parts that it uses. */
final class PartsInUse {
  private final Harness harness;
  private final Map<String, Set<String>> used = new HashMap<>();
  private final Deque<String> housings = new ArrayDeque<>();

  PartsInUse(Harness harness) {
    this.harness = harness;
    harness.wires().values().forEach(this::wire);
    harness.connectors().values().forEach(this::connector);
    harness.splices().values().forEach(this::splice);
    harness.fitted().values().forEach(part -> use("fuses", part));
    harness
        .layout()
        .nodes()
        .values()
        .forEach(node -> node.coverings().forEach(part -> use("coverings", part)));
    harness
        .layout()
        .segments()
        .values()
        .forEach(
            segment -> {
              segment.coverings().forEach(part -> use("coverings", part));
              use("supports", segment.supportPart());
            });
    harness
        .devices()
        .values()
        .forEach(
            device -> {
              use("deviceTypes", device.type());
              DeviceType type = harness.typeOf(device);
              if (type != null) {
                type.ports().values().forEach(port -> housing(port.housing()));
              }
            });
    throughHousings();
  }

  /** Ids by kind of part. */
  Map<String, Set<String>> ids() {
    return used;
  }

  /** All parts that are defined, ids by kind, in the order of the format. */
  static Map<String, Set<String>> defined(Parts parts) {
    Map<String, Set<String>> defined = new LinkedHashMap<>();
    defined.put("wires", parts.wires().keySet());
    defined.put("housings", parts.housings().keySet());
    defined.put("terminals", parts.terminals().keySet());
    defined.put("seals", parts.seals().keySet());
    defined.put("splices", parts.splices().keySet());
    defined.put("fuses", parts.fuses().keySet());
    defined.put("coverings", parts.coverings().keySet());
    defined.put("supports", parts.supports().keySet());
    defined.put("deviceTypes", parts.deviceTypes().keySet());
    return defined;
  }

  /** What parts of a kind are called. */
  static String noun(String kind, boolean one) {
    String noun =
        switch (kind) {
          case "wires" -> "wire part";
          case "splices" -> "splice part";
          case "fuses" -> "fuse part";
          case "deviceTypes" -> "device type";
          default -> kind.substring(0, kind.length() - 1);
        };
    return one ? noun : noun + "s";
  }

  private void wire(Wire wire) {
    use("wires", wire.part());
    use("terminals", wire.fromTerminal());
    use("terminals", wire.toTerminal());
  }

  private void connector(Connector connector) {
    housing(connector.housing());
    connector.terminals().forEach(part -> use("terminals", part));
    connector.seals().forEach(part -> use("seals", part));
    use("coverings", connector.boot());
    for (Connector.Cavity cavity : connector.cavities().values()) {
      use("terminals", cavity.terminal());
      use("seals", cavity.seal());
    }
  }

  private void splice(Splice splice) {
    use("splices", splice.part());
    splice.coverings().forEach(part -> use("coverings", part));
  }

  private void housing(@Nullable String id) {
    if (use("housings", id) && id != null) {
      housings.add(id);
    }
  }

  private boolean use(String kind, @Nullable String id) {
    return id != null && used.computeIfAbsent(kind, key -> new HashSet<>()).add(id);
  }

  private void throughHousings() {
    Map<String, Collection<String>> matedBy = new HashMap<>();
    for (Housing housing : harness.parts().housings().values()) {
      for (String mate : housing.matesWith()) {
        matedBy.computeIfAbsent(mate, key -> new HashSet<>()).add(housing.id());
      }
    }
    while (!housings.isEmpty()) {
      String id = housings.remove();
      matedBy.getOrDefault(id, List.of()).forEach(this::housing);
      Housing housing = harness.parts().housings().get(id);
      if (housing != null) {
        housing.terminals().forEach(part -> use("terminals", part));
        housing.seals().forEach(part -> use("seals", part));
        housing.matesWith().forEach(this::housing);
      }
    }
  }
}
