package org.tugtest.compare;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.tugtest.compare.circuit.Certificate;
import org.tugtest.facts.Facts;
import org.tugtest.model.Ref;
import org.tugtest.model.Wire;
import org.tugtest.network.Point;
import org.tugtest.network.Wiring;

/**
 * Checks a certificate against a harness without computing any net: every link is in the files,
 * every tree hangs together, every point is in one tree, and nothing in the files leads from one
 * tree to another.
 */
final class CertificateChecker {
  private final Wiring wiring;
  private final Facts facts;
  private final Map<String, Set<String>> there = new HashMap<>();
  private final List<String[]> all = new ArrayList<>();

  private CertificateChecker(Facts facts) {
    this.facts = facts;
    this.wiring = facts.wiring();
    for (Wire wire : facts.harness().wires().values()) {
      link(end(wire.from()), end(wire.to()), wire.id());
    }
    for (String connector : wiring.connectors()) {
      for (String cavity : wiring.cavitiesOf(connector)) {
        Point point = Point.cavity(connector, cavity);
        wiring.meets(point).ifPresent(other -> link(point.text(), other.text(), ""));
      }
    }
    facts
        .harness()
        .devices()
        .values()
        .forEach(
            device ->
                device.boltedTo().forEach((pin, to) -> link(device.id() + ":" + pin, end(to), "")));
  }

  private String end(Ref ref) {
    return wiring.pointOf(ref).map(Point::text).orElse("");
  }

  private void link(String one, String other, String wire) {
    if (!one.isEmpty() && !other.isEmpty() && !one.equals(other)) {
      all.add(new String[] {one, other});
      there.computeIfAbsent(one + " " + other, none -> new HashSet<>()).add(wire);
      there.computeIfAbsent(other + " " + one, none -> new HashSet<>()).add(wire);
    }
  }

  /** What is wrong with one side; empty when it is proved. */
  static String fault(List<Certificate.Tree> trees, Facts facts) {
    return new CertificateChecker(facts).fault(trees);
  }

  private String fault(List<Certificate.Tree> trees) {
    Map<String, Integer> treeOf = new HashMap<>();
    for (int i = 0; i < trees.size(); i++) {
      Certificate.Tree tree = trees.get(i);
      for (String point : tree.points()) {
        if (treeOf.put(point, i) != null) {
          return point + " is in two trees";
        }
      }
      Set<String> reached = new HashSet<>(Set.of(tree.points().get(0)));
      for (Certificate.Link link : tree.links()) {
        String wire = link.wire() == null ? "" : link.wire();
        if (!there.getOrDefault(link.from() + " " + link.to(), Set.of()).contains(wire)) {
          return link + " is not in the files";
        }
        if (!reached.contains(link.from()) || !reached.add(link.to())) {
          return link + " does not grow the tree";
        }
      }
      if (!reached.equals(new HashSet<>(tree.points()))) {
        return "the tree of " + tree.points().get(0) + " does not join its points";
      }
    }
    for (String[] link : all) {
      Integer one = treeOf.get(link[0]);
      if (one == null || !one.equals(treeOf.get(link[1]))) {
        return link[0] + " and " + link[1] + " are joined and in two trees";
      }
    }
    Set<String> missing = new TreeSet<>(wiring.splices());
    for (String connector : wiring.connectors()) {
      wiring.cavitiesOf(connector).forEach(cavity -> missing.add(connector + ":" + cavity));
    }
    for (String device : facts.harness().devices().keySet()) {
      wiring.pinsOf(device).forEach(pin -> missing.add(device + ":" + pin));
    }
    missing.removeAll(treeOf.keySet());
    return missing.isEmpty() ? named(trees) : missing + " are in no tree";
  }

  /** Every pin of a device and every cavity of an open plug has a name, and nothing else has. */
  private String named(List<Certificate.Tree> trees) {
    int labels = 0;
    for (Certificate.Tree tree : trees) {
      long own =
          tree.points().stream().filter(point -> isLabelled(Ref.parse(point).owner())).count();
      if (own != tree.pins().size() || new TreeSet<>(tree.pins()).size() != own) {
        return "the tree of " + tree.points().get(0) + " has " + own + " pins, not " + tree.pins();
      }
      labels += tree.pins().size();
    }
    int expected = 0;
    for (String device : facts.harness().devices().keySet()) {
      expected += wiring.pinsOf(device).size();
    }
    for (String connector : wiring.connectors()) {
      expected += isLabelled(connector) ? wiring.cavitiesOf(connector).size() : 0;
    }
    return labels == expected ? "" : labels + " pins are named, of " + expected;
  }

  private boolean isLabelled(String owner) {
    return facts.harness().devices().containsKey(owner)
        || (wiring.connectors().contains(owner) && wiring.mating().mateOf(owner).isEmpty());
  }

  /** Whether the pins of the trees fall into the same nets; one that a side has not is alone. */
  static boolean same(Certificate certificate) {
    return joined(certificate.before()).equals(joined(certificate.after()));
  }

  private static Set<Set<String>> joined(List<Certificate.Tree> trees) {
    Set<Set<String>> nets = new HashSet<>();
    trees.stream()
        .filter(tree -> tree.pins().size() > 1)
        .forEach(tree -> nets.add(new TreeSet<>(tree.pins())));
    return nets;
  }
}
