package org.tugtest.rule.connectors;

import java.util.ArrayList;
import java.util.List;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Measured;
import org.tugtest.finding.Subject;
import org.tugtest.model.Ref;
import org.tugtest.model.Splice;
import org.tugtest.network.Point;
import org.tugtest.network.WireEnd;
import org.tugtest.rule.Cause;
import org.tugtest.rule.Heading;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Settings;

/** A splice joins nothing: it has fewer than two wire ends, an end cap none. */
public final class SpliceUnderfilled implements Rule {
  private static final RuleInfo INFO =
      RuleInfo.of("splice-underfilled", Heading.CONNECTORS, Level.ERROR)
          .summary("a splice has fewer wire ends than it needs")
          .subjects("splices")
          .looksFor(
              """
              A splice on which fewer than two wire ends sit, or an end cap on which none sits. In a
              sketch a bare name that is defined nowhere counts as a splice; those that only one
              wire names are one warning with the list.
              """)
          .why(
              """
              A splice with one wire is an open end under heat-shrink: the circuit that should go
              on from there is dead, and nobody sees it in the finished loom.
              """)
          .remedy(
              """
              End the missing wire on the splice, or take the splice out, or give it
              "kind": "end-cap" when the dead end is wanted.
              """)
          .basis("Follows from what a splice is: a joint of two or more conductors.")
          .follows(Cause.JOINT_UNMADE)
          .failing(
              """
              {"format": 1, "sketch": true,
               "splices": {"S1": {}},
               "wires": {"W1": {"from": "R1:1", "to": "S1"}}}
              """)
          .passing(
              """
              {"format": 1, "sketch": true,
               "splices": {"S1": {}, "E1": {"kind": "end-cap"}},
               "wires": {"W1": {"from": "R1:1", "to": "S1"}, "W2": {"from": "S1", "to": "R2:1"},
                         "W3": {"from": "R1:2", "to": "E1"}}}
              """)
          .build();

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    for (Splice splice : facts.harness().splices().values()) {
      List<WireEnd> ends = facts.wiring().endsAt(Point.splice(splice.id()));
      int least = splice.endCap() ? 1 : 2;
      if (ends.size() >= least) {
        ledger.fine();
      } else if (!facts.unread().isEmpty()) {
        ledger.notJudged(Subject.splice(splice.id()), Facts.FILE_UNREAD);
      } else {
        ledger.finding(finding(splice, ends, least));
      }
    }
    judgeImplied(facts, ledger);
  }

  private static void judgeImplied(Facts facts, Ledger ledger) {
    List<WireEnd> single = new ArrayList<>();
    for (Point point : facts.wiring().implied()) {
      if (point.kind() == Point.Kind.SPLICE) {
        List<WireEnd> ends = facts.wiring().endsAt(point);
        if (ends.size() == 1) {
          single.add(ends.get(0));
        } else {
          ledger.fine();
        }
      }
    }
    if (single.isEmpty()) {
      return;
    }
    WireEnd first = single.get(0);
    Finding.Draft draft =
        Finding.on(Subject.HARNESS)
            .kind("implied")
            .level(Level.WARNING)
            .message(
                single.size() == 1
                    ? named(first) + " names no contact, and no other wire names it: an open end?"
                    : single.size()
                        + " names of this sketch are no contacts and stand on one wire each: open"
                        + " ends?")
            .remedy(
                "write the cavity or pin, as in \""
                    + first.wire().id()
                    + "\": {.. \""
                    + first.field()
                    + "\": \""
                    + text(first)
                    + ":1\"}");
    for (WireEnd end : single) {
      draft.at(facts.places().of("wires/" + end.wire().id(), end.field()));
      if (single.size() > 1) {
        draft.detail(named(end));
      }
    }
    ledger.finding(draft);
  }

  private static String named(WireEnd end) {
    return text(end) + " (\"" + end.field() + "\" of wire " + end.wire().id() + ")";
  }

  private static String text(WireEnd end) {
    Ref ref = end.ref();
    return ref == null ? "" : ref.text();
  }

  private static Finding.Draft finding(Splice splice, List<WireEnd> ends, int least) {
    String noun = splice.endCap() ? "end cap " : "splice ";
    String what = ends.isEmpty() ? "no wire" : "only wire " + ends.get(0).wire().id();
    return Finding.on(Subject.splice(splice.id()))
        .message(noun + splice.id() + " holds " + what + "; it needs at least " + least)
        .remedy(
            "end the missing wire on "
                + splice.id()
                + ", take the splice out, or give it \"kind\": \"end-cap\" for a dead end")
        .measured(Measured.under(ends.size(), least, ""));
  }
}
