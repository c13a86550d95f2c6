package org.tugtest.compare.match;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.tugtest.compare.entry.Renames;
import org.tugtest.facts.Facts;
import org.tugtest.model.Connector;
import org.tugtest.model.Ref;
import org.tugtest.model.Splice;
import org.tugtest.model.Wire;
import org.tugtest.network.Mate;

/**
 * A connector or splice as the matcher sees it.
 *
 * @param part its housing or splice part, by the id it has after
 * @param port the port of a device that it is plugged into
 * @param mate the connector that it is plugged into
 * @param implied it exists only because wires of a sketch name it
 * @param contacts the wire ends in it, in natural order of the wires
 */
record Owner(
    String id,
    boolean splice,
    @Nullable String part,
    @Nullable String port,
    @Nullable String mate,
    boolean implied,
    List<Contact> contacts) {

  /**
   * One wire end.
   *
   * @param cavity empty in a splice
   * @param label what the wire is, whatever its id
   * @param far what the other end names; null: nothing
   */
  record Contact(String cavity, String label, Wire wire, @Nullable Ref far) {
    /** Whether it is likely the end of the same wire: same id, and same looks or far end. */
    boolean speaksFor(Contact other) {
      return wire.id().equals(other.wire.id())
          && (label.equals(other.label) || (far != null && far.equals(other.far)));
    }

    String farOwner() {
      return far == null ? "" : far.owner();
    }

    String farPin() {
      return far == null || far.pin() == null ? "" : far.pin();
    }
  }

  boolean sameSort(Owner other) {
    return splice == other.splice && implied == other.implied && Objects.equals(part, other.part);
  }

  /** All owners of one side by id, in natural order; parts by the ids of {@code names}. */
  static Map<String, Owner> all(Facts facts, Renames names) {
    Map<String, Owner> owners = new LinkedHashMap<>();
    for (String id : facts.wiring().connectors()) {
      Connector written = facts.harness().connectors().get(id);
      String housing = written == null ? null : written.housing();
      Mate mate = facts.wiring().mating().mateOf(id).orElse(null);
      owners.put(
          id,
          new Owner(
              id,
              false,
              housing == null ? null : names.id("parts/housings", housing),
              mate instanceof Mate.OfPort port ? port.text() : null,
              mate instanceof Mate.OfConnector half ? half.connector() : null,
              written == null,
              new ArrayList<>()));
    }
    for (String id : facts.wiring().splices()) {
      Splice written = facts.harness().splices().get(id);
      String part = written == null ? null : written.part();
      owners.put(
          id,
          new Owner(
              id,
              true,
              part == null ? null : names.id("parts/splices", part),
              null,
              null,
              written == null,
              new ArrayList<>()));
    }
    for (Wire wire : facts.harness().wires().values()) {
      String label = WireLabel.of(wire, names);
      add(owners, wire.from(), wire.to(), label, wire);
      add(owners, wire.to(), wire.from(), label, wire);
    }
    return owners;
  }

  private static void add(
      Map<String, Owner> owners, @Nullable Ref end, @Nullable Ref far, String label, Wire wire) {
    Owner owner = end == null ? null : owners.get(end.owner());
    if (owner != null && end != null) {
      String cavity = end.pin() == null ? "" : end.pin();
      owner.contacts().add(new Contact(cavity, label, wire, far));
    }
  }
}
