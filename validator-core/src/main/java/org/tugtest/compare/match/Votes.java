package org.tugtest.compare.match;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.tugtest.compare.entry.Renames;
import org.tugtest.model.Connector;
import org.tugtest.model.Device;
import org.tugtest.model.Harness;
import org.tugtest.model.Layout;
import org.tugtest.model.Splice;
import org.tugtest.model.Wire;
import org.tugtest.text.NaturalOrder;

/**
 * Counts how much speaks for two things being one, and matches the pairs for which most does. Of
 * equal counts the pair of the first ids wins, whichever side is called before.
 */
final class Votes {
  private final Map<Pair, Integer> counts = new HashMap<>();
  private final Map<String, Integer> castBefore = new HashMap<>();
  private final Map<String, Integer> castAfter = new HashMap<>();
  private final String why;

  /** Two ids that may be one thing. */
  record Pair(String before, String after) {
    private String least() {
      return NaturalOrder.NATURAL.compare(before, after) <= 0 ? before : after;
    }

    private String greatest() {
      return NaturalOrder.NATURAL.compare(before, after) <= 0 ? after : before;
    }

    static final Comparator<Pair> ORDER =
        Comparator.comparing(Pair::least, NaturalOrder.NATURAL)
            .thenComparing(Pair::greatest, NaturalOrder.NATURAL)
            .thenComparing(Pair::before, NaturalOrder.NATURAL);
  }

  Votes(String why) {
    this.why = why;
  }

  void add(@Nullable String before, @Nullable String after) {
    if (before != null && after != null) {
      counts.merge(new Pair(before, after), 1, Integer::sum);
      castBefore.merge(before, 1, Integer::sum);
      castAfter.merge(after, 1, Integer::sum);
    }
  }

  /** The pairs with their counts, most first. */
  List<Map.Entry<Pair, Integer>> ranked() {
    return counts.entrySet().stream()
        .sorted(
            Map.Entry.<Pair, Integer>comparingByValue(Comparator.reverseOrder())
                .thenComparing(Map.Entry.comparingByKey(Pair.ORDER)))
        .toList();
  }

  /** Matches each free pair for which more than half of all speaks, on both sides. */
  void match(SectionMatch section) {
    for (Map.Entry<Pair, Integer> entry : ranked()) {
      Pair pair = entry.getKey();
      int most =
          Math.max(
              castBefore.getOrDefault(pair.before(), 0), castAfter.getOrDefault(pair.after(), 0));
      if (2 * entry.getValue() > most && section.isFree(pair.before(), pair.after())) {
        section.match(pair.before(), pair.after(), why);
      }
    }
  }

  /** Looms are known by their wires, connectors and splices. */
  static Votes ofLooms(Harness before, Harness after) {
    Votes votes = new Votes("its wires and connectors");
    for (Wire wire : before.wires().values()) {
      Wire other = after.wires().get(wire.id());
      votes.add(wire.loom(), other == null ? null : other.loom());
    }
    for (Connector connector : before.connectors().values()) {
      Connector other = after.connectors().get(connector.id());
      votes.add(connector.loom(), other == null ? null : other.loom());
    }
    for (Splice splice : before.splices().values()) {
      Splice other = after.splices().get(splice.id());
      votes.add(splice.loom(), other == null ? null : other.loom());
    }
    return votes;
  }

  /** Nodes are known by what stands at them and by the segments that end there. */
  static Votes ofNodes(Harness before, Harness after, Renames renames) {
    Votes votes = new Votes("what stands at it");
    for (Device device : before.devices().values()) {
      Device other = after.devices().get(device.id());
      votes.add(device.at(), other == null ? null : other.at());
    }
    for (Connector connector : before.connectors().values()) {
      Connector other = after.connectors().get(renames.owner(connector.id()));
      votes.add(connector.at(), other == null ? null : other.at());
    }
    for (Splice splice : before.splices().values()) {
      Splice other = after.splices().get(renames.owner(splice.id()));
      votes.add(splice.at(), other == null ? null : other.at());
    }
    for (Layout.Segment segment : before.layout().segments().values()) {
      Layout.Segment other = after.layout().segments().get(segment.id());
      if (other != null) {
        votes.add(segment.from(), other.from());
        votes.add(segment.to(), other.to());
      }
    }
    return votes;
  }
}
