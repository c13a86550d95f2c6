package org.tugtest.report.json;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.tugtest.facts.Facts;
import org.tugtest.model.Element;
import org.tugtest.model.Wire;
import org.tugtest.network.Edge;
import org.tugtest.network.Point;
import org.tugtest.operate.OperatingPoint;
import org.tugtest.report.JsonStream;
import org.tugtest.table.Cited;

/** {@code states} of a harness: what flows and what is live in each. */
final class StatesJson {
  private static final MathContext DIGITS = new MathContext(10);
  private static final double NOTHING = 1e-12;
  private final Facts facts;
  private final JsonStream json;
  private final Map<String, Edge.OfWire> edgeOf = new TreeMap<>();

  StatesJson(Facts facts, JsonStream json) {
    this.facts = facts;
    this.json = json;
    for (Edge edge : facts.network().edges()) {
      if (edge instanceof Edge.OfWire wire) {
        edgeOf.put(wire.wire().id(), wire);
      }
    }
  }

  /** Milliohms of a wire's conductor at a temperature in degrees Celsius; null when not known. */
  static @Nullable Double milliohm(Facts facts, Wire wire, double celsius) {
    return facts
        .operating()
        .resistances()
        .conductorMilliohm(wire, celsius)
        .map(Cited::value)
        .map(StatesJson::rounded)
        .orElse(null);
  }

  void write() {
    json.object("states");
    for (OperatingPoint state : facts.operating().all()) {
      json.object(state.state());
      wires(state);
      loads(state);
      json.object("nodes");
      for (Point point : facts.network().points()) {
        OptionalDouble volts = state.volts(point);
        json.number(point.text(), volts.isPresent() ? rounded(volts.getAsDouble()) : null);
      }
      json.end();
      relays(state);
      json.end();
    }
    json.end();
  }

  private void wires(OperatingPoint state) {
    json.object("wires");
    for (Wire wire : facts.harness().wires().values()) {
      Edge.OfWire edge = edgeOf.get(wire.id());
      double celsius = state.celsius(wire);
      json.object(wire.id())
          .number("amps", edge == null ? null : rounded(state.amps(edge)))
          .number("celsius", rounded(celsius))
          .number("hottestCelsius", hottest(state, wire))
          .number("milliohm", milliohm(facts, wire, celsius))
          .end();
    }
    json.end();
  }

  /** Null in a brief state and where its size is not known. */
  private static @Nullable Double hottest(OperatingPoint state, Wire wire) {
    return state
        .warmth()
        .flatMap(warmth -> warmth.hottest(wire.id()))
        .map(hottest -> rounded(hottest.celsius()))
        .orElse(null);
  }

  private void loads(OperatingPoint state) {
    json.object("loads");
    for (Edge edge : facts.network().edges()) {
      if (edge instanceof Edge.OfElement inside
          && (inside.element() instanceof Element.Load
              || inside.element() instanceof Element.Coil)) {
        json.number(edge.text(), rounded(state.across(edge)));
      }
    }
    json.end();
  }

  private void relays(OperatingPoint state) {
    json.object("relays");
    for (Edge edge : facts.network().edges()) {
      if (edge instanceof Edge.OfElement inside
          && inside.element() instanceof Element.Contact contact
          && contact.coil() != null) {
        json.text(edge.text(), state.closed(inside) ? "closed" : "open");
      }
    }
    json.end();
  }

  /** Ten digits; what is less than a millionth of a millionth is nothing. */
  private static Double rounded(double value) {
    if (!Double.isFinite(value) || Math.abs(value) < NOTHING) {
      return 0.0;
    }
    return BigDecimal.valueOf(value).round(DIGITS).doubleValue();
  }
}
