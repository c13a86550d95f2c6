package org.tugtest.facts;

import java.util.Arrays;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.tugtest.text.JsonPointer;
import org.tugtest.text.Nearest;
import org.tugtest.text.Place;
import org.tugtest.text.Problem;

/**
 * Which things the files name but do not say rightly. What is missing on or under such a thing has
 * its finding already, so other rules do not judge it.
 */
public final class Misread {
  private static final List<String> SECTIONS =
      List.of(
          "defaults",
          "parts",
          "devices",
          "fitted",
          "connectors",
          "splices",
          "wires",
          "groups",
          "layout",
          "zones",
          "states",
          "limits",
          "waivers",
          "expectations",
          "uses",
          "loom");
  private final Set<String> wrong = new HashSet<>();
  private final Set<String> around = new HashSet<>();

  private Misread() {}

  /** What these problems leave unknown. */
  public static Misread by(Collection<Problem> problems) {
    Misread misread = new Misread();
    for (Problem problem : problems) {
      if (problem.kind() == Problem.Kind.SHAPE_WRONG
          || problem.kind() == Problem.Kind.ID_GIVEN_TWICE) {
        problem.at().forEach(misread::add);
      }
    }
    return misread;
  }

  private void add(Place place) {
    List<String> names = JsonPointer.names(place.pointer());
    if (names.size() == 1 && !SECTIONS.contains(names.get(0))) {
      names = Nearest.to(names.get(0), SECTIONS).stream().limit(1).toList();
    }
    if (names.isEmpty()) {
      return;
    }
    wrong.add(JsonPointer.of(names.toArray(String[]::new)));
    for (int i = 1; i <= names.size(); i++) {
      around.add(JsonPointer.of(names.subList(0, i).toArray(String[]::new)));
    }
  }

  /**
   * Whether something is wrong with the value at these names, in it, or with what holds it: {@code
   * "wires", "W1"}, {@code "wires", "W1", "from"}, {@code "parts", "housings", "h2"}.
   */
  public boolean at(String... names) {
    if (wrong.isEmpty()) {
      return false;
    }
    if (around.contains(JsonPointer.of(names))) {
      return true;
    }
    for (int i = 1; i < names.length; i++) {
      if (wrong.contains(JsonPointer.of(Arrays.copyOf(names, i)))) {
        return true;
      }
    }
    return false;
  }
}
