package org.tugtest.write;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.tugtest.text.NaturalOrder;
import org.tugtest.write.JsonText.Members;
import org.tugtest.write.JsonText.Value;

/** Which wires end on which cavity or pin, for the columns of a sheet that are only shown. */
final class WiredPoints {
  private record Wire(@Nullable String circuit, @Nullable String colour) {}

  private final Map<String, SortedMap<String, Wire>> wires = new HashMap<>();
  private final Map<String, Set<String>> names = new HashMap<>();

  WiredPoints(Collection<JsonText> trees) {
    for (JsonText tree : trees) {
      Members section = tree.objectAt("wires");
      if (section != null) {
        section.byName().values().forEach(wire -> add(tree, wire.name(), wire.value()));
      }
    }
  }

  private void add(JsonText tree, String id, Value value) {
    if (value instanceof Members fields) {
      Wire wire = new Wire(text(tree, fields, "circuit"), text(tree, fields, "colour"));
      for (String end : List.of("from", "to")) {
        String reference = text(tree, fields, end);
        int colon = reference == null ? -1 : reference.indexOf(':');
        if (reference != null && colon > 0 && colon < reference.length() - 1) {
          wires
              .computeIfAbsent(reference, first -> new TreeMap<>(NaturalOrder.NATURAL))
              .put(id, wire);
          names
              .computeIfAbsent(reference.substring(0, colon), first -> new TreeSet<>())
              .add(reference.substring(colon + 1));
        }
      }
    }
  }

  private static @Nullable String text(JsonText tree, Members fields, String name) {
    Value value = fields.get(name);
    return value != null && tree.raw(value).startsWith("\"") ? tree.plain(value) : null;
  }

  /** The cavities or pins of a thing that wires name. */
  Set<String> of(String owner) {
    return names.getOrDefault(owner, Set.of());
  }

  /** The wires at a point, or their circuits or colours, each once, with commas between. */
  String shown(String point, String column) {
    SortedMap<String, Wire> there = wires.getOrDefault(point, new TreeMap<>());
    List<@Nullable String> all =
        switch (column) {
          case "wires" -> List.copyOf(there.keySet());
          case "circuits" -> there.values().stream().<@Nullable String>map(Wire::circuit).toList();
          default -> there.values().stream().<@Nullable String>map(Wire::colour).toList();
        };
    return String.join(
        ", ", all.stream().filter(text -> text != null && !text.isEmpty()).distinct().toList());
  }
}
