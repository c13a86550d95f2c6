package org.tugtest.compare;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.tugtest.compare.change.ChangeKind;
import org.tugtest.model.Ref;
import org.tugtest.model.Wire;
import org.tugtest.text.NaturalOrder;

/** What is done to single wires, and what a person would say of it. */
final class WireEdits {
  private final Hand hand;

  WireEdits(Hand hand) {
    this.hand = hand;
  }

  /** One end goes to a contact on which no wire ends. */
  void rePin() {
    Wire wire = hand.takeWire();
    if (wire == null || wire.from() == null || wire.to() == null || wire.from().equals(wire.to())) {
      return;
    }
    Set<Ref> used = new HashSet<>();
    for (String id : hand.loom.ids("wires")) {
      Wire other = hand.loom.get("wires", id, Wire.class);
      used.add(other.from());
      used.add(other.to());
    }
    List<Ref> free = hand.loom.ends();
    free.removeIf(end -> used.contains(end) || hand.touched.contains(end.owner()));
    if (free.isEmpty()) {
      return;
    }
    Ref to = free.get(hand.random.nextInt(free.size()));
    boolean first = hand.random.nextBoolean();
    Ref old = first ? wire.from() : wire.to();
    if (hand.touched.contains(old.owner())) {
      return;
    }
    hand.put(wire, first ? to : wire.from(), first ? wire.to() : to, wire.part(), wire.colour());
    hand.say(ChangeKind.RE_PINNED, "wires/" + wire.id(), old.text(), to.text());
  }

  void colour() {
    Wire wire = hand.takeWire();
    if (wire != null) {
      hand.put(wire, wire.from(), wire.to(), wire.part(), "VT");
      hand.say(ChangeKind.RE_COLOURED, "wires/" + wire.id(), wire.colour(), "VT");
    }
  }

  void gauge() {
    Wire wire = hand.takeWire();
    if (wire != null && wire.part() != null) {
      String other = wire.part().equals("w1") ? "w2" : "w1";
      hand.put(wire, wire.from(), wire.to(), other, wire.colour());
      hand.say(ChangeKind.RE_GAUGED, "wires/" + wire.id(), gauge(wire.part()), gauge(other));
    }
  }

  private static String gauge(String part) {
    return part.equals("w1") ? "1 mm2 (w1)" : "2.5 mm2 (w2)";
  }

  void length() {
    Wire wire = hand.takeWire();
    Double old = wire == null ? null : wire.cutMm();
    if (wire != null && old != null) {
      double now = hand.random.nextBoolean() ? old + 50 : old - 50;
      hand.loom
          .of("wires")
          .put(
              wire.id(),
              Loom.wire(
                  wire.id(),
                  wire.from(),
                  wire.to(),
                  wire.part(),
                  wire.colour(),
                  wire.circuit(),
                  now));
      hand.say(
          now > old ? ChangeKind.LENGTHENED : ChangeKind.SHORTENED,
          "wires/" + wire.id(),
          Integer.toString(old.intValue()),
          Integer.toString((int) now));
    }
  }

  void removeWire() {
    Wire wire = hand.takeWire();
    if (wire != null && !hand.isTouched(wire.from()) && !hand.isTouched(wire.to())) {
      hand.loom.of("wires").remove(wire.id());
      hand.said.add(new Said(ChangeKind.REMOVED, "wires/" + wire.id(), null, null, null));
    }
  }

  void addWire() {
    List<Ref> ends = hand.loom.ends();
    ends.removeIf(end -> hand.touched.contains(end.owner()));
    if (ends.isEmpty()) {
      return;
    }
    String id = hand.fresh();
    hand.touched.add(id);
    Ref from = ends.get(hand.random.nextInt(ends.size()));
    Ref to = ends.get(hand.random.nextInt(ends.size()));
    hand.loom.of("wires").put(id, Loom.wire(id, from, to, "w1", "PK", "new " + id, null));
    hand.said.add(new Said(ChangeKind.ADDED, null, "wires/" + id, null, null));
  }

