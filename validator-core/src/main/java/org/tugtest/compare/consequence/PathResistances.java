package org.tugtest.compare.consequence;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.tugtest.compare.Comparison;
import org.tugtest.compare.change.Change;
import org.tugtest.compare.entry.Renames;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Subject;
import org.tugtest.network.Edge;
import org.tugtest.network.Meter;
import org.tugtest.network.MeterOhms;
import org.tugtest.network.Net;
import org.tugtest.network.Point;
import org.tugtest.network.Shown;

/**
 * Of each net that stayed and in which something was changed, the way between two device pins whose
 * resistance at 20 °C moved most.
 */
public final class PathResistances implements Consequence {
  /** Pins of one net that are tried from its first one. */
  private static final int MOST_PINS = 50;

  @Override
  public String title() {
    return "resistances within the nets that stayed";
  }

  @Override
  public List<Moved> of(Comparison comparison) {
    Facts after = comparison.after().facts();
    Set<Point> touched = touched(comparison, after);
    if (touched.isEmpty()) {
      return List.of();
    }
    Meter one = meter(comparison.before().facts());
    Meter other = meter(after);
    Renames back = comparison.matches().backwards();
    List<Moved> moved = new ArrayList<>();
    for (Net net : after.nets().all()) {
      if (touched.contains(net.first())) {
        worst(net, one, other, back).ifPresent(moved::add);
      }
    }
    return Moved.sorted(moved);
  }

  private static Optional<Moved> worst(Net net, Meter before, Meter after, Renames back) {
    List<Point> pins =
        net.points().stream().filter(point -> point.kind() == Point.Kind.PIN).toList();
    List<Moved> moved = new ArrayList<>();
    for (int i = 1; i < Math.min(pins.size(), MOST_PINS); i++) {
      Point from = pins.get(0);
      Point to = pins.get(i);
      Optional<Shown> was = before.between(renamed(from, back), renamed(to, back));
      Optional<Shown> is = after.between(from, to);
      if (was.isPresent()
          && is.isPresent()
          && was.get().milliohm() != null
          && is.get().milliohm() != null) {
        Moved.of(
                from.text() + " to " + to.text(),
                to.subject(),
                was.get().milliohm(),
                is.get().milliohm(),
                "mΩ",
                1)
            .ifPresent(moved::add);
      }
    }
    return moved.stream().min(Moved.LARGEST_FIRST);
  }

  private static Point renamed(Point point, Renames back) {
    return new Point(point.kind(), back.owner(point.owner()), point.name());
  }

  /** The nets in which a wire, connector or splice was changed. */
  private static Set<Point> touched(Comparison comparison, Facts after) {
    Set<String> wires = new HashSet<>();
    Set<String> owners = new HashSet<>();
    for (Change change : comparison.changes()) {
      Subject is = change.is();
      if (is != null && !change.field().equals("id")) {
        switch (is.section()) {
          case "wires" -> wires.add(is.id());
          case "connectors", "splices" -> owners.add(is.id());
          case "parts/wires", "parts/terminals", "parts/splices", "defaults", "segments" ->
              owners.add("");
          default -> {}
        }
      }
    }
    Set<Point> touched = new HashSet<>();
    for (Net net : after.nets().all()) {
      if (owners.contains("")
          || net.wires().stream().anyMatch(wire -> wires.contains(wire.id()))
          || net.points().stream().anyMatch(point -> owners.contains(point.owner()))) {
        touched.add(net.first());
      }
    }
    return touched;
  }

  private static Meter meter(Facts facts) {
    List<Edge> edges =
        facts.network().edges().stream().filter(e -> !(e instanceof Edge.OfElement)).toList();
    return Meter.of(
        facts.network().points(),
        edges,
        new MeterOhms(facts.harness(), facts.wiring(), facts.fitting(), facts.lengths()));
  }
}
