package org.tugtest.report.html.loom;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.tugtest.compare.Comparison;
import org.tugtest.compare.change.Change;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Subject;
import org.tugtest.model.Ref;
import org.tugtest.model.Wire;
import org.tugtest.network.Point;
import org.tugtest.route.Piece;

/**
 * What changes of a drawing against an older revision.
 *
 * @param against the older revision, in words; empty when there is none
 * @param arms sentences by the number of an arm
 * @param knots sentences by the number of a knot
 */
public record Touched(
    String against, Map<Integer, Set<String>> arms, Map<Integer, Set<String>> knots) {
  /** No older revision. */
  public static final Touched NOTHING = new Touched("", Map.of(), Map.of());

  /** What changes touch. */
  static Touched of(String against, Comparison comparison, FoundSkeleton found) {
    return new Builder(comparison, found).build(against);
  }

  private static final class Builder {
    private final Comparison comparison;
    private final FoundSkeleton found;
    private final Map<String, Integer> armOf = new HashMap<>();
    private final Map<String, Set<Integer>> knotsOf = new HashMap<>();
    private final Map<Integer, Set<String>> arms = new TreeMap<>();
    private final Map<Integer, Set<String>> knots = new TreeMap<>();

    Builder(Comparison comparison, FoundSkeleton found) {
      this.comparison = comparison;
      this.found = found;
      found.skeleton().arms().forEach(arm -> armOf.put(arm.id(), arm.number()));
      for (Skeleton.Knot knot : found.skeleton().knots()) {
        put(knot.id(), knot.number());
        knot.here().forEach(thing -> put(thing, knot.number()));
      }
    }

    /** A plugged pair stands under both of its names, a pin under that of its device. */
    private void put(String thing, int knot) {
      for (String name : thing.split("=", -1)) {
        knotsOf.computeIfAbsent(owner(name), none -> new LinkedHashSet<>()).add(knot);
      }
    }

    private static String owner(String id) {
      int colon = id.indexOf(':');
      return colon > 0 ? id.substring(0, colon) : id;
    }

    Touched build(String against) {
      for (Change change : comparison.changes()) {
        Subject is = change.is();
        Subject was = change.was();
        if (is != null) {
          touch(comparison.after().facts(), is, change.sentence());
        }
        if (was != null && !was.equals(is)) {
          touch(comparison.before().facts(), was, change.sentence());
        }
      }
      return new Touched(against, arms, knots);
    }

    private void touch(Facts facts, Subject subject, String sentence) {
      switch (subject.section()) {
        case "wires" -> wire(facts, facts.harness().wires().get(subject.id()), sentence);
        case "segments" -> arm(subject.id(), sentence);
        case "nodes", "connectors", "devices", "splices", "fitted" -> knot(subject.id(), sentence);
        default -> {
          // parts, states and the like have no place in a drawing
        }
      }
    }

    private void wire(Facts facts, @Nullable Wire wire, String sentence) {
      if (wire == null) {
        return;
      }
      List<Piece> pieces =
          facts.routes().of(wire.id()).map(route -> route.pieces()).orElse(List.of());
      if (found.skeleton().ofLayout()) {
        pieces.forEach(piece -> arm(piece.segment(), sentence));
      } else if (facts == comparison.after().facts()) {
        Integer run = found.runs().of().get(wire.id());
        if (run != null) {
          found.runs().all().get(run).forEach(arm -> put(arms, arm, sentence));
        }
      }
      for (Ref end : ends(wire)) {
        facts.wiring().pointOf(end).map(Point::owner).ifPresent(owner -> knot(owner, sentence));
      }
    }

    private static List<Ref> ends(Wire wire) {
      List<Ref> ends = new ArrayList<>();
      for (Ref end : new Ref[] {wire.from(), wire.to()}) {
        if (end != null) {
          ends.add(end);
        }
      }
      return ends;
    }

    private void arm(String segment, String sentence) {
      Integer arm = armOf.get(segment);
      if (arm != null) {
        put(arms, arm, sentence);
      }
    }

    private void knot(String id, String sentence) {
      String owner = owner(id);
      int dot = owner.indexOf('.');
      boolean element = dot > 0 && !knotsOf.containsKey(owner);
      for (int knot : knotsOf.getOrDefault(element ? owner.substring(0, dot) : owner, Set.of())) {
        put(knots, knot, sentence);
      }
    }

    private static void put(Map<Integer, Set<String>> at, int number, String sentence) {
      at.computeIfAbsent(number, none -> new LinkedHashSet<>()).add(sentence);
    }
  }
}
