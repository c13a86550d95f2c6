package org.tugtest.report.html;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.tugtest.compare.Comparison;
import org.tugtest.compare.entry.Renames;
import org.tugtest.facts.Facts;
import org.tugtest.text.NaturalOrder;

/**
 * A connector of which a cavity holds something else than before, as it was and as it is.
 *
 * @param id as it is called after, or before when it is gone
 * @param before null when it is new
 * @param after null when it is gone
 * @param changed names of the cavities
 */
record ChangedFaces(
    String id,
    @org.jspecify.annotations.Nullable Face before,
    @org.jspecify.annotations.Nullable Face after,
    Set<String> changed) {

  /** The connectors that changed, in natural order. */
  static List<ChangedFaces> of(Comparison comparison) {
    Renames names = comparison.matches().renames();
    Map<String, Face> before = new LinkedHashMap<>();
    faces(comparison.before().facts()).forEach((id, face) -> before.put(names.owner(id), face));
    Map<String, Face> after = faces(comparison.after().facts());
    Set<String> ids = new TreeSet<>(NaturalOrder.NATURAL);
    ids.addAll(before.keySet());
    ids.addAll(after.keySet());
    List<ChangedFaces> changed = new ArrayList<>();
    for (String id : ids) {
      Face was = before.get(id);
      Face is = after.get(id);
      Map<String, String> held = held(was, names);
      Map<String, String> holds = held(is, Renames.NONE);
      Set<String> cavities = new TreeSet<>(NaturalOrder.NATURAL);
      Set<String> all = new HashSet<>(held.keySet());
      all.addAll(holds.keySet());
      for (String cavity : all) {
        if (!held.getOrDefault(cavity, "").equals(holds.getOrDefault(cavity, ""))) {
          cavities.add(cavity);
        }
      }
      if (!cavities.isEmpty()) {
        changed.add(new ChangedFaces(is == null && was != null ? was.id() : id, was, is, cavities));
      }
    }
    return changed;
  }

  private static Map<String, Face> faces(Facts facts) {
    Map<String, Face> faces = new LinkedHashMap<>();
    FacesRoom.of(facts, Map.of()).faces().forEach(face -> faces.put(face.id(), face));
    return faces;
  }

  /** What each cavity holds, in words, wires by the ids after. */
  private static Map<String, String> held(
      @org.jspecify.annotations.Nullable Face face, Renames names) {
    Map<String, String> held = new LinkedHashMap<>();
    if (face != null) {
      for (List<Face.Cell> row : face.rows()) {
        for (Face.Cell cell : row) {
          List<String> wires = new ArrayList<>();
          for (Face.CellWire wire : cell.wires()) {
            wires.add(names.id("wires", wire.id()) + wire.swatch().letters() + wire.size());
          }
          if (!cell.gap() && (!wires.isEmpty() || cell.plugged())) {
            held.put(cell.name(), wires + (cell.plugged() ? " plugged" : ""));
          }
        }
      }
    }
    return held;
  }
}
