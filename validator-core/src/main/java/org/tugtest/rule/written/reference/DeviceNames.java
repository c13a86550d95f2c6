package org.tugtest.rule.written.reference;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.tugtest.finding.Subject;
import org.tugtest.model.Device;
import org.tugtest.model.DeviceType;
import org.tugtest.model.Element;
import org.tugtest.model.Housing;
import org.tugtest.model.Ref;
import org.tugtest.text.NaturalOrder;

/** What devices and device types name. */
final class DeviceNames {
  private final Mentions mentions;
  private final Tables tables;

  DeviceNames(Mentions mentions, Tables tables) {
    this.mentions = mentions;
    this.tables = tables;
  }

  void all() {
    mentions
        .facts()
        .harness()
        .parts()
        .deviceTypes()
        .forEach(
            (id, type) -> {
              Holder by = Holder.of(Subject.part("deviceTypes", id));
              type(
                  by,
                  "device type " + id,
                  type,
                  mentions.facts().misread().at("parts", "deviceTypes", id));
            });
    mentions.facts().harness().devices().values().forEach(this::device);
  }

  private void device(Device device) {
    Holder by = Holder.of(Subject.device(device.id()));
    mentions.id(by, tables.deviceTypes, device.type(), "type");
    mentions.id(by, tables.nodes, device.at(), "at");
    if (device.own() != null) {
      type(by, device.id(), device.own(), tables.isMisread(device.id()));
    }
    Table pins = bolted(device);
    device
        .boltedTo()
        .forEach(
            (pin, to) -> {
              if (pins != null) {
                mentions.id(by, pins, pin, "boltedTo", pin);
              }
              boltedTo(by, pin, to);
            });
  }

  /** The pins that a device may be bolted by; null when they are not all known. */
  private @Nullable Table bolted(Device device) {
    DeviceType type = tables.typeOf(device.id());
    if (type == null || tables.isMisread(device.id())) {
      return null;
    }
    Table listed = pins(device.id(), type);
    boolean bare = type.elements().isEmpty() && type.pins().isEmpty() && type.ports().isEmpty();
    if (listed != null || bare) {
      return listed;
    }
    Set<String> named = new TreeSet<>(NaturalOrder.NATURAL);
    type.elements().values().forEach(element -> named.addAll(element.ends()));
    return type.ports().isEmpty() && !mentions.facts().harness().sketch()
        ? Table.closed("pin of " + device.id(), named)
        : null;
  }

  private void boltedTo(Holder by, String pin, Ref to) {
    String owner = to.owner();
    DeviceType type = tables.typeOf(owner);
    if (!tables.devices.ids().contains(owner)) {
      mentions.id(by, tables.devices, owner, "boltedTo", pin);
    } else if (to.pin() == null) {
      mentions.wrong(
          by,
          "boltedTo " + pin,
          by.words() + " is bolted to " + to.text() + ", which is no pin",
          "write \"" + owner + ":\" and one of its pins",
          "boltedTo",
          pin);
    } else if (type == null) {
      mentions.unjudged(by, Mentions.TYPE);
    } else if (mentions.facts().wiring().pinsComplete(owner) && !tables.isMisread(owner)) {
      Table pins = Table.closed("pin of " + owner, mentions.facts().wiring().pinsOf(owner));
      mentions.id(by, pins, to.pin(), "boltedTo", pin);
    }
  }

  private void type(Holder by, String words, DeviceType type, boolean misread) {
    type.pins().forEach((name, pin) -> mentions.id(by, tables.nodes, pin.at(), "pins", name, "at"));
    type.ports().forEach((name, port) -> port(by.inside("port", "ports", name), port));
    Table pins = misread ? null : pins(words, type);
    Table positions = Table.closed("position of " + words, type.positions());
    Table coils =
        Table.closed("coil of " + words, Tables.elements(type, Element.Coil.class::isInstance));
    Table loads =
        Table.closed("load of " + words, Tables.elements(type, Element.Load.class::isInstance));
    type.elements()
        .forEach(
            (name, element) -> {
              Holder inside = by.inside("element", "elements", name);
              if (pins != null) {
                ends(element).forEach((field, pin) -> mentions.id(inside, pins, pin, field));
              }
              if (element instanceof Element.Source source) {
                if (misread) {
                  mentions.right(inside);
                } else {
                  mentions.id(inside, loads, source.fedBy(), "fedBy");
                }
              }
              if (element instanceof Element.Contact contact) {
                if (misread) {
                  mentions.right(inside);
                } else {
                  mentions.id(inside, coils, contact.coil(), "coil");
                  if (contact.coil() == null) {
                    closedIn(inside, positions, contact);
                  }
                }
              }
            });
  }

  private void closedIn(Holder by, Table positions, Element.Contact contact) {
    boolean standard = contact.closedIn().equals(List.of("on"));
    if (standard && !positions.ids().contains("on")) {
      mentions.wrong(
          by,
          "closedIn",
          by.words()
              + " gives no \"closedIn\" and so is closed in on, but there is no such position",
          "write \"closedIn\" with one or more of " + String.join(", ", positions.ids()),
          "closedIn");
    } else {
      mentions.ids(by, positions, contact.closedIn(), "closedIn");
    }
  }

  private void port(Holder by, DeviceType.Port port) {
    mentions.id(by, tables.housings, port.housing(), "housing");
    Table cavities = tables.cavities(port.housing());
    if (cavities != null) {
      port.pins().keySet().forEach(cavity -> mentions.id(by, cavities, cavity, "pins", cavity));
    }
  }

  /** The pins that a device lists; null when it lists none, or not all of them are known. */
  private @Nullable Table pins(String words, DeviceType type) {
    if (type.pins().isEmpty() && type.ports().isEmpty()) {
      return null;
    }
    Set<String> names = new TreeSet<>(NaturalOrder.NATURAL);
    names.addAll(type.pins().keySet());
    for (DeviceType.Port port : type.ports().values()) {
      Housing housing =
          port.housing() == null
              ? null
              : mentions.facts().harness().parts().housings().get(port.housing());
      if (housing == null || tables.cavities(port.housing()) == null) {
        return null;
      }
      housing.cavityNames().forEach(cavity -> names.add(port.pinAt(cavity)));
      names.addAll(port.pins().values());
    }
    return Table.closed("pin of " + words, names);
  }

  /** The pins that an element names, by field. */
  private static Map<String, String> ends(Element element) {
    Map<String, String> ends = new LinkedHashMap<>();
    String[] fields =
        element instanceof Element.Source
            ? new String[] {"plus", "minus"}
            : element instanceof Element.Signal
                ? new String[] {"pin", "reference"}
                : new String[] {"a", "b"};
    if (element.ends().size() == 2) {
      ends.put(fields[0], element.ends().get(0));
      ends.put(fields[1], element.ends().get(1));
    } else if (element.ends().size() == 1 && element instanceof Element.Signal) {
      ends.put(fields[0], element.ends().get(0));
    }
    return ends;
  }
}
