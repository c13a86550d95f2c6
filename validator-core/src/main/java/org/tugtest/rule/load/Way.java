package org.tugtest.rule.load;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.IntFunction;
import org.jspecify.annotations.Nullable;
import org.tugtest.finding.Basis;
import org.tugtest.model.Element;
import org.tugtest.network.Edge;
import org.tugtest.network.Network;
import org.tugtest.network.Point;
import org.tugtest.operate.OperatingPoint;

/**
 * The way that most of the current of a load takes on one side of it, from the load on, up to a
 * source or to where it ends.
 *
 * @param start where it begins: an end of the load
 * @param steps what it takes, in order
 * @param end where it ends
 * @param source the source at the end; null when it ends elsewhere
 */
public record Way(Point start, List<Step> steps, Point end, Edge.@Nullable OfElement source) {
  private static final int SHOWN = 5;

  /**
   * One thing on the way.
   *
   * @param volts what is lost in it
   * @param amps what flows through it
   */
  public record Step(Edge edge, double volts, double amps) {}

  public Way {
    steps = List.copyOf(steps);
  }

  /** From the end of a load at which current comes in, against the current. */
  static Way supply(OperatingPoint state, Flows flows, Point start) {
    return walk(state, flows, start, flows::bringing);
  }

  /** From the end of a load at which current goes out, along the current. */
  static Way back(OperatingPoint state, Flows flows, Point start) {
    return walk(state, flows, start, flows::taking);
  }

  private static Way walk(
      OperatingPoint state, Flows flows, Point start, IntFunction<List<Flows.Flow>> next) {
    Network network = flows.network();
    List<Step> steps = new ArrayList<>();
    Passed passed = new Passed();
    int at = network.index(start);
    while (passed.add(at)) {
      Flows.Flow most = strongest(next.apply(at), passed);
      if (most == null) {
        break;
      }
      Edge edge = most.edge();
      if (edge instanceof Edge.OfElement inside && inside.element() instanceof Element.Source) {
        return new Way(start, steps, network.points().get(at), inside);
      }
      steps.add(new Step(edge, Math.abs(state.across(edge)), most.amps()));
      at = most.to();
    }
    return new Way(start, steps, network.points().get(at), null);
  }

  private static Flows.@Nullable Flow strongest(List<Flows.Flow> flows, Passed passed) {
    for (Flows.Flow flow : flows) {
      if (!passed.has(flow.to())) {
        return flow;
      }
    }
    return null;
  }

  /** Points that were passed; ways are mostly short. */
  private static final class Passed {
    private static final int FEW = 24;
    private final int[] few = new int[FEW];
    private int count;
    private @Nullable BitSet many;

    boolean has(int point) {
      BitSet all = many;
      if (all != null) {
        return all.get(point);
      }
      for (int i = 0; i < count; i++) {
        if (few[i] == point) {
          return true;
        }
      }
      return false;
    }

    boolean add(int point) {
      if (has(point)) {
        return false;
      }
      if (count < FEW) {
        few[count++] = point;
        return true;
      }
      BitSet all = many;
      if (all == null) {
        all = new BitSet();
        for (int one : few) {
          all.set(one);
        }
        many = all;
      }
      all.set(point);
      return true;
    }
  }

  /** The weakest figure among the resistances on the way. */
  Basis basis(OperatingPoint state) {
    Basis basis = Basis.GIVEN;
    for (Step step : steps) {
      basis = basis.weaker(state.resistance(step.edge()).basis());
    }
    return basis;
  }

  /** The first wire or joint of which a part of the resistance is not known. */
  Optional<Edge> unknown(OperatingPoint state) {
    for (Step step : steps) {
      if (!state.resistance(step.edge()).known()) {
        return Optional.of(step.edge());
      }
    }
    return Optional.empty();
  }

  /** The things on both ways that lose most, greatest first: {@code 0.21 V in W12 at 8.0 A}. */
  public static List<String> worst(Way one, Way other) {
    List<Step> all = new ArrayList<>(one.steps());
    all.addAll(other.steps());
    all.sort(Comparator.comparingDouble((Step step) -> -step.volts()));
    return all.stream()
        .filter(step -> step.volts() > 0.0005)
        .limit(SHOWN)
        .map(
            step ->
                String.format(
                    Locale.ROOT,
                    "%.3f V in %s at %.1f A",
                    step.volts(),
                    step.edge().text(),
                    step.amps()))
        .toList();
  }

  /** In one line from the source on: {@code BAT:+ -W1- FB:in -FB.f1- FB:1}. */
  String fromSource() {
    List<Edge> edges = new ArrayList<>(steps.stream().map(Step::edge).toList());
    Collections.reverse(edges);
    return new org.tugtest.network.Path(end, edges).text();
  }
}
