package org.tugtest.report.html;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.tugtest.model.Device;
import org.tugtest.model.Harness;
import org.tugtest.model.Splice;
import org.tugtest.network.Point;
import org.tugtest.report.html.OwnerNumbers.Owner;

/** The connectors, devices and splices of a page, numbered, and what there is to say of each. */
final class Owners {
  private final Harness harness;
  private final Map<String, Face> faces = new HashMap<>();
  private final OwnerNumbers numbers = new OwnerNumbers();

  Owners(Harness harness, List<Point> points, FacesRoom room) {
    this.harness = harness;
    points.forEach(point -> numbers.add(point.kind(), point.owner()));
    for (Face face : room.faces()) {
      faces.put(face.id(), face);
      numbers.add(Point.Kind.CAVITY, face.id());
    }
    harness.devices().keySet().forEach(device -> numbers.add(Point.Kind.PIN, device));
  }

  /** All of them, by number. */
  List<Owner> all() {
    return numbers.all();
  }

  /** The number of the owner of a point. */
  int number(Point point) {
    return number(point.kind(), point.owner());
  }

  /** The number of an owner; -1 when there is none such. */
  int number(Point.Kind kind, String id) {
    return numbers.of(kind, id);
  }

  /** The number of a connector's face; 0 for what has none. */
  int face(Owner owner) {
    Face face = owner.kind() == Point.Kind.CAVITY ? faces.get(owner.id()) : null;
    return face == null ? 0 : face.number();
  }

  /** The loom it belongs to; empty for none. */
  String loom(Owner owner) {
    if (owner.kind() == Point.Kind.SPLICE) {
      Splice splice = harness.splices().get(owner.id());
      return splice == null || splice.loom() == null ? "" : splice.loom();
    }
    Face face = owner.kind() == Point.Kind.CAVITY ? faces.get(owner.id()) : null;
    return face == null ? "" : face.loom();
  }

  /** What there is to say of it, in a few words each. */
  List<String> said(Owner owner) {
    if (owner.kind() == Point.Kind.SPLICE) {
      return said(harness.splices().get(owner.id()));
    }
    if (owner.kind() == Point.Kind.PIN) {
      return said(harness.devices().get(owner.id()));
    }
    Face face = faces.get(owner.id());
    return face == null ? List.of() : face.facts();
  }

  private static List<String> said(@Nullable Device device) {
    List<String> said = new ArrayList<>();
    if (device != null && device.type() != null) {
      said.add("type " + device.type());
    }
    if (device != null && device.at() != null) {
      said.add("at " + device.at());
    }
    return said;
  }

  private static List<String> said(@Nullable Splice splice) {
    List<String> said = new ArrayList<>();
    if (splice != null && splice.endCap()) {
      said.add("end cap");
    }
    if (splice != null && splice.at() != null) {
      said.add("at " + splice.at());
    }
    if (splice != null && splice.on() != null) {
      said.add("on segment " + splice.on());
    }
    return said;
  }
}
