package org.tugtest.rule.connectors;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Subject;
import org.tugtest.model.Connector;
import org.tugtest.model.Device;
import org.tugtest.model.DeviceType;
import org.tugtest.model.Harness;
import org.tugtest.model.Loom;
import org.tugtest.model.Ref;
import org.tugtest.network.Mating;
import org.tugtest.network.Point;
import org.tugtest.rule.Cause;
import org.tugtest.rule.Heading;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Settings;
import org.tugtest.text.NaturalOrder;
import org.tugtest.text.Series;

/** A connector is plugged into nothing, and nothing says that it is parked. */
public final class ConnectorUnmated implements Rule {
  private static final int NAMED = 8;
  private static final String SKETCH = "in a sketch, what it mates with need not be written yet";
  private static final String UNKNOWN = "what it mates with is not known";
  private static final String CLAIMED = "what claims to mate it is refused elsewhere";

  private static final RuleInfo INFO =
      RuleInfo.of("connector-unmated", Heading.CONNECTORS, Level.ERROR)
          .summary("a connector mates with nothing and is not parked")
          .subjects("connectors")
          .looksFor(
              """
              A connector without "mates" that no other connector names as its mate, and that is not
              "parked". A connector whose "mates" cannot be plugged: itself, a splice, a single
              contact, a device without ports, or one with several ports when none is named. Two
              connectors that claim the same mate: the claim that is refused is reported, with the
              one that stands. In a loom with "stage": "found" it is one warning for the loom. In a
              sketch a connector without "mates" is not judged.
              """)
          .why(
              """
              Every wire in a plug that mates with nothing is an open circuit, and its contacts
              are bare: a live one finds the body sooner or later. When two plugs claim one
              socket, one of them hangs loose in the car.
              """)
          .remedy(
              """
              Write "mates" on one of the two halves: the other connector, the device, or its
              port as "device.port". If nothing shall be plugged there, write "parked": "capped"
              or "open".
              """)
          .basis(
              """
              Follows from the format. Unused halves are capped: AC 43.13-1B, 11-100, as a
              builder's notes restate it.
              """)
          .causes(Cause.JOINT_UNMADE)
          .failing(
              """
              {"format": 1,
               "parts": {"housings": {"plug": {"side": "socket", "rows": [["1"]]}}},
               "connectors": {"X1": {"housing": "plug"}},
               "splices": {"S1": {}},
               "wires": {"W1": {"from": "X1:1", "to": "S1", "areaMm2": 1}}}
              """)
          .failing(
              """
              {"format": 1,
               "parts": {"housings": {"skt": {"side": "socket", "rows": [["1"]]},
                                      "pin": {"side": "pin", "rows": [["1"]]}}},
               "devices": {"LAMP": {"ports": {"plug": {"housing": "pin"}}}},
               "connectors": {"X1": {"housing": "skt", "mates": "LAMP"},
                              "X2": {"housing": "skt", "mates": "LAMP"}}}
              """)
          .passing(
              """
              {"format": 1,
               "parts": {"housings": {"skt": {"side": "socket", "rows": [["1"]]},
                                      "pin": {"side": "pin", "rows": [["1"]]}}},
               "devices": {"LAMP": {"ports": {"plug": {"housing": "pin"}}}},
               "connectors": {"X1": {"housing": "skt", "mates": "LAMP"},
                              "X2": {"housing": "skt", "mates": "X3"}, "X3": {"housing": "pin"},
                              "X4": {"housing": "skt", "parked": "capped"}}}
              """)
          .build();

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    new Judgement(facts, ledger).all();
  }

  /** One run over one harness. */
  private static final class Judgement {
    private final Facts facts;
    private final Harness harness;
    private final Mating mating;
    private final Ledger ledger;
    private final Map<String, Mating.Conflict> refused = new HashMap<>();
    private final Set<String> claimed = new HashSet<>();
    private final Map<String, List<String>> found = new TreeMap<>(NaturalOrder.NATURAL);

    Judgement(Facts facts, Ledger ledger) {
      this.facts = facts;
      this.harness = facts.harness();
      this.mating = facts.wiring().mating();
      this.ledger = ledger;
      for (Mating.Conflict conflict : mating.conflicts()) {
        refused.put(conflict.refused(), conflict);
        Connector claims = harness.connectors().get(conflict.refused());
        if (claims != null && claims.mates() != null) {
          claimed.add(claims.mates().owner());
        }
      }
    }

    void all() {
      harness.connectors().values().forEach(this::judge);
      found.forEach(this::report);
      for (String id : facts.wiring().connectors()) {
        if (harness.connectors().containsKey(id)) {
          continue;
        }
        if (mating.mateOf(id).isPresent()) {
          ledger.fine();
        } else {
          ledger.notJudged(Subject.connector(id), SKETCH);
        }
      }
    }

    private void judge(Connector connector) {
      String id = connector.id();
      Mating.Conflict conflict = refused.get(id);
      if (conflict != null) {
        ledger.finding(claimedTwice(connector, conflict));
      } else if (mating.mateOf(id).isPresent()) {
        ledger.fine();
      } else if (connector.mates() != null) {
        judgeClaim(connector, connector.mates());
      } else if (connector.parked() != null) {
        ledger.fine();
      } else {
        judgeLoose(connector);
      }
    }

    private void judgeLoose(Connector connector) {
      Subject subject = Subject.connector(connector.id());
      Loom loom = connector.loom() == null ? null : harness.looms().get(connector.loom());
      if (harness.sketch()) {
        ledger.notJudged(subject, SKETCH);
      } else if (!facts.unread().isEmpty()) {
        ledger.notJudged(subject, Facts.FILE_UNREAD);
      } else if (facts.misread().at("connectors", connector.id())) {
        ledger.notJudged(subject, Unjudged.MISREAD);
      } else if (claimed.contains(connector.id())) {
        ledger.notJudged(subject, CLAIMED);
      } else if (loom != null && loom.stage() == Loom.Stage.FOUND) {
        if (!ledger.switchedOff(subject)) {
          found.computeIfAbsent(loom.id(), key -> new ArrayList<>()).add(connector.id());
        }
      } else {
        ledger.finding(
            Finding.on(subject)
                .message(
                    "connector "
                        + connector.id()
                        + " mates with nothing and is not parked"
                        + holds(connector.id()))
                .remedy(
                    "write \"mates\" on it or on its other half, or \"parked\": \"capped\" or"
                        + " \"open\" when nothing is plugged there"));
      }
    }

    private String holds(String connector) {
      int wires = 0;
      for (String cavity : facts.wiring().cavitiesOf(connector)) {
        wires += facts.wiring().endsAt(Point.cavity(connector, cavity)).size();
      }
      return wires == 0 ? "" : "; it holds " + wires + (wires == 1 ? " wire end" : " wire ends");
    }

    private void judgeClaim(Connector connector, Ref claim) {
      Optional<String> why = whyNot(connector, claim);
      if (why.isPresent()) {
        ledger.finding(
            Finding.on(Subject.connector(connector.id()))
                .message(
                    "connector "
                        + connector.id()
                        + " is written to mate "
                        + claim.text()
                        + ", "
                        + why.get())
                .remedy("write the other connector, or the port as \"device.port\", in \"mates\"")
                .at(facts.places().of("connectors/" + connector.id(), "mates")));
      } else {
        ledger.notJudged(Subject.connector(connector.id()), UNKNOWN);
      }
    }

    /** Why a thing that is known cannot be mated; empty when it, or its type, is not known. */
    private Optional<String> whyNot(Connector connector, Ref claim) {
      String owner = claim.owner();
      Device device = harness.devices().get(owner);
      DeviceType type = device == null ? null : harness.typeOf(device);
      if (harness.splices().containsKey(owner)) {
        return Optional.of("a splice");
      }
      if (claim.pin() != null && (device != null || harness.connectors().containsKey(owner))) {
        return Optional.of("a single contact");
      }
      if (claim.member() == null && owner.equals(connector.id())) {
        return Optional.of("which is itself");
      }
      if (type == null || claim.member() != null) {
        return Optional.empty();
      }
      if (type.ports().isEmpty()) {
        return harness.sketch() ? Optional.empty() : Optional.of("a device without ports");
      }
      List<String> ports = type.ports().keySet().stream().map(port -> owner + "." + port).toList();
      return Optional.of(
          "a device with " + ports.size() + " ports (" + Series.and(ports, NAMED) + ")");
    }

    private Finding.Draft claimedTwice(Connector connector, Mating.Conflict conflict) {
      String id = connector.id();
      Ref claim = connector.mates();
      String claims = claim == null ? conflict.mate().text() : claim.text();
      boolean taken = !conflict.mate().text().equals(id);
      String message =
          taken
              ? "connector " + id + " claims " + claims + ", which mates " + conflict.kept()
              : "connector "
                  + id
                  + " claims "
                  + claims
                  + ", but "
                  + conflict.kept()
                  + " claims "
                  + id;
      return Finding.on(Subject.connector(id), other(conflict.kept()))
          .kind("claimed-twice")
          .message(message)
          .remedy("correct \"mates\" of the one that is wrong, or leave it out there")
          .at(facts.places().of("connectors/" + id, "mates"))
          .at(facts.places().of(other(conflict.kept()).place()));
    }

    private Subject other(String kept) {
      Ref ref = Ref.parse(kept);
      return ref.member() == null
          ? Subject.connector(kept)
          : Subject.element(ref.owner(), ref.member());
    }

    private void report(String loom, List<String> connectors) {
      Finding.Draft draft =
          Finding.on(Subject.loom(loom))
              .kind("found")
              .level(Level.WARNING)
              .message(
                  connectors.size()
                      + (connectors.size() == 1 ? " connector" : " connectors")
                      + " of loom "
                      + loom
                      + ", as found, "
                      + (connectors.size() == 1 ? "mates" : "mate")
                      + " with nothing: "
                      + Series.and(connectors, NAMED))
              .remedy("write what each of them mates with, or how it is parked");
      connectors.forEach(id -> draft.and(Subject.connector(id)).detail(id));
      ledger.finding(draft, connectors.stream().map(Subject::connector).toList());
    }
  }
}
