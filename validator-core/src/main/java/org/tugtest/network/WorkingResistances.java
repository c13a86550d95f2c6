package org.tugtest.network;

import java.util.Optional;
import java.util.concurrent.atomic.AtomicReferenceArray;
import org.jspecify.annotations.Nullable;
import org.tugtest.finding.Basis;
import org.tugtest.model.Device;
import org.tugtest.model.DeviceType;
import org.tugtest.model.Element;
import org.tugtest.model.FusePart;
import org.tugtest.model.Harness;
import org.tugtest.model.Splice;
import org.tugtest.model.SplicePart;
import org.tugtest.model.Terminal;
import org.tugtest.model.Wire;
import org.tugtest.model.WirePart;
import org.tugtest.table.Cited;
import org.tugtest.table.ConductorResistanceTable;
import org.tugtest.table.Copper;
import org.tugtest.table.FuseResistanceTable;

/**
 * The resistance of everything that lies between two points of a harness as it works: warm wires,
 * fuses under load.
 *
 * <ul>
 *   <li>A wire: its conductor, r20 · length · (1 + 0.00393 (T − 20 °C)), and what is at its ends: a
 *       crimp at a cavity or pin; half a splice at a splice, so that every way through a splice has
 *       it once; besides, on a pin of a device, the mated contact of a blade or the bolted joint of
 *       a ring, where the pin's family or the terminal tells which.
 *   <li>Plugged contacts: the greater of what their terminals give, else {@code defaults}.
 *   <li>A fuse: what its part gives, else the table.
 *   <li>Links and contacts: as given, 0 when not given.
 * </ul>
 */
public final class WorkingResistances {
  private static final double MILLI = 1e-3;
  private static final double DIODE_OHMS = 0.01;
  private static final double TRIP_MILLIOHM = 10;
  private static final String STUD = "stud";
  private static final String FACE = "face";
  private final Harness harness;
  private final Fitting fitting;
  private final WireLengths lengths;
  private final StandardOhms standard;
  private final AtomicReferenceArray<Laid> known;
  private final AtomicReferenceArray<Plugged> plugged;

  /** The resistances of a harness, with these lengths of its wires. */
  public WorkingResistances(Harness harness, Fitting fitting, WireLengths lengths) {
    this.harness = harness;
    this.fitting = fitting;
    this.lengths = lengths;
    int wires = harness.wires().size();
    this.known = new AtomicReferenceArray<>(wires);
    this.plugged = new AtomicReferenceArray<>(wires + fitting.points());
    this.standard = new StandardOhms(harness.defaults());
  }

  /**
   * The resistance of an edge that conducts: a closed contact, a fitted fuse, a forward diode.
   *
   * @param celsius temperature of the conductor, of a wire; of no effect on anything else
   * @return 0 ohms for a source, load or coil, which are no plain resistances
   */
  public Resistance of(Edge edge, double celsius) {
    if (edge instanceof Edge.OfWire wire) {
      return wire(wire, celsius);
    }
    if (edge instanceof Edge.OfMating mating) {
      return plugged(mating);
    }
    if (edge instanceof Edge.OfBolt) {
      Cited bolted = standard.bolted();
      return Resistance.of(bolted.value() * MILLI, bolted.basis());
    }
    return edge instanceof Edge.OfElement inside ? element(inside) : Resistance.of(0, Basis.GIVEN);
  }

  /** Milliohms per metre of a wire's conductor at 20 °C; empty when nothing gives its size. */
  public Optional<Cited> milliohmPerM(Wire wire) {
    WirePart part = wire.part() == null ? null : harness.parts().wires().get(wire.part());
    if (part != null && part.milliohmPerM() != null) {
      return Optional.of(Cited.given(part.milliohmPerM()));
    }
    Double area = part == null ? wire.areaMm2() : part.areaMm2();
    if (area != null && area > 0) {
      return Optional.of(ConductorResistanceTable.ofArea(area));
    }
    String awg = part == null ? wire.awg() : part.awg();
    return awg == null ? Optional.empty() : ConductorResistanceTable.ofGauge(awg);
  }

  /**
   * Milliohms of a wire's conductor at a temperature, without what is at its ends; empty when its
   * size or its length is not known.
   */
  public Optional<Cited> conductorMilliohm(Wire wire, double celsius) {
    Optional<Cited> perM = milliohmPerM(wire);
    Optional<WireLength> length = lengths.of(wire);
    if (perM.isEmpty() || length.isEmpty()) {
      return Optional.empty();
    }
    double value = perM.get().value() * length.get().mm() * MILLI * Copper.factor(celsius);
    Basis basis = perM.get().basis().weaker(length.get().basis());
    return Optional.of(new Cited(value, perM.get().source(), basis));
  }

  /** Milliohms of a fuse: what its part gives, else the table; empty when it has no rating. */
  public Optional<Cited> fuseMilliohm(Edge.OfElement edge, boolean cold) {
    if (!(edge.element() instanceof Element.Fuse fuse)) {
      return Optional.empty();
    }
    String id = harness.fitted().get(edge.device() + "." + edge.name());
    FusePart part = id == null ? null : harness.parts().fuses().get(id);
    if (part != null && part.coldMilliohm() != null) {
      return Optional.of(Cited.given(part.coldMilliohm()));
    }
    Double rating = part != null && part.ratingA() != null ? part.ratingA() : fuse.ratingA();
    if (rating == null || rating <= 0) {
      return Optional.empty();
    }
    String style = part != null && part.style() != null ? part.style() : fuse.style();
    Cited figure =
        cold
            ? FuseResistanceTable.coldMilliohm(rating, style)
            : FuseResistanceTable.loadedMilliohm(rating, style);
    return Optional.of(
        fuse.electronic()
            ? new Cited(
                figure.value(),
                "taken as a fuse of its rating",
                Basis.COMMON_PRACTICE.weaker(figure.basis()))
            : figure);
  }

