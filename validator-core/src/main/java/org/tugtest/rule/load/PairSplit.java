package org.tugtest.rule.load;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Basis;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Measured;
import org.tugtest.finding.Subject;
import org.tugtest.model.Group;
import org.tugtest.model.Wire;
import org.tugtest.route.Piece;
import org.tugtest.route.Route;
import org.tugtest.rule.Heading;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Setting;
import org.tugtest.rule.Settings;
import org.tugtest.text.Series;

/** The wires of a pair or cable part ways. */
public final class PairSplit implements Rule {
  private static final String LIMIT = "mm";

  private static final RuleInfo INFO =
      RuleInfo.of("pair-split", Heading.LOAD, Level.WARNING)
          .summary("the wires of a twisted pair or a cable part ways")
          .subjects("groups of two wires or more")
          .looksFor(
              """
              A wire of a group that runs more than 50 mm along segments where no other wire of the
              group runs, its own "via" or other ends leading it away. Splices of a pair that are
              set apart by less do not count. The screen of a cable may end early. A group of which
              fewer than two wires have a route is not judged.
              """)
          .why(
              """
              A pair keeps noise out only where its two wires lie together; where they part they are
              a loop that catches everything. A cable cannot part at all.
              """)
          .remedy(
              """
              Take the "via" out, end both wires in the same place, or take the wire out of the
              group.
              """)
          .basis(
              """
              Follows from what a pair is; 50 mm for splices of a pair that are set apart: common
              practice.
              """)
          .setting(
              new Setting(
                  LIMIT, 50, 0, 5000, "mm", "how far a wire may run alone (common practice)"))
          .failing(
              """
              {"format": 1, "sketch": true,
               "layout": {"segments": {"s1": {"from": "a", "to": "b", "lengthMm": 900},
                 "s2": {"from": "a", "to": "c", "lengthMm": 700},
                 "s3": {"from": "c", "to": "b", "lengthMm": 700}}},
               "devices": {"A": {"at": "a"}, "B": {"at": "b"}},
               "wires": {"W1": {"from": "A:1", "to": "B:1"},
                         "W2": {"from": "A:2", "to": "B:2", "via": ["c"]}},
               "groups": {"G": {"kind": "twisted", "wires": ["W1", "W2"], "pitchMm": 25}}}
              """)
          .passing(
              """
              {"format": 1, "sketch": true,
               "layout": {"segments": {"s1": {"from": "a", "to": "b", "lengthMm": 900}}},
               "devices": {"A": {"at": "a"}, "B": {"at": "b"}},
               "wires": {"W1": {"from": "A:1", "to": "B:1"},
                         "W2": {"from": "A:2", "to": "B:2"}},
               "groups": {"G": {"kind": "twisted", "wires": ["W1", "W2"], "pitchMm": 25}}}
              """)
          .build();

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    for (Group group : facts.harness().groups().values()) {
      Subject subject = Subject.of("groups", group.id());
      Map<String, Route> routes = new LinkedHashMap<>();
      for (String id : group.wires()) {
        if (!id.equals(group.screen())) {
          facts.routes().of(id).ifPresent(route -> routes.put(id, route));
        }
      }
      if (group.wires().stream().distinct().count() < 2) {
        continue;
      }
      if (routes.size() < 2) {
        ledger.notJudged(subject, "less than two of its wires have a route");
        continue;
      }
      double limit = settings.number(LIMIT, subject);
      Strayed worst = worst(facts, routes, limit);
      if (worst == null) {
        ledger.fine();
      } else {
        ledger.finding(finding(facts, group, worst, limit));
      }
    }
  }

  /** A wire that runs alone for so long, and over which segments. */
  private record Strayed(String wire, double mm, List<String> segments) {}

  /** Of the wires that stray too far one with a via, else the one that strays farthest. */
  private static @Nullable Strayed worst(Facts facts, Map<String, Route> routes, double limit) {
    Strayed worst = null;
    for (Route route : routes.values()) {
      double alone = 0;
      List<String> segments = new ArrayList<>();
      for (Piece piece : route.pieces()) {
        double mm = piece.lengthMm() - beside(piece, route, routes);
        if (mm > 1e-6) {
          alone += mm;
          segments.add(piece.segment());
        }
      }
      Strayed strayed = new Strayed(route.wire(), alone, segments);
      if (alone > limit && (worst == null || ledBy(facts, strayed) > ledBy(facts, worst))) {
        worst = strayed;
      }
    }
    return worst;
  }

  private static double ledBy(Facts facts, Strayed strayed) {
    Wire wire = facts.harness().wires().get(strayed.wire());
    return strayed.mm() + (wire == null || wire.via().isEmpty() ? 0 : 1e9);
  }

  /** How much of a piece lies beside another wire of the group. */
  private static double beside(Piece piece, Route route, Map<String, Route> routes) {
    List<double[]> covered = new ArrayList<>();
    for (Route other : routes.values()) {
      if (!other.wire().equals(route.wire())) {
        for (Piece its : other.pieces()) {
          if (its.segment().equals(piece.segment())) {
            double low = Math.max(its.lowMm(), piece.lowMm());
            double high = Math.min(its.highMm(), piece.highMm());
            if (high > low) {
              covered.add(new double[] {low, high});
            }
          }
        }
      }
    }
    covered.sort(Comparator.comparingDouble(one -> one[0]));
    double sum = 0;
    double end = Double.NEGATIVE_INFINITY;
    for (double[] one : covered) {
      sum += Math.max(0, one[1] - Math.max(one[0], end));
      end = Math.max(end, one[1]);
    }
    return sum;
  }

  private static Finding.Draft finding(Facts facts, Group group, Strayed worst, double limit) {
    Measured measured = Measured.over(worst.mm(), limit, "mm");
    Wire wire = facts.harness().wires().get(worst.wire());
    boolean via = wire != null && !wire.via().isEmpty();
    List<String> over = worst.segments().stream().distinct().toList();
    Finding.Draft draft =
        Finding.on(Subject.wire(worst.wire()), Subject.of("groups", group.id()))
            .message(
                "wire "
                    + worst.wire()
                    + " leaves the others of group "
                    + group.id()
                    + " for "
                    + measured.actualShown()
                    + " mm, over "
                    + (over.size() == 1 ? "segment " : "segments ")
                    + Series.and(over, 6)
                    + (over.size() < worst.segments().size() ? ", out and back" : "")
                    + (via ? ", as its \"via\" says" : "")
                    + "; at most "
                    + measured.limitShown()
                    + " mm are good practice")
            .remedy(
                via
                    ? "take \"via\" out of " + worst.wire() + ", or give it to all of the group"
                    : "end the wires of the group in the same place, or take "
                        + worst.wire()
                        + " out of it")
            .measured(measured)
            .basis(Basis.COMMON_PRACTICE);
    group.wires().stream()
        .filter(id -> !id.equals(worst.wire()))
        .forEach(id -> draft.and(Subject.wire(id)));
    return draft;
  }
}
