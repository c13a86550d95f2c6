package org.tugtest.compare;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.tugtest.compare.change.Change;
import org.tugtest.compare.change.ChangeKind;
import org.tugtest.finding.Subject;
import org.tugtest.model.Connector;
import org.tugtest.model.Ref;
import org.tugtest.model.RuleLimits;
import org.tugtest.model.Splice;
import org.tugtest.model.State;
import org.tugtest.model.Wire;
import org.tugtest.text.NaturalOrder;

/** Alters a loom step by step and keeps what a person would say was done. */
final class Script {
  /** What is said of one change. */
  record Said(
      ChangeKind kind,
      @Nullable String was,
      @Nullable String is,
      @Nullable String before,
      @Nullable String after) {
    static Said of(Change change) {
      boolean whole = change.kind() == ChangeKind.ADDED || change.kind() == ChangeKind.REMOVED;
      return new Said(
          change.kind(),
          place(change.was()),
          place(change.is()),
          whole ? null : change.before(),
          whole ? null : change.after());
    }

    private static @Nullable String place(@Nullable Subject subject) {
      return subject == null ? null : subject.place();
    }
  }

  final Loom loom;
  final List<Said> said = new ArrayList<>();
  private final Random random;
  private final Set<String> touched = new HashSet<>();
  private int added;

  Script(Loom base, Random random) {
    this.loom = base.copy();
    this.random = random;
  }

  void steps(int count) {
    for (int i = 0; i < count; i++) {
      switch (random.nextInt(18)) {
        case 0, 1, 2 -> rePin();
        case 3 -> colour();
        case 4 -> gauge();
        case 5 -> length();
        case 6 -> removeWire();
        case 7 -> addWire();
        case 8 -> renameWire();
        case 9 -> renameOwner();
        case 10 -> moveSplice();
        case 11 -> fuse();
        case 12 -> policy();
        case 13 -> exchangeIds();
        case 14 -> exchangeCavities();
        case 15 -> swapHousing();
        case 16 -> reroute();
        default -> addOwner();
      }
    }
  }

  private @Nullable String untouched(String section) {
    List<String> ids = loom.ids(section);
    ids.removeIf(touched::contains);
    return ids.isEmpty() ? null : ids.get(random.nextInt(ids.size()));
  }

  private @Nullable Wire takeWire() {
    String id = untouched("wires");
    if (id == null) {
      return null;
    }
    touched.add(id);
    return loom.get("wires", id, Wire.class);
  }

  private void put(
      Wire old,
      @Nullable Ref from,
      @Nullable Ref to,
      @Nullable String part,
      @Nullable String colour) {
    loom.of("wires")
        .put(
            old.id(),
            new Wire(
                old.id(),
                null,
                from,
                to,
                part,
                null,
                null,
                colour,
                null,
                old.circuit(),
                old.via(),
                old.laidInPlace(),
                old.cutMm(),
                null,
                null,
                null,
                null,
                null,
                null,
                null));
  }

  /** One end goes to a contact on which no wire ends. */
  private void rePin() {
    Wire wire = takeWire();
    if (wire == null || wire.from() == null || wire.to() == null || wire.from().equals(wire.to())) {
      return;
    }
    Set<Ref> used = new HashSet<>();
    for (String id : loom.ids("wires")) {
      Wire other = loom.get("wires", id, Wire.class);
      used.add(other.from());
      used.add(other.to());
    }
    List<Ref> free = loom.ends();
    free.removeIf(end -> used.contains(end) || touched.contains(end.owner()));
    if (free.isEmpty()) {
      return;
    }
    Ref to = free.get(random.nextInt(free.size()));
    boolean first = random.nextBoolean();
    Ref old = first ? wire.from() : wire.to();
    if (touched.contains(old.owner())) {
      return;
    }
    put(wire, first ? to : wire.from(), first ? wire.to() : to, wire.part(), wire.colour());
    say(ChangeKind.RE_PINNED, "wires/" + wire.id(), old.text(), to.text());
  }

  private void colour() {
    Wire wire = takeWire();
    if (wire != null) {
      put(wire, wire.from(), wire.to(), wire.part(), "VT");
      say(ChangeKind.RE_COLOURED, "wires/" + wire.id(), wire.colour(), "VT");
    }
  }

  private void gauge() {
    Wire wire = takeWire();
    if (wire != null && wire.part() != null) {
      String other = wire.part().equals("w1") ? "w2" : "w1";
      put(wire, wire.from(), wire.to(), other, wire.colour());
      say(ChangeKind.RE_GAUGED, "wires/" + wire.id(), gauge(wire.part()), gauge(other));
    }
  }

