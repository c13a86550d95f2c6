package org.tugtest.trace;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.tugtest.facts.Facts;
import org.tugtest.model.Connector;
import org.tugtest.model.Device;
import org.tugtest.model.DeviceType;
import org.tugtest.model.Element;
import org.tugtest.model.FusePart;
import org.tugtest.model.Splice;
import org.tugtest.model.Wire;
import org.tugtest.network.Fitting;
import org.tugtest.network.Point;
import org.tugtest.text.Quoted;

/** Says what a thing is in the trade's words. */
final class Sayings {
  private final Facts facts;

  Sayings(Facts facts) {
    this.facts = facts;
  }

  /** {@code W14 RD/WH 1 mm2 "lamp feed" cut 1240 mm}: what is given of it. */
  String wire(Wire wire) {
    List<String> words = new ArrayList<>();
    words.add(wire.id());
    add(words, wire.colour());
    if (wire.part() != null) {
      words.add(wire.part());
    } else if (wire.awg() != null) {
      words.add("AWG " + wire.awg());
    }
    if (wire.areaMm2() != null || wire.part() != null) {
      facts
          .fitting()
          .sizes()
          .areaMm2(wire)
          .ifPresent(area -> words.add(Quoted.number(area.value()) + " mm2"));
    }
    if (wire.circuit() != null) {
      words.add("\"" + wire.circuit() + "\"");
    }
    if (wire.cutMm() != null) {
      words.add("cut " + Quoted.number(wire.cutMm()) + " mm");
    }
    if (wire.laidInPlace()) {
      words.add("laid in place");
    }
    return String.join(" ", words);
  }

  /** {@code R1:3, cavity of connector R1 (housing relay-4)}. */
  String point(Point point) {
    return switch (point.kind()) {
      case CAVITY -> point.text() + ", cavity of " + connector(point.owner());
      case PIN -> point.text() + ", pin of " + device(point.owner());
      case SPLICE -> splice(point.owner());
    };
  }

  /** {@code connector R1 (housing relay-4, loom nose)}. */
  String connector(String id) {
    Connector connector = facts.harness().connectors().get(id);
    if (connector == null) {
      return "connector " + id + implied();
    }
    return "connector "
        + id
        + inBrackets(named("housing ", connector.housing()), named("loom ", connector.loom()));
  }

  /** {@code device LAMP (lamp-35w)}. */
  String device(String id) {
    Device device = facts.harness().devices().get(id);
    return "device "
        + id
        + (device == null
            ? ""
            : inBrackets(named("type ", device.type()), named("at ", device.at())));
  }

  /** {@code S1, splice (butt-2, loom nose)}. */
  String splice(String id) {
    Splice splice = facts.harness().splices().get(id);
    if (splice == null) {
      return id + ", splice" + implied();
    }
    return id
        + (splice.endCap() ? ", end cap" : ", splice")
        + inBrackets(named("", splice.part()), named("loom ", splice.loom()));
  }

  /** The terminal and the seal in a cavity with wires, if they are known; else empty. */
  String fitted(Point cavity) {
    if (facts.wiring().endsAt(cavity).isEmpty()) {
      return "";
    }
    Fitting.Choice<org.tugtest.model.Terminal> terminal = facts.fitting().terminal(cavity);
    Fitting.Choice<org.tugtest.model.Seal> seal = facts.fitting().seal(cavity);
    return Stream.of(
            terminal.part() == null ? "" : "terminal " + terminal.part().id(),
            seal.part() == null ? "" : "seal " + seal.part().id())
        .filter(text -> !text.isEmpty())
        .reduce((one, other) -> one + ", " + other)
        .orElse("");
  }

  /** {@code FB.f1 (fuse 10 A)}. */
  String element(String device, String name, Element element) {
    return device + "." + name + " (" + kind(device, name, element) + ")";
  }

  private String kind(String device, String name, Element element) {
    if (element instanceof Element.Source source) {
      return "source" + given(source.volts(), " V");
    }
    if (element instanceof Element.Load load) {
      return "load"
          + given(load.watts(), " W")
          + given(load.amps(), " A")
          + given(load.ohms(), " ohm");
    }
    if (element instanceof Element.Fuse fuse) {
      return fuse(device, name, fuse);
    }
    if (element instanceof Element.Contact contact) {
      return "contact, "
          + (contact.coil() == null
              ? "closed in position " + String.join(", ", contact.closedIn())
              : "moved by " + device + "." + contact.coil());
    }
    if (element instanceof Element.Coil coil) {
      return "coil" + given(coil.ohms(), " ohm");
    }
    if (element instanceof Element.Signal signal && signal.type() != null) {
      return "signal " + signal.type().word();
    }
    return element.kind();
  }

  private String fuse(String device, String name, Element.Fuse fuse) {
    Double rating = ratingOf(device, name, fuse);
    if (rating != null) {
      return (fuse.electronic() ? "electronic fuse " : "fuse ") + Quoted.number(rating) + " A";
    }
    return fuse.electronic() || facts.harness().fitted().containsKey(device + "." + name)
        ? "fuse, rating not known"
        : "fuse way, no fuse fitted";
  }

  private @Nullable Double ratingOf(String device, String name, Element.Fuse fuse) {
    if (fuse.ratingA() != null) {
      return fuse.ratingA();
    }
    String fitted = facts.harness().fitted().get(device + "." + name);
    FusePart part = fitted == null ? null : facts.harness().parts().fuses().get(fitted);
    return part == null ? null : part.ratingA();
  }

  /** The elements of a device by name; none when its type is not known. */
  Map<String, Element> elements(String device) {
    Device found = facts.harness().devices().get(device);
    DeviceType type = found == null ? null : facts.harness().typeOf(found);
    return type == null ? Map.of() : type.elements();
  }

  private static String implied() {
    return " (named by wires only)";
  }

  private static String given(@Nullable Double value, String unit) {
    return value == null ? "" : " " + Quoted.number(value) + unit;
  }

  private static String named(String before, @Nullable String name) {
    return name == null ? "" : before + name;
  }

  private static String inBrackets(String... texts) {
    List<String> given = Stream.of(texts).filter(text -> !text.isEmpty()).toList();
    return given.isEmpty() ? "" : " (" + String.join(", ", given) + ")";
  }

  private static void add(List<String> words, @Nullable String word) {
    if (word != null) {
      words.add(word);
    }
  }
}
