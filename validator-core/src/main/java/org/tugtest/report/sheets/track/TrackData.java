package org.tugtest.report.sheets.track;

import java.io.StringWriter;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.tugtest.facts.Facts;
import org.tugtest.model.Connector;
import org.tugtest.model.Evidence;
import org.tugtest.model.Housing;
import org.tugtest.model.Wire;
import org.tugtest.network.Edge;
import org.tugtest.network.Net;
import org.tugtest.network.Point;
import org.tugtest.operate.OperatingPoint;
import org.tugtest.report.PrintableText;
import org.tugtest.report.html.OwnerNumbers;
import org.tugtest.report.html.PageJson;
import org.tugtest.report.html.WireColumns;
import org.tugtest.report.html.circuits.Circuit;
import org.tugtest.report.html.text.ElementText;
import org.tugtest.report.html.text.Swatch;
import org.tugtest.report.html.text.WireText;
import tools.jackson.core.JsonGenerator;

/**
 * What the script of the page knows. Everything is a list, and things name each other by their
 * number in it:
 *
 * <ul>
 *   <li>{@code owners}: noun, id, facts in words
 *   <li>{@code points}: owner number, cavity or pin, number of the point it meets or -1, whether
 *       plugged with a blank, net number or -1
 *   <li>{@code nets}: name
 *   <li>{@code wires}: id, point numbers of both ends or -1, what an end says that has none,
 *       colour, size, circuit, label when it is not the id, whether a guess, number of what
 *       protects it
 *   <li>{@code protecting}: sentences
 *   <li>{@code elements}: name, what it is, point numbers of its ends, number of its circuit or 0
 *   <li>{@code faces}: owner number, rows of point numbers seen from the wire side (-1: gap),
 *       whether the rows are known
 *   <li>{@code states}: names; {@code volts}: for each state hundredths of a volt for each point,
 *       null where nothing is live; none without a source
 *   <li>{@code clues}: see {@link ClueJson}
 *   <li>{@code colours}: code to name
 * </ul>
 */
final class TrackData {
  private static final double HUNDREDTHS = 100;
  private final Facts facts;
  private final Owners owners;
  private final Protecting protecting;
  private final StringWriter text = new StringWriter();
  private final JsonGenerator json = PageJson.to(text);

  private TrackData(Facts facts) {
    this.facts = facts;
    this.owners = new Owners(facts);
    this.protecting = new Protecting(facts);
  }

  /** All of it, as JSON that may stand inside a script element. */
  static String json(Facts facts, Clues clues, List<Circuit> circuits) {
    TrackData data = new TrackData(facts);
    data.json.writeStartObject();
    data.owners();
    data.points();
    data.wires();
    data.elements(circuits);
    data.faces();
    data.volts();
    data.json.writeName("clues");
    new ClueJson(data.json, clues, facts.network()).write();
    data.json.writeObjectPropertyStart("colours");
    Swatch.known().forEach(data.json::writeStringProperty);
    data.json.writeEndObject();
    data.json.writeEndObject();
    data.json.close();
    return data.text.toString();
  }

  private void owners() {
    json.writeArrayPropertyStart("owners");
    for (OwnerNumbers.Owner owner : owners.all()) {
      json.writeStartArray();
      json.writeString(owner.noun());
      text(owner.id());
      texts(owners.said(owner));
      json.writeEndArray();
    }
    json.writeEndArray();
  }

  private void points() {
    Map<Net, Integer> nets = new HashMap<>();
    json.writeArrayPropertyStart("points");
    for (Point point : facts.network().points()) {
      Optional<Net> net = facts.nets().of(point).filter(its -> its.points().size() > 1);
      json.writeStartArray();
      json.writeNumber(owners.number(point.kind(), point.owner()));
      text(point.name());
      json.writeNumber(facts.wiring().meets(point).map(facts.network()::index).orElse(-1));
      json.writeNumber(plugged(point) ? 1 : 0);
      json.writeNumber(net.map(its -> nets.computeIfAbsent(its, none -> nets.size())).orElse(-1));
      json.writeEndArray();
    }
    json.writeEndArray();
    String[] names = new String[nets.size()];
    nets.forEach((net, number) -> names[number] = net.name());
    json.writeName("nets");
    texts(List.of(names));
  }