  private static String gauge(String part) {
    return part.equals("w1") ? "1 mm2 (w1)" : "2.5 mm2 (w2)";
  }

  private void length() {
    Wire wire = takeWire();
    Double old = wire == null ? null : wire.cutMm();
    if (wire != null && old != null) {
      double now = random.nextBoolean() ? old + 50 : old - 50;
      loom.of("wires")
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
      say(
          now > old ? ChangeKind.LENGTHENED : ChangeKind.SHORTENED,
          "wires/" + wire.id(),
          Integer.toString(old.intValue()),
          Integer.toString((int) now));
    }
  }

  private void removeWire() {
    Wire wire = takeWire();
    if (wire != null && !isTouched(wire.from()) && !isTouched(wire.to())) {
      loom.of("wires").remove(wire.id());
      said.add(new Said(ChangeKind.REMOVED, "wires/" + wire.id(), null, null, null));
    }
  }

  private boolean isTouched(@Nullable Ref end) {
    return end != null && touched.contains(end.owner());
  }

  private void addWire() {
    List<Ref> ends = loom.ends();
    ends.removeIf(end -> touched.contains(end.owner()));
    if (ends.isEmpty()) {
      return;
    }
    String id = "NEW" + ++added;
    touched.add(id);
    Ref from = ends.get(random.nextInt(ends.size()));
    Ref to = ends.get(random.nextInt(ends.size()));
    loom.of("wires").put(id, Loom.wire(id, from, to, "w1", "PK", "new " + id, null));
    said.add(new Said(ChangeKind.ADDED, null, "wires/" + id, null, null));
  }

  private void renameWire() {
    Wire wire = takeWire();
    if (wire == null || wire.from() == null || wire.to() == null) {
      return;
    }
    String id = wire.id() + "-b";
    touched.add(id);
    loom.of("wires").remove(wire.id());
    loom.of("wires")
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
    said.add(new Said(ChangeKind.RENAMED, "wires/" + wire.id(), "wires/" + id, wire.id(), id));
  }

  /** A connector or splice that nothing else was done to, nor will be. */
  private void renameOwner() {
    String section = random.nextBoolean() ? "connectors" : "splices";
    String id = untouched(section);
    if (id == null || touchesWire(id)) {
      return;
    }
    String now = id + "-b";
    rename(section, id, now);
    touched.add(id);
    touched.add(now);
    said.add(new Said(ChangeKind.RENAMED, section + "/" + id, section + "/" + now, id, now));
  }

  /** Whether a wire in it has been altered, or nothing is in it that tells it from others. */
  private boolean touchesWire(String owner) {
    boolean any = false;
    for (String id : loom.ids("wires")) {
      Wire wire = loom.get("wires", id, Wire.class);
      boolean here = ends(wire.from(), owner) || ends(wire.to(), owner);
      if (here && touched.contains(id)) {
        return true;
      }
      any |= here;
    }
    return !any || said.stream().anyMatch(one -> (owner + ":").equals(prefix(one.before())));
  }

  private static String prefix(@Nullable String text) {
    int colon = text == null ? -1 : text.indexOf(':');
    return colon < 0 ? text + ":" : text.substring(0, colon + 1);
  }

  private static boolean ends(@Nullable Ref ref, String owner) {
    return ref != null && ref.owner().equals(owner);
  }

  /** Calls a connector or splice otherwise, here and in all that names it. */
  void rename(String section, String id, String now) {
    Object old = loom.of(section).remove(id);
    if (old instanceof Connector connector) {
      loom.of(section)
          .put(
              now,
              Loom.connector(
                  now,
                  connector.housing(),
                  connector.mates() == null ? null : connector.mates().text()));
    } else if (old instanceof Splice splice) {
      loom.of(section).put(now, Loom.splice(now, splice.at()));
    }
    for (String other : loom.ids("connectors")) {
      Connector connector = loom.get("connectors", other, Connector.class);
      if (connector.mates() != null && connector.mates().text().equals(id)) {
        loom.of("connectors").put(other, Loom.connector(other, connector.housing(), now));
      }
    }
    for (String wireId : loom.ids("wires")) {
      Wire wire = loom.get("wires", wireId, Wire.class);
      put(
          wire,
          renamed(wire.from(), id, now),
          renamed(wire.to(), id, now),
          wire.part(),
          wire.colour());
    }
  }

  private static @Nullable Ref renamed(@Nullable Ref ref, String id, String now) {
    return ref == null || !ref.owner().equals(id) ? ref : new Ref(now, ref.pin(), ref.member());
  }