  /**
   * A wire in its place.
   *
   * @param conductor at 20 °C, in ohms
   * @param whole the same with what is at its ends
   */
  private record Laid(Edge.OfWire edge, Resistance conductor, Resistance whole) {}

  /** Two contacts that are plugged together. */
  private record Plugged(Edge.OfMating edge, Resistance resistance) {}

  /** Only the conductor changes with the temperature; all else is told once. */
  private Resistance wire(Edge.OfWire edge, double celsius) {
    boolean numbered = edge.number() >= 0 && edge.number() < known.length();
    Laid laid = numbered ? known.get(edge.number()) : null;
    if (laid == null || !laid.edge().equals(edge)) {
      laid = laid(edge);
      if (numbered) {
        known.set(edge.number(), laid);
      }
    }
    double warmer = laid.conductor().ohms() * (Copper.factor(celsius) - 1);
    return warmer == 0 ? laid.whole() : laid.whole().plus(warmer, laid.conductor().basis());
  }

  private Laid laid(Edge.OfWire edge) {
    Wire wire = edge.wire();
    Optional<Cited> conductor = conductorMilliohm(wire, Copper.REFERENCE_C);
    boolean length = lengths.of(wire).isPresent();
    boolean size = milliohmPerM(wire).isPresent();
    String missing =
        length ? (size ? "" : "its area") : (size ? "its length" : "its length and area");
    Resistance sum =
        conductor
            .map(milliohm -> Resistance.of(milliohm.value() * MILLI, milliohm.basis()))
            .orElse(new Resistance(0, Basis.GIVEN, missing));
    Resistance oneEnd = atEnd(sum, edge.a(), new WireEnd(wire, true));
    return new Laid(edge, sum, atEnd(oneEnd, edge.b(), new WireEnd(wire, false)));
  }

  private Resistance atEnd(Resistance sum, Point at, WireEnd end) {
    if (at.kind() == Point.Kind.SPLICE) {
      Cited splice = splice(at.owner());
      return sum.plus(splice.value() / 2 * MILLI, splice.basis());
    }
    Terminal terminal = at.kind() == Point.Kind.CAVITY ? terminal(at) : terminal(end);
    Cited crimp = standard.crimp(terminal == null ? null : terminal.crimpMilliohm());
    Resistance crimped = sum.plus(crimp.value() * MILLI, crimp.basis());
    if (at.kind() == Point.Kind.CAVITY) {
      return crimped;
    }
    String family = family(at, terminal);
    if (family == null) {
      return crimped;
    }
    Cited joint =
        family.startsWith(STUD) || family.equals(FACE)
            ? standard.bolted()
            : contact(terminal, null);
    return crimped.plus(joint.value() * MILLI, joint.basis());
  }

  /** The family by which a wire is held on a pin; null when neither pin nor terminal says. */
  private @Nullable String family(Point pin, @Nullable Terminal terminal) {
    Device device = harness.devices().get(pin.owner());
    DeviceType type = device == null ? null : harness.typeOf(device);
    DeviceType.Pin listed = type == null ? null : type.pins().get(pin.name());
    return listed != null && listed.family() != null
        ? listed.family()
        : terminal == null ? null : terminal.family();
  }

  private Cited splice(String id) {
    Splice splice = harness.splices().get(id);
    SplicePart part =
        splice == null || splice.part() == null
            ? null
            : harness.parts().splices().get(splice.part());
    return standard.splice(part == null ? null : part.milliohm());
  }

  private Cited contact(@Nullable Terminal one, @Nullable Terminal other) {
    Double first = one == null ? null : one.contactMilliohm();
    Double second = other == null ? null : other.contactMilliohm();
    return standard.contact(
        first == null || second == null
            ? (first == null ? second : first)
            : Double.valueOf(Math.max(first, second)));
  }

  private @Nullable Terminal terminal(Point at) {
    return at.kind() == Point.Kind.CAVITY ? fitting.terminal(at).part() : null;
  }

  private @Nullable Terminal terminal(WireEnd end) {
    return end.terminal() == null ? null : harness.parts().terminals().get(end.terminal());
  }

  private Resistance plugged(Edge.OfMating mating) {
    boolean numbered = mating.number() >= 0 && mating.number() < plugged.length();
    Plugged told = numbered ? plugged.get(mating.number()) : null;
    if (told == null || !told.edge().equals(mating)) {
      Cited contact = contact(terminal(mating.a()), terminal(mating.b()));
      told = new Plugged(mating, Resistance.of(contact.value() * MILLI, contact.basis()));
      if (numbered) {
        plugged.set(mating.number(), told);
      }
    }
    return told.resistance();
  }

  private Resistance element(Edge.OfElement edge) {
    Element element = edge.element();
    if (element instanceof Element.Contact contact) {
      return Resistance.of(contact.milliohm() * MILLI, Basis.GIVEN);
    }
    if (element instanceof Element.Link link) {
      return Resistance.of(link.milliohm() * MILLI, Basis.GIVEN);
    }
    if (element instanceof Element.Diode) {
      return Resistance.of(DIODE_OHMS, Basis.COMMON_PRACTICE);
    }
    if (element instanceof Element.Fuse) {
      return fuseMilliohm(edge, false)
          .map(fuse -> Resistance.of(fuse.value() * MILLI, fuse.basis()))
          .orElse(new Resistance(TRIP_MILLIOHM * MILLI, Basis.COMMON_PRACTICE, "its rating"));
    }
    return Resistance.of(0, Basis.GIVEN);
  }
}
