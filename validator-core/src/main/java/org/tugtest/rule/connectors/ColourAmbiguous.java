package org.tugtest.rule.connectors;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Basis;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Subject;
import org.tugtest.model.Harness;
import org.tugtest.model.Wire;
import org.tugtest.network.Point;
import org.tugtest.network.WireEnd;
import org.tugtest.rule.Heading;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Setting;
import org.tugtest.rule.Settings;
import org.tugtest.text.NaturalOrder;
import org.tugtest.text.Series;

/** Two wires in one connector look alike. */
public final class ColourAmbiguous implements Rule {
  private static final int NAMED = 6;
  private static final String ALIKE = "alikePercent";
  private static final String NO_COLOUR = "none or only one of its wires gives a colour";
  private static final String NO_AREA = "wires of the same colour give no area";

  private static final RuleInfo INFO =
      RuleInfo.of("colour-ambiguous", Heading.CONNECTORS, Level.WARNING)
          .summary("two wires of the same colour and size sit in one connector")
          .subjects("connectors with two wires or more")
          .looksFor(
              """
              Two wires of the same colour, stripe included, and of the same conductor area in
              different cavities of one connector. Areas within 10 % of each other count as the
              same. When each of them carries a label of its own it is a note. Nothing is said
              when every wire in the connector is labelled and of one colour that most wires of
              the harness have, so that a team marks by label alone; nor of wires that lead to
              the same contact or splice, which may be exchanged.
              """)
          .why(
              """
              The terminals come out for a repair and go back by colour. Two alike are exchanged
              sooner or later, and the plug looks right.
              """)
          .remedy(
              """
              Give one of them another colour or stripe, or another size, or fit a label to each.
              """)
          .basis(
              """
              Two wires of one colour in one housing are to be avoided, or made of different
              sizes: a harness maker's design guide.
              """)
          .setting(
              new Setting(
                  ALIKE,
                  10,
                  0,
                  100,
                  "%",
                  "areas no further apart than this look the same (common practice)"))
          .failing(
              """
              {"format": 1, "sketch": true,
               "wires": {"W1": {"from": "X1:1", "to": "A:1", "areaMm2": 0.5, "colour": "RD", "label": ""},
                         "W2": {"from": "X1:2", "to": "B:1", "areaMm2": 0.5, "colour": "RD", "label": ""},
                         "W3": {"from": "X1:3", "to": "C:1", "areaMm2": 0.5, "colour": "BK", "label": ""}}}
              """)
          .passing(
              """
              {"format": 1, "sketch": true,
               "wires": {"W1": {"from": "X1:1", "to": "A:1", "areaMm2": 0.5, "colour": "RD"},
                         "W2": {"from": "X1:2", "to": "B:1", "areaMm2": 1.0, "colour": "RD"},
                         "W3": {"from": "X1:3", "to": "C:1", "areaMm2": 0.5, "colour": "RD/WH"}}}
              """)
          .build();

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    Optional<String> usual = usualColour(facts.harness());
    Map<String, List<WireEnd>> inConnector = new HashMap<>();
    for (Map.Entry<Point, List<WireEnd>> entry : facts.wiring().ends().entrySet()) {
      if (entry.getKey().kind() == Point.Kind.CAVITY) {
        inConnector
            .computeIfAbsent(entry.getKey().owner(), key -> new ArrayList<>())
            .addAll(entry.getValue());
      }
    }
    for (String connector : facts.wiring().connectors()) {
      List<WireEnd> ends = inConnector.getOrDefault(connector, List.of());
      if (ends.size() > 1) {
        Subject subject = Subject.connector(connector);
        double alike = 1 + settings.number(ALIKE, subject) / 100;
        judge(facts, subject, Lookalikes.among(facts, ends, alike), usual, ledger);
      }
    }
  }

  private static void judge(
      Facts facts,
      Subject connector,
      Lookalikes lookalikes,
      Optional<String> usual,
      Ledger ledger) {
    boolean byChoice =
        usual.isPresent()
            && lookalikes.onlyColour().equals(usual)
            && Lookalikes.labelsTellApart(lookalikes.wires());
    if (lookalikes.coloured() < 2) {
      ledger.notJudged(connector, NO_COLOUR);
    } else if (byChoice) {
      ledger.fine();
    } else if (!lookalikes.groups().isEmpty()) {
      ledger.finding(finding(facts, connector, lookalikes.groups()));
    } else if (lookalikes.unsized()) {
      ledger.notJudged(connector, NO_AREA);
    } else {
      ledger.fine();
    }
  }

  /** The colour that more than half of the coloured wires have. */
  private static Optional<String> usualColour(Harness harness) {
    Map<String, Integer> counts = new HashMap<>();
    int coloured = 0;
    for (Wire wire : harness.wires().values()) {
      Optional<String> colour = Lookalikes.colourOf(wire);
      if (colour.isPresent()) {
        counts.merge(colour.get(), 1, Integer::sum);
        coloured++;
      }
    }
    int all = coloured;
    return counts.entrySet().stream()
        .filter(entry -> 2 * entry.getValue() > all)
        .map(Map.Entry::getKey)
        .findFirst();
  }

  private static Finding.Draft finding(
      Facts facts, Subject connector, List<List<Lookalikes.Look>> groups) {
    List<String> texts = new ArrayList<>();
    boolean labelled = true;
    Basis basis = Basis.GIVEN;
    for (List<Lookalikes.Look> group : groups) {
      texts.add(text(group));
      labelled &= Lookalikes.labelsTellApart(group.stream().map(Lookalikes.Look::wire).toList());
      for (Lookalikes.Look one : group) {
        basis = basis.weaker(one.area().basis());
      }
    }
    Finding.Draft draft =
        Finding.on(connector)
            .message(
                connector.id()
                    + " holds wires that look alike: "
                    + String.join("; ", texts.subList(0, Math.min(NAMED, texts.size())))
                    + (texts.size() > NAMED ? "; and " + (texts.size() - NAMED) + " more" : ""))
            .remedy(
                labelled
                    ? "give one of each another colour, stripe or size; until then only their"
                        + " labels tell them apart"
                    : "give one of each another colour, stripe or size, or fit labels")
            .basis(basis);
    if (labelled) {
      draft.level(Level.NOTE);
    }
    if (texts.size() > NAMED) {
      texts.forEach(draft::detail);
    }
    for (List<Lookalikes.Look> group : groups) {
      for (Lookalikes.Look one : group) {
        draft
            .and(Subject.wire(one.wire().id()))
            .at(facts.places().of("wires/" + one.wire().id(), "colour"));
      }
    }
    return draft;
  }

  private static String text(List<Lookalikes.Look> group) {
    Set<String> areas = new TreeSet<>(NaturalOrder.NATURAL);
    group.forEach(one -> areas.add(figure(one.area().value())));
    return Series.and(group.stream().map(Lookalikes.Look::text).toList(), NAMED)
        + ", all "
        + group.get(0).colour()
        + " "
        + String.join(" and ", areas)
        + " mm2";
  }

  private static String figure(double area) {
    return BigDecimal.valueOf(area).round(new MathContext(3)).stripTrailingZeros().toPlainString();
  }
}