  private boolean plugged(Point point) {
    Connector connector =
        point.kind() == Point.Kind.CAVITY ? facts.harness().connectors().get(point.owner()) : null;
    if (connector == null) {
      return false;
    }
    Connector.Cavity own = connector.cavities().get(point.name());
    Boolean blank = own == null ? null : own.blank();
    return blank == null ? connector.blanked() : blank;
  }

  private void wires() {
    WireText said = new WireText(facts.harness());
    WireColumns columns = new WireColumns(facts, said, json);
    json.writeArrayPropertyStart("wires");
    for (Wire wire : facts.harness().wires().values()) {
      json.writeStartArray();
      columns.write(wire);
      json.writeNumber(said.evidence(wire) == Evidence.GUESS ? 1 : 0);
      json.writeNumber(protecting.of(wire.id()));
      json.writeEndArray();
    }
    json.writeEndArray();
    json.writeName("protecting");
    texts(protecting.sentences());
  }

  private void elements(List<Circuit> circuits) {
    Map<String, Integer> numbers = new HashMap<>();
    circuits.forEach(circuit -> numbers.put(circuit.load(), circuit.number()));
    ElementText said = new ElementText(facts.protection().ratings());
    json.writeArrayPropertyStart("elements");
    for (Edge edge : facts.network().edges()) {
      if (edge instanceof Edge.OfElement element) {
        json.writeStartArray();
        text(element.text());
        text(said.of(element));
        json.writeNumber(facts.network().index(element.a()));
        json.writeNumber(facts.network().index(element.b()));
        json.writeNumber(numbers.getOrDefault(element.text(), 0));
        json.writeEndArray();
      }
    }
    json.writeEndArray();
  }

  private void faces() {
    json.writeArrayPropertyStart("faces");
    for (String id : facts.wiring().connectors()) {
      Housing housing = facts.wiring().mating().housingOf(id).orElse(null);
      List<List<String>> rows =
          housing == null ? List.of(facts.wiring().cavitiesOf(id)) : housing.rows();
      int widest = rows.stream().mapToInt(List::size).max().orElse(0);
      json.writeStartArray();
      json.writeNumber(owners.number(Point.Kind.CAVITY, id));
      json.writeStartArray();
      for (List<String> row : rows) {
        json.writeStartArray();
        for (int i = 0; i < widest; i++) {
          String name = i < row.size() ? row.get(i) : "";
          json.writeNumber(name.isEmpty() ? -1 : facts.network().index(Point.cavity(id, name)));
        }
        json.writeEndArray();
      }
      json.writeEndArray();
      json.writeNumber(housing == null ? 0 : 1);
      json.writeEndArray();
    }
    json.writeEndArray();
  }

  private void volts() {
    boolean none = facts.network().sources().isEmpty();
    List<OperatingPoint> states = none ? List.of() : facts.operating().all();
    json.writeName("states");
    texts(states.stream().map(OperatingPoint::state).toList());
    json.writeArrayPropertyStart("volts");
    for (OperatingPoint state : states) {
      json.writeStartArray();
      for (Point point : facts.network().points()) {
        OptionalDouble volts = state.volts(point);
        if (volts.isPresent() && Double.isFinite(volts.getAsDouble())) {
          json.writeNumber(Math.round(volts.getAsDouble() * HUNDREDTHS));
        } else {
          json.writeNull();
        }
      }
      json.writeEndArray();
    }
    json.writeEndArray();
  }

  private void text(String value) {
    json.writeString(PrintableText.of(value));
  }

  private void texts(Collection<String> values) {
    json.writeStartArray();
    values.forEach(this::text);
    json.writeEndArray();
  }
}
