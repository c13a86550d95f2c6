package org.tugtest.route;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tugtest.finding.Basis;
import org.tugtest.model.Group;
import org.tugtest.model.Harness;
import org.tugtest.model.Wire;
import org.tugtest.network.WireSizes;
import org.tugtest.table.Cited;

/**
 * What a twist adds to the length of each wire: axial length times {@code sqrt(1 + (pi * d /
 * pitch)^2)} (geometry), d being the diameter of the circle on which the wire's middle runs: the
 * diameter of the group less that of the wire. For two wires that is the diameter of the other one.
 */
final class Twist {
  /** Three equal circles lie in one of 2.1547 times their diameter, 2 / sqrt(3) + 1. */
  private static final double OF_THREE = 1 + 2 / Math.sqrt(3);

  /** A loose bundle: 1.2 times the root of the sum of squares (practice of bundle tables). */
  private static final double OF_MANY = 1.2;

  private final Harness harness;
  private final WireSizes sizes;

  /** The outcome for one wire; {@code missing} says what is not given, in a sentence. */
  record Laid(Route.@Nullable Lay lay, @Nullable String missing) {
    static final Laid NONE = new Laid(null, null);
  }

  Twist(Harness harness, WireSizes sizes) {
    this.harness = harness;
    this.sizes = sizes;
  }

  /** The lay of each wire of a group that has a route, by wire id. */
  Map<String, Laid> of(Group group, Map<String, List<Piece>> pieces) {
    Map<String, Laid> laid = new LinkedHashMap<>();
    if (group.kind() != Group.Kind.TWISTED) {
      return laid;
    }
    List<String> members = group.wires().stream().filter(pieces::containsKey).distinct().toList();
    for (String member : members) {
      double shared = sharedMm(member, members, pieces);
      laid.put(member, shared <= 0 ? Laid.NONE : laid(group, member, shared));
    }
    return laid;
  }

  private Laid laid(Group group, String member, double shared) {
    if (group.pitchMm() == null) {
      return new Laid(null, "group " + group.id() + " gives no pitchMm: its lay is not counted");
    }
    Optional<Cited> circle = circleMm(group, member);
    if (circle.isEmpty()) {
      return new Laid(
          null, "a wire of group " + group.id() + " has no diameter: its lay is not counted");
    }
    double turn = Math.PI * circle.get().value() / group.pitchMm();
    return new Laid(
        new Route.Lay(group.id(), shared, Math.sqrt(1 + turn * turn), circle.get().basis()), null);
  }

  /** The diameter of the circle on which the middle of a wire runs; empty when one is not known. */
  private Optional<Cited> circleMm(Group group, String member) {
    double squares = 0;
    double sum = 0;
    double own = 0;
    int count = 0;
    Basis basis = Basis.DERIVED;
    for (String id : group.wires()) {
      Wire wire = harness.wires().get(id);
      Cited outer = wire == null ? null : sizes.outerMm(wire).orElse(null);
      if (wire != null && outer == null) {
        return Optional.empty();
      }
      if (outer != null) {
        count++;
        squares += outer.value() * outer.value();
        sum += outer.value();
        basis = basis.weaker(outer.basis());
        own = id.equals(member) ? outer.value() : own;
      }
    }
    double around =
        count <= 2
            ? sum
            : count == 3 ? OF_THREE * Math.sqrt(squares / 3) : OF_MANY * Math.sqrt(squares);
    return Optional.of(new Cited(Math.max(0, around - own), "group " + group.id(), basis));
  }

  /** How much of a wire lies on pieces where at least one other of its group lies too. */
  private static double sharedMm(
      String member, List<String> members, Map<String, List<Piece>> pieces) {
    double shared = 0;
    for (Piece piece : pieces.getOrDefault(member, List.of())) {
      List<double[]> overlaps = new ArrayList<>();
      for (String other : members) {
        if (!other.equals(member)) {
          for (Piece beside : pieces.getOrDefault(other, List.of())) {
            double low = Math.max(piece.lowMm(), beside.lowMm());
            double high = Math.min(piece.highMm(), beside.highMm());
            if (beside.segment().equals(piece.segment()) && high > low) {
              overlaps.add(new double[] {low, high});
            }
          }
        }
      }
      shared += union(overlaps);
    }
    return shared;
  }

  private static double union(List<double[]> intervals) {
    intervals.sort(Comparator.comparingDouble(one -> one[0]));
    double covered = 0;
    double end = Double.NEGATIVE_INFINITY;
    for (double[] one : intervals) {
      covered += Math.max(0, one[1] - Math.max(one[0], end));
      end = Math.max(end, one[1]);
    }
    return covered;
  }
}
