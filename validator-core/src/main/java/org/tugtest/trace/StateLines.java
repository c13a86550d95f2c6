package org.tugtest.trace;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.tugtest.facts.Facts;
import org.tugtest.model.Element;
import org.tugtest.network.Edge;
import org.tugtest.network.Point;
import org.tugtest.operate.OperatingPoint;
import org.tugtest.text.Series;

/** Volts and amps at a contact or element in every state. */
final class StateLines {
  private static final int SHOWN = 3;
  private static final double NOTHING = 5e-4;
  private static final double SOME_AMPS = 0.0005;
  private final Facts facts;

  StateLines(Facts facts) {
    this.facts = facts;
  }

  /** Volts of a point, and the current of what lies on it, in every state. */
  List<TraceLine> of(Point point) {
    List<TraceLine> lines = new ArrayList<>();
    if (facts.network().sources().isEmpty()) {
      return lines;
    }
    for (OperatingPoint state : facts.operating().all()) {
      OptionalDouble volts = state.volts(point);
      List<String> parts = new ArrayList<>();
      parts.add(volts.isPresent() ? volts("%.2f V", volts.getAsDouble()) : "not live");
      for (Edge edge : facts.network().edgesAt(point)) {
        double out = edge.a().equals(point) ? state.amps(edge) : -state.amps(edge);
        if (Math.abs(out) >= SOME_AMPS) {
          parts.add(amps(out) + (out > 0 ? " out by " : " in by ") + edge.text());
        }
      }
      lines.add(line(state, parts, point));
    }
    return lines;
  }

  /** Volts across a wire or element and the current through it, in every state. */
  List<TraceLine> of(Edge edge) {
    List<TraceLine> lines = new ArrayList<>();
    if (facts.network().sources().isEmpty()) {
      return lines;
    }
    for (OperatingPoint state : facts.operating().all()) {
      List<String> parts = new ArrayList<>();
      double amps = state.amps(edge);
      boolean flows = Math.abs(amps) >= SOME_AMPS;
      if (edge instanceof Edge.OfElement inside && inside.element() instanceof Element.Contact) {
        parts.add(state.closed(inside) ? "closed" : "open");
      } else {
        String digits = edge instanceof Edge.OfWire ? "%.3f V" : "%.2f V";
        parts.add(volts(digits, Math.abs(state.across(edge))) + " across it");
      }
      if (edge instanceof Edge.OfElement inside && inside.element() instanceof Element.Coil) {
        parts.add(state.pulled(inside) ? "pulled" : "released");
      }
      if (flows) {
        parts.add(amps(amps) + " from " + (amps > 0 ? edge.a() : edge.b()).text());
      } else {
        parts.add("no current");
      }
      lines.add(line(state, parts, edge.a()));
    }
    return lines;
  }

  private static TraceLine line(OperatingPoint state, List<String> parts, Point point) {
    List<String> open = state.rests(point).standIns().stream().map(Edge::text).toList();
    if (!open.isEmpty()) {
      parts.add(Series.and(open, SHOWN) + (open.size() == 1 ? " lacks" : " lack") + " a figure");
    }
    return new TraceLine(0, "in state " + state.state() + ": " + String.join("; ", parts), null);
  }

  private static String volts(String digits, double volts) {
    return String.format(Locale.ROOT, digits, Math.abs(volts) < NOTHING ? 0.0 : volts);
  }

  private static String amps(double amps) {
    return String.format(Locale.ROOT, "%.3f A", Math.abs(amps));
  }
}
