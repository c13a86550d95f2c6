package org.tugtest.rule.connectors;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Subject;
import org.tugtest.network.Point;
import org.tugtest.network.WireEnd;
import org.tugtest.network.Wiring;
import org.tugtest.rule.Heading;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Settings;
import org.tugtest.text.NaturalOrder;
import org.tugtest.text.Series;

/** The two sides of a mated contact carry different circuit names. */
public final class CircuitCrossesOver implements Rule {
  private static final int NAMED = 4;
  private static final Pattern SPACES = Pattern.compile("\\s+");
  private static final String UNNAMED = "one side gives no circuit name";

  private static final RuleInfo INFO =
      RuleInfo.of("circuit-crosses-over", Heading.CONNECTORS, Level.WARNING)
          .summary("the two sides of a mated contact carry different circuits")
          .subjects("contacts between looms that are wired on both sides")
          .looksFor(
              """
              A contact between two looms whose wires on one side give a "circuit" and whose wires
              on the other side give another. Capitals and spaces make no difference. When two
              contacts of the pair look exchanged, the details say so. A contact of which one
              side gives no name is not judged.
              """)
          .why(
              """
              Two wires exchanged in one half of a plug are the commonest re-pinning mistake: each
              loom rings out clean for itself, and the fault shows only when both are in the car.
              """)
          .remedy(
              """
              Exchange the two wires on the half that is wrong, or give both sides the same
              circuit name when the circuit only changes its name at the joint.
              """)
          .basis(
              """
              Same function on both sides of a mated pair (space-mission assurance task list
              2.3.16-8).
              """)
          .failing(
              """
              {"format": 1, "sketch": true,
               "connectors": {"X1": {"mates": "X2"}, "X2": {}},
               "wires": {"W1": {"from": "A:1", "to": "X1:1", "circuit": "horn"},
                         "W2": {"from": "A:2", "to": "X1:2", "circuit": "lamp"},
                         "W3": {"from": "X2:1", "to": "B:1", "circuit": "lamp"},
                         "W4": {"from": "X2:2", "to": "C:1", "circuit": "horn"}}}
              """)
          .passing(
              """
              {"format": 1, "sketch": true,
               "connectors": {"X1": {"mates": "X2"}, "X2": {}},
               "wires": {"W1": {"from": "A:1", "to": "X1:1", "circuit": "Head lamp"},
                         "W3": {"from": "X2:1", "to": "B:1", "circuit": "head  lamp"}}}
              """)
          .build();

  /** A contact whose sides disagree. */
  private record Crossing(Point near, Point far, Set<String> nearNames, Set<String> farNames) {
    String text() {
      return near.text()
          + " carries "
          + quoted(nearNames)
          + ", "
          + far.text()
          + " carries "
          + quoted(farNames);
    }

    /** Whether this and the other look exchanged. */
    boolean exchangedWith(Crossing other) {
      return agree(nearNames, other.farNames) && agree(farNames, other.nearNames);
    }

    private static String quoted(Set<String> names) {
      return Series.and(names.stream().map(name -> "\"" + name + "\"").toList());
    }
  }

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    Wiring wiring = facts.wiring();
    for (MatedPair pair : MatedPair.all(facts.harness(), wiring.mating())) {
      if (pair.otherConnector().isEmpty()) {
        continue;
      }
      List<Crossing> crossings = new ArrayList<>();
      for (Point near : wiring.cavityPoints(pair.connector())) {
        Point far = wiring.meets(near).orElse(null);
        if (far == null || wiring.endsAt(near).isEmpty() || wiring.endsAt(far).isEmpty()) {
          continue;
        }
        Crossing crossing =
            new Crossing(near, far, names(wiring.endsAt(near)), names(wiring.endsAt(far)));
        if (crossing.nearNames().isEmpty() || crossing.farNames().isEmpty()) {
          ledger.notJudged(near.subject(), UNNAMED);
        } else if (agree(crossing.nearNames(), crossing.farNames())) {
          ledger.fine();
        } else if (!ledger.switchedOff(near.subject())) {
          crossings.add(crossing);
        }
      }
      if (!crossings.isEmpty()) {
        ledger.finding(
            finding(facts, pair, crossings),
            crossings.stream().map(crossing -> crossing.near().subject()).toList());
      }
    }
  }

  private static Set<String> names(List<WireEnd> ends) {
    Set<String> names = new TreeSet<>(NaturalOrder.NATURAL);
    for (WireEnd end : ends) {
      String circuit = end.wire().circuit();
      if (circuit != null && !circuit.isBlank()) {
        names.add(circuit.strip());
      }
    }
    return names;
  }

  /** Whether a name of one side is a name of the other too. */
  private static boolean agree(Set<String> left, Set<String> right) {
    return left.stream().anyMatch(a -> right.stream().anyMatch(b -> folded(a).equals(folded(b))));
  }

  private static String folded(String name) {
    return SPACES.matcher(name).replaceAll("").toLowerCase(Locale.ROOT);
  }

  private static Finding.Draft finding(Facts facts, MatedPair pair, List<Crossing> crossings) {
    List<String> texts = crossings.stream().map(Crossing::text).toList();
    String message =
        crossings.size() == 1
            ? texts.get(0)
            : crossings.size()
                + " circuits cross over between "
                + pair.text()
                + ": "
                + String.join("; ", texts.subList(0, Math.min(NAMED, texts.size())))
                + (texts.size() > NAMED ? "; and " + (texts.size() - NAMED) + " more" : "");
    Finding.Draft draft =
        Finding.on(pair.first(), pair.second())
            .message(message)
            .remedy(
                "exchange the wires on the half that is wrong, or give both sides the same circuit"
                    + " name");
    if (crossings.size() > NAMED) {
      texts.forEach(draft::detail);
    }
    exchanged(crossings).forEach(draft::detail);
    for (Crossing crossing : crossings) {
      draft.and(crossing.near().subject()).and(crossing.far().subject());
      place(facts, draft, crossing.near());
      place(facts, draft, crossing.far());
    }
    return draft;
  }

  private static void place(Facts facts, Finding.Draft draft, Point point) {
    for (WireEnd end : facts.wiring().endsAt(point)) {
      draft.and(Subject.wire(end.wire().id()));
      draft.at(facts.places().of("wires/" + end.wire().id(), end.field()));
    }
  }

  private static List<String> exchanged(List<Crossing> crossings) {
    Map<String, List<Integer>> carriedFar = new HashMap<>();
    for (int i = 0; i < crossings.size(); i++) {
      for (String name : crossings.get(i).farNames()) {
        carriedFar.computeIfAbsent(folded(name), key -> new ArrayList<>()).add(i);
      }
    }
    Set<String> lines = new LinkedHashSet<>();
    for (int i = 0; i < crossings.size(); i++) {
      for (String name : crossings.get(i).nearNames()) {
        for (int j : carriedFar.getOrDefault(folded(name), List.of())) {
          if (j > i && crossings.get(i).exchangedWith(crossings.get(j))) {
            lines.add(
                crossings.get(i).far().text()
                    + " and "
                    + crossings.get(j).far().text()
                    + " look exchanged");
          }
        }
      }
    }
    return List.copyOf(lines);
  }
}
