package org.tugtest.report.html.circuits;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Basis;
import org.tugtest.model.Element;
import org.tugtest.model.Wire;
import org.tugtest.network.Edge;
import org.tugtest.network.Point;
import org.tugtest.network.Resistance;
import org.tugtest.operate.OperatingPoint;
import org.tugtest.report.Tally;
import org.tugtest.report.html.text.ElementText;
import org.tugtest.report.html.text.Figures;
import org.tugtest.report.html.text.Swatch;
import org.tugtest.report.html.text.WireText;
import org.tugtest.text.Quoted;

/** Puts circuits into words and figures. */
final class CircuitText {
  private static final int MOST_BESIDES = 4;
  private static final double MILLI = 1000;
  private final Facts facts;
  private final ElementText elements;
  private final WireText wires;

  CircuitText(Facts facts) {
    this.facts = facts;
    this.elements = new ElementText(facts.protection().ratings());
    this.wires = new WireText(facts.harness());
  }

  /** A circuit shown whole; with figures where a state is given. */
  Circuit circuit(int number, Edge.OfElement load, @Nullable OperatingPoint point) {
    Optional<Way> way =
        point == null ? Way.ofJoints(facts, load) : Optional.of(Way.ofCurrent(facts, point, load));
    if (way.isEmpty()) {
      return new Circuit(
          number,
          load.text(),
          elements.of(load),
          List.of("fed by nothing"),
          unfed(),
          List.of(),
          null,
          List.of(),
          List.of(load.a(), load.b()));
    }
    List<Circuit.Step> steps = new ArrayList<>();
    Set<Point> points = new LinkedHashSet<>();
    way.get().feed().forEach(leg -> steps.add(step(leg, point, points, false)));
    boolean forwards = point == null || point.amps(load) > 0;
    Leg turn = new Leg(load, forwards ? load.a() : load.b(), forwards ? load.b() : load.a());
    steps.add(step(turn, point, points, true));
    for (Leg leg : way.get().back()) {
      boolean told = !steps.isEmpty() && steps.get(0).name().equals(leg.edge().text());
      if (!told) {
        steps.add(step(leg, point, points, false));
      }
    }
    return new Circuit(
        number,
        load.text(),
        elements.of(load),
        says(load, way.get(), point),
        point == null ? unsolved() : solved(load, point),
        steps,
        LoopSketcher.draw(way.get(), load, edge -> title(edge, point)),
        besides(way.get()),
        List.copyOf(points));
  }

  /** A circuit in a line. */
  CircuitsRoom.Brief brief(Edge.OfElement load) {
    String says =
        Way.ofJoints(facts, load)
            .map(way -> String.join(", ", says(load, way, null)) + "; " + line(way))
            .orElse("fed by nothing");
    return new CircuitsRoom.Brief(load.text(), elements.of(load), says);
  }

  private static String line(Way way) {
    StringBuilder line = new StringBuilder();
    for (Leg leg : way.feed()) {
      line.append(line.length() == 0 ? "" : " – ").append(leg.edge().text());
    }
    return line.toString();
  }

  private static String unfed() {
    return "No way leads from the plus of a source to one of its pins and from the other back to a"
        + " minus.";
  }

  private static String unsolved() {
    return "No state gives it current, so there are no volts and amps here: the shortest way is"
        + " shown, with all switches closed.";
  }

  private String solved(Edge.OfElement load, OperatingPoint point) {
    OperatingPoint.Rests rests = point.rests(load.a());
    String basis =
        rests.basis() == Basis.GIVEN ? "" : " The figures rest on: " + rests.basis().word() + ".";
    String lacks =
        rests.standIns().isEmpty()
            ? ""
            : " Of "
                + Tally.counted(rests.standIns().size(), "thing")
                + " on this supply a figure is missing and left out, "
                + (rests.standIns().size() == 1 ? "of " : "such as of ")
                + rests.standIns().get(0).text()
                + ": the drop is at least this.";
    return "Figures of the state \"" + point.state() + "\"." + basis + lacks;
  }

  private List<String> says(Edge.OfElement load, Way way, @Nullable OperatingPoint point) {
    List<String> says = new ArrayList<>();
    if (point != null) {
      says.add(
          Figures.amps(point.amps(load)) + " at " + Figures.volts(Math.abs(point.across(load))));
      says.add("in " + point.state());
    }
    List<String> fuses = new ArrayList<>();
    for (Leg leg : way.feed()) {
      if (leg.edge() instanceof Edge.OfElement inside && inside.element() instanceof Element.Fuse) {
        fuses.add(inside.text() + " (" + elements.of(inside) + ")");
      }
    }
    says.add(fuses.isEmpty() ? "no fuse on the way" : "through " + String.join(" and ", fuses));
    return says;
  }

  private Circuit.Step step(
      Leg leg, @Nullable OperatingPoint point, Set<Point> points, boolean turn) {
    points.add(leg.from());
    points.add(leg.to());
    Edge edge = leg.edge();
    Wire wire = edge instanceof Edge.OfWire of ? of.wire() : null;
    boolean source =
        edge instanceof Edge.OfElement inside && inside.element() instanceof Element.Source;
    boolean draws = turn || source;
    String milliohm = "";
    String amps = "";
    String drop = "";
    String volts = "";
    if (point != null) {
      Resistance figure = point.resistance(edge);
      milliohm =
          draws
              ? ""
              : figure.known()
                  ? Figures.milliohm(MILLI * figure.ohms())
                  : figure.missing() + " not known";
      amps = Figures.amps(point.amps(edge));
      drop = draws ? "" : Figures.drop(point.across(edge));
      OptionalDouble at = point.volts(leg.to());
      volts = at.isPresent() ? Figures.volts(at.getAsDouble()) : "";
    }
    boolean joint = edge instanceof Edge.OfMating || edge instanceof Edge.OfBolt;
    return new Circuit.Step(
        joint ? leg.from().text() : edge.text(),
        what(edge),
        wire == null ? null : Swatch.of(wire.colour()),
        leg.to().text(),
        milliohm,
        amps,
        drop,
        volts,
        turn);
  }

  private String what(Edge edge) {
    if (edge instanceof Edge.OfWire of) {
      String mm =
          facts
              .lengths()
              .of(of.wire())
              .map(length -> Quoted.number(Math.rint(length.mm())) + " mm " + length.origin())
              .orElse("length not known");
      String size = wires.size(of.wire());
      return (size.isEmpty() ? "size not given" : size) + ", " + mm;
    }
    if (edge instanceof Edge.OfElement inside) {
      return elements.of(inside);
    }
    return edge instanceof Edge.OfMating ? "plugged contact" : "bolted metal to metal";
  }

  private String title(Edge edge, @Nullable OperatingPoint point) {
    String flows =
        point == null
            ? ""
            : ", " + Figures.amps(point.amps(edge)) + ", " + Figures.drop(point.across(edge));
    return edge.text() + ": " + what(edge) + flows;
  }

  private static List<String> besides(Way way) {
    List<String> besides = new ArrayList<>();
    for (Way.Beside beside : way.besides()) {
      if (besides.size() == MOST_BESIDES) {
        besides.add("and " + (way.besides().size() - MOST_BESIDES) + " more");
        break;
      }
      besides.add(
          Figures.amps(beside.amps())
              + " through "
              + beside.edge().text()
              + " into "
              + beside.at().text());
    }
    return besides;
  }
}
