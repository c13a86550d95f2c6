package org.tugtest.check.cause;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Subject;
import org.tugtest.model.Connector;
import org.tugtest.model.Ref;
import org.tugtest.model.Wire;
import org.tugtest.network.Point;
import org.tugtest.network.Resolution;
import org.tugtest.network.WireEnd;
import org.tugtest.text.NaturalOrder;
import org.tugtest.text.Nearest;

/**
 * Joints that are written and do not come about: wire ends that name what is not there, plugs that
 * mate with what is not there. Each has a finding of its own.
 */
final class Slips {
  /** So many are looked at; a harness with more has other worries. */
  private static final int MOST = 300;

  private final Map<String, List<Point>> pointsOf = new HashMap<>();
  private final List<Slip> all = new ArrayList<>();

  /**
   * One of them.
   *
   * @param finding what is said of it
   * @param from the points at the end that is there; empty when neither is
   * @param meant the connectors, devices and splices that may be meant; empty when none is near
   * @param to the points of these
   */
  record Slip(Finding finding, List<Point> from, Set<String> meant, List<Point> to) {}

  /**
   * @param found the findings about names, by the place of each of their subjects
   */
  Slips(Facts facts, Map<String, List<Finding>> found) {
    facts
        .network()
        .points()
        .forEach(at -> pointsOf.computeIfAbsent(at.owner(), none -> new ArrayList<>(2)).add(at));
    Set<String> owners = new TreeSet<>(NaturalOrder.NATURAL);
    owners.addAll(facts.wiring().connectors());
    owners.addAll(facts.harness().devices().keySet());
    owners.addAll(facts.wiring().splices());
    for (Wire wire : facts.harness().wires().values()) {
      List<Finding> its = found.get(Subject.wire(wire.id()).place());
      if (its != null) {
        addEnd(facts, new WireEnd(wire, true), its.get(0), owners);
        addEnd(facts, new WireEnd(wire, false), its.get(0), owners);
      }
    }
    for (Connector connector : facts.harness().connectors().values()) {
      List<Finding> its = found.get(Subject.connector(connector.id()).place());
      if (its != null && facts.wiring().mating().mateOf(connector.id()).isEmpty()) {
        add(its.get(0), points(connector.id()), meant(connector.mates(), owners));
      }
    }
  }

  private void addEnd(Facts facts, WireEnd end, Finding finding, Set<String> owners) {
    Ref ref = end.ref();
    if (all.size() >= MOST
        || (ref != null && facts.wiring().resolve(ref) instanceof Resolution.Found)) {
      return;
    }
    List<Point> other = facts.wiring().pointOf(end.other().ref()).map(List::of).orElse(List.of());
    add(finding, other, meant(ref, owners));
  }

  private void add(Finding finding, List<Point> from, Set<String> meant) {
    List<Point> to = meant.stream().flatMap(owner -> points(owner).stream()).toList();
    all.add(new Slip(finding, from, meant, to));
  }

  private static Set<String> meant(@Nullable Ref ref, Set<String> owners) {
    if (ref == null) {
      return Set.of();
    }
    if (owners.contains(ref.owner())) {
      return Set.of(ref.owner());
    }
    Set<String> meant = new TreeSet<>(Nearest.to(ref.owner(), owners));
    String letters = letters(ref.owner());
    owners.stream().filter(owner -> letters(owner).equals(letters)).forEach(meant::add);
    return meant;
  }

  /** The letters of a name in their order: those of a twisted one are the same. */
  private static String letters(String name) {
    char[] letters = name.toLowerCase(Locale.ROOT).toCharArray();
    Arrays.sort(letters);
    return String.valueOf(letters);
  }

  /** The points of a connector, device or splice. */
  private List<Point> points(String owner) {
    return pointsOf.getOrDefault(owner, List.of());
  }

  /** All of them, in the order of the wires and then of the connectors. */
  List<Slip> all() {
    return all;
  }
}
