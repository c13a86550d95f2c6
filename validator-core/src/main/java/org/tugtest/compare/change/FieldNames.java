package org.tugtest.compare.change;

import java.util.ArrayList;
import java.util.List;

/** The names of fields as the files write them, where the records call them otherwise. */
public final class FieldNames {
  private FieldNames() {}

  /** The names that lead to a field in the files. */
  public static List<String> written(List<String> path) {
    List<String> names = new ArrayList<>();
    for (int i = 0; i < path.size(); i++) {
      String name = path.get(i);
      switch (name) {
        case "own", "settings" -> {
          if (i == path.size() - 1) {
            names.add(name);
          }
        }
        case "endCap" -> names.add("kind");
        case "restClosed" -> names.add("rest");
        case "byCircuit" -> names.add("circuits");
        case "cavityFamilies" -> {
          names.add("cavities");
          if (i < path.size() - 1) {
            names.add(path.get(++i));
            names.add("family");
          }
        }
        default -> names.add(name);
      }
    }
    return names;
  }

  /** The same as one text: {@code elements.pump.amps}. */
  public static String joined(List<String> path) {
    return String.join(".", written(path));
  }
}
