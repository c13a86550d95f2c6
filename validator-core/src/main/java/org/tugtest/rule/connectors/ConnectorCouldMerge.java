package org.tugtest.rule.connectors;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Basis;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.network.Point;
import org.tugtest.network.WireEnd;
import org.tugtest.rule.Heading;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Settings;
import org.tugtest.text.Quoted;

/** All contacts of a pair fit into free cavities of another that stands beside it. */
public final class ConnectorCouldMerge implements Rule {
  private static final RuleInfo INFO =
      RuleInfo.of("connector-could-merge", Heading.CONNECTORS, Level.NOTE)
          .summary("the contacts of a connector fit into free cavities of its neighbour")
          .subjects("mated pairs between looms")
          .looksFor(
              """
              Two mated pairs between the same looms whose halves stand at the same nodes, where
              every wired contact of one finds a free cavity of the other on both halves: family,
              side and conductor range of a terminal, insulation, seal and rating, as far as they
              are given. The place of each contact is chosen for all of them at once: feed beside
              return or a signal is the last choice, else the order is kept. No cavity is
              promised twice. Pairs with an adaptor, without housing or node are not judged.
              """)
          .why(
              """
              A pair that is not needed is two housings, two seals and a fixing: grams, money,
              and one more place where water and vibration get in.
              """)
          .remedy(
              """
              Move the contacts as the details list them, both halves in one go. Leave it as it
              is when the two must be unplugged one without the other.
              """)
          .basis(
              """
              Follows from the parts. What to check when two small plugs go into a bigger one,
              and feed away from its neighbours: common practice.
              """)
          .failing(
              """
              {"format": 1, "sketch": true,
               "parts": {"housings": {
                 "skt-4": {"side": "socket", "rows": [["1", "2", "3", "4"]], "grams": 6},
                 "pin-4": {"side": "pin", "rows": [["4", "3", "2", "1"]], "grams": 5}}},
               "connectors": {
                 "X1": {"housing": "skt-4", "mates": "Y1", "at": "bulkhead"},
                 "Y1": {"housing": "pin-4"},
                 "X2": {"housing": "skt-4", "mates": "Y2", "at": "bulkhead"},
                 "Y2": {"housing": "pin-4"}},
               "wires": {"W1": {"from": "A:1", "to": "X1:1"}, "W2": {"from": "A:2", "to": "X1:2"},
                         "V1": {"from": "Y1:1", "to": "B:1"}, "V2": {"from": "Y1:2", "to": "B:2"},
                         "W3": {"from": "A:3", "to": "X2:1"}, "V3": {"from": "Y2:1", "to": "B:3"}}}
              """)
          .passing(
              """
              {"format": 1, "sketch": true,
               "parts": {"housings": {
                 "skt-2": {"side": "socket", "rows": [["1", "2"]]},
                 "pin-2": {"side": "pin", "rows": [["2", "1"]]}}},
               "connectors": {
                 "X1": {"housing": "skt-2", "mates": "Y1", "at": "bulkhead"},
                 "Y1": {"housing": "pin-2"},
                 "X2": {"housing": "skt-2", "mates": "Y2", "at": "bulkhead"},
                 "Y2": {"housing": "pin-2"}},
               "wires": {"W1": {"from": "A:1", "to": "X1:1"}, "W2": {"from": "A:2", "to": "X1:2"},
                         "W3": {"from": "A:3", "to": "X2:1"}}}
              """)
          .build();

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    Merging merging = new Merging(facts);
    Map<String, List<Joint>> beside =
        Merging.beside(
            facts,
            (pair, looked) -> {
              if (looked.joint().isEmpty()) {
                ledger.notJudged(pair.first(), looked.why());
              } else if (!facts.unread().isEmpty()) {
                ledger.notJudged(pair.first(), Facts.FILE_UNREAD);
              } else {
                return !ledger.switchedOff(pair.first());
              }
              return false;
            });
    for (List<Joint> joints : beside.values()) {
      for (Optional<Merging.Proposal> found : merging.of(joints)) {
        if (found.isPresent()) {
          ledger.finding(finding(facts, found.get()));
        } else {
          ledger.fine();
        }
      }
    }
  }

  private static Finding.Draft finding(Facts facts, Merging.Proposal proposal) {
    Joint small = proposal.small();
    Joint large = proposal.large();
    int moves = proposal.plan().moves().size();
    int cavities =
        small.near().housing().cavityNames().size() + small.far().housing().cavityNames().size();
    Finding.Draft draft =
        Finding.on(small.near().subject(), small.far().subject())
            .and(large.near().subject())
            .and(large.far().subject())
            .message(
                (moves == 1 ? "the contact of " : "the " + moves + " contacts of ")
                    + small.text()
                    + (moves == 1 ? " fits" : " fit")
                    + " into free cavities of "
                    + large.text()
                    + "; that saves 2 connectors with "
                    + cavities
                    + " cavities"
                    + grams(small))
            .remedy(
                "move the contacts as listed, on both halves in one go, unless the two must be"
                    + " unplugged one without the other")
            .basis(Basis.COMMON_PRACTICE);
    for (MergePlan.Move move : proposal.plan().moves()) {
      draft.detail(line(facts, small, large, move));
    }
    proposal.plan().beside().forEach(draft::detail);
    return draft.detail(
        large.text()
            + " would keep "
            + proposal.left()
            + " of "
            + (large.used().size() + large.free().size())
            + " contacts free");
  }

  private static String line(Facts facts, Joint small, Joint large, MergePlan.Move move) {
    Point near = small.near().at(move.from().near());
    Point far = small.far().at(move.from().far());
    return near.text()
        + " -> "
        + large.near().at(move.to().near()).text()
        + ", "
        + far.text()
        + " -> "
        + large.far().at(move.to().far()).text()
        + " ("
        + wires(facts, near, far)
        + ")";
  }

  private static String wires(Facts facts, Point near, Point far) {
    List<WireEnd> both = new ArrayList<>(facts.wiring().endsAt(near));
    both.addAll(facts.wiring().endsAt(far));
    return Cavities.wires(both);
  }

  private static String grams(Joint small) {
    Double near = small.near().housing().grams();
    Double far = small.far().housing().grams();
    if (near == null && far == null) {
      return "";
    }
    double sum = (near == null ? 0 : near) + (far == null ? 0 : far);
    String figure = Quoted.number(sum);
    return " and " + (near == null || far == null ? "at least " : "") + figure + " g";
  }
}
