package org.tugtest.compare.entry;

import static java.util.Map.entry;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.tugtest.model.Expectation;
import org.tugtest.model.Ref;

/**
 * Which fields name other entries, by id. A {@link org.tugtest.model.Ref} needs no line here: it
 * always names a device, connector or splice.
 */
public final class Named {
  /** What stands before the id of a device, connector or splice in {@link #in}. */
  public static final String OWNER = "owner/";

  /** Stands for a field that holds place strings, or whose keys are such. */
  static final String PLACE = "place";

  private static final Map<String, String> FIELDS =
      Map.ofEntries(
          entry("Wire.loom", "looms"),
          entry("Wire.part", "parts/wires"),
          entry("Wire.via", "nodes"),
          entry("Wire.fromTerminal", "parts/terminals"),
          entry("Wire.toTerminal", "parts/terminals"),
          entry("Connector.loom", "looms"),
          entry("Connector.housing", "parts/housings"),
          entry("Connector.at", "nodes"),
          entry("Connector.terminals", "parts/terminals"),
          entry("Connector.seals", "parts/seals"),
          entry("Connector.boot", "parts/coverings"),
          entry("Cavity.terminal", "parts/terminals"),
          entry("Cavity.seal", "parts/seals"),
          entry("Splice.loom", "looms"),
          entry("Splice.at", "nodes"),
          entry("Splice.on", "segments"),
          entry("Splice.part", "parts/splices"),
          entry("Splice.coverings", "parts/coverings"),
          entry("Group.loom", "looms"),
          entry("Group.wires", "wires"),
          entry("Group.screen", "wires"),
          entry("Device.type", "parts/deviceTypes"),
          entry("Device.at", "nodes"),
          entry("Pin.at", "nodes"),
          entry("Port.housing", "parts/housings"),
          entry("Housing.matesWith", "parts/housings"),
          entry("Housing.terminals", "parts/terminals"),
          entry("Housing.seals", "parts/seals"),
          entry("Node.zone", "zones"),
          entry("Node.coverings", "parts/coverings"),
          entry("Segment.loom", "looms"),
          entry("Segment.from", "nodes"),
          entry("Segment.to", "nodes"),
          entry("Segment.zone", "zones"),
          entry("Segment.coverings", "parts/coverings"),
          entry("Segment.supportPart", "parts/supports"),
          entry("State.from", "states"),
          entry("RuleLimits.places", PLACE),
          entry("Waiver.at", PLACE),
          entry("Waiver.state", "states"),
          entry("Expectation.in", "states"),
          entry("Expectation.loom", "looms"));

  private Named() {}

  /**
   * Every entry that an entry names, as {@code section/id}; owners of contacts as {@code owner/id}.
   */
  public static Set<String> in(String section, String id, Object entry) {
    Set<String> names = new LinkedHashSet<>();
    if (section.equals("fitted")) {
      int dot = id.indexOf('.');
      names.add(OWNER + (dot < 0 ? id : id.substring(0, dot)));
      names.add("parts/fuses/" + entry);
      return names;
    }
    collect(entry, null, names);
    return names;
  }

  private static void collect(Object value, @Nullable String section, Set<String> names) {
    if (value instanceof Ref ref) {
      names.add(OWNER + ref.owner());
    } else if (value instanceof Record record) {
      RecordShape shape = RecordShape.of(record);
      for (int i = 0; i < shape.names().size(); i++) {
        Object inner = shape.value(record, i);
        if (inner != null) {
          collect(inner, section(record, shape.names().get(i)), names);
        }
      }
    } else if (value instanceof Collection<?> list) {
      list.forEach(item -> collect(item, section, names));
    } else if (value instanceof Map<?, ?> map) {
      map.forEach(
          (key, item) -> {
            collect(key, null, names);
            collect(item, section, names);
          });
    } else if (value instanceof String text && section != null && !section.equals(PLACE)) {
      names.add(section + "/" + text);
    }
  }

  /** The section that a field of a record names ids of; null when it names none. */
  static @Nullable String section(Object record, String field) {
    if (record instanceof Expectation expectation
        && !expectation.byCircuit()
        && (field.equals("first") || field.equals("second"))) {
      return "wires";
    }
    return FIELDS.get(record.getClass().getSimpleName() + "." + field);
  }
}
