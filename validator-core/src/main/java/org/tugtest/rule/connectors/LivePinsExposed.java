package org.tugtest.rule.connectors;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Subject;
import org.tugtest.model.Connector;
import org.tugtest.model.ContactSide;
import org.tugtest.model.Housing;
import org.tugtest.network.Mate;
import org.tugtest.network.Mating;
import org.tugtest.network.Point;
import org.tugtest.rule.Heading;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Settings;
import org.tugtest.text.Series;

/** Pins of a loom connector stay live when it is unplugged. */
public final class LivePinsExposed implements Rule {
  private static final int NAMED = 6;
  private static final String NO_SOURCE = "no source is described";
  private static final String NO_SIDE = "no housing says which half has the pins";

  private static final RuleInfo INFO =
      RuleInfo.of("live-pins-exposed", Heading.CONNECTORS, Level.WARNING)
          .gravest(Level.ERROR)
          .summary("pins of a loom connector stay live when it is unplugged")
          .subjects("halves of connectors between looms, and parked connectors")
          .looksFor(
              """
              A connector with pins, between two looms or parked or plugged into nothing, of which
              a pin is joined to the plus of a source when the pair is apart: through wires,
              splices, fitted fuses, other plugs and switches, all taken as closed. It is an
              error when a pin is live without a fuse before it, and when the connector is parked
              or mates with nothing. A half with sockets is fine. Pins of a device and of its
              plug are its maker's matter.
              """)
          .why(
              """
              A plug that is pulled with the supply on lies against the chassis. Sockets take
              that; bare pins strike an arc, and without a fuse the loom burns.
              """)
          .remedy(
              """
              Put the sockets on the half that comes from the battery and the pins on the half
              towards the loads: exchange the two housings and their terminals. Take the feed off
              a parked connector, or end it in an end cap.
              """)
          .basis(
              """
              Sockets on the live side, pins on the load side: municipal vehicle purchase
              specification, clause 3.4.1.6.
              """)
          .failing(
              """
              {"format": 1, "sketch": true,
               "parts": {"housings": {"pin": {"side": "pin", "rows": [["1"]]},
                                      "skt": {"side": "socket", "rows": [["1"]]}}},
               "devices": {"BAT": {"elements": {
                 "cell": {"kind": "source", "plus": "+", "minus": "-"}}}},
               "connectors": {"X1": {"housing": "pin", "mates": "X2"}, "X2": {"housing": "skt"}},
               "wires": {"W1": {"from": "BAT:+", "to": "X1:1"},
                         "W2": {"from": "X2:1", "to": "LAMP:1"}}}
              """)
          .passing(
              """
              {"format": 1, "sketch": true,
               "parts": {"housings": {"pin": {"side": "pin", "rows": [["1"]]},
                                      "skt": {"side": "socket", "rows": [["1"]]}}},
               "devices": {"BAT": {"elements": {
                 "cell": {"kind": "source", "plus": "+", "minus": "-"}}}},
               "connectors": {"X1": {"housing": "skt", "mates": "X2"}, "X2": {"housing": "pin"}},
               "wires": {"W1": {"from": "BAT:+", "to": "X1:1"},
                         "W2": {"from": "X2:1", "to": "LAMP:1"}}}
              """)
          .build();

  /** A pin that stays live. */
  private record Live(Point pin, boolean unfused, String way) {}

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    Mating mating = facts.wiring().mating();
    for (Connector connector : facts.harness().connectors().values()) {
      String id = connector.id();
      Mate mate = mating.mateOf(id).orElse(null);
      if (mate instanceof Mate.OfPort) {
        continue;
      }
      ContactSide side = side(mating, id, mate).orElse(null);
      if (side == null) {
        ledger.notJudged(Subject.connector(id), NO_SIDE);
      } else if (side != ContactSide.PIN) {
        ledger.fine();
      } else if (facts.network().sources().isEmpty()) {
        ledger.notJudged(Subject.connector(id), NO_SOURCE);
      } else {
        judge(facts, connector, mate, ledger);
      }
    }
  }

  /** The side of a half: its housing's, else the opposite of its mate's. */
  private static Optional<ContactSide> side(Mating mating, String id, @Nullable Mate mate) {
    ContactSide own = mating.housingOf(id).map(Housing::side).orElse(null);
    if (own != null || mate == null) {
      return Optional.ofNullable(own);
    }
    return mating
        .housingOf(mate)
        .map(Housing::side)
        .filter(other -> other != ContactSide.RING)
        .map(other -> other == ContactSide.PIN ? ContactSide.SOCKET : ContactSide.PIN);
  }

  private static void judge(Facts facts, Connector connector, @Nullable Mate mate, Ledger ledger) {
    String id = connector.id();
    Unplugged unplugged = new Unplugged(facts, id, mate == null ? id : mate.text());
    List<Live> live = new ArrayList<>();
    for (Point pin : facts.wiring().cavityPoints(id)) {
      if (facts.wiring().endsAt(pin).isEmpty()) {
        continue;
      }
      Optional<String> bare = unplugged.unfusedWay(pin);
      Optional<String> way = bare.isPresent() ? bare : unplugged.way(pin);
      way.ifPresent(text -> live.add(new Live(pin, bare.isPresent(), text)));
    }
    if (!live.isEmpty()) {
      ledger.finding(finding(facts, connector, mate, live));
    } else if (facts.unread().isEmpty()) {
      ledger.fine();
    } else {
      ledger.notJudged(Subject.connector(id), Facts.FILE_UNREAD);
    }
  }

  private static Finding.Draft finding(
      Facts facts, Connector connector, @Nullable Mate mate, List<Live> live) {
    String id = connector.id();
    boolean unfused = live.stream().anyMatch(Live::unfused);
    List<String> pins =
        live.stream()
            .map(one -> one.pin().text() + (one.unfused() ? " (no fuse before it)" : ""))
            .toList();
    String when =
        mate != null
            ? " when unplugged from " + mate.text()
            : connector.parked() != null ? " where it is parked" : " and mates with nothing";
    Finding.Draft draft =
        Finding.on(Subject.connector(id))
            .message(id + " has live pins" + when + ": " + Series.and(pins, NAMED))
            .remedy(
                mate != null
                    ? "put the sockets on this half and the pins on " + mate.text()
                    : "take the feed off it, or end it in an end cap");
    if (unfused || mate == null) {
      draft.level(Level.ERROR);
    }
    for (Live one : live) {
      draft.and(one.pin().subject()).detail(one.way());
    }
    live.stream()
        .flatMap(one -> facts.wiring().endsAt(one.pin()).stream())
        .map(end -> Subject.wire(end.wire().id()))
        .distinct()
        .forEach(draft::and);
    return draft;
  }
}
