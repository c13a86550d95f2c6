package org.tugtest.rule.connectors;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Subject;
import org.tugtest.model.Connector;
import org.tugtest.model.Harness;
import org.tugtest.model.Splice;
import org.tugtest.model.Wire;
import org.tugtest.network.Mate;
import org.tugtest.network.Mating;
import org.tugtest.rule.Heading;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Settings;
import org.tugtest.text.NaturalOrder;
import org.tugtest.text.Series;

/** Two things of one loom carry the same label. */
public final class LabelRepeated implements Rule {
  private static final int NAMED = 6;
  private static final String SKETCH = "in a sketch labels need not be written yet";

  private static final RuleInfo INFO =
      RuleInfo.of("label-repeated", Heading.CONNECTORS, Level.WARNING)
          .summary("two connectors, two wires or two splices of one loom carry the same label")
          .subjects("labelled connectors, wires and splices")
          .looksFor(
              """
              The same label, capitals and outer blanks left aside, on two connectors, two wires
              or two splices of one loom; the id counts where a connector or wire writes no
              label. The two halves of one mated pair may share a label. One warning for each
              loom, with the list. In a sketch only labels that are written are judged.
              """)
          .why(
              """
              A label that stands twice names neither. The wrong one of the two is cut, moved or
              plugged, and the list says it was the right one.
              """)
          .remedy("Write another label on one of them, or leave it out so that the id is printed.")
          .basis(
              """
              Each connector has its own reference mark: FAA AC 43.13-1B, 11-235g. For wires and
              splices: common practice.
              """)
          .failing(
              """
              {"format": 1, "sketch": true, "loom": {"id": "nose"},
               "wires": {"W1": {"from": "A:1", "to": "S1", "label": "21"},
                         "W2": {"from": "A:2", "to": "S2", "label": "21"}}}
              """)
          .passing(
              """
              {"format": 1, "sketch": true, "loom": {"id": "nose"},
               "wires": {"W1": {"from": "A:1", "to": "S1", "label": "21"},
                         "W2": {"from": "A:2", "to": "S2", "label": "22"}}}
              """)
          .build();

  /** A thing with what its label says. */
  private record Labelled(Subject subject, String label) {
    String folded() {
      return label.strip().toLowerCase(Locale.ROOT);
    }
  }

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    Harness harness = facts.harness();
    Map<LoomKey, Map<String, List<Labelled>>> looms = new TreeMap<>();
    for (Connector one : harness.connectors().values()) {
      String label = one.label() == null && !harness.sketch() ? one.id() : one.label();
      add(looms, one.loom(), "connectors", Subject.connector(one.id()), label, ledger);
    }
    for (Wire one : harness.wires().values()) {
      String label = one.label() == null && !harness.sketch() ? one.id() : one.label();
      add(looms, one.loom(), "wires", Subject.wire(one.id()), label, ledger);
    }
    for (Splice one : harness.splices().values()) {
      if (one.label() != null) {
        add(looms, one.loom(), "splices", Subject.splice(one.id()), one.label(), ledger);
      }
    }
    looms.forEach((loom, sorts) -> judge(facts, loom, sorts, ledger));
  }

  private static void add(
      Map<LoomKey, Map<String, List<Labelled>>> looms,
      @Nullable String loom,
      String sort,
      Subject subject,
      @Nullable String label,
      Ledger ledger) {
    if (label == null) {
      ledger.notJudged(subject, SKETCH);
    } else if (!label.isBlank()) {
      looms
          .computeIfAbsent(LoomKey.of(loom), key -> new TreeMap<>())
          .computeIfAbsent(sort, key -> new ArrayList<>())
          .add(new Labelled(subject, label));
    }
  }

  private static void judge(
      Facts facts, LoomKey loom, Map<String, List<Labelled>> sorts, Ledger ledger) {
    List<List<Labelled>> repeated = new ArrayList<>();
    List<String> texts = new ArrayList<>();
    sorts.forEach(
        (sort, things) -> {
          Map<String, List<Labelled>> byLabel = new TreeMap<>(NaturalOrder.NATURAL);
          things.forEach(
              one -> byLabel.computeIfAbsent(one.folded(), key -> new ArrayList<>()).add(one));
          for (List<Labelled> same : byLabel.values()) {
            if (isMatedPair(facts.wiring().mating(), same)) {
              ledger.fine(same.size());
              continue;
            }
            List<Labelled> counted =
                same.size() < 2
                    ? same
                    : same.stream().filter(one -> !ledger.switchedOff(one.subject())).toList();
            if (counted.size() < 2) {
              ledger.fine(counted.size());
            } else {
              repeated.add(counted);
              texts.add(text(sort, counted));
            }
          }
        });
    if (!repeated.isEmpty()) {
      report(facts, loom, repeated, texts, ledger);
    }
  }

  private static boolean isMatedPair(Mating mating, List<Labelled> same) {
    if (same.size() != 2 || !same.get(0).subject().section().equals("connectors")) {
      return false;
    }
    String other = same.get(1).subject().id();
    return mating
        .mateOf(same.get(0).subject().id())
        .equals(Optional.of(new Mate.OfConnector(other)));
  }

  private static String text(String sort, List<Labelled> same) {
    List<String> ids = same.stream().map(one -> one.subject().id()).toList();
    return sort + " " + Series.and(ids, NAMED) + " carry \"" + same.get(0).label().strip() + "\"";
  }

  private static void report(
      Facts facts, LoomKey loom, List<List<Labelled>> repeated, List<String> texts, Ledger ledger) {
    boolean one = repeated.size() == 1;
    Finding.Draft draft =
        Finding.on(loom.subject())
            .message(
                (one ? "a label " : repeated.size() + " labels ")
                    + loom.where()
                    + (one ? " stands more than once: " : " stand more than once: ")
                    + Series.and(texts, NAMED))
            .remedy("write another label on one of them, or leave it out to print the id");
    Set<Subject> members = new HashSet<>();
    for (List<Labelled> same : repeated) {
      for (Labelled labelled : same) {
        members.add(labelled.subject());
        draft.and(labelled.subject()).at(facts.places().of(labelled.subject().place(), "label"));
      }
    }
    if (texts.size() > NAMED) {
      texts.forEach(draft::detail);
    }
    ledger.finding(draft, members);
  }
}
