package org.tugtest.operate;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tugtest.finding.Basis;
import org.tugtest.model.Element;
import org.tugtest.model.Harness;
import org.tugtest.model.Wire;
import org.tugtest.network.Edge;
import org.tugtest.network.Network;
import org.tugtest.network.Resistance;
import org.tugtest.network.WorkingResistances;
import org.tugtest.solve.Branch;
import org.tugtest.solve.Circuit;

/**
 * The circuit of a harness in one state. Its nodes are the points of the network and its branches
 * the edges, by the same numbers.
 */
final class Drawn {
  private static final double SOURCE_OHMS = 0.01;
  private static final double CHARGE_TIMES = 20;
  private static final double PULL_IN = 0.6;
  private static final double DROP_OUT = 0.15;
  private static final double FLOOR = 0.5;
  private static final double WHOLE = 100;

  /** What a load takes of which nothing is said, where something has to be assumed. */
  private static final double ASSUMED_A = 1;

  private static final String UNKNOWN = "what it draws";

  /** What the loads take. */
  enum Draws {
    /** What they take while they do. */
    WHILE_ON,
    /** Their mean, where they draw only a share of the time. */
    MEAN,
    /** As while on, and something where the files say nothing. */
    ASSUMED
  }

  private final Harness harness;
  private final Network network;
  private final WorkingResistances resistances;
  private final ConductorTemperature temperature;
  private final Intent intent;
  private final Draws draws;
  private final Unchanging unchanging;
  private final List<Branch> branches;
  private final List<Resistance> figures;

  /**
   * Draws the circuit.
   *
   * @param unchanging of the same network and resistances
   */
  Drawn(
      Harness harness,
      Network network,
      WorkingResistances resistances,
      Unchanging unchanging,
      ConductorTemperature temperature,
      Intent intent,
      Draws draws) {
    this.harness = harness;
    this.network = network;
    this.resistances = resistances;
    this.unchanging = unchanging;
    this.temperature = temperature;
    this.intent = intent;
    this.draws = draws;
    List<Edge> edges = network.edges();
    branches = new ArrayList<>(edges.size());
    figures = new ArrayList<>(edges.size());
    for (int i = 0; i < edges.size(); i++) {
      Branch same = unchanging.branch(i);
      if (same != null) {
        branches.add(same);
        figures.add(unchanging.figure(i));
      } else if (edges.get(i) instanceof Edge.OfWire wire) {
        Unchanging.Wire laid = unchanging.wire(i, temperature.celsius(i, wire.wire()));
        branches.add(laid.branch());
        figures.add(laid.figure());
      } else {
        add(edges.get(i), network.indexOfA(i), network.indexOfB(i));
      }
    }
  }

  /** The same but for what is as warm as it now is. */
  private Drawn(Drawn same, ConductorTemperature temperature) {
    this(same, temperature, same.draws);
    for (int i : unchanging.wireEdges()) {
      Wire wire = ((Edge.OfWire) network.edges().get(i)).wire();
      double celsius = temperature.celsius(i, wire);
      if (celsius != same.temperature.celsius(i, wire)) {
        Unchanging.Wire laid = unchanging.wire(i, celsius);
        branches.set(i, laid.branch());
        figures.set(i, laid.figure());
      }
    }
  }

  /** The same but for what draws what it now does. */
  private Drawn(Drawn same, Draws draws) {
    this(same, same.temperature, draws);
    for (int i : unchanging.loadEdges()) {
      Edge.OfElement edge = (Edge.OfElement) network.edges().get(i);
      Element.Load load = (Element.Load) edge.element();
      if (figures.get(i).missing().equals(UNKNOWN) || load.dutyPercent() != WHOLE) {
        addLoad(edge, load, network.indexOfA(i), network.indexOfB(i));
        branches.set(i, branches.remove(branches.size() - 1));
        figures.set(i, figures.remove(figures.size() - 1));
      }
    }
  }

  private Drawn(Drawn same, ConductorTemperature temperature, Draws draws) {
    harness = same.harness;
    network = same.network;
    resistances = same.resistances;
    unchanging = same.unchanging;
    intent = same.intent;
    branches = new ArrayList<>(same.branches);
    figures = new ArrayList<>(same.figures);
    this.temperature = temperature;
    this.draws = draws;
  }

  /** The same circuit with wires as warm as this. */
  Drawn warmed(ConductorTemperature now) {
    return new Drawn(this, now);
  }

  /** The same circuit with loads that take this. */
  Drawn taking(Draws now) {
    return new Drawn(this, now);
  }

  Circuit circuit() {
    return new Circuit(network.points().size(), branches);
  }

  /** What the branch of each edge rests on. */
  List<Resistance> figures() {
    return figures;
  }