  /** Two wires that share no contact get each other's id. */
  private void exchangeIds() {
    Wire one = takeWire();
    Wire other = takeWire();
    if (one == null
        || other == null
        || shares(one, other)
        || incomplete(one)
        || incomplete(other)) {
      return;
    }
    loom.of("wires").put(one.id(), called(other, one.id()));
    loom.of("wires").put(other.id(), called(one, other.id()));
    boolean first = NaturalOrder.NATURAL.compare(one.id(), other.id()) < 0;
    Wire least = first ? one : other;
    Wire last = first ? other : one;
    said.add(
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
    return java.util.stream.Stream.of(one.from(), one.to())
        .anyMatch(end -> end != null && (end.equals(other.from()) || end.equals(other.to())));
  }

  /** The ends of two wires in one connector change places. */
  private void exchangeCavities() {
    Wire one = takeWire();
    if (one == null || one.from() == null || one.from().pin() == null || isTouched(one.from())) {
      return;
    }
    Ref here = one.from();
    for (String id : loom.ids("wires")) {
      Wire other = loom.get("wires", id, Wire.class);
      Ref there = other.from();
      if (there != null
          && !touched.contains(id)
          && there.owner().equals(here.owner())
          && !there.equals(here)
          && !incomplete(one)
          && !incomplete(other)
          && !there.equals(one.to())
          && !here.equals(other.to())
          && !one.from().equals(one.to())
          && !other.from().equals(other.to())) {
        touched.add(id);
        put(one, there, one.to(), one.part(), one.colour());
        put(other, here, other.to(), other.part(), other.colour());
        say(ChangeKind.RE_PINNED, "wires/" + one.id(), here.text(), there.text());
        say(ChangeKind.RE_PINNED, "wires/" + id, there.text(), here.text());
        return;
      }
    }
  }

  private void swapHousing() {
    String id = untouched("connectors");
    Connector old = id == null ? null : loom.get("connectors", id, Connector.class);
    if (old == null || touchesWire(id)) {
      return;
    }
    touched.add(id);
    String mates = old.mates() == null ? null : old.mates().text();
    loom.of("connectors").put(id, Loom.connector(id, "other", mates));
    say(ChangeKind.SWAPPED, "connectors/" + id, old.housing(), "other");
  }

  private void reroute() {
    Wire wire = takeWire();
    if (wire != null) {
      loom.of("wires")
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
      say(ChangeKind.RE_ROUTED, "wires/" + wire.id(), "none", "n2");
    }
  }

  private void moveSplice() {
    String id = untouched("splices");
    if (id != null) {
      touched.add(id);
      Splice splice = loom.get("splices", id, Splice.class);
      loom.of("splices").put(id, Loom.splice(id, "n3"));
      say(ChangeKind.MOVED, "splices/" + id, splice.at(), "n3");
    }
  }

  private void fuse() {
    List<String> ways = loom.ids("fitted");
    ways.removeIf(touched::contains);
    if (ways.isEmpty()) {
      return;
    }
    String way = ways.get(random.nextInt(ways.size()));
    touched.add(way);
    if (random.nextBoolean()) {
      loom.of("fitted").put(way, "blade-15");
      say(ChangeKind.FUSE_RE_RATED, "fitted/" + way, "blade-5", "blade-15");
    } else {
      loom.of("fitted").remove(way);
      said.add(new Said(ChangeKind.REMOVED, "fitted/" + way, null, null, null));
    }
  }

  private void policy() {
    if (random.nextBoolean() && touched.add("state on")) {
      loom.of("states")
          .put("on", new State("on", Map.of(), List.of(), List.of(), Map.of(), null, true));
      say(ChangeKind.STATE, "states/on", "false", "true");
    } else if (touched.add("limit")) {
      loom.of("limits")
          .put("wire-repeated", new RuleLimits("wire-repeated", "error", Map.of(), Map.of()));
      say(ChangeKind.LIMIT, "limits/wire-repeated", "warning", "error");
    }
  }

  private void addOwner() {
    String id = "NEW" + ++added;
    touched.add(id);
    if (random.nextBoolean()) {
      loom.of("connectors").put(id, Loom.connector(id, "skt", null));
      said.add(new Said(ChangeKind.ADDED, null, "connectors/" + id, null, null));
    } else {
      loom.of("splices").put(id, Loom.splice(id, null));
      said.add(new Said(ChangeKind.ADDED, null, "splices/" + id, null, null));
    }
  }

  private void say(ChangeKind kind, String place, @Nullable String before, @Nullable String after) {
    said.add(new Said(kind, place, place, before, after));
  }
}
