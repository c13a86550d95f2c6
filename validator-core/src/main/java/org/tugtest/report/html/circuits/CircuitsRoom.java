package org.tugtest.report.html.circuits;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.tugtest.facts.Facts;
import org.tugtest.model.Element;
import org.tugtest.network.Edge;
import org.tugtest.operate.OperatingPoint;
import org.tugtest.report.html.text.Few;

/**
 * The circuits of all loads and coils.
 *
 * @param circuits those that are shown whole
 * @param others the others, each in a line
 */
public record CircuitsRoom(List<Circuit> circuits, Few<Brief> others) {
  private static final int MOST_WHOLE = 150;
  private static final int WHOLE_OF_MANY = 24;
  private static final int MOST_BRIEF = 400;
  private static final int STRETCH = 200;

  /** A circuit in a line. */
  public record Brief(String load, String what, String says) {}

  /** The room of a harness. */
  public static CircuitsRoom of(Facts facts) {
    return new Builder(facts).build();
  }

  private static final class Builder {
    private final Facts facts;
    private final CircuitText text;

    Builder(Facts facts) {
      this.facts = facts;
      this.text = new CircuitText(facts);
    }

    /** The state in which a load draws most, of those that want it if there are such. */
    private record Drawn(Edge.OfElement load, @Nullable OperatingPoint point, double amps) {}

    CircuitsRoom build() {
      List<Drawn> loads = new ArrayList<>();
      for (Edge edge : facts.network().edges()) {
        if (edge instanceof Edge.OfElement inside
            && (inside.element() instanceof Element.Load
                || inside.element() instanceof Element.Coil)) {
          loads.add(drawn(inside));
        }
      }
      Set<Drawn> whole = whole(loads);
      List<Circuit> circuits = new ArrayList<>();
      List<Edge.OfElement> others = new ArrayList<>();
      for (Drawn drawn : loads) {
        if (whole.contains(drawn)) {
          circuits.add(text.circuit(circuits.size() + 1, drawn.load(), drawn.point()));
        } else {
          others.add(drawn.load());
        }
      }
      Few<Edge.OfElement> few = Few.of(others, MOST_BRIEF);
      return new CircuitsRoom(
          List.copyOf(circuits),
          new Few<>(few.shown().stream().map(text::brief).toList(), few.more()));
    }

    private Drawn drawn(Edge.OfElement load) {
      OperatingPoint best = null;
      for (OperatingPoint point : facts.operating().all()) {
        if (point.draws(load) && (best == null || better(load, point, best))) {
          best = point;
        }
      }
      return new Drawn(load, best, best == null ? 0 : Math.abs(best.amps(load)));
    }

    private static boolean better(Edge.OfElement load, OperatingPoint point, OperatingPoint than) {
      int rank = rank(load, point) - rank(load, than);
      return rank == 0 ? Math.abs(point.amps(load)) > Math.abs(than.amps(load)) + 1e-9 : rank > 0;
    }

    /** States that want the load come first, lasting ones before brief ones. */
    private static int rank(Edge.OfElement load, OperatingPoint point) {
      return (point.wanted(load) ? 2 : 0) + (point.brief() ? 0 : 1);
    }

    /** Those that draw most. */
    private static Set<Drawn> whole(List<Drawn> loads) {
      List<Drawn> sorted = new ArrayList<>(loads);
      sorted.sort(Comparator.comparingDouble((Drawn drawn) -> -drawn.amps()));
      return new HashSet<>(
          sorted.subList(0, sorted.size() <= MOST_WHOLE ? sorted.size() : WHOLE_OF_MANY));
    }
  }

  /** How many circuits there are. */
  public int count() {
    return circuits.size() + others.count();
  }

  /** Those in a line each, in stretches that a browser lays out one by one. */
  public List<List<Brief>> stretches() {
    return others.stretches(STRETCH);
  }
}
