package org.tugtest.rule.written.reference;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import org.tugtest.finding.Subject;
import org.tugtest.model.DeviceType;
import org.tugtest.model.Element;
import org.tugtest.model.Ref;
import org.tugtest.model.State;
import org.tugtest.text.NaturalOrder;

/** What states and fitted fuses name. */
final class StateNames {
  private final Mentions mentions;
  private final Tables tables;
  private final Table loads;
  private final Table generators;
  private final Table sources;
  private final Table contacts;
  private final Table fuses;

  StateNames(Mentions mentions, Tables tables) {
    this.mentions = mentions;
    this.tables = tables;
    loads =
        members("load or coil", StateNames::isLoad, "name a load or a coil, or a device with one");
    generators =
        members(
            "generator",
            element -> element instanceof Element.Source source && source.generator(),
            "name a source with \"generator\": true, or its device");
    sources = members("source", Element.Source.class::isInstance, "name a source, or its device");
    contacts =
        new Table(
            "contact",
            List.of(),
            tables.everyElement(Element.Contact.class::isInstance),
            "name a contact as \"device.contact\"");
    fuses = fuses(tables);
  }

  /** Whether an element draws power, so that a state may want it to work. */
  static boolean isLoad(Element element) {
    return element instanceof Element.Load || element instanceof Element.Coil;
  }

  /** Elements that can hold a fuse, as {@code device.element}. */
  static Table fuses(Tables tables) {
    return new Table(
        "fuse element",
        List.of(),
        tables.everyElement(Element.Fuse.class::isInstance),
        "name an element of kind \"fuse\" as \"device.element\"");
  }

  private Table members(String noun, Predicate<Element> kind, String advice) {
    Set<String> names = new TreeSet<>(NaturalOrder.NATURAL);
    for (String member : tables.everyElement(kind)) {
      names.add(member);
      names.add(member.substring(0, member.indexOf('.')));
    }
    return new Table(noun, List.of(), names, advice);
  }

  void all() {
    mentions.facts().harness().fitted().forEach(this::fitted);
    mentions.facts().harness().states().values().forEach(this::state);
  }

  private void fitted(String place, String part) {
    Holder by = Holder.of(Subject.of("fitted", place));
    member(by, fuses, Ref.parse(place));
    mentions.id(by, tables.fuseParts, part);
  }

  private void state(State state) {
    Holder by = Holder.of(Subject.of("states", state.id()));
    state.set().forEach((what, position) -> set(by, what, position));
    for (int i = 0; i < state.on().size(); i++) {
      member(by, loads, state.on().get(i), "on", Integer.toString(i));
    }
    for (int i = 0; i < state.running().size(); i++) {
      member(by, generators, state.running().get(i), "running", Integer.toString(i));
    }
    for (Ref source : state.volts().keySet()) {
      member(by, sources, source, "volts", source.text());
      oneSource(by, source);
    }
    mentions.id(by, tables.states, state.from(), "from");
    if (state.id().equals(state.from())) {
      mentions.wrong(
          by,
          "from",
          by.words() + " is entered from itself",
          "name the state before it in \"from\", or leave it out",
          "from");
    }
  }

  private void set(Holder by, Ref what, String position) {
    String[] path = {"set", what.text()};
    if (what.member() != null) {
      member(by, contacts, what, path);
      if (contacts.ids().contains(what.text())) {
        Table settings = Table.closed("setting of a contact", List.of("on", "off"));
        mentions.id(by, settings, position, path);
      }
      return;
    }
    if (what.pin() != null || !tables.devices.ids().contains(what.owner())) {
      mentions.id(by, tables.devices, what.text(), path);
      return;
    }
    DeviceType type = tables.typeOf(what.owner());
    if (type == null) {
      mentions.unjudged(by, Mentions.TYPE);
    } else if (tables.isMisread(what.owner())) {
      mentions.unjudged(by, Mentions.MISREAD);
    } else {
      mentions.id(
          by, Table.closed("position of " + what.owner(), type.positions()), position, path);
    }
  }

  /** An element of a device, or the device for all of its elements of that kind. */
  private void member(Holder by, Table table, Ref ref, String... path) {
    lookUp(mentions, tables, by, table, ref, path);
  }

  static void lookUp(
      Mentions mentions, Tables tables, Holder by, Table table, Ref ref, String... path) {
    String owner = ref.owner();
    if (table.ids().contains(ref.text())) {
      mentions.right(by);
    } else if (!tables.devices.ids().contains(owner)) {
      mentions.id(by, tables.devices, owner, path);
    } else if (tables.typeOf(owner) == null) {
      mentions.unjudged(by, Mentions.TYPE);
    } else if (tables.isMisread(owner)) {
      mentions.unjudged(by, Mentions.MISREAD);
    } else {
      mentions.id(by, table, ref.text(), path);
    }
  }

  private void oneSource(Holder by, Ref ref) {
    @Nullable DeviceType type = ref.member() == null ? tables.typeOf(ref.owner()) : null;
    if (type == null) {
      return;
    }
    Set<String> names = Tables.elements(type, Element.Source.class::isInstance);
    if (names.size() > 1) {
      List<String> members = names.stream().map(name -> ref.owner() + "." + name).toList();
      mentions.wrong(
          by,
          "volts " + ref.text(),
          by.words()
              + " gives the volts of "
              + ref.text()
              + ", which has "
              + names.size()
              + " sources",
          "name one: " + String.join(", ", members),
          "volts",
          ref.text());
    }
  }
}
