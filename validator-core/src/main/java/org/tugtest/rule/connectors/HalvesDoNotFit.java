package org.tugtest.rule.connectors;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Subject;
import org.tugtest.model.Connector;
import org.tugtest.model.Housing;
import org.tugtest.network.Mating;
import org.tugtest.network.Point;
import org.tugtest.network.Wiring;
import org.tugtest.rule.Heading;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Settings;
import org.tugtest.text.Series;

/** The two halves of a pair cannot be plugged together, or their cavities do not answer. */
public final class HalvesDoNotFit implements Rule {
  private static final int NAMED = 8;

  private static final RuleInfo INFO =
      RuleInfo.of("halves-do-not-fit", Heading.CONNECTORS, Level.ERROR)
          .summary("the housings of two mated halves do not fit each other")
          .subjects("mated pairs")
          .looksFor(
              """
              Two mated halves whose housings are both pin or both socket; whose "matesWith" name
              other housings and not each other; that both give a "keying", and not the same; or
              whose cavities do not have the same names, so that some have no counterpart. With
              an adaptor's "pinMap" the cavities are compared as it joins them, and no two may
              be joined to one contact. A pair of which one housing is not known is not judged.
              Two connectors that claim the same mate are judged by connector-unmated.
              """)
          .why(
              """
              The loom is built, laid in and taped before anybody tries to plug it. A half that
              does not go home then costs a new connector on wires cut to length.
              """)
          .remedy(
              """
              Give one half the housing that is made for the other, or name each under
              "matesWith" of the other when they do fit, or correct "mates".
              """)
          .basis(
              """
              Type, number of ways, keying and gender of both halves are checked together
              (space-mission assurance task list 2.3.16-8).
              """)
          .failing(
              """
              {"format": 1,
               "parts": {"housings": {"lamp-skt": {"side": "socket", "rows": [["1", "2"]]}}},
               "connectors": {"X1": {"housing": "lamp-skt", "mates": "X2"},
                              "X2": {"housing": "lamp-skt"}}}
              """)
          .failing(
              """
              {"format": 1,
               "parts": {"housings": {
                 "skt-3": {"side": "socket", "rows": [["1", "2", "3"]]},
                 "pin-2": {"side": "pin", "rows": [["2", "1"]]}}},
               "connectors": {"X1": {"housing": "skt-3", "mates": "X2"},
                              "X2": {"housing": "pin-2"}}}
              """)
          .passing(
              """
              {"format": 1,
               "parts": {"housings": {
                 "lamp-skt": {"side": "socket", "rows": [["1", "2"]], "matesWith": ["lamp-pin"]},
                 "lamp-pin": {"side": "pin", "rows": [["2", "1"]]}}},
               "connectors": {"X1": {"housing": "lamp-skt", "mates": "X2"},
                              "X2": {"housing": "lamp-pin"}}}
              """)
          .build();

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    Mating mating = facts.wiring().mating();
    for (MatedPair pair : MatedPair.all(facts.harness(), mating)) {
      Optional<Housing> own = mating.housingOf(pair.connector());
      Optional<Housing> other = mating.housingOf(pair.mate());
      if (own.isEmpty() || other.isEmpty()) {
        ledger.notJudged(pair.first(), Unjudged.HOUSING);
        continue;
      }
      List<String> why = misfits(facts, pair, own.get(), other.get());
      if (why.isEmpty()) {
        ledger.fine();
      } else {
        ledger.finding(finding(pair, own.get(), other.get(), why));
      }
    }
  }

  private static List<String> misfits(Facts facts, MatedPair pair, Housing own, Housing other) {
    List<String> why = new ArrayList<>();
    if (own.side() != null && own.side() == other.side()) {
      why.add("both are " + own.side().word() + " halves");
    }
    boolean named = own.matesWith().contains(other.id()) || other.matesWith().contains(own.id());
    if (!named && !own.matesWith().isEmpty()) {
      why.add(madeFor(own, other));
    } else if (!named && !other.matesWith().isEmpty()) {
      why.add(madeFor(other, own));
    }
    if (own.keying() != null
        && other.keying() != null
        && !folded(own.keying()).equals(folded(other.keying()))) {
      why.add("keying \"" + own.keying() + "\" meets keying \"" + other.keying() + "\"");
    }
    why.addAll(
        pair.mapped(facts.harness())
            ? mappedCavities(facts, pair, own, other)
            : cavities(pair, own, other));
    return why;
  }

  private static String madeFor(Housing housing, Housing met) {
    return "housing "
        + housing.id()
        + " mates with "
        + Series.and(housing.matesWith(), NAMED)
        + ", not with "
        + met.id();
  }

  private static String folded(String text) {
    return text.strip().toLowerCase(Locale.ROOT);
  }

  private static List<String> cavities(MatedPair pair, Housing own, Housing other) {
    List<String> why = new ArrayList<>();
    lacking(own, other, pair.mate().text()).ifPresent(why::add);
    lacking(other, own, pair.connector()).ifPresent(why::add);
    return why;
  }

  private static Optional<String> lacking(Housing full, Housing poor, String poorHalf) {
    List<String> names =
        full.cavityNames().stream().distinct().filter(name -> !poor.hasCavity(name)).toList();
    if (names.isEmpty()) {
      return Optional.empty();
    }
    String cavities = names.size() == 1 ? "cavity " : "cavities ";
    return Optional.of(poorHalf + " has no " + cavities + Series.and(names, NAMED));
  }

  /** What an adaptor joins: each cavity to one contact of the mate, and that must be there. */
  private static List<String> mappedCavities(
      Facts facts, MatedPair pair, Housing own, Housing other) {
    List<String> why = new ArrayList<>();
    Map<String, Connector> connectors = facts.harness().connectors();
    Connector first = connectors.get(pair.connector());
    if (first != null) {
      why.addAll(mapProblems(facts.wiring(), first, own, other, pair.mate().text()));
    }
    Connector second = pair.otherConnector().map(connectors::get).orElse(null);
    if (second != null) {
      why.addAll(mapProblems(facts.wiring(), second, other, own, pair.connector()));
    }
    return why;
  }

  private static List<String> mapProblems(
      Wiring wiring, Connector half, Housing housing, Housing met, String metHalf) {
    List<String> why = new ArrayList<>();
    Map<String, String> map = half.pinMap();
    String mapOf = "the pinMap of " + half.id();
    for (Map.Entry<String, String> entry : map.entrySet()) {
      if (!housing.hasCavity(entry.getKey())) {
        why.add(mapOf + " names " + entry.getKey() + ", which is no cavity of " + half.id());
      }
      if (!met.hasCavity(entry.getValue())) {
        why.add(metHalf + " has no cavity " + entry.getValue() + ", which " + mapOf + " names");
      }
    }
    Map<String, String> taken = new HashMap<>();
    for (String cavity : map.isEmpty() ? List.<String>of() : housing.cavityNames()) {
      boolean counts =
          map.containsKey(cavity) || !wiring.endsAt(Point.cavity(half.id(), cavity)).isEmpty();
      String contact = map.getOrDefault(cavity, cavity);
      String first = counts ? taken.putIfAbsent(contact, cavity) : null;
      if (first != null) {
        why.add(mapOf + " leaves " + first + " and " + cavity + " on one contact, " + contact);
      }
    }
    return why;
  }

  private static Finding.Draft finding(
      MatedPair pair, Housing own, Housing other, List<String> why) {
    Finding.Draft draft =
        Finding.on(pair.first(), pair.second())
            .and(Subject.part("housings", own.id()))
            .message(pair.text() + " do not fit each other: " + String.join("; ", why))
            .remedy(
                "give one of them the housing made for the other ("
                    + own.id()
                    + " meets "
                    + other.id()
                    + "), or correct \"mates\"");
    return own.id().equals(other.id()) ? draft : draft.and(Subject.part("housings", other.id()));
  }
}
