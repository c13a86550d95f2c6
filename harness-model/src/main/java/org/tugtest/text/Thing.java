package org.tugtest.text;

import java.util.List;
import java.util.Set;

/**
 * The thing that a value inside a harness file belongs to, by its place string.
 *
 * @param name {@code wires/W1}, {@code devices/ECU.supply}, {@code connectors/R1:3}; empty for what
 *     belongs to the file as a whole
 * @param rest the names that lead from the thing to the value
 */
public record Thing(String name, List<String> rest) {
  private static final Set<String> MAPS_OF_MAPS = Set.of("parts", "layout");
  private static final Set<String> OF_THE_FILE = Set.of("loom", "defaults", "uses", "record");

  public Thing {
    rest = List.copyOf(rest);
  }

  /** The thing that these names, from the top of a file, lead into. */
  public static Thing of(List<String> names) {
    if (names.size() < 2 || OF_THE_FILE.contains(names.get(0))) {
      return new Thing("", names);
    }
    String section = names.get(0);
    if (!MAPS_OF_MAPS.contains(section)) {
      return inside(section, names.subList(1, names.size()));
    }
    if (names.size() < 3) {
      return new Thing("", names);
    }
    String kind = section.equals("layout") ? names.get(1) : section + "/" + names.get(1);
    return inside(kind, names.subList(2, names.size()));
  }

  private static Thing inside(String section, List<String> names) {
    String entry = section + "/" + names.get(0);
    if (names.size() > 2) {
      String map = names.get(1);
      List<String> rest = names.subList(3, names.size());
      boolean device = section.equals("devices");
      if (device && (map.equals("elements") || map.equals("ports"))) {
        return new Thing(entry + "." + names.get(2), rest);
      }
      boolean connector = section.equals("connectors");
      if ((connector && map.equals("cavities")) || (device && map.equals("pins"))) {
        return new Thing(entry + ":" + names.get(2), rest);
      }
    }
    return new Thing(entry, names.subList(1, names.size()));
  }

  /** {@code leastS of item 1 of times of parts/fuses/f1}: the value in words. */
  public String inWords() {
    StringBuilder words = new StringBuilder();
    for (int i = rest.size() - 1; i >= 0; i--) {
      String step = rest.get(i);
      boolean index = i > 0 && step.chars().allMatch(c -> c >= '0' && c <= '9') && !step.isEmpty();
      words.append(index ? "item " + (Long.parseLong(cut(step)) + 1) : Quoted.name(step));
      words.append(" of ");
    }
    words.append(name.isEmpty() ? "this file" : Quoted.name(name));
    return words.toString();
  }

  private static String cut(String digits) {
    return digits.substring(0, Math.min(9, digits.length()));
  }
}
