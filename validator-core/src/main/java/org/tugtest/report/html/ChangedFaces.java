package org.tugtest.report.html;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.tugtest.compare.Comparison;
import org.tugtest.compare.change.Change;
import org.tugtest.compare.entry.Renames;
import org.tugtest.facts.Facts;
import org.tugtest.text.NaturalOrder;
import org.tugtest.text.Series;

/**
 * A connector of which a cavity holds something else than before, is fitted otherwise, or sits
 * elsewhere in the face; as it was and as it is.
 *
 * @param id as it is called after, or before when it is gone
 * @param before null when it is new
 * @param after null when it is gone
 * @param changed names of the cavities
 */
record ChangedFaces(String id, @Nullable Face before, @Nullable Face after, Set<String> changed) {
  private static final String CAVITIES = "cavities.";
  private static final int MOST_NAMED = 12;

  /** The connectors that changed, in natural order. */
  static List<ChangedFaces> of(Comparison comparison) {
    Renames names = comparison.matches().renames();
    Map<String, Face> before = new LinkedHashMap<>();
    faces(comparison.before().facts()).forEach((id, face) -> before.put(names.owner(id), face));
    Map<String, Face> after = faces(comparison.after().facts());
    Map<String, Set<String>> fitted = fitted(comparison.changes());
    Set<String> ids = new TreeSet<>(NaturalOrder.NATURAL);
    ids.addAll(before.keySet());
    ids.addAll(after.keySet());
    List<ChangedFaces> changed = new ArrayList<>();
    for (String id : ids) {
      Face was = before.get(id);
      Face is = after.get(id);
      Set<String> cavities = new TreeSet<>(NaturalOrder.NATURAL);
      if (was == null || is == null) {
        Face only = was == null ? Objects.requireNonNull(is) : was;
        changed.add(new ChangedFaces(only.id(), was, is, wired(only)));
        continue;
      }
      for (String cavity : seats(is).keySet()) {
        for (String set : fitted.getOrDefault(id, Set.of())) {
          if (set.equals(cavity) || set.startsWith(cavity + ".")) {
            cavities.add(cavity);
          }
        }
      }
      cavities.addAll(differing(held(was, names), held(is, Renames.NONE)));
      if (was.layoutKnown() && is.layoutKnown()) {
        cavities.addAll(differing(seats(was), seats(is)));
      }
      if (!cavities.isEmpty()) {
        changed.add(new ChangedFaces(id, was, is, cavities));
      }
    }
    return changed;
  }

  /** What it was called before, when that is another name; else empty. */
  String formerly() {
    return before == null || before.id().equals(id) ? "" : before.id();
  }

  /** How many cavities are drawn from one side, before and after. */
  int cavities() {
    return cavities(before) + cavities(after);
  }

  private static int cavities(@Nullable Face face) {
    return face == null ? 0 : face.rows().stream().mapToInt(List::size).sum();
  }

  /** What changed in words: {@code changed: cavities 3 and 7}, {@code new}, {@code gone}. */
  String which() {
    if (before == null || after == null) {
      return before == null ? "new" : "gone";
    }
    List<String> named = List.copyOf(changed);
    return (named.size() == 1 ? "changed: cavity " : "changed: cavities ")
        + Series.and(named, MOST_NAMED);
  }

  /** The wider of the two, for the paper. */
  String width() {
    String was = before == null ? "" : before.width();
    String is = after == null ? "" : after.width();
    return was.length() > is.length() ? was : is;
  }

  /** What is set otherwise of single cavities, by connector: {@code 3.seal}, or {@code 3}. */
  private static Map<String, Set<String>> fitted(List<Change> changes) {
    Map<String, Set<String>> fitted = new HashMap<>();
    for (Change change : changes) {
      String field = change.field();
      if (change.subject().section().equals("connectors") && field.startsWith(CAVITIES)) {
        fitted
            .computeIfAbsent(change.subject().id(), none -> new HashSet<>())
            .add(field.substring(CAVITIES.length()));
      }
    }
    return fitted;
  }

  /** The cavities that hold wires: what matters in a connector that comes or goes. */
  private static Set<String> wired(Face face) {
    Set<String> wired = new TreeSet<>(NaturalOrder.NATURAL);
    face.rows().stream()
        .flatMap(List::stream)
        .filter(cell -> !cell.wires().isEmpty())
        .forEach(cell -> wired.add(cell.name()));
    return wired;
  }

  private static Set<String> differing(Map<String, String> one, Map<String, String> other) {
    Set<String> differing = new HashSet<>();
    Set<String> all = new HashSet<>(one.keySet());
    all.addAll(other.keySet());
    for (String name : all) {
      if (!one.getOrDefault(name, "").equals(other.getOrDefault(name, ""))) {
        differing.add(name);
      }
    }
    return differing;
  }

  /** Row and column of each cavity. */
  private static Map<String, String> seats(Face face) {
    Map<String, String> seats = new HashMap<>();
    for (int row = 0; row < face.rows().size(); row++) {
      for (int column = 0; column < face.rows().get(row).size(); column++) {
        Face.Cell cell = face.rows().get(row).get(column);
        if (!cell.gap()) {
          seats.put(cell.name(), row + " " + column);
        }
      }
    }
    return seats;
  }

  private static Map<String, Face> faces(Facts facts) {
    Map<String, Face> faces = new LinkedHashMap<>();
    FacesRoom.of(facts, Map.of()).faces().forEach(face -> faces.put(face.id(), face));
    return faces;
  }

  /** What each cavity holds, in words, wires by the ids after. */
  private static Map<String, String> held(Face face, Renames names) {
    Map<String, String> held = new HashMap<>();
    for (List<Face.Cell> row : face.rows()) {
      for (Face.Cell cell : row) {
        List<String> wires = new ArrayList<>();
        for (Face.CellWire wire : cell.wires()) {
          wires.add(
              names.id("wires", wire.id()) + " " + wire.swatch().letters() + " " + wire.size());
        }
        wires.sort(NaturalOrder.NATURAL);
        if (!cell.gap() && (!wires.isEmpty() || cell.plugged())) {
          held.put(cell.name(), wires + (cell.plugged() ? " plugged" : ""));
        }
      }
    }
    return held;
  }
}
