package org.tugtest.rule.body;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.tugtest.facts.Facts;
import org.tugtest.model.Wire;
import org.tugtest.network.WorkingResistances;
import org.tugtest.route.Piece;
import org.tugtest.route.ShortWays;
import org.tugtest.route.WireMass;
import org.tugtest.table.Cited;
import org.tugtest.text.NaturalOrder;

/**
 * A chain that is longer than its ends ask for.
 *
 * @param run the chain along the layout
 * @param directMm the shortest way between its ends
 * @param doubled what it runs out and back
 * @param beyond mated pairs it goes through at nodes that are not on the shortest way
 * @param grams mass of the length that is too much, as far as it is known
 * @param milliohm its resistance, as far as it is known
 */
record Detour(
    Chain.Run run,
    double directMm,
    Doubled doubled,
    List<Chain.Joint> beyond,
    double grams,
    double milliohm) {

  /** The length that is too much. */
  double extraMm() {
    return run.mm() - directMm;
  }

  /** Whether a wire of it has both ends in one connector: a plug that closes a loop. */
  boolean closedByPlug() {
    for (Chain.Link link : run.chain().links()) {
      Wire wire = link.wire();
      if (wire.from() != null
          && wire.to() != null
          && wire.from().pin() != null
          && wire.from().owner().equals(wire.to().owner())) {
        return true;
      }
    }
    return false;
  }

  /** Measures what a chain is too long by. */
  static final class Measure {
    private final Facts facts;
    private final WireMass mass;
    private final WorkingResistances resistances;

    Measure(Facts facts) {
      this.facts = facts;
      this.mass = new WireMass(facts.harness(), facts.fitting().sizes());
      this.resistances = new WorkingResistances(facts.harness(), facts.fitting(), facts.lengths());
    }

    Detour of(Chain.Run run, ShortWays.ShortWay direct) {
      double extra = run.mm() - direct.mm();
      double share = run.mm() <= 0 ? 0 : extra / run.mm();
      double grams = 0;
      double milliohm = 0;
      for (Chain.Link link : run.chain().links()) {
        double metres =
            facts.routes().of(link.wire().id()).map(r -> r.segmentsMm()).orElse(0.0) / 1000;
        grams += share * metres * figure(mass.gramsPerM(link.wire()));
        milliohm += share * metres * figure(resistances.milliohmPerM(link.wire()));
      }
      List<Chain.Joint> beyond = new ArrayList<>();
      for (Chain.Joint joint : run.chain().joints()) {
        if (nodes(joint).stream().noneMatch(direct.nodes()::contains)) {
          beyond.add(joint);
        }
      }
      return new Detour(run, direct.mm(), Doubled.of(run.pieces()), beyond, grams, milliohm);
    }

    private Set<String> nodes(Chain.Joint joint) {
      Set<String> nodes = new LinkedHashSet<>();
      facts.wiring().nodeOf(joint.one()).ifPresent(nodes::add);
      facts.wiring().nodeOf(joint.two()).ifPresent(nodes::add);
      return nodes;
    }

    private static double figure(Optional<Cited> cited) {
      return cited.map(Cited::value).orElse(0.0);
    }
  }

  /** The segments it runs along and the shortest way does not need, in natural order. */
  List<String> segments() {
    return doubled.segments().isEmpty()
        ? run.pieces().stream().map(Piece::segment).distinct().sorted(NaturalOrder.NATURAL).toList()
        : List.copyOf(doubled.segments());
  }
}
