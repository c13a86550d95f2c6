package org.tugtest.read;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.tugtest.model.Connector;
import org.tugtest.model.Device;
import org.tugtest.model.DeviceType;
import org.tugtest.model.Harness;
import org.tugtest.model.Housing;
import org.tugtest.model.Wire;
import org.tugtest.model.WirePart;
import org.tugtest.text.Place;
import org.tugtest.text.Problem;
import org.tugtest.text.Quoted;

/**
 * What the schema cannot say of one file: fields that contradict each other or belong elsewhere.
 */
final class FileChecks {
  private static final List<String> ONLY_IN_ROOTS =
      List.of("title", "revision", "sketch", "defaults");

  private final FileIndex index;
  private final Harness said;
  private final List<Problem> always = new ArrayList<>();
  private final List<Problem> unlessSketch = new ArrayList<>();

  /** The things whose shape is wrong anyway: for them nothing is called missing. */
  private final Set<String> known = new HashSet<>();

  FileChecks(FileIndex index, Harness said, List<Problem> before) {
    this.index = index;
    this.said = said;
    before.forEach(problem -> known.add(problem.subject()));
  }

  FileChecks run() {
    if (!HarnessReader.isRoot(said.root())) {
      ONLY_IN_ROOTS.stream().filter(index::hasSection).forEach(this::onlyInRoots);
    }
    said.parts().housings().values().forEach(this::rows);
    parts();
    said.connectors().values().forEach(this::housing);
    said.wires().values().forEach(this::gauge);
    said.devices().forEach(this::ports);
    said.parts()
        .deviceTypes()
        .forEach((id, type) -> ports("parts/deviceTypes/" + id, type, "parts", "deviceTypes", id));
    return this;
  }

  List<Problem> always() {
    return always;
  }

  List<Problem> unlessSketch() {
    return unlessSketch;
  }

  private void onlyInRoots(String field) {
    always.add(
        wrong(
            "files/" + said.root(),
            Quoted.text(field) + " stands in a file that is no root.",
            "Move it to the root, the file whose name ends in .harness.json.",
            index.nameAt(field)));
  }

  private void rows(Housing housing) {
    Set<String> names = new HashSet<>();
    for (int row = 0; row < housing.rows().size(); row++) {
      List<String> cells = housing.rows().get(row);
      for (int cell = 0; cell < cells.size(); cell++) {
        String name = cells.get(cell);
        if (!name.isEmpty() && !names.add(name)) {
          always.add(
              wrong(
                  "parts/housings/" + housing.id(),
                  "rows of parts/housings/" + housing.id() + " name the cavity " + name + " twice.",
                  "Give every cavity a name of its own; \"\" is a gap.",
                  index.at(
                      "parts",
                      "housings",
                      housing.id(),
                      "rows",
                      Integer.toString(row),
                      Integer.toString(cell))));
        }
      }
    }
  }

  private void parts() {
    said.parts().wires().forEach(this::outer);
    said.parts()
        .terminals()
        .forEach(
            (id, part) -> {
              range(
                  "terminals",
                  id,
                  "areaMinMm2",
                  part.areaMinMm2(),
                  "areaMaxMm2",
                  part.areaMaxMm2());
              range(
                  "terminals",
                  id,
                  "insulationMinMm",
                  part.insulationMinMm(),
                  "insulationMaxMm",
                  part.insulationMaxMm());
            });
    said.parts()
        .seals()
        .forEach(
            (id, part) ->
                range(
                    "seals",
                    id,
                    "insulationMinMm",
                    part.insulationMinMm(),
                    "insulationMaxMm",
                    part.insulationMaxMm()));
    said.parts()
        .splices()
        .forEach(
            (id, part) ->
                range(
                    "splices",
                    id,
                    "areaMinMm2",
                    part.areaMinMm2(),
                    "areaMaxMm2",
                    part.areaMaxMm2()));
    said.parts()
        .coverings()
        .forEach(
            (id, part) ->
                range(
                    "coverings",
                    id,
                    "innerMinMm",
                    part.innerMinMm(),
                    "innerMaxMm",
                    part.innerMaxMm()));
  }

