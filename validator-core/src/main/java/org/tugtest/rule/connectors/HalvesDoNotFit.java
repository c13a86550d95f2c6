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
              whose cavities do not have the same names, so that some have no counterpart. With an
              adaptor's "pinMap" only a wired cavity that it leaves out, and whose contact it gives
              to another, counts; what it names is judged by reference-unresolved. A pair of which
              one housing is not known is not judged. Two connectors that claim the same mate are
              judged by connector-unmated.
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
        pair.mapped(facts.harness()) ? mappedCavities(facts, pair) : cavities(pair, own, other));
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

  /** An adaptor's cavities that it does not map, and that meet a contact which it does map. */
  private static List<String> mappedCavities(Facts facts, MatedPair pair) {
    List<String> why = new ArrayList<>();
    List<String> halves = new ArrayList<>(List.of(pair.connector()));
    pair.otherConnector().ifPresent(halves::add);
    for (String id : halves) {
      Connector half = facts.harness().connectors().get(id);
      if (half != null) {
        why.addAll(metTwice(facts.wiring(), half));
      }
    }
    return why;
  }

  private static List<String> metTwice(Wiring wiring, Connector half) {
    Map<String, String> mapped = new HashMap<>();
    half.pinMap().forEach((cavity, contact) -> mapped.putIfAbsent(contact, cavity));
    List<String> why = new ArrayList<>();
    for (String cavity : wiring.cavitiesOf(half.id())) {
      String other = half.pinMap().containsKey(cavity) ? null : mapped.get(cavity);
      if (other != null && !wiring.endsAt(Point.cavity(half.id(), cavity)).isEmpty()) {
        why.add(
            "contact "
                + cavity
                + " is met by cavity "
                + other
                + " of "
                + half.id()
                + ", as its pinMap says, and by cavity "
                + cavity
                + ", which it leaves out");
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