  void renameWire() {
    Wire wire = hand.takeWire();
    if (wire == null || wire.from() == null || wire.to() == null) {
      return;
    }
    String id = wire.id() + "-b";
    hand.touched.add(id);
    hand.loom.of("wires").remove(wire.id());
    hand.loom
        .of("wires")
        .put(
            id,
            Loom.wire(
                id,
                wire.from(),
                wire.to(),
                wire.part(),
                wire.colour(),
                wire.circuit(),
                wire.cutMm()));
    hand.said.add(new Said(ChangeKind.RENAMED, "wires/" + wire.id(), "wires/" + id, wire.id(), id));
  }

  /** Two wires that share no contact get each other's id. */
  void exchangeIds() {
    Wire one = hand.takeWire();
    Wire other = hand.takeWire();
    if (one == null
        || other == null
        || shares(one, other)
        || incomplete(one)
        || incomplete(other)) {
      return;
    }
    hand.loom.of("wires").put(one.id(), called(other, one.id()));
    hand.loom.of("wires").put(other.id(), called(one, other.id()));
    boolean first = NaturalOrder.NATURAL.compare(one.id(), other.id()) < 0;
    Wire least = first ? one : other;
    Wire last = first ? other : one;
    hand.said.add(
        new Said(
            ChangeKind.IDS_EXCHANGED,
            "wires/" + least.id(),
            "wires/" + last.id(),
            least.id(),
            last.id()));
  }

  private static Wire called(Wire wire, String id) {
    return Loom.wire(
        id, wire.from(), wire.to(), wire.part(), wire.colour(), wire.circuit(), wire.cutMm());
  }

  private static boolean incomplete(Wire wire) {
    return wire.from() == null || wire.to() == null;
  }

  private static boolean shares(Wire one, Wire other) {
    return Stream.of(one.from(), one.to())
        .anyMatch(end -> end != null && (end.equals(other.from()) || end.equals(other.to())));
  }

  /** The ends of two wires in one connector change places. */
  void exchangeCavities() {
    Wire one = hand.takeWire();
    if (one == null
        || one.from() == null
        || one.from().pin() == null
        || hand.isTouched(one.from())) {
      return;
    }
    Ref here = one.from();
    for (String id : hand.loom.ids("wires")) {
      Wire other = hand.loom.get("wires", id, Wire.class);
      Ref there = other.from();
      if (there != null
          && !hand.touched.contains(id)
          && there.owner().equals(here.owner())
          && !there.equals(here)
          && !incomplete(one)
          && !incomplete(other)
          && !there.equals(one.to())
          && !here.equals(other.to())
          && !one.from().equals(one.to())
          && !other.from().equals(other.to())) {
        hand.touched.add(id);
        hand.put(one, there, one.to(), one.part(), one.colour());
        hand.put(other, here, other.to(), other.part(), other.colour());
        hand.say(ChangeKind.RE_PINNED, "wires/" + one.id(), here.text(), there.text());
        hand.say(ChangeKind.RE_PINNED, "wires/" + id, there.text(), here.text());
        return;
      }
    }
  }

  void reroute() {
    Wire wire = hand.takeWire();
    if (wire != null) {
      hand.loom
          .of("wires")
          .put(
              wire.id(),
              new Wire(
                  wire.id(),
                  null,
                  wire.from(),
                  wire.to(),
                  wire.part(),
                  null,
                  null,
                  wire.colour(),
                  null,
                  wire.circuit(),
                  List.of("n2"),
                  wire.laidInPlace(),
                  wire.cutMm(),
                  null,
                  null,
                  null,
                  null,
                  null,
                  null,
                  null));
      hand.say(ChangeKind.RE_ROUTED, "wires/" + wire.id(), "none", "n2");
    }
  }
}
