package org.tugtest.read;

import static org.tugtest.read.Fields.flag;
import static org.tugtest.read.Fields.map;
import static org.tugtest.read.Fields.number;
import static org.tugtest.read.Fields.object;
import static org.tugtest.read.Fields.text;
import static org.tugtest.read.Fields.textMap;
import static org.tugtest.read.Fields.word;
import static org.tugtest.read.Fields.words;

import java.util.List;
import java.util.Map;
import org.tugtest.model.Defaults;
import org.tugtest.model.Harness;
import org.tugtest.model.Loom;
import tools.jackson.databind.node.ObjectNode;

/** Takes everything that one file says. */
final class HarnessBinder {
  private static final Map<String, Loom.Stage> STAGES = words(Loom.Stage.values());

  private HarnessBinder() {}

  static Harness bind(String path, ObjectNode file) {
    ObjectNode loom = object(file, "loom");
    String loomId = text(loom, "id");
    WiringBinder wiring = new WiringBinder(loomId);
    return new Harness(
        path,
        List.of(path),
        text(file, "title"),
        text(file, "revision"),
        flag(file, "sketch", false),
        defaults(object(file, "defaults")),
        loomId == null ? Map.of() : Map.of(loomId, loom(loomId, loom)),
        PartsBinder.bind(object(file, "parts")),
        map(file, "devices", DeviceBinder::device),
        textMap(file, "fitted"),
        map(file, "connectors", wiring::connector),
        map(file, "splices", wiring::splice),
        map(file, "wires", wiring::wire),
        map(file, "groups", wiring::group),
        LayoutBinder.layout(object(file, "layout"), loomId),
        map(file, "zones", LayoutBinder::zone),
        map(file, "states", IntentBinder::state),
        map(file, "limits", IntentBinder::limits),
        map(file, "waivers", IntentBinder::waiver),
        map(file, "expectations", IntentBinder::expectation));
  }

  private static Loom loom(String id, ObjectNode fields) {
    return new Loom(
        id,
        text(fields, "title"),
        text(fields, "revision"),
        word(fields, "evidence", WiringBinder.EVIDENCE),
        word(fields, "stage", STAGES, Loom.Stage.PLANNED));
  }

  private static Defaults defaults(ObjectNode given) {
    Defaults format = Defaults.FORMAT;
    return new Defaults(
        number(given, "nominalV", format.nominalV()),
        number(given, "ambientC", format.ambientC()),
        number(given, "contactMilliohm", format.contactMilliohm()),
        number(given, "crimpMilliohm", format.crimpMilliohm()),
        number(given, "spliceMilliohm", format.spliceMilliohm()),
        number(given, "boltedMilliohm", format.boltedMilliohm()),
        number(given, "breakoutMm", format.breakoutMm()),
        number(given, "serviceMm", format.serviceMm()),
        number(given, "stripMm", format.stripMm()),
        number(given, "cutStepMm", format.cutStepMm()));
  }
}
