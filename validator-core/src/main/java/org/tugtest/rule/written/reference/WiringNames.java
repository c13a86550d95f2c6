package org.tugtest.rule.written.reference;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.tugtest.finding.Subject;
import org.tugtest.model.Connector;
import org.tugtest.model.DeviceType;
import org.tugtest.model.Group;
import org.tugtest.model.Harness;
import org.tugtest.model.Ref;
import org.tugtest.model.Splice;
import org.tugtest.model.Wire;
import org.tugtest.network.Resolution;

/** What connectors, splices, wires and groups name. */
final class WiringNames {
  private final Mentions mentions;
  private final Tables tables;

  WiringNames(Mentions mentions, Tables tables) {
    this.mentions = mentions;
    this.tables = tables;
  }

  void all() {
    Harness harness = mentions.facts().harness();
    harness.connectors().values().forEach(this::connector);
    harness.splices().values().forEach(this::splice);
    harness.wires().values().forEach(this::wire);
    harness.groups().values().forEach(this::group);
  }

  private void connector(Connector connector) {
    Holder by = Holder.of(Subject.connector(connector.id()));
    mentions.id(by, tables.housings, connector.housing(), "housing");
    mentions.id(by, tables.nodes, connector.at(), "at");
    mentions.ids(by, tables.terminals, connector.terminals(), "terminals");
    mentions.ids(by, tables.seals, connector.seals(), "seals");
    mentions.id(by, tables.coverings, connector.boot(), "boot");
    Table own = tables.cavities(connector.housing());
    connector
        .cavities()
        .forEach(
            (cavity, fields) -> {
              if (own != null) {
                mentions.id(by, own, cavity, "cavities", cavity);
              }
              mentions.id(by, tables.terminals, fields.terminal(), "cavities", cavity, "terminal");
              mentions.id(by, tables.seals, fields.seal(), "cavities", cavity, "seal");
            });
    mates(by, connector.mates());
    pinMap(by, connector, own);
  }

  /** Whether what is named is there; whether it can be plugged is another rule's matter. */
  private void mates(Holder by, @Nullable Ref ref) {
    if (ref == null) {
      return;
    }
    String owner = ref.owner();
    DeviceType type = tables.typeOf(owner);
    String port = ref.member();
    if (tables.splices.ids().contains(owner)) {
      mentions.right(by);
    } else if (!tables.mates.ids().contains(owner)) {
      mentions.id(by, tables.mates, owner, "mates");
    } else if (port == null) {
      mentions.right(by);
    } else if (tables.connectors.ids().contains(owner)) {
      mentions.wrong(
          by,
          "mates",
          by.words() + " mates " + ref.text() + ", but connector " + owner + " has no ports",
          "write \"mates\": \"" + owner + "\"",
          "mates");
    } else if (type == null) {
      mentions.unjudged(by, Mentions.TYPE);
    } else if (tables.isMisread(owner)) {
      mentions.unjudged(by, Mentions.MISREAD);
    } else {
      mentions.id(by, Table.closed("port of " + owner, type.ports().keySet()), port, "mates");
    }
  }

  private void pinMap(Holder by, Connector connector, @Nullable Table own) {
    Table others =
        mentions
            .facts()
            .wiring()
            .mating()
            .mateOf(connector.id())
            .flatMap(mate -> mentions.facts().wiring().mating().housingOf(mate))
            .map(housing -> tables.cavities(housing.id()))
            .orElse(null);
    Map<String, String> taken = new HashMap<>();
    connector
        .pinMap()
        .forEach(
            (cavity, contact) -> {
              if (own != null) {
                mentions.id(by, own, cavity, "pinMap", cavity);
              }
              if (others != null) {
                mentions.id(by, others, contact, "pinMap", cavity);
              }
              String before = taken.putIfAbsent(contact, cavity);
              if (before != null) {
                mentions.wrong(
                    by,
                    "pinMap " + contact,
                    by.words()
                        + " maps its cavities "
                        + before
                        + " and "
                        + cavity
                        + " to the same contact "
                        + contact,
                    "correct \"pinMap\": every contact meets one cavity",
                    "pinMap",
                    cavity);
              }
            });
  }

  private void splice(Splice splice) {
    Holder by = Holder.of(Subject.splice(splice.id()));
    mentions.id(by, tables.nodes, splice.at(), "at");
    mentions.id(by, tables.segments, splice.on(), "on");
    mentions.id(by, tables.spliceParts, splice.part(), "part");
    mentions.ids(by, tables.coverings, splice.coverings(), "coverings");
  }

  private void wire(Wire wire) {
    Holder by = Holder.of(Subject.wire(wire.id()));
    end(by, wire.from(), "from");
    end(by, wire.to(), "to");
    mentions.id(by, tables.wireParts, wire.part(), "part");
    mentions.ids(by, tables.nodes, wire.via(), "via");
    mentions.id(by, tables.terminals, wire.fromTerminal(), "fromTerminal");
    mentions.id(by, tables.terminals, wire.toTerminal(), "toTerminal");
  }

  private void end(Holder by, @Nullable Ref ref, String field) {
    if (ref == null) {
      return;
    }
    if (mentions.facts().wiring().resolve(ref) instanceof Resolution.OwnerUnknown unknown) {
      mentions.id(by, tables.owners, unknown.owner(), field);
    } else {
      mentions.right(by);
    }
  }

  private void group(Group group) {
    Holder by = Holder.of(Subject.of("groups", group.id()));
    List<String> wires = group.wires();
    mentions.ids(by, tables.wires, wires, "wires");
    mentions.id(by, tables.wires, group.screen(), "screen");
  }
}
