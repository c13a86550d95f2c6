package org.tugtest.rule.connectors;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Subject;
import org.tugtest.model.Housing;
import org.tugtest.network.Mating;
import org.tugtest.rule.Heading;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Settings;
import org.tugtest.text.Series;

/** The rows of two mated housings are not mirror images of each other. */
public final class FaceMirrored implements Rule {
  private static final int NAMED = 8;
  private static final String CAVITIES = "the halves do not have the same cavities";

  private static final RuleInfo INFO =
      RuleInfo.of("face-mirrored", Heading.CONNECTORS, Level.NOTE)
          .summary("the rows of two mated housings are not mirror images of each other")
          .subjects("mated pairs")
          .looksFor(
              """
              "rows" are written as seen from the wire side with the latch up. Seen so, the two
              halves of a pair are mirror images: what is on the left of one is on the right of
              the other, row by row. Reported once for each two housings that meet and are not.
              Gaps are not compared. Pairs with a "pinMap" or with different cavities are not
              judged.
              """)
          .why(
              """
              One of the two was copied from a drawing of the mating face. Whoever pins the plug
              from its printed face then puts every wire into the mirrored cavity.
              """)
          .remedy(
              """
              Look at both housings from the wire side, latch up, and write the rows as they
              stand there: the rows of one half are those of the other from right to left.
              """)
          .basis(
              """
              Follows from the format. Pinouts state their view and keep to one (repair data and
              connector makers' notes on mirrored labels).
              """)
          .failing(
              """
              {"format": 1,
               "parts": {"housings": {
                 "skt": {"side": "socket", "rows": [["1", "2"], ["3", "4"]]},
                 "pin": {"side": "pin", "rows": [["1", "2"], ["3", "4"]]}}},
               "connectors": {"X1": {"housing": "skt", "mates": "X2"}, "X2": {"housing": "pin"}}}
              """)
          .passing(
              """
              {"format": 1,
               "parts": {"housings": {
                 "skt": {"side": "socket", "rows": [["1", "2"], ["3", "4"]]},
                 "pin": {"side": "pin", "rows": [["2", "1"], ["4", "3"]]}}},
               "connectors": {"X1": {"housing": "skt", "mates": "X2"}, "X2": {"housing": "pin"}}}
              """)
          .build();

  /** Two housings that meet. */
  private record Meeting(Housing one, Housing other) {
    static Meeting of(Housing one, Housing other) {
      return one.id().compareTo(other.id()) <= 0
          ? new Meeting(one, other)
          : new Meeting(other, one);
    }
  }

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    Mating mating = facts.wiring().mating();
    Map<Meeting, List<MatedPair>> meetings = new LinkedHashMap<>();
    for (MatedPair pair : MatedPair.all(facts.harness(), mating)) {
      Housing own = mating.housingOf(pair.connector()).orElse(null);
      Housing other = mating.housingOf(pair.mate()).orElse(null);
      if (own == null || other == null) {
        ledger.notJudged(pair.first(), Unjudged.HOUSING);
      } else if (pair.mapped(facts.harness())) {
        ledger.notJudged(pair.first(), Unjudged.ADAPTOR);
      } else if (!set(own).equals(set(other))) {
        ledger.notJudged(pair.first(), CAVITIES);
      } else if (!ledger.switchedOff(pair.first())) {
        meetings.computeIfAbsent(Meeting.of(own, other), key -> new ArrayList<>()).add(pair);
      }
    }
    meetings.forEach((meeting, pairs) -> judge(meeting, pairs, ledger));
  }

  private static Set<String> set(Housing housing) {
    return new HashSet<>(housing.cavityNames());
  }

  private static void judge(Meeting meeting, List<MatedPair> pairs, Ledger ledger) {
    List<List<String>> one = rows(meeting.one());
    List<List<String>> other = rows(meeting.other());
    Optional<String> why = difference(one, other);
    if (why.isEmpty()) {
      ledger.fine(pairs.size());
      return;
    }
    Finding.Draft draft =
        Finding.on(
                Subject.part("housings", meeting.one().id()),
                Subject.part("housings", meeting.other().id()))
            .message(
                "the rows of housings "
                    + meeting.one().id()
                    + " and "
                    + meeting.other().id()
                    + " are not mirror images: "
                    + why.get())
            .remedy("write the rows of both as seen from the wire side, latch up");
    pairs.forEach(pair -> draft.detail("they meet in " + pair.text()));
    ledger.finding(draft, pairs.stream().map(MatedPair::first).toList());
  }

  /** The rows without gaps; rows of gaps alone are left out. */
  private static List<List<String>> rows(Housing housing) {
    return housing.rows().stream()
        .map(row -> row.stream().filter(name -> !name.isEmpty()).toList())
        .filter(row -> !row.isEmpty())
        .toList();
  }

  private static Optional<String> difference(List<List<String>> one, List<List<String>> other) {
    List<List<String>> wanted = one.stream().map(FaceMirrored::fromTheRight).toList();
    if (other.equals(wanted)) {
      return Optional.empty();
    }
    if (other.equals(one)) {
      return Optional.of("both are written alike, so one of them is seen from the mating face");
    }
    List<List<String>> upsideDown = new ArrayList<>(one);
    Collections.reverse(upsideDown);
    if (other.equals(upsideDown)) {
      return Optional.of("they agree only with the latch of one of them down");
    }
    return Optional.of(displaced(wanted, other));
  }

  private static String displaced(List<List<String>> wanted, List<List<String>> other) {
    List<String> names = new ArrayList<>();
    for (int r = 0; r < Math.max(wanted.size(), other.size()); r++) {
      List<String> have = r < other.size() ? other.get(r) : List.of();
      List<String> want = r < wanted.size() ? wanted.get(r) : List.of();
      for (int c = 0; c < have.size(); c++) {
        if (c >= want.size() || !have.get(c).equals(want.get(c))) {
          names.add(have.get(c));
        }
      }
    }
    return (names.size() == 1 ? "cavity " : "cavities ")
        + Series.and(names, NAMED)
        + (names.size() == 1 ? " does" : " do")
        + " not face each other";
  }

  private static List<String> fromTheRight(List<String> row) {
    List<String> turned = new ArrayList<>(row);
    Collections.reverse(turned);
    return turned;
  }
}
