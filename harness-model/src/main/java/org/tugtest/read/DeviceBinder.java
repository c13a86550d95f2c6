package org.tugtest.read;

import static org.tugtest.read.Fields.count;
import static org.tugtest.read.Fields.flag;
import static org.tugtest.read.Fields.map;
import static org.tugtest.read.Fields.number;
import static org.tugtest.read.Fields.text;
import static org.tugtest.read.Fields.textMap;
import static org.tugtest.read.Fields.texts;
import static org.tugtest.read.Fields.word;
import static org.tugtest.read.Fields.words;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.tugtest.model.Device;
import org.tugtest.model.DeviceType;
import org.tugtest.model.Element;
import org.tugtest.model.Ref;
import tools.jackson.databind.node.ObjectNode;

/** Takes devices, device types and their elements. */
final class DeviceBinder {
  private static final Map<String, Element.Load.Use> USES = words(Element.Load.Use.values());
  private static final Map<String, Element.Signal.Type> SIGNALS =
      words(Element.Signal.Type.values());
  private static final int STUD_TERMINALS = 4;

  private DeviceBinder() {}

  static Device device(String id, ObjectNode fields) {
    String type = text(fields, "type");
    Map<String, Ref> boltedTo = new LinkedHashMap<>();
    textMap(fields, "boltedTo").forEach((pin, to) -> boltedTo.put(pin, Ref.parse(to)));
    return new Device(id, type, type == null ? type(fields) : null, text(fields, "at"), boltedTo);
  }

  static DeviceType type(ObjectNode fields) {
    List<String> positions = texts(fields, "positions");
    Map<String, Element> elements = new LinkedHashMap<>();
    map(fields, "elements", (id, element) -> element)
        .forEach(
            (id, element) -> {
              Element bound = element(element);
              if (bound != null) {
                elements.put(id, bound);
              }
            });
    return new DeviceType(
        map(fields, "pins", (id, pin) -> pin(pin)),
        map(fields, "ports", (id, port) -> port(port)),
        positions.isEmpty() ? DeviceType.OFF_ON : positions,
        elements,
        number(fields, "maxC"),
        number(fields, "grams"));
  }

  private static DeviceType.Pin pin(ObjectNode fields) {
    String family = text(fields, "family");
    Integer given = count(fields, "maxTerminals");
    boolean stud = family == null || family.equals("face") || family.startsWith("stud-");
    return new DeviceType.Pin(
        family,
        word(fields, "side", PartsBinder.SIDES),
        text(fields, "at"),
        given != null ? given : stud ? STUD_TERMINALS : 1,
        flag(fields, "inside", false),
        number(fields, "breakoutMm"),
        number(fields, "serviceMm"));
  }

  private static DeviceType.Port port(ObjectNode fields) {
    return new DeviceType.Port(text(fields, "housing"), textMap(fields, "pins"));
  }

  private static @Nullable Element element(ObjectNode fields) {
    String kind = text(fields, "kind");
    if (kind == null) {
      return null;
    }
    String a = text(fields, "a");
    String b = text(fields, "b");
    return switch (kind) {
      case "source" -> source(fields);
      case "load" -> load(fields, a, b);
      case "fuse" ->
          new Element.Fuse(
              a,
              b,
              number(fields, "ratingA"),
              text(fields, "style"),
              flag(fields, "electronic", false));
      case "contact" -> contact(fields, a, b);
      case "coil" ->
          new Element.Coil(
              a,
              b,
              number(fields, "ohms"),
              number(fields, "pullInV"),
              number(fields, "dropOutV"),
              number(fields, "maxV"));
      case "diode" -> new Element.Diode(a, b, number(fields, "volts", 0.7), number(fields, "maxA"));
      case "link" -> new Element.Link(a, b, number(fields, "milliohm", 0));
      case "signal" ->
          new Element.Signal(
              text(fields, "pin"), word(fields, "type", SIGNALS), text(fields, "reference"));
      default -> null;
    };
  }

  private static Element source(ObjectNode fields) {
    return new Element.Source(
        text(fields, "plus"),
        text(fields, "minus"),
        number(fields, "volts"),
        number(fields, "ohms"),
        number(fields, "maxA"),
        number(fields, "chargeOhms"),
        flag(fields, "generator", false),
        flag(fields, "selfLimiting", false),
        text(fields, "fedBy"));
  }

  private static Element load(ObjectNode fields, @Nullable String a, @Nullable String b) {
    return new Element.Load(
        a,
        b,
        number(fields, "amps"),
        number(fields, "ohms"),
        number(fields, "watts"),
        number(fields, "atVolts"),
        word(fields, "use", USES, Element.Load.Use.SWITCHED),
        number(fields, "inrushA"),
        number(fields, "inrushS"),
        number(fields, "dutyPercent", 100),
        flag(fields, "intermittent", false),
        flag(fields, "critical", false),
        number(fields, "minV"),
        number(fields, "maxV"),
        number(fields, "capacitanceUf"),
        number(fields, "maxDropPercent"));
  }

  private static Element contact(ObjectNode fields, @Nullable String a, @Nullable String b) {
    String coil = text(fields, "coil");
    List<String> closedIn = texts(fields, "closedIn");
    return new Element.Contact(
        a,
        b,
        coil,
        "closed".equals(text(fields, "rest")),
        closedIn.isEmpty() && coil == null ? List.of("on") : closedIn,
        flag(fields, "isolator", false),
        number(fields, "ratingA"),
        number(fields, "milliohm", 0));
  }
}
