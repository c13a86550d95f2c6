package org.tugtest.rule.load;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.tugtest.facts.Facts;
import org.tugtest.model.Wire;
import org.tugtest.model.WirePart;
import org.tugtest.network.Edge;
import org.tugtest.network.WorkingResistances;
import org.tugtest.rule.PartChoice;
import org.tugtest.table.Cited;

/**
 * What would put a drop right: the smallest stocked part for the wire that loses most with which
 * the rest of the way would be within its limit at the same current.
 */
public final class DropRemedy {
  private static final double MILLI = 1e-3;

  private DropRemedy() {}

  /**
   * Parts for a wire with which a feed would be within its limit.
   *
   * @param wire the one that loses most
   * @param parts stocked ones that suit its ends and stand what flows, the smallest first; may be
   *     empty
   */
  public record Offer(Edge.OfWire wire, List<WirePart> parts) {
    public Offer {
      parts = List.copyOf(parts);
    }
  }

  /** What would put a feed right that loses more than {@code limit} volts; empty without a wire. */
  public static Optional<Offer> offer(Facts facts, Feed feed, double limit) {
    return thinnest(feed)
        .map(
            step -> {
              Edge.OfWire wire = (Edge.OfWire) step.edge();
              PartChoice choice = new PartChoice(facts);
              List<WirePart> parts =
                  choice.larger(wire.wire()).stream()
                      .filter(part -> choice.stands(wire, part))
                      .filter(part -> choice.misfit(wire.wire(), part).isEmpty())
                      .filter(part -> feed.drop() - saved(facts, feed, step, part) <= limit)
                      .toList();
              return new Offer(wire, parts);
            });
  }

  /** The remedy for a feed that loses more than {@code limit} volts. */
  static String of(Facts facts, Feed feed, double limit) {
    List<String> worst = Way.worst(feed.supply(), feed.back());
    String begin =
        worst.isEmpty()
            ? "shorten the way or take the next gauge"
            : "begin where most is lost, "
                + worst.get(0)
                + ": a shorter way, the next gauge or a better joint";
    Optional<Offer> offer = offer(facts, feed, limit).filter(is -> !is.parts().isEmpty());
    return offer.map(is -> words(facts, feed, is)).orElse(begin);
  }

  private static String words(Facts facts, Feed feed, Offer offer) {
    WirePart part = offer.parts().get(0);
    double saved = saved(facts, feed, thinnest(feed).orElseThrow(), part);
    return String.format(
        Locale.ROOT,
        "make %s of %s: %.2f V less, %.2f V in all%s",
        offer.wire().text(),
        part.id(),
        saved,
        feed.drop() - saved,
        new PartChoice(facts).costs(offer.wire().wire(), part));
  }

  /** The wire that loses most. */
  private static Optional<Way.Step> thinnest(Feed feed) {
    List<Way.Step> steps = new ArrayList<>(feed.supply().steps());
    steps.addAll(feed.back().steps());
    return steps.stream()
        .filter(step -> step.edge() instanceof Edge.OfWire)
        .max(Comparator.comparingDouble(Way.Step::volts));
  }

  /** Volts that a part saves at the same current; 0 when that is not known. */
  private static double saved(Facts facts, Feed feed, Way.Step step, WirePart part) {
    Wire wire = ((Edge.OfWire) step.edge()).wire();
    WorkingResistances resistances = facts.operating().resistances();
    double celsius = feed.state().celsius(wire);
    Optional<Cited> now = resistances.conductorMilliohm(wire, celsius);
    Optional<Cited> then = resistances.conductorMilliohm(wire.ofPart(part.id()), celsius);
    return now.isPresent() && then.isPresent()
        ? (now.get().value() - then.get().value()) * MILLI * step.amps()
        : 0;
  }
}
