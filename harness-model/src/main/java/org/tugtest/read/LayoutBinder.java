package org.tugtest.read;

import static org.tugtest.read.Fields.count;
import static org.tugtest.read.Fields.flag;
import static org.tugtest.read.Fields.list;
import static org.tugtest.read.Fields.map;
import static org.tugtest.read.Fields.number;
import static org.tugtest.read.Fields.object;
import static org.tugtest.read.Fields.text;
import static org.tugtest.read.Fields.texts;
import static org.tugtest.read.Fields.word;
import static org.tugtest.read.Fields.wordSet;
import static org.tugtest.read.Fields.words;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.tugtest.model.Layout;
import org.tugtest.model.Near;
import org.tugtest.model.Zone;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** Takes the layout and the zones. */
final class LayoutBinder {
  private static final Map<String, Near> NEAR = words(Near.values());
  private static final Map<String, Zone.Moisture> MOISTURE = words(Zone.Moisture.values());

  private LayoutBinder() {}

  static Layout layout(ObjectNode layout, @Nullable String loom) {
    return new Layout(
        map(layout, "nodes", LayoutBinder::node),
        map(layout, "segments", (id, fields) -> segment(id, fields, loom)));
  }

  private static Layout.Node node(String id, ObjectNode fields) {
    List<Double> xyz = new ArrayList<>();
    for (JsonNode figure : list(fields, "xyzMm")) {
      if (figure.isNumber()) {
        xyz.add(Fields.plain(figure));
      }
    }
    return new Layout.Node(
        id,
        text(fields, "zone"),
        flag(fields, "held", true),
        xyz.size() == 3 ? xyz : List.of(),
        texts(fields, "coverings"));
  }

  private static Layout.Segment segment(String id, ObjectNode fields, @Nullable String loom) {
    ObjectNode given = object(fields, "clearanceMm");
    Map<Near, Double> clearances = new EnumMap<>(Near.class);
    NEAR.forEach(
        (word, near) -> {
          Double clearance = number(given, word);
          if (clearance != null) {
            clearances.put(near, clearance);
          }
        });
    return new Layout.Segment(
        id,
        loom,
        text(fields, "from"),
        text(fields, "to"),
        number(fields, "lengthMm"),
        text(fields, "zone"),
        texts(fields, "coverings"),
        count(fields, "supports"),
        text(fields, "supportPart"),
        number(fields, "bendRadiusMm"),
        flag(fields, "flexes", false),
        clearances);
  }

  static Zone zone(String id, ObjectNode fields) {
    return new Zone(
        id,
        number(fields, "ambientC"),
        word(fields, "moisture", MOISTURE),
        wordSet(fields, "needs", PartsBinder.NEEDS),
        wordSet(fields, "near", NEAR));
  }
}
