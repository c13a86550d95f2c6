package org.tugtest.rule.connectors;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Basis;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Measured;
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
import org.tugtest.rule.Setting;
import org.tugtest.rule.Settings;
import org.tugtest.text.Series;

/** Connectors between looms with too few free cavities. */
public final class SpareCavitiesFew implements Rule {
  private static final int NAMED = 6;
  private static final String PERCENT = "percent";
  private static final String HOUSING = "its housing is not known";

  private static final RuleInfo INFO =
      RuleInfo.of("spare-cavities-few", Heading.CONNECTORS, Level.NOTE)
          .summary("a connector between looms has too few spare cavities")
          .subjects("connectors between looms")
          .looksFor(
              """
              A connector that mates another loom, or is parked, with fewer than 10 % of its
              cavities free. A cavity is free when it and the cavity that meets it hold no wire;
              a blanking plug does not take it. One note for each loom, with the list; a mated
              pair is listed once, on the half that says what it mates. Connectors on devices are
              left out: how many ways a device has is its maker's choice.
              """)
          .why(
              """
              The next sensor needs a way through the bulkhead. Without one it gets a connector
              of its own, or a wire that cannot be unplugged.
              """)
          .remedy(
              """
              Take the next larger housing, free a cavity by joining circuits, or set the figure
              under "limits" when the loom is final.
              """)
          .basis(
              "10 to 20 % spare at design freeze, at least one in an inline connector: common"
                  + " practice.")
          .setting(
              new Setting(
                  PERCENT, 10, 0, 100, "%", "least share of free cavities (common practice)"))
          .failing(
              """
              {"format": 1, "sketch": true, "loom": {"id": "nose"},
               "parts": {"housings": {"pin-2": {"side": "pin", "rows": [["1", "2"]]}}},
               "connectors": {"X1": {"housing": "pin-2", "mates": "X2"}, "X2": {}},
               "wires": {"W1": {"from": "X1:1", "to": "S1"}, "W2": {"from": "X1:2", "to": "S2"}}}
              """)
          .passing(
              """
              {"format": 1, "sketch": true, "loom": {"id": "nose"},
               "parts": {"housings": {"pin-3": {"side": "pin", "rows": [["1", "2", "3"]]}}},
               "connectors": {"X1": {"housing": "pin-3", "mates": "X2"}, "X2": {}},
               "wires": {"W1": {"from": "X1:1", "to": "S1"}, "W2": {"from": "X1:2", "to": "S2"}}}
              """)
          .build();

  /** A connector with too few. */
  private record Full(Subject subject, String name, int free, int cavities, double least) {
    double percent() {
      return 100.0 * free / cavities;
    }

    String text() {
      return name + " (" + free + " of " + cavities + ")";
    }
  }

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    Mating mating = facts.wiring().mating();
    Map<LoomKey, List<Full>> full = new TreeMap<>();
    for (MatedPair pair : MatedPair.all(facts.harness(), mating)) {
      String other = pair.otherConnector().orElse(null);
      if (other != null) {
        boolean know = mating.housingOf(pair.connector()).isPresent();
        judge(facts, settings, ledger, full, know ? pair.connector() : other, pair.text());
      }
    }
    for (String id : facts.harness().connectors().keySet()) {
      if (mating.mateOf(id).isEmpty()) {
        judge(facts, settings, ledger, full, id, id);
      }
    }
    full.forEach((loom, list) -> report(loom, list, ledger));
  }

  private static void judge(
      Facts facts,
      Settings settings,
      Ledger ledger,
      Map<LoomKey, List<Full>> full,
      String id,
      String name) {
    Subject subject = Subject.connector(id);
    Connector connector = facts.harness().connectors().get(id);
    List<String> cavities =
        facts.wiring().mating().housingOf(id).map(Housing::cavityNames).orElse(List.of());
    if (connector == null || cavities.isEmpty()) {
      ledger.notJudged(subject, HOUSING);
    } else if (!facts.unread().isEmpty()) {
      ledger.notJudged(subject, Facts.FILE_UNREAD);
    } else if (!ledger.switchedOff(subject)) {
      int free = 0;
      for (String cavity : cavities) {
        free += isFree(facts.wiring(), Point.cavity(id, cavity)) ? 1 : 0;
      }
      double least = settings.number(PERCENT, subject);
      if (100.0 * free >= least * cavities.size()) {
        ledger.fine();
      } else {
        full.computeIfAbsent(LoomKey.of(connector.loom()), key -> new ArrayList<>())
            .add(new Full(subject, name, free, cavities.size(), least));
      }
    }
  }

  private static boolean isFree(Wiring wiring, Point cavity) {
    if (!wiring.endsAt(cavity).isEmpty()) {
      return false;
    }
    return wiring.mating().mateOf(cavity.owner()).isEmpty()
        || wiring.meets(cavity).map(far -> wiring.endsAt(far).isEmpty()).orElse(false);
  }

  private static void report(LoomKey loom, List<Full> list, Ledger ledger) {
    Full worst = list.get(0);
    for (Full full : list) {
      worst = full.percent() < worst.percent() ? full : worst;
    }
    Measured measured = Measured.under(worst.percent(), worst.least(), "%");
    List<String> names = list.stream().map(Full::text).toList();
    String count = list.size() == 1 ? "1 connector " : list.size() + " connectors ";
    Finding.Draft draft =
        Finding.on(loom.subject())
            .message(
                count
                    + loom.where()
                    + (list.size() == 1 ? " has" : " have")
                    + " fewer than "
                    + measured.limitShown()
                    + " % of the cavities free: "
                    + Series.and(names, NAMED))
            .remedy("take the next larger housing, or free a cavity by joining circuits")
            .measured(measured)
            .basis(Basis.COMMON_PRACTICE);
    for (Full full : list) {
      draft.and(full.subject());
      if (list.size() > NAMED) {
        draft.detail(full.text());
      }
    }
    ledger.finding(draft, list.stream().map(Full::subject).toList());
  }
}
