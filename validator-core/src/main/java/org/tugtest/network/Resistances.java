package org.tugtest.network;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tugtest.finding.Basis;
import org.tugtest.model.Defaults;
import org.tugtest.model.Harness;
import org.tugtest.model.Splice;
import org.tugtest.model.SplicePart;
import org.tugtest.model.Terminal;
import org.tugtest.model.Wire;
import org.tugtest.model.WirePart;
import org.tugtest.table.Cited;

/**
 * What a meter sees at 20 °C of each thing between two points. A wire counts with what joins its
 * ends: a crimp at a contact, half the splice in a splice, so that the way through a splice holds
 * all of it.
 */
public final class Resistances {
  /** Resistivity of annealed copper at 20 °C in ohm mm2 per m: NBS Handbook 100, as quoted. */
  private static final double COPPER = 0.017241;

  private static final double MM_PER_M = 1000;
  private final Harness harness;
  private final Wiring wiring;
  private final Fitting fitting;
  private final WireLengths lengths;

  /** The resistances of this harness, with wires of these lengths. */
  public Resistances(Harness harness, Wiring wiring, Fitting fitting, WireLengths lengths) {
    this.harness = harness;
    this.wiring = wiring;
    this.fitting = fitting;
    this.lengths = lengths;
  }

  /** The resistance in milliohm, 0 or more; empty for elements and where a wire lacks a figure. */
  public Optional<Cited> milliohm(Edge edge) {
    if (edge instanceof Edge.OfWire wire) {
      return wire(wire.wire(), wire.a(), wire.b());
    }
    if (edge instanceof Edge.OfMating mating) {
      return Optional.of(contact(mating.a(), mating.b()));
    }
    return edge instanceof Edge.OfBolt
        ? Optional.of(Cited.given(defaults().boltedMilliohm()))
        : Optional.empty();
  }

  /** What is missing to know it: {@code no length}, {@code no size}; empty when nothing is. */
  public String missing(Edge edge) {
    if (!(edge instanceof Edge.OfWire wire) || milliohm(edge).isPresent()) {
      return "";
    }
    return lengths.of(wire.wire()).isEmpty() ? "no length" : "no size";
  }

  private Defaults defaults() {
    return harness.defaults();
  }

  private Optional<Cited> wire(Wire wire, Point from, Point to) {
    WirePart part = wire.part() == null ? null : harness.parts().wires().get(wire.part());
    Double perM = part == null ? null : part.milliohmPerM();
    Optional<Cited> each =
        perM != null
            ? Optional.of(Cited.given(perM))
            : fitting
                .sizes()
                .areaMm2(wire)
                .filter(area -> area.value() > 0)
                .map(
                    area ->
                        new Cited(
                            COPPER / area.value() * MM_PER_M,
                            "length x 0.017241 / area, copper of NBS Handbook 100",
                            Basis.DERIVED.weaker(area.basis())));
    Optional<WireLength> length = lengths.of(wire);
    if (each.isEmpty() || length.isEmpty()) {
      return Optional.empty();
    }
    double ends = end(wire, true, from) + end(wire, false, to);
    return Optional.of(
        new Cited(
            each.get().value() * length.get().mm() / MM_PER_M + ends,
            each.get().source(),
            each.get().basis().weaker(length.get().basis())));
  }

  private double end(Wire wire, boolean from, Point at) {
    if (at.kind() == Point.Kind.SPLICE) {
      Splice splice = harness.splices().get(at.owner());
      SplicePart part =
          splice == null || splice.part() == null
              ? null
              : harness.parts().splices().get(splice.part());
      Double own = part == null ? null : part.milliohm();
      return (own == null ? defaults().spliceMilliohm() : own) / 2;
    }
    Terminal terminal = terminal(new WireEnd(wire, from), at);
    Double own = terminal == null ? null : terminal.crimpMilliohm();
    return own == null ? defaults().crimpMilliohm() : own;
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
    if (a == null && b == null) {
      return Cited.given(defaults().contactMilliohm());
    }
    return Cited.given(Math.max(a == null ? 0 : a, b == null ? 0 : b));
  }

  private @Nullable Double contact(Point at) {
    boolean held = at.kind() == Point.Kind.CAVITY && !wiring.endsAt(at).isEmpty();
    Terminal terminal = held ? fitting.terminal(at).part() : null;
    return terminal == null ? null : terminal.contactMilliohm();
  }
}
