package org.tugtest.rule.load;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.text.similarity.LevenshteinDistance;
import org.tugtest.facts.Facts;
import org.tugtest.model.Wire;
import org.tugtest.network.Edge;
import org.tugtest.network.Network;
import org.tugtest.network.Point;

/**
 * In a sketch, contacts that a wire may have meant: it ends alone on one that nothing else names,
 * and a pin of an element that lacks a wire is called nearly the same.
 */
record MeantContacts(List<Meant> all) {
  private static final LevenshteinDistance ONE_EDIT = new LevenshteinDistance(1);

  /**
   * One of them.
   *
   * @param wire ends alone on {@code written}
   * @param pin a pin that lacks a wire
   */
  record Meant(Wire wire, Point written, Point pin) {
    String question() {
      return "did you mean "
          + pin.text()
          + "? wire "
          + wire.id()
          + " ends on "
          + written.text()
          + ", which nothing else names";
    }
  }

  /** Those of a harness; none unless it is a sketch. */
  static MeantContacts of(Facts facts) {
    return facts.once(MeantContacts.class, MeantContacts::find);
  }

  /** The contact whose wire would bring a dead stretch what it lacks. */
  Optional<Meant> within(Live live, Point deadEnd, boolean plus) {
    return all.stream()
        .filter(meant -> live.on(meant.written(), plus))
        .filter(meant -> live.group(meant.pin()).equals(live.group(deadEnd)))
        .findFirst();
  }

  private static MeantContacts find(Facts facts) {
    List<Meant> all = new ArrayList<>();
    if (!facts.harness().sketch()) {
      return new MeantContacts(all);
    }
    Network network = facts.network();
    Map<Point, Wire> lone = new LinkedHashMap<>();
    Map<String, List<Point>> bareByOwner = new LinkedHashMap<>();
    Map<String, List<Point>> bareByName = new LinkedHashMap<>();
    for (Point point : network.points()) {
      List<Edge> edges = network.edgesAt(point);
      boolean element = edges.stream().anyMatch(Edge.OfElement.class::isInstance);
      if (edges.size() == 1 && edges.get(0) instanceof Edge.OfWire wire) {
        lone.put(point, wire.wire());
      } else if (element && edges.stream().allMatch(Edge.OfElement.class::isInstance)) {
        bareByOwner.computeIfAbsent(point.owner(), none -> new ArrayList<>(1)).add(point);
        bareByName.computeIfAbsent(point.name(), none -> new ArrayList<>(1)).add(point);
      }
    }
    lone.forEach(
        (written, wire) -> {
          for (Point pin : bareByOwner.getOrDefault(written.owner(), List.of())) {
            if (isNear(written.name(), pin.name())) {
              all.add(new Meant(wire, written, pin));
            }
          }
          for (Point pin : bareByName.getOrDefault(written.name(), List.of())) {
            if (!pin.owner().equals(written.owner()) && isNear(written.owner(), pin.owner())) {
              all.add(new Meant(wire, written, pin));
            }
          }
        });
    return new MeantContacts(List.copyOf(all));
  }

  /** Whether two names are one edit apart, or two neighbours of one are swapped in the other. */
  private static boolean isNear(String written, String name) {
    String one = written.toLowerCase(Locale.ROOT);
    String other = name.toLowerCase(Locale.ROOT);
    return ONE_EDIT.apply(one, other) >= 0 || isSwapped(one, other);
  }

  private static boolean isSwapped(String one, String other) {
    if (one.length() != other.length()) {
      return false;
    }
    int at = Arrays.mismatch(one.toCharArray(), other.toCharArray());
    return at >= 0
        && at + 1 < one.length()
        && one.charAt(at) == other.charAt(at + 1)
        && one.charAt(at + 1) == other.charAt(at)
        && one.substring(at + 2).equals(other.substring(at + 2));
  }
}
