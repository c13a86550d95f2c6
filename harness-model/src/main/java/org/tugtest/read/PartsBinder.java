package org.tugtest.read;

import static org.tugtest.read.Fields.count;
import static org.tugtest.read.Fields.flag;
import static org.tugtest.read.Fields.list;
import static org.tugtest.read.Fields.map;
import static org.tugtest.read.Fields.number;
import static org.tugtest.read.Fields.text;
import static org.tugtest.read.Fields.texts;
import static org.tugtest.read.Fields.word;
import static org.tugtest.read.Fields.wordSet;
import static org.tugtest.read.Fields.words;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.tugtest.model.ContactSide;
import org.tugtest.model.Covering;
import org.tugtest.model.FusePart;
import org.tugtest.model.Housing;
import org.tugtest.model.Need;
import org.tugtest.model.Parts;
import org.tugtest.model.Seal;
import org.tugtest.model.SplicePart;
import org.tugtest.model.Support;
import org.tugtest.model.Terminal;
import org.tugtest.model.WirePart;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** Takes the section {@code parts}. */
final class PartsBinder {
  static final Map<String, ContactSide> SIDES = words(ContactSide.values());
  static final Map<String, Need> NEEDS = words(Need.values());
  private static final Map<String, WirePart.Wall> WALLS = words(WirePart.Wall.values());
  private static final Map<String, Covering.Kind> COVERINGS = words(Covering.Kind.values());
  private static final Map<String, Support.Kind> SUPPORTS = words(Support.Kind.values());

  private PartsBinder() {}

  static Parts bind(ObjectNode parts) {
    return new Parts(
        map(parts, "wires", PartsBinder::wire),
        map(parts, "housings", PartsBinder::housing),
        map(parts, "terminals", PartsBinder::terminal),
        map(parts, "seals", PartsBinder::seal),
        map(parts, "splices", PartsBinder::splice),
        map(parts, "fuses", PartsBinder::fuse),
        map(parts, "coverings", PartsBinder::covering),
        map(parts, "supports", PartsBinder::support),
        map(parts, "deviceTypes", (id, fields) -> DeviceBinder.type(fields)));
  }

  private static WirePart wire(String id, ObjectNode fields) {
    return new WirePart(
        id,
        number(fields, "areaMm2"),
        text(fields, "awg"),
        number(fields, "maxC"),
        word(fields, "wall", WALLS, WirePart.Wall.THIN),
        number(fields, "milliohmPerM"),
        number(fields, "outerMm"),
        number(fields, "conductorMm"),
        number(fields, "gramsPerM"),
        number(fields, "minBendMm"),
        number(fields, "maxA"),
        flag(fields, "stocked", true));
  }

  private static Housing housing(String id, ObjectNode fields) {
    List<List<String>> rows = new ArrayList<>();
    for (JsonNode row : list(fields, "rows")) {
      rows.add(texts(row));
    }
    Map<String, String> families = new LinkedHashMap<>();
    map(fields, "cavities", (cavity, cavityFields) -> cavityFields)
        .forEach(
            (cavity, cavityFields) -> {
              String family = text(cavityFields, "family");
              if (family != null) {
                families.put(cavity, family);
              }
            });
    return new Housing(
        id,
        word(fields, "side", SIDES),
        rows,
        text(fields, "family"),
        families,
        flag(fields, "sealed", false),
        text(fields, "keying"),
        texts(fields, "matesWith"),
        texts(fields, "terminals"),
        texts(fields, "seals"),
        flag(fields, "secondaryLock", false),
        number(fields, "maxC"),
        number(fields, "grams"));
  }

  private static Terminal terminal(String id, ObjectNode fields) {
    Integer maxWires = count(fields, "maxWires");
    return new Terminal(
        id,
        text(fields, "family"),
        word(fields, "side", SIDES),
        number(fields, "areaMinMm2"),
        number(fields, "areaMaxMm2"),
        number(fields, "insulationMinMm"),
        number(fields, "insulationMaxMm"),
        maxWires == null ? 1 : maxWires,
        number(fields, "maxA"),
        number(fields, "contactMilliohm"),
        number(fields, "crimpMilliohm"),
        number(fields, "stripMm"),
        crimps(fields),
        number(fields, "grams"));
  }

  private static List<Terminal.Crimp> crimps(ObjectNode fields) {
    List<Terminal.Crimp> crimps = new ArrayList<>();
    for (JsonNode element : list(fields, "crimps")) {
      if (element instanceof ObjectNode crimp) {
        Double least = number(crimp, "areaMinMm2");
        Double greatest = number(crimp, "areaMaxMm2");
        Double height = number(crimp, "heightMm");
        if (least != null && greatest != null && height != null) {
          crimps.add(
              new Terminal.Crimp(
                  least,
                  greatest,
                  height,
                  number(crimp, "toleranceMm"),
                  number(crimp, "widthMm"),
                  number(crimp, "insulationHeightMm"),
                  number(crimp, "pullN")));
        }
      }
    }
    return crimps;
  }

  private static Seal seal(String id, ObjectNode fields) {
    return new Seal(
        id,
        text(fields, "family"),
        number(fields, "insulationMinMm"),
        number(fields, "insulationMaxMm"),
        number(fields, "grams"));
  }

  private static SplicePart splice(String id, ObjectNode fields) {
    return new SplicePart(
        id,
        number(fields, "areaMinMm2"),
        number(fields, "areaMaxMm2"),
        count(fields, "maxWires"),
        number(fields, "milliohm"),
        number(fields, "maxC"),
        flag(fields, "sealed", false),
        number(fields, "grams"));
  }

  private static FusePart fuse(String id, ObjectNode fields) {
    List<FusePart.Time> times = new ArrayList<>();
    for (JsonNode element : list(fields, "times")) {
      if (element instanceof ObjectNode time) {
        Double multiple = number(time, "multiple");
        if (multiple != null) {
          times.add(new FusePart.Time(multiple, number(time, "leastS"), number(time, "greatestS")));
        }
      }
    }
    return new FusePart(
        id,
        number(fields, "ratingA"),
        text(fields, "style"),
        number(fields, "maxV"),
        number(fields, "breakingCapacityA"),
        number(fields, "coldMilliohm"),
        times);
  }

  private static Covering covering(String id, ObjectNode fields) {
    return new Covering(
        id,
        word(fields, "kind", COVERINGS),
        number(fields, "innerMm"),
        number(fields, "innerMinMm"),
        number(fields, "innerMaxMm"),
        number(fields, "wallMm"),
        number(fields, "maxC"),
        number(fields, "gramsPerM"),
        wordSet(fields, "protects", NEEDS));
  }

  private static Support support(String id, ObjectNode fields) {
    return new Support(id, word(fields, "kind", SUPPORTS), number(fields, "grams"));
  }
}
