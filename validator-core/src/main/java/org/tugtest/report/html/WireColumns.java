package org.tugtest.report.html;

import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.tugtest.facts.Facts;
import org.tugtest.model.Ref;
import org.tugtest.model.Wire;
import org.tugtest.report.PrintableText;
import org.tugtest.report.html.text.WireText;
import tools.jackson.core.JsonGenerator;

/**
 * What every script is told of a wire first: id, point numbers of both ends or -1, what an end says
 * that has none, colour, size, circuit, label when it is not the id.
 */
public final class WireColumns {
  private final Facts facts;
  private final WireText said;
  private final JsonGenerator json;

  /** The columns of the wires of a harness, for a list that {@code json} is in. */
  public WireColumns(Facts facts, WireText said, JsonGenerator json) {
    this.facts = facts;
    this.said = said;
    this.json = json;
  }

  /** Writes those of one wire. */
  public void write(Wire wire) {
    int from = at(wire.from());
    int to = at(wire.to());
    text(wire.id());
    json.writeNumber(from);
    json.writeNumber(to);
    text(from < 0 ? WireText.end(wire.from()) : "");
    text(to < 0 ? WireText.end(wire.to()) : "");
    text(Objects.requireNonNullElse(wire.colour(), ""));
    text(said.size(wire));
    text(Objects.requireNonNullElse(wire.circuit(), ""));
    text(wire.labelText().equals(wire.id()) ? "" : wire.labelText());
  }

  private int at(@Nullable Ref ref) {
    return facts.wiring().pointOf(ref).map(facts.network()::index).orElse(-1);
  }

  private void text(String value) {
    json.writeString(PrintableText.of(value));
  }
}
