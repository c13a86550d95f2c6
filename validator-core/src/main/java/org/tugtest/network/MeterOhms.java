package org.tugtest.network;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tugtest.finding.Basis;
import org.tugtest.model.Harness;
import org.tugtest.model.Splice;
import org.tugtest.model.SplicePart;
import org.tugtest.model.Terminal;
import org.tugtest.model.Wire;
import org.tugtest.table.Cited;

/**
 * What a meter sees at 20 °C of each thing between two points. A wire counts with what joins its
 * ends: a crimp at a contact, half the splice in a splice, so that the way through a splice holds
 * all of it. What the probes are held to is not counted: no joint on a stud, no mate of a blade.
 */
public final class MeterOhms {
  private static final double AT_CELSIUS = 20;
  private final Harness harness;
  private final Wiring wiring;
  private final Fitting fitting;
  private final WireLengths lengths;
  private final WorkingResistances conductors;
  private final StandardOhms standard;

  /** The resistances of this harness, with wires of these lengths. */
  public MeterOhms(Harness harness, Wiring wiring, Fitting fitting, WireLengths lengths) {
    this.harness = harness;
    this.wiring = wiring;
    this.fitting = fitting;
    this.lengths = lengths;
    this.conductors = new WorkingResistances(harness, fitting, lengths);
    this.standard = new StandardOhms(harness.defaults());
  }

  /** The resistance in milliohm, 0 or more; empty for elements and where a wire lacks a figure. */
  public Optional<Cited> milliohm(Edge edge) {
    if (edge instanceof Edge.OfWire wire) {
      return conductors
          .conductorMilliohm(wire.wire(), AT_CELSIUS)
          .map(conductor -> with(conductor, wire));
    }
    if (edge instanceof Edge.OfMating mating) {
      return Optional.of(contact(mating.a(), mating.b()));
    }
    return edge instanceof Edge.OfBolt ? Optional.of(standard.bolted()) : Optional.empty();
  }

  /** What is missing to know it: {@code no length}, {@code no size}; empty when nothing is. */
  public String missing(Edge edge) {
    if (!(edge instanceof Edge.OfWire wire) || milliohm(edge).isPresent()) {
      return "";
    }
    return lengths.of(wire.wire()).isEmpty() ? "no length" : "no size";
  }

  private Cited with(Cited conductor, Edge.OfWire edge) {
    Cited from = end(edge.wire(), true, edge.a());
    Cited to = end(edge.wire(), false, edge.b());
    Basis basis = conductor.basis().weaker(from.basis()).weaker(to.basis());
    return new Cited(conductor.value() + from.value() + to.value(), conductor.source(), basis);
  }

  private Cited end(Wire wire, boolean from, Point at) {
    if (at.kind() == Point.Kind.SPLICE) {
      Splice splice = harness.splices().get(at.owner());
      SplicePart part =
          splice == null || splice.part() == null
              ? null
              : harness.parts().splices().get(splice.part());
      Cited whole = standard.splice(part == null ? null : part.milliohm());
      return new Cited(whole.value() / 2, whole.source(), whole.basis());
    }
    Terminal terminal = terminal(new WireEnd(wire, from), at);
    return standard.crimp(terminal == null ? null : terminal.crimpMilliohm());
  }

  private @Nullable Terminal terminal(WireEnd end, Point at) {
    if (at.kind() == Point.Kind.CAVITY) {
      return fitting.terminal(at).part();
    }
    return end.terminal() == null ? null : harness.parts().terminals().get(end.terminal());
  }

  /** A plugged pair: the greater of what the two terminals say, for one bad half spoils both. */
  private Cited contact(Point one, Point other) {
    Double a = contact(one);
    Double b = contact(other);
    return standard.contact(
        a == null || b == null ? (a == null ? b : a) : Double.valueOf(Math.max(a, b)));
  }

  private @Nullable Double contact(Point at) {
    boolean held = at.kind() == Point.Kind.CAVITY && !wiring.endsAt(at).isEmpty();
    Terminal terminal = held ? fitting.terminal(at).part() : null;
    return terminal == null ? null : terminal.contactMilliohm();
  }
}
