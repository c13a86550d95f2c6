package org.tugtest.compare;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.tugtest.compare.change.ChangeKind;
import org.tugtest.model.Connector;
import org.tugtest.model.Ref;
import org.tugtest.model.RuleLimits;
import org.tugtest.model.Splice;
import org.tugtest.model.State;
import org.tugtest.model.Wire;

/** What is done to connectors, splices, fuses and rules, and what a person would say of it. */
final class OwnerEdits {
  private final Hand hand;

  OwnerEdits(Hand hand) {
    this.hand = hand;
  }

  /** A connector or splice that nothing else was done to, nor will be. */
  void renameOwner() {
    String section = hand.random.nextBoolean() ? "connectors" : "splices";
    String id = hand.untouched(section);
    if (id == null || hand.touchesWire(id)) {
      return;
    }
    String now = id + "-b";
    rename(section, id, now);
    hand.touched.add(id);
    hand.touched.add(now);
    hand.said.add(new Said(ChangeKind.RENAMED, section + "/" + id, section + "/" + now, id, now));
  }

  /** Calls a connector or splice otherwise, here and in all that names it. */
  void rename(String section, String id, String now) {
    Object old = hand.loom.of(section).remove(id);
    if (old instanceof Connector connector) {
      hand.loom
          .of(section)
          .put(
              now,
              Loom.connector(
                  now,
                  connector.housing(),
                  connector.mates() == null ? null : connector.mates().text()));
    } else if (old instanceof Splice splice) {
      hand.loom.of(section).put(now, Loom.splice(now, splice.at()));
    }
    for (String other : hand.loom.ids("connectors")) {
      Connector connector = hand.loom.get("connectors", other, Connector.class);
      if (connector.mates() != null && connector.mates().text().equals(id)) {
        hand.loom.of("connectors").put(other, Loom.connector(other, connector.housing(), now));
      }
    }
    for (String wireId : hand.loom.ids("wires")) {
      Wire wire = hand.loom.get("wires", wireId, Wire.class);
      hand.put(
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

  void swapHousing() {
    String id = hand.untouched("connectors");
    Connector old = id == null ? null : hand.loom.get("connectors", id, Connector.class);
    if (old == null || hand.touchesWire(id)) {
      return;
    }
    hand.touched.add(id);
    String mates = old.mates() == null ? null : old.mates().text();
    hand.loom.of("connectors").put(id, Loom.connector(id, "other", mates));
    hand.say(ChangeKind.SWAPPED, "connectors/" + id, old.housing(), "other");
  }

  void moveSplice() {
    String id = hand.untouched("splices");
    if (id != null) {
      hand.touched.add(id);
      Splice splice = hand.loom.get("splices", id, Splice.class);
      hand.loom.of("splices").put(id, Loom.splice(id, "n3"));
      hand.say(ChangeKind.MOVED, "splices/" + id, splice.at(), "n3");
    }
  }

  void fuse() {
    List<String> ways = hand.loom.ids("fitted");
    ways.removeIf(hand.touched::contains);
    if (ways.isEmpty()) {
      return;
    }
    String way = ways.get(hand.random.nextInt(ways.size()));
    hand.touched.add(way);
    if (hand.random.nextBoolean()) {
      hand.loom.of("fitted").put(way, "blade-15");
      hand.say(ChangeKind.FUSE_RE_RATED, "fitted/" + way, "blade-5", "blade-15");
    } else {
      hand.loom.of("fitted").remove(way);
      hand.said.add(new Said(ChangeKind.REMOVED, "fitted/" + way, null, null, null));
    }
  }

  void policy() {
    if (hand.random.nextBoolean() && hand.touched.add("state on")) {
      hand.loom
          .of("states")
          .put("on", new State("on", Map.of(), List.of(), List.of(), Map.of(), null, true));
      hand.say(ChangeKind.STATE, "states/on", "false", "true");
    } else if (hand.touched.add("limit")) {
      hand.loom
          .of("limits")
          .put("wire-repeated", new RuleLimits("wire-repeated", "error", Map.of(), Map.of()));
      hand.say(ChangeKind.LIMIT, "limits/wire-repeated", "warning", "error");
    }
  }

  void addOwner() {
    String id = hand.fresh();
    hand.touched.add(id);
    if (hand.random.nextBoolean()) {
      hand.loom.of("connectors").put(id, Loom.connector(id, "skt", null));
      hand.said.add(new Said(ChangeKind.ADDED, null, "connectors/" + id, null, null));
    } else {
      hand.loom.of("splices").put(id, Loom.splice(id, null));
      hand.said.add(new Said(ChangeKind.ADDED, null, "splices/" + id, null, null));
    }
  }
}