  /** A wire is no thinner than its copper, a round of which is at least as thick as its area. */
  private void outer(String id, WirePart part) {
    Double area = part.areaMm2();
    Double outer = part.outerMm();
    if (area != null && outer != null && outer < 2 * Math.sqrt(area / Math.PI)) {
      String thing = "parts/wires/" + id;
      always.add(
          wrong(
              thing,
              "outerMm of "
                  + thing
                  + " is "
                  + Quoted.number(outer)
                  + ", less than "
                  + Quoted.number(area)
                  + " mm2 of copper alone are thick.",
              "Correct one of the two.",
              index.at("parts", "wires", id, "outerMm"),
              index.at("parts", "wires", id, "areaMm2")));
    }
  }

  private void range(
      String kind,
      String id,
      String lowName,
      @Nullable Double low,
      String highName,
      @Nullable Double high) {
    if (low != null && high != null && low > high) {
      String thing = "parts/" + kind + "/" + id;
      always.add(
          wrong(
              thing,
              lowName
                  + " of "
                  + thing
                  + " is "
                  + Quoted.number(low)
                  + ", more than its "
                  + highName
                  + ", "
                  + Quoted.number(high)
                  + ".",
              "Correct one of the two.",
              index.at("parts", kind, id, lowName),
              index.at("parts", kind, id, highName)));
    }
  }

  private void housing(Connector connector) {
    String thing = "connectors/" + connector.id();
    if (connector.housing() == null && !known.contains(thing)) {
      unlessSketch.add(
          wrong(
              thing,
              "connector " + connector.id() + " gives no housing.",
              "Add \"housing\", or write \"sketch\": true in the root while housings are not"
                  + " known.",
              index.nameAt("connectors", connector.id())));
    }
  }

  private void gauge(Wire wire) {
    Map<String, @Nullable Object> ways = new HashMap<>();
    List<String> given = new ArrayList<>();
    ways.put("part", wire.part());
    ways.put("areaMm2", wire.areaMm2());
    ways.put("awg", wire.awg());
    for (String way : List.of("part", "areaMm2", "awg")) {
      if (ways.get(way) != null) {
        given.add(way);
      }
    }
    String thing = "wires/" + wire.id();
    if (given.size() > 1) {
      always.add(
          wrong(
              thing,
              "wire "
                  + wire.id()
                  + " gives "
                  + String.join(" and ", given)
                  + "; one of them says it all.",
              "Keep one of them.",
              given.stream()
                  .map(way -> index.nameAt("wires", wire.id(), way))
                  .toArray(Place[]::new)));
    } else if (given.isEmpty() && !known.contains(thing)) {
      unlessSketch.add(
          wrong(
              thing,
              "wire " + wire.id() + " gives none of part, areaMm2 and awg.",
              "Add one of them, or write \"sketch\": true in the root while sizes are not known.",
              index.nameAt("wires", wire.id())));
    }
  }

  private void ports(String id, Device device) {
    if (device.own() != null) {
      ports("devices/" + id, device.own(), "devices", id);
    }
  }

  private void ports(String thing, DeviceType type, String... names) {
    type.ports()
        .forEach(
            (name, port) -> {
              boolean device = thing.startsWith("devices/");
              String subject = device ? thing + "." + name : thing;
              if (port.housing() == null && !known.contains(subject)) {
                String[] path = Arrays.copyOf(names, names.length + 2);
                path[names.length] = "ports";
                path[names.length + 1] = name;
                unlessSketch.add(
                    wrong(
                        subject,
                        "port " + name + " of " + thing + " gives no housing.",
                        "Add \"housing\", or write \"sketch\": true in the root while housings are"
                            + " not known.",
                        index.nameAt(path)));
              }
            });
  }

  private static Problem wrong(String subject, String message, String remedy, Place... at) {
    return new Problem(Problem.Kind.SHAPE_WRONG, subject, message, remedy, List.of(at));
  }
}