  private void add(Edge edge, int a, int b) {
    if (!(edge instanceof Edge.OfElement inside)) {
      add(a, b, resistances.of(edge, Double.NaN));
      return;
    }
    Element element = inside.element();
    if (element instanceof Element.Source source) {
      addSource(inside, source, a, b);
    } else if (element instanceof Element.Load load) {
      addLoad(inside, load, a, b);
    } else if (element instanceof Element.Coil coil) {
      addCoil(coil, a, b);
    } else if (element instanceof Element.Contact contact) {
      addContact(inside, contact, a, b);
    } else if (element instanceof Element.Diode diode) {
      Resistance figure = resistances.of(edge, 0);
      add(new Branch.Diode(a, b, diode.volts(), figure.ohms()), figure.basis(), "");
    } else if (inside.fitted()) {
      add(a, b, resistances.of(edge, 0));
    } else {
      open(a, b, "");
    }
  }

  private void add(int a, int b, Resistance figure) {
    branches.add(new Branch.Resistor(a, b, figure.ohms()));
    figures.add(figure);
  }

  private void add(Branch branch, Basis basis, String missing) {
    branches.add(branch);
    figures.add(new Resistance(0, basis, missing));
  }

  private void open(int a, int b, String missing) {
    add(new Branch.Open(a, b), Basis.GIVEN, missing);
  }

  private void addSource(Edge.OfElement edge, Element.Source source, int a, int b) {
    if (!intent.gives(edge)) {
      open(a, b, "");
      return;
    }
    Double given = intent.openVolts(edge).orElse(null);
    double volts = given == null ? harness.defaults().nominalV() : given;
    double ohms = some(source.ohms()) ? source.ohms() : SOURCE_OHMS;
    double charge = some(source.chargeOhms()) ? source.chargeOhms() : CHARGE_TIMES * ohms;
    double most = some(source.maxA()) ? source.maxA() : Double.POSITIVE_INFINITY;
    Basis basis = given != null && some(source.ohms()) ? Basis.GIVEN : Basis.COMMON_PRACTICE;
    add(
        new Branch.Source(a, b, volts, ohms, charge, most, source.generator()),
        basis,
        given == null ? "its volts" : "");
  }

  private void addLoad(Edge.OfElement edge, Element.Load load, int a, int b) {
    if (load.use() == Element.Load.Use.INTERNAL && !intent.wanted(edge)) {
      open(a, b, "");
      return;
    }
    double nominal = unchanging.supplies().nominalV(edge);
    double floor = some(load.minV()) ? load.minV() : FLOOR * nominal;
    Double watts = load.watts();
    double share = draws == Draws.MEAN ? load.dutyPercent() / 100 : 1;
    if (!(share > 0)) {
      open(a, b, "");
    } else if (some(load.ohms())) {
      add(new Branch.Resistor(a, b, load.ohms() / share), Basis.GIVEN, "");
    } else if (watts != null && some(load.atVolts()) && watts > 0) {
      add(
          new Branch.Resistor(a, b, load.atVolts() * load.atVolts() / watts / share),
          Basis.GIVEN,
          "");
    } else if (watts != null && watts >= 0) {
      add(new Branch.Load(a, b, share * watts, true, floor), Basis.GIVEN, "");
    } else if (load.amps() != null && load.amps() >= 0) {
      add(new Branch.Load(a, b, share * load.amps(), false, floor), Basis.GIVEN, "");
    } else if (draws == Draws.ASSUMED) {
      add(new Branch.Load(a, b, ASSUMED_A, false, floor), Basis.GIVEN, UNKNOWN);
    } else {
      open(a, b, UNKNOWN);
    }
  }

  /** Whether some load gives nothing to draw by. */
  boolean lacksDraws() {
    return figures.stream().anyMatch(figure -> figure.missing().equals(UNKNOWN));
  }

  private void addCoil(Element.Coil coil, int a, int b) {
    if (!some(coil.ohms())) {
      open(a, b, "its ohms");
      return;
    }
    double nominal = harness.defaults().nominalV();
    boolean given = coil.pullInV() != null && coil.dropOutV() != null;
    double pullIn = coil.pullInV() == null ? PULL_IN * nominal : coil.pullInV();
    double dropOut = coil.dropOutV() == null ? DROP_OUT * nominal : coil.dropOutV();
    add(
        new Branch.Coil(a, b, coil.ohms(), Math.max(0, pullIn), Math.max(0, dropOut)),
        given ? Basis.GIVEN : Basis.COMMON_PRACTICE,
        "");
  }

  private void addContact(Edge.OfElement edge, Element.Contact contact, int a, int b) {
    Resistance figure = resistances.of(edge, 0);
    Boolean set = intent.setByItself(edge).orElse(null);
    Integer coil =
        contact.coil() == null
            ? null
            : unchanging.coils().get(edge.device() + "." + contact.coil());
    if (set == null && coil != null) {
      branches.add(new Branch.Contact(a, b, figure.ohms(), coil, contact.restClosed()));
      figures.add(figure);
      return;
    }
    boolean closed =
        set != null
            ? set
            : contact.coil() != null
                ? contact.restClosed()
                : contact.closedIn().contains(intent.position(edge.device()));
    if (closed) {
      add(a, b, figure);
    } else {
      open(a, b, "");
    }
  }

  private static boolean some(@Nullable Double value) {
    return value != null && value > 0 && !value.isInfinite();
  }
}
