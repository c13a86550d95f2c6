package org.tugtest.rule.written.reference;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import org.tugtest.facts.Facts;
import org.tugtest.model.Device;
import org.tugtest.model.DeviceType;
import org.tugtest.model.Element;
import org.tugtest.model.Harness;
import org.tugtest.model.Housing;
import org.tugtest.model.Parts;
import org.tugtest.model.Wire;
import org.tugtest.text.NaturalOrder;

/** Everything in a harness that can be named. */
final class Tables {
  final Table wireParts;
  final Table housings;
  final Table terminals;
  final Table seals;
  final Table spliceParts;
  final Table fuseParts;
  final Table coverings;
  final Table supports;
  final Table deviceTypes;
  final Table devices;
  final Table connectors;
  final Table splices;
  final Table wires;
  final Table groups;
  final Table nodes;
  final Table segments;
  final Table zones;
  final Table states;
  final Table looms;

  /** What a wire can end on. */
  final Table owners;

  /** What a connector can be plugged into. */
  final Table mates;

  private final Facts facts;
  private final List<Table> all;

  Tables(Facts facts) {
    this.facts = facts;
    Harness harness = facts.harness();
    Parts parts = harness.parts();
    wireParts = Table.of("wire part", "parts/wires", parts.wires().keySet());
    housings = Table.of("housing", "parts/housings", parts.housings().keySet());
    terminals = Table.of("terminal", "parts/terminals", parts.terminals().keySet());
    seals = Table.of("seal", "parts/seals", parts.seals().keySet());
    spliceParts = Table.of("splice part", "parts/splices", parts.splices().keySet());
    fuseParts = Table.of("fuse part", "parts/fuses", parts.fuses().keySet());
    coverings = Table.of("covering", "parts/coverings", parts.coverings().keySet());
    supports = Table.of("support", "parts/supports", parts.supports().keySet());
    deviceTypes = Table.of("device type", "parts/deviceTypes", parts.deviceTypes().keySet());
    devices = Table.of("device", "devices", harness.devices().keySet());
    connectors = Table.of("connector", "connectors", facts.wiring().connectors());
    splices = Table.of("splice", "splices", facts.wiring().splices());
    wires = Table.of("wire", "wires", harness.wires().keySet());
    groups = Table.of("group", "groups", harness.groups().keySet());
    nodes = Table.of("node", "layout/nodes", harness.layout().nodes().keySet());
    segments = Table.of("segment", "layout/segments", harness.layout().segments().keySet());
    zones = Table.of("zone", "zones", harness.zones().keySet());
    states = Table.of("state", "states", harness.states().keySet());
    looms =
        new Table(
            "loom",
            List.of("loom"),
            harness.looms().keySet(),
            "give a file \"loom\" with that \"id\", or correct the name");
    String define = "define it, or correct the name";
    owners =
        new Table(
            "connector, device or splice",
            List.of("connectors", "devices", "splices"),
            union(connectors.ids(), devices.ids(), splices.ids()),
            define);
    mates =
        new Table(
            "connector or device",
            List.of("connectors", "devices"),
            union(connectors.ids(), devices.ids()),
            define);
    all =
        List.of(
            wires,
            connectors,
            devices,
            splices,
            groups,
            nodes,
            segments,
            zones,
            states,
            looms,
            wireParts,
            housings,
            terminals,
            seals,
            spliceParts,
            fuseParts,
            coverings,
            supports,
            deviceTypes);
  }

  /** What an id is called that another table has. */
  Optional<String> elsewhere(String id, Table but) {
    return all.stream()
        .filter(table -> !table.noun().equals(but.noun()) && table.open() && but.open())
        .filter(table -> table.ids().contains(id))
        .map(Table::noun)
        .findFirst();
  }

  /** The device type of a device; null when it, or its type, is not known. */
  @Nullable DeviceType typeOf(String device) {
    Device found = facts.harness().devices().get(device);
    return found == null ? null : facts.harness().typeOf(found);
  }

  /**
   * Whether what a device is made of is written wrongly somewhere, so that parts may be missing.
   */
  boolean isMisread(String device) {
    Device found = facts.harness().devices().get(device);
    String type = found == null ? null : found.type();
    return facts.misread().at("devices", device)
        || (type != null && facts.misread().at("parts", "deviceTypes", type));
  }

  /** Cavities of a housing; null when the housing is not known or not written rightly. */
  @Nullable Table cavities(@Nullable String housing) {
    Housing found = housing == null ? null : facts.harness().parts().housings().get(housing);
    return found == null || facts.misread().at("parts", "housings", found.id())
        ? null
        : Table.closed("cavity of housing " + found.id(), new LinkedHashSet<>(found.cavityNames()));
  }

  /** The elements of a device that are of one kind, by name. */
  static Set<String> elements(DeviceType type, Predicate<Element> kind) {
    Set<String> names = new TreeSet<>(NaturalOrder.NATURAL);
    type.elements().forEach((name, element) -> addIf(kind.test(element), names, name));
    return names;
  }

  /** All circuits that wires name. */
  Set<String> circuits() {
    Set<String> circuits = new LinkedHashSet<>();
    for (Wire wire : facts.harness().wires().values()) {
      if (wire.circuit() != null) {
        circuits.add(wire.circuit());
      }
    }
    return circuits;
  }

  /** {@code device.element} of every element of one kind. */
  Set<String> everyElement(Predicate<Element> kind) {
    Set<String> names = new LinkedHashSet<>();
    for (Map.Entry<String, Device> entry : facts.harness().devices().entrySet()) {
      DeviceType type = facts.harness().typeOf(entry.getValue());
      if (type != null) {
        type.elements()
            .forEach(
                (name, element) -> addIf(kind.test(element), names, entry.getKey() + "." + name));
      }
    }
    return names;
  }

  private static void addIf(boolean wanted, Set<String> names, String name) {
    if (wanted) {
      names.add(name);
    }
  }

  @SafeVarargs
  private static Set<String> union(Collection<String>... ids) {
    Set<String> union = new LinkedHashSet<>();
    for (Collection<String> some : ids) {
      union.addAll(some);
    }
    return union;
  }
}
