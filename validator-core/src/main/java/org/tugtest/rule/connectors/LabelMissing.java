package org.tugtest.rule.connectors;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Subject;
import org.tugtest.model.Connector;
import org.tugtest.model.Wire;
import org.tugtest.rule.Heading;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Settings;
import org.tugtest.text.Series;

/** Connectors and wires without a label. */
public final class LabelMissing implements Rule {
  private static final int NAMED = 8;
  private static final String SKETCH = "in a sketch labels need not be written yet";

  private static final RuleInfo INFO =
      RuleInfo.of("label-missing", Heading.CONNECTORS, Level.WARNING)
          .summary("a connector or wire carries no label")
          .subjects("connectors and wires")
          .looksFor(
              """
              A connector or wire with "label": "", which means that none is fitted, or with a
              label of blanks. Without "label" the id is printed, so nothing is missing. One
              warning for each loom, with the list. In a sketch only what is written is judged.
              """)
          .why(
              """
              A wire without a label is found by ringing it out, in the dark, with the car in
              the way. A connector without one is plugged where it fits.
              """)
          .remedy(
              """
              Leave "label" out, so that the id is printed, or write what the label says. Fit it
              before the terminal goes into the housing.
              """)
          .basis(
              """
              Each connector has its own legible reference mark for life: FAA AC 43.13-1B,
              11-235g. For wires: common practice.
              """)
          .failing(
              """
              {"format": 1, "loom": {"id": "nose"},
               "splices": {"S1": {}, "S2": {}},
               "wires": {"W1": {"from": "S1", "to": "S2", "areaMm2": 1, "label": ""}}}
              """)
          .passing(
              """
              {"format": 1, "loom": {"id": "nose"},
               "splices": {"S1": {}, "S2": {}},
               "wires": {"W1": {"from": "S1", "to": "S2", "areaMm2": 1},
                         "W2": {"from": "S1", "to": "S2", "areaMm2": 1, "label": "feed 2"}}}
              """)
          .build();

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    Map<LoomKey, List<Subject>> missing = new TreeMap<>();
    boolean sketch = facts.harness().sketch();
    for (Connector connector : facts.harness().connectors().values()) {
      Subject subject = Subject.connector(connector.id());
      judge(subject, connector.loom(), connector.label(), sketch, ledger, missing);
    }
    for (Wire wire : facts.harness().wires().values()) {
      judge(Subject.wire(wire.id()), wire.loom(), wire.label(), sketch, ledger, missing);
    }
    missing.forEach((loom, list) -> report(facts, loom, list, ledger));
  }

  private static void judge(
      Subject subject,
      @Nullable String loom,
      @Nullable String label,
      boolean sketch,
      Ledger ledger,
      Map<LoomKey, List<Subject>> missing) {
    if (label == null && sketch) {
      ledger.notJudged(subject, SKETCH);
    } else if (label == null || !label.isBlank()) {
      ledger.fine();
    } else if (!ledger.switchedOff(subject)) {
      missing.computeIfAbsent(LoomKey.of(loom), key -> new ArrayList<>()).add(subject);
    }
  }

  private static void report(Facts facts, LoomKey loom, List<Subject> list, Ledger ledger) {
    List<String> names = list.stream().map(LabelMissing::name).toList();
    boolean one = list.size() == 1;
    Finding.Draft draft =
        Finding.on(loom.subject())
            .message(
                one
                    ? names.get(0) + " " + loom.where() + " carries no label"
                    : list.size()
                        + " connectors and wires "
                        + loom.where()
                        + " carry no label: "
                        + Series.and(names, NAMED))
            .remedy("leave \"label\" out, so that the id is printed, or write what it says");
    for (Subject subject : list) {
      draft.and(subject).at(facts.places().of(subject.place(), "label"));
      if (list.size() > NAMED) {
        draft.detail(name(subject));
      }
    }
    ledger.finding(draft, list);
  }

  private static String name(Subject subject) {
    return (subject.section().equals("wires") ? "wire " : "connector ") + subject.id();
  }
}
