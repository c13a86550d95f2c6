package org.tugtest.report.sheets.track;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.tugtest.bench.whatif.Effect;
import org.tugtest.bench.whatif.Fault;
import org.tugtest.network.Edge;
import org.tugtest.network.Network;
import org.tugtest.report.PrintableText;
import tools.jackson.core.JsonGenerator;

/** Writes clues as {@code suspects.js} reads them. */
final class ClueJson {
  private static final List<Fault.Kind> KINDS = List.of(Fault.Kind.values());
  private final JsonGenerator json;
  private final Clues clues;
  private final Network network;
  private final Map<Edge, Integer> loads = new HashMap<>();
  private final Map<String, Integer> states = new HashMap<>();

  ClueJson(JsonGenerator json, Clues clues, Network network) {
    this.json = json;
    this.clues = clues;
    this.network = network;
    clues.loads().forEach(load -> loads.put(load, loads.size()));
    clues.states().forEach(state -> states.put(state, states.size()));
  }

  /** Writes them as a value. */
  void write() {
    json.writeStartObject();
    json.writeStringProperty("leftOut", clues.leftOut());
    texts("states", clues.states());
    texts("loads", clues.loads().stream().map(Edge::text).toList());
    texts("whole", clues.whole());
    json.writeArrayPropertyStart("faults");
    clues.faults().forEach(this::fault);
    json.writeEndArray();
    json.writeArrayPropertyStart("effects");
    clues.effects().forEach(this::effect);
    json.writeEndArray();
    json.writeName("contacts");
    numbers(clues.contacts().stream().map(network::index).toList());
    texts("readings", clues.readings());
    json.writeArrayPropertyStart("differs");
    clues.differs().forEach(this::numbers);
    json.writeEndArray();
    json.writeStringProperty("black", PrintableText.of(clues.black()));
    json.writeEndObject();
  }

  private void fault(Clues.Culprit culprit) {
    json.writeStartArray();
    json.writeString(PrintableText.of(culprit.fault().text()));
    json.writeNumber(KINDS.indexOf(culprit.fault().kind()));
    json.writeNumber(culprit.effect());
    numbers(culprit.readings());
    json.writeString(PrintableText.of(culprit.fault().subject().id()));
    json.writeEndArray();
  }

  private void effect(List<Effect.InState> effect) {
    json.writeStartArray();
    for (Effect.InState in : effect) {
      json.writeStartArray();
      json.writeNumber(states.getOrDefault(in.state(), -1));
      loads(in.lost());
      loads(in.dim());
      loads(in.live());
      json.writeEndArray();
    }
    json.writeEndArray();
  }

  private void loads(List<Edge.OfElement> these) {
    numbers(these.stream().map(load -> loads.getOrDefault(load, -1)).toList());
  }

  private void texts(String name, Collection<String> values) {
    json.writeArrayPropertyStart(name);
    values.forEach(value -> json.writeString(PrintableText.of(value)));
    json.writeEndArray();
  }

  private void numbers(Collection<Integer> values) {
    json.writeStartArray();
    values.forEach(json::writeNumber);
    json.writeEndArray();
  }
}
