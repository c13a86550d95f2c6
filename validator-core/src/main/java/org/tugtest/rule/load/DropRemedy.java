package org.tugtest.rule.load;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.tugtest.facts.Facts;
import org.tugtest.model.WirePart;
import org.tugtest.network.Edge;
import org.tugtest.network.WorkingResistances;
import org.tugtest.rule.PartChoice;
import org.tugtest.table.Cited;

/**
 * What would put a drop right: the smallest stocked part for the wire that loses most with which
 * the rest of the way would be within its limit at the same current.
 */
final class DropRemedy {
  private static final double MILLI = 1e-3;

  private DropRemedy() {}

  /** The remedy for a feed that loses more than {@code limit} volts. */
  static String of(Facts facts, Feed feed, double limit) {
    List<Way.Step> steps = new ArrayList<>(feed.supply().steps());
    steps.addAll(feed.back().steps());
    List<String> worst = Way.worst(feed.supply(), feed.back());
    Optional<Way.Step> thinnest =
        steps.stream()
            .filter(step -> step.edge() instanceof Edge.OfWire)
            .max(Comparator.comparingDouble(Way.Step::volts));
    String begin =
        worst.isEmpty()
            ? "shorten the way or take the next gauge"
            : "begin where most is lost, "
                + worst.get(0)
                + ": a shorter way, the next gauge or a better joint";
    return thinnest.flatMap(step -> larger(facts, feed, step, limit)).orElse(begin);
  }

  private static Optional<String> larger(Facts facts, Feed feed, Way.Step step, double limit) {
    Edge.OfWire wire = (Edge.OfWire) step.edge();
    WorkingResistances resistances = facts.operating().resistances();
    double celsius = feed.state().celsius(wire.wire());
    Optional<Cited> now = resistances.conductorMilliohm(wire.wire(), celsius);
    PartChoice choice = new PartChoice(facts);
    if (now.isEmpty()) {
      return Optional.empty();
    }
    for (WirePart part : choice.larger(wire.wire())) {
      Optional<Cited> then = resistances.conductorMilliohm(wire.wire().ofPart(part.id()), celsius);
      double saved =
          then.map(ohms -> (now.get().value() - ohms.value()) * MILLI * step.amps()).orElse(0.0);
      boolean fits = choice.stands(wire, part) && choice.misfit(wire.wire(), part).isEmpty();
      if (fits && feed.drop() - saved <= limit) {
        return Optional.of(
            String.format(
                Locale.ROOT,
                "make %s of %s: %.2f V less, %.2f V in all%s",
                wire.text(),
                part.id(),
                saved,
                feed.drop() - saved,
                choice.costs(wire.wire(), part)));
      }
    }
    return Optional.empty();
  }
}
