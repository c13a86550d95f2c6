package org.tugtest.report.html;

import java.io.StringWriter;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Level;
import org.tugtest.finding.Subject;
import org.tugtest.model.Evidence;
import org.tugtest.model.Wire;
import org.tugtest.network.Net;
import org.tugtest.network.Point;
import org.tugtest.report.PrintableText;
import org.tugtest.report.html.circuits.Circuit;
import org.tugtest.report.html.circuits.CircuitsRoom;
import org.tugtest.report.html.loom.LoomRoom;
import org.tugtest.report.html.loom.Skeleton;
import org.tugtest.report.html.text.Swatch;
import org.tugtest.report.html.text.WireText;
import tools.jackson.core.JsonGenerator;

/**
 * What the script of a page knows, for the search and for what is drawn on demand. Everything is a
 * list, and things name each other by their number in it, so that 10,000 wires stay near 1 MB:
 *
 * <ul>
 *   <li>{@code looms}: ids
 *   <li>{@code owners}: noun, id, loom number or -1, facts in words, face number or 0
 *   <li>{@code points}: owner number, cavity or pin, number of the point it meets or -1, whether
 *       plugged, net number or -1
 *   <li>{@code nets}: names
 *   <li>{@code wires}: id, point numbers of both ends or -1, what an end says that has none,
 *       colour, size, circuit, label when it is not the id, colour as drawn, evidence, loom number
 *       or -1, number of its run or -1
 *   <li>{@code knots}: ids of the knots of the loom drawing
 *   <li>{@code arms}: of the loom drawing: id, knot numbers of both ends
 *   <li>{@code runs}: arm numbers in the order of the wires that run so
 *   <li>{@code circuits}: name of the load, point numbers on its way
 *   <li>{@code faces}: owner number, rows of point numbers (-1: gap), whether the rows are known
 *   <li>{@code marks}: of each standing finding its number, runs of point numbers by first and
 *       last, other places
 *   <li>{@code unshown}: for each level, numbers of points, of wires and of owners with findings
 *       that are not on the page
 *   <li>{@code lists}: long lists of subjects
 *   <li>{@code colours}: code to name
 * </ul>
 */
final class PageData {
  private final Facts facts;
  private final FindingsRoom findings;
  private final FacesRoom faces;
  private final LoomRoom loom;
  private final CircuitsRoom circuits;
  private final SubjectLists lists;
  private final List<String> looms;
  private final List<Point> points;
  private final Owners owners;
  private final Map<String, Integer> nets = new HashMap<>();
  private final StringWriter text = new StringWriter();
  private final JsonGenerator json = PageJson.to(text);

  private PageData(
      Facts facts,
      FindingsRoom findings,
      FacesRoom faces,
      LoomRoom loom,
      CircuitsRoom circuits,
      SubjectLists lists) {
    this.facts = facts;
    this.findings = findings;
    this.faces = faces;
    this.loom = loom;
    this.circuits = circuits;
    this.lists = lists;
    this.looms = List.copyOf(facts.harness().looms().keySet());
    this.points = facts.network().points();
    this.owners = new Owners(facts.harness(), points, faces);
  }

  /** All of it, as JSON that may stand inside a script element. */
  static String json(
      Facts facts,
      FindingsRoom findings,
      FacesRoom faces,
      LoomRoom loom,
      CircuitsRoom circuits,
      SubjectLists lists) {
    PageData data = new PageData(facts, findings, faces, loom, circuits, lists);
    data.write();
    return data.text.toString();
  }

  private void write() {
    json.writeStartObject();
    json.writeName("looms");
    texts(looms);
    owners();
    nets();
    points();
    wires();
    runs();
    circuits();
    faces();
    marks();
    unshown();
    json.writeArrayPropertyStart("lists");
    lists.all().forEach(this::texts);
    json.writeEndArray();
    json.writeObjectPropertyStart("colours");
    Swatch.known().forEach(json::writeStringProperty);
    json.writeEndObject();
    json.writeEndObject();
    json.close();
  }

  private void owners() {
    json.writeArrayPropertyStart("owners");
    for (OwnerNumbers.Owner owner : owners.all()) {
      json.writeStartArray();
      json.writeString(owner.noun());
      text(owner.id());
      json.writeNumber(looms.indexOf(owners.loom(owner)));
      texts(owners.said(owner));
      json.writeNumber(owners.face(owner));
      json.writeEndArray();
    }
    json.writeEndArray();
  }

  /** Only nets of two points or more: of a single one there is nothing to tell. */
  private void nets() {
    json.writeArrayPropertyStart("nets");
    for (Net net : facts.nets().all()) {
      if (net.points().size() > 1) {
        nets.put(net.name(), nets.size());
        text(net.name());
      }
    }
    json.writeEndArray();
  }

  private void points() {
    Set<Point> plugged = new HashSet<>();
    for (Face face : faces.faces()) {
      face.rows().stream()
          .flatMap(List::stream)
          .filter(cell -> !cell.gap() && cell.plugged())
          .forEach(cell -> plugged.add(Point.cavity(face.id(), cell.name())));
    }
    json.writeArrayPropertyStart("points");
    for (Point point : points) {
      json.writeStartArray();
      json.writeNumber(owners.number(point));
      text(point.name());
      json.writeNumber(facts.wiring().meets(point).map(facts.network()::index).orElse(-1));
      json.writeNumber(plugged.contains(point) ? 1 : 0);
      json.writeNumber(
          facts.nets().of(point).map(net -> nets.getOrDefault(net.name(), -1)).orElse(-1));
      json.writeEndArray();
    }
    json.writeEndArray();
  }

