package org.tugtest.read;

import static org.tugtest.read.Fields.flag;
import static org.tugtest.read.Fields.map;
import static org.tugtest.read.Fields.number;
import static org.tugtest.read.Fields.ref;
import static org.tugtest.read.Fields.text;
import static org.tugtest.read.Fields.textMap;
import static org.tugtest.read.Fields.texts;
import static org.tugtest.read.Fields.word;
import static org.tugtest.read.Fields.words;

import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.tugtest.model.Connector;
import org.tugtest.model.Evidence;
import org.tugtest.model.Group;
import org.tugtest.model.Splice;
import org.tugtest.model.Wire;
import tools.jackson.databind.node.ObjectNode;

/** Takes connectors, splices, wires and groups of one file, all of one loom or loose. */
final class WiringBinder {
  static final Map<String, Evidence> EVIDENCE = words(Evidence.values());
  private static final Map<String, Connector.Parked> PARKED = words(Connector.Parked.values());
  private static final Map<String, Wire.Decision> DECISIONS = words(Wire.Decision.values());
  private static final Map<String, Group.Kind> GROUPS = words(Group.Kind.values());

  private final @Nullable String loom;

  WiringBinder(@Nullable String loom) {
    this.loom = loom;
  }

  Connector connector(String id, ObjectNode fields) {
    return new Connector(
        id,
        loom,
        text(fields, "housing"),
        ref(fields, "mates"),
        text(fields, "at"),
        word(fields, "parked", PARKED),
        texts(fields, "terminals"),
        texts(fields, "seals"),
        flag(fields, "blanked", false),
        map(fields, "cavities", (cavity, own) -> cavity(own)),
        text(fields, "label"),
        text(fields, "boot"),
        number(fields, "breakoutMm"),
        number(fields, "serviceMm"),
        textMap(fields, "pinMap"));
  }

  private static Connector.Cavity cavity(ObjectNode fields) {
    return new Connector.Cavity(
        text(fields, "terminal"),
        text(fields, "seal"),
        flag(fields, "blank"),
        word(fields, "evidence", EVIDENCE));
  }

  Splice splice(String id, ObjectNode fields) {
    return new Splice(
        id,
        loom,
        text(fields, "at"),
        text(fields, "on"),
        number(fields, "offsetMm"),
        text(fields, "part"),
        "end-cap".equals(text(fields, "kind")),
        texts(fields, "coverings"),
        text(fields, "label"));
  }

  Wire wire(String id, ObjectNode fields) {
    return new Wire(
        id,
        loom,
        ref(fields, "from"),
        ref(fields, "to"),
        text(fields, "part"),
        number(fields, "areaMm2"),
        text(fields, "awg"),
        text(fields, "colour"),
        text(fields, "colourDrawn"),
        text(fields, "circuit"),
        texts(fields, "via"),
        flag(fields, "laidInPlace", false),
        number(fields, "cutMm"),
        number(fields, "builtMm"),
        text(fields, "fromTerminal"),
        text(fields, "toTerminal"),
        text(fields, "label"),
        word(fields, "evidence", EVIDENCE),
        word(fields, "decision", DECISIONS),
        text(fields, "reason"));
  }

  Group group(String id, ObjectNode fields) {
    return new Group(
        id,
        loom,
        word(fields, "kind", GROUPS),
        texts(fields, "wires"),
        text(fields, "screen"),
        number(fields, "pitchMm"),
        number(fields, "outerMm"),
        number(fields, "gramsPerM"),
        number(fields, "minBendMm"));
  }
}
