package org.tugtest.rule.written;

import java.util.ArrayList;
import java.util.List;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Subject;
import org.tugtest.model.Ref;
import org.tugtest.model.Wire;
import org.tugtest.network.Point;
import org.tugtest.network.Resolution;
import org.tugtest.network.WireEnd;
import org.tugtest.rule.Cause;
import org.tugtest.rule.Heading;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Settings;
import org.tugtest.rule.Stage;
import org.tugtest.text.Place;

/** A wire does not end on two contacts. */
public final class WireEndOpen implements Rule {
  private static final RuleInfo INFO =
      RuleInfo.of("wire-end-open", Heading.WRITTEN, Level.ERROR)
          .stage(Stage.REFERENCES)
          .summary("a wire does not end on two contacts")
          .subjects("wires")
          .looksFor(
              """
              A wire without "from" or "to", or with an empty one. An end that is no contact: a
              whole connector or device, a port, an element, a pin behind a port (a wire ends in the
              connector that mates the port), a point inside a device. Both ends on the same
              contact. An end cap is an end: give the dead end a splice with "kind": "end-cap".
              """)
          .why(
              """
              An open end is a circuit that does not work or, when it is a feed, a live copper end
              in the loom that finds the body sooner or later.
              """)
          .remedy(
              """
              Write the contact as "connector:cavity", "device:pin" or the id of a splice. A spare
              wire that ends dead gets an end cap.
              """)
          .basis("Follows from the format: a wire runs from one contact to another.")
          .causes(Cause.JOINT_UNMADE)
          .failing(
              """
              {"format": 1, "sketch": true,
               "wires": {"W1": {"from": "R1:3"}, "W2": {"from": "R1:4", "to": "R2:1"}}}
              """)
          .failing(
              """
              {"format": 1, "sketch": true,
               "devices": {"LAMP": {"elements": {"bulb": {"kind": "load", "a": "1", "b": "2"}}}},
               "wires": {"W1": {"from": "R1:3", "to": "LAMP"}}}
              """)
          .passing(
              """
              {"format": 1, "sketch": true,
               "splices": {"E1": {"kind": "end-cap"}},
               "wires": {"W1": {"from": "R1:3", "to": "E1"}, "W2": {"from": "R1:4", "to": "R2:1"}}}
              """)
          .build();

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    for (Wire wire : facts.harness().wires().values()) {
      new Judgement(facts, wire).judge(ledger);
    }
  }

  /** What is wrong with the ends of one wire. */
  private static final class Judgement {
    private final Facts facts;
    private final Wire wire;
    private final Subject subject;
    private final List<String> wrongs = new ArrayList<>();
    private final List<String> remedies = new ArrayList<>();
    private final List<Place> places = new ArrayList<>();
    private final List<Point> points = new ArrayList<>();
    private String unjudged = "";

    Judgement(Facts facts, Wire wire) {
      this.facts = facts;
      this.wire = wire;
      this.subject = Subject.wire(wire.id());
    }

    void judge(Ledger ledger) {
      end(new WireEnd(wire, true));
      end(new WireEnd(wire, false));
      if (wrongs.isEmpty() && points.size() == 2 && points.get(0).equals(points.get(1))) {
        wrongs.add("both its ends are on " + points.get(0));
        remedies.add("correct one of its ends, or take the wire out");
        places.add(facts.places().of(subject.place(), "from"));
        places.add(facts.places().of(subject.place(), "to"));
      }
      if (!wrongs.isEmpty()) {
        Finding.Draft draft =
            Finding.on(subject)
                .message("wire " + wire.id() + " is open: " + String.join("; ", wrongs))
                .remedy(String.join("; ", remedies.stream().distinct().toList()));
        places.forEach(draft::at);
        ledger.finding(draft);
      } else if (unjudged.isEmpty()) {
        ledger.fine();
      } else {
        ledger.notJudged(subject, unjudged);
      }
    }

    private void end(WireEnd end) {
      Ref ref = end.ref();
      if (ref == null) {
        missing(end);
        return;
      }
      Resolution resolution = facts.wiring().resolve(ref);
      if (resolution instanceof Resolution.Found found) {
        points.add(found.point());
      } else if (resolution instanceof Resolution.NoContact none) {
        wrongs.add("its \"" + end.field() + "\", " + none.thing() + ", " + none.why());
        remedies.add(none.remedy());
        places.add(facts.places().of(subject.place(), end.field()));
      } else {
        unjudged = Unjudged.UNKNOWN_END;
      }
    }

    private void missing(WireEnd end) {
      if (facts.misread().at("wires", wire.id(), end.field())) {
        unjudged = Unjudged.MISREAD;
        return;
      }
      wrongs.add("it has no \"" + end.field() + "\"");
      remedies.add(
          "write the contact it ends on, or an end cap (a splice of \"kind\": \"end-cap\")");
      places.add(facts.places().of(subject.place(), end.field()));
    }
  }
}
