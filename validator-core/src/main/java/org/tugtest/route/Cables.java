package org.tugtest.route;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;
import org.tugtest.finding.Basis;
import org.tugtest.model.Group;
import org.tugtest.model.Harness;
import org.tugtest.model.Wire;
import org.tugtest.network.WireSizes;
import org.tugtest.table.Cited;

/** Which wires lie in cables, their screens included, and how thick the cables are. */
final class Cables {
  private final Harness harness;
  private final WireSizes sizes;
  private final Map<String, Group> cableOf = new HashMap<>();
  private final Map<String, Set<String>> members = new HashMap<>();
  private final Map<String, Optional<Cited>> outer = new ConcurrentHashMap<>();

  Cables(Harness harness, WireSizes sizes) {
    this.harness = harness;
    this.sizes = sizes;
    for (Group group : harness.groups().values()) {
      if (group.kind() == Group.Kind.CABLE) {
        Set<String> its = new LinkedHashSet<>(group.wires());
        if (group.screen() != null) {
          its.add(group.screen());
        }
        its.removeIf(id -> cableOf.putIfAbsent(id, group) != null);
        members.put(group.id(), its);
      }
    }
  }

  /** The cable that a wire lies in; null when it lies in none. Of several, the first by id. */
  @Nullable Group of(String wire) {
    return cableOf.get(wire);
  }

  /** The wires of a cable, its screen included. */
  Set<String> members(Group cable) {
    return members.getOrDefault(cable.id(), Set.of());
  }

  /**
   * The diameter of a cable: as given, else that of the bundle of its wires, without a jacket;
   * empty when one of them has none.
   */
  Optional<Cited> outerMm(Group cable) {
    return outer.computeIfAbsent(cable.id(), id -> computed(cable));
  }

  private Optional<Cited> computed(Group cable) {
    if (cable.outerMm() != null) {
      return Optional.of(Cited.given(cable.outerMm()));
    }
    List<Double> diameters = new ArrayList<>();
    Basis basis = Basis.DERIVED;
    for (String id : members(cable)) {
      Wire wire = harness.wires().get(id);
      Cited one = wire == null ? null : sizes.outerMm(wire).orElse(null);
      if (wire != null && one == null) {
        return Optional.empty();
      }
      if (one != null) {
        diameters.add(one.value());
        basis = basis.weaker(one.basis());
      }
    }
    return diameters.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Cited(
                BundleDiameter.expectedMm(diameters),
                "its wires, as cable " + cable.id() + " gives no outerMm",
                basis));
  }
}