  private void wires() {
    WireText said = new WireText(facts.harness());
    WireColumns columns = new WireColumns(facts, said, json);
    json.writeArrayPropertyStart("wires");
    for (Wire wire : facts.harness().wires().values()) {
      Evidence evidence = said.evidence(wire);
      json.writeStartArray();
      columns.write(wire);
      text(Objects.requireNonNullElse(wire.colourDrawn(), ""));
      json.writeString(evidence == null ? "" : evidence.word());
      json.writeNumber(wire.loom() == null ? -1 : looms.indexOf(wire.loom()));
      json.writeNumber(loom.runs().of().getOrDefault(wire.id(), -1));
      json.writeEndArray();
    }
    json.writeEndArray();
  }

  private void runs() {
    json.writeName("knots");
    texts(loom.skeleton().knots().stream().map(Skeleton.Knot::id).toList());
    json.writeArrayPropertyStart("arms");
    for (Skeleton.Arm arm : loom.skeleton().arms()) {
      json.writeStartArray();
      text(arm.id());
      json.writeNumber(arm.a());
      json.writeNumber(arm.b());
      json.writeEndArray();
    }
    json.writeEndArray();
    json.writeArrayPropertyStart("runs");
    loom.runs().all().forEach(this::numbers);
    json.writeEndArray();
  }

  private void circuits() {
    json.writeArrayPropertyStart("circuits");
    for (Circuit circuit : circuits.circuits()) {
      json.writeStartArray();
      text(circuit.load());
      numbers(circuit.points().stream().map(facts.network()::index).toList());
      json.writeEndArray();
    }
    json.writeEndArray();
  }

  private void faces() {
    json.writeArrayPropertyStart("faces");
    for (Face face : faces.faces()) {
      json.writeStartArray();
      json.writeNumber(owners.number(Point.Kind.CAVITY, face.id()));
      json.writeStartArray();
      for (List<Face.Cell> row : face.rows()) {
        numbers(
            row.stream()
                .map(
                    cell ->
                        cell.gap()
                            ? -1
                            : facts.network().index(Point.cavity(face.id(), cell.name())))
                .toList());
      }
      json.writeEndArray();
      json.writeNumber(face.layoutKnown() ? 1 : 0);
      json.writeEndArray();
    }
    json.writeEndArray();
  }

  /** A finding may speak of thousands of points, which are numbers here and not names. */
  private void marks() {
    Map<String, Integer> numbers = new HashMap<>();
    for (int i = 0; i < points.size(); i++) {
      numbers.put(place(points.get(i)), i);
    }
    json.writeArrayPropertyStart("marks");
    for (FindingView view : findings.all()) {
      if (view.waiver() == null) {
        List<String> places =
            view.finding().subjects().stream().map(Subject::place).distinct().toList();
        json.writeStartArray();
        json.writeNumber(view.number());
        spans(places.stream().filter(numbers::containsKey).map(numbers::get).sorted().toList());
        texts(places.stream().filter(place -> !numbers.containsKey(place)).toList());
        json.writeEndArray();
      }
    }
    json.writeEndArray();
  }

  /** What findings speak of that are not on the page: numbers of points, wires and owners. */
  private void unshown() {
    json.writeArrayPropertyStart("unshown");
    for (Level level : Level.values()) {
      Set<String> places = new HashSet<>();
      findings.unshown().getOrDefault(level, Set.of()).forEach(one -> places.add(one.place()));
      json.writeStartArray();
      numbersOf(places, points, PageData::place);
      numbersOf(places, facts.harness().wires().values(), wire -> "wires/" + wire.id());
      numbersOf(places, owners.all(), owner -> owner.noun() + "s/" + owner.id());
      json.writeEndArray();
    }
    json.writeEndArray();
  }

  private static String place(Point point) {
    return switch (point.kind()) {
      case CAVITY -> "connectors/" + point.text();
      case PIN -> "devices/" + point.text();
      case SPLICE -> "splices/" + point.text();
    };
  }

  private <T> void numbersOf(Set<String> places, Collection<T> things, Function<T, String> place) {
    List<Integer> numbers = new ArrayList<>();
    int number = 0;
    for (T thing : things) {
      if (!places.isEmpty() && places.contains(place.apply(thing))) {
        numbers.add(number);
      }
      number++;
    }
    numbers(numbers);
  }

  private void text(String value) {
    json.writeString(PrintableText.of(value));
  }

  private void texts(Collection<String> values) {
    json.writeStartArray();
    values.forEach(this::text);
    json.writeEndArray();
  }

  /** Ascending numbers, of each run without a gap the first and the last. */
  private void spans(List<Integer> values) {
    json.writeStartArray();
    for (int i = 0; i < values.size(); i++) {
      if (i == 0 || values.get(i) - values.get(i - 1) > 1) {
        json.writeNumber(values.get(i));
      }
      if (i == values.size() - 1 || values.get(i + 1) - values.get(i) > 1) {
        json.writeNumber(values.get(i));
      }
    }
    json.writeEndArray();
  }

  private void numbers(Collection<Integer> values) {
    json.writeStartArray();
    values.forEach(json::writeNumber);
    json.writeEndArray();
  }
}
