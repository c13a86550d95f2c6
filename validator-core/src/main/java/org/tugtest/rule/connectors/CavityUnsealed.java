package org.tugtest.rule.connectors;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Subject;
import org.tugtest.model.Connector;
import org.tugtest.model.Housing;
import org.tugtest.model.Layout;
import org.tugtest.model.Zone;
import org.tugtest.network.Point;
import org.tugtest.rule.Heading;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Settings;

/** A hole in a sealed plug. */
public final class CavityUnsealed implements Rule {
  private static final RuleInfo INFO =
      RuleInfo.of("cavity-unsealed", Heading.CONNECTORS, Level.WARNING)
          .gravest(Level.ERROR)
          .summary("a sealed housing has unused cavities without a blank")
          .subjects("connectors with a sealed housing")
          .looksFor(
              """
              A housing with "sealed": true, a cavity in which no wire ends, and no blank there:
              neither "blanked" on the connector nor "blank": true on the cavity. A warning; an
              error where the connector stands in a zone whose moisture is "wet".
              """)
          .why(
              """
              Water enters through the one open cavity and stands on all contacts of the plug.
              """)
          .remedy(
              """
              Fit cavity plugs and write "blanked": true on the connector, or "blank": true on the
              single cavity.
              """)
          .basis(
              """
              Every cavity of a sealed housing holds a wire with a seal or a cavity plug: public
              control-unit wiring manuals.
              """)
          .failing(
              """
              {"format": 1, "sketch": true,
               "parts": {"housings": {"h2": {"side": "socket", "rows": [["1", "2"]],
                                             "sealed": true}}},
               "connectors": {"R1": {"housing": "h2"}},
               "wires": {"W1": {"from": "R1:1", "to": "R2:1"}}}
              """)
          .passing(
              """
              {"format": 1, "sketch": true,
               "parts": {"housings": {"h2": {"side": "socket", "rows": [["1", "2"]],
                                             "sealed": true}}},
               "connectors": {"R1": {"housing": "h2", "blanked": true}},
               "wires": {"W1": {"from": "R1:1", "to": "R2:1"}}}
              """)
          .build();

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    for (Connector connector : facts.harness().connectors().values()) {
      Optional<Housing> housing = facts.wiring().mating().housingOf(connector.id());
      if (housing.isEmpty()) {
        ledger.notJudged(Subject.connector(connector.id()), "the connector's housing is not known");
      } else if (housing.get().sealed()) {
        judge(facts, connector, housing.get(), ledger);
      }
    }
  }

  private static void judge(Facts facts, Connector connector, Housing housing, Ledger ledger) {
    List<String> open =
        housing.cavityNames().stream()
            .filter(cavity -> !blanked(connector, cavity))
            .filter(cavity -> facts.wiring().endsAt(Point.cavity(connector.id(), cavity)).isEmpty())
            .toList();
    if (open.isEmpty()) {
      ledger.fine();
    } else if (!facts.unread().isEmpty()) {
      ledger.notJudged(Subject.connector(connector.id()), Facts.FILE_UNREAD);
    } else {
      ledger.finding(finding(facts, connector, open));
    }
  }

  private static Finding.Draft finding(Facts facts, Connector connector, List<String> open) {
    Zone zone = zone(facts, connector);
    boolean wet = zone != null && zone.moisture() == Zone.Moisture.WET;
    Finding.Draft draft =
        Finding.on(Subject.connector(connector.id()))
            .message(
                "sealed connector "
                    + connector.id()
                    + " has no wire and no blank in "
                    + Cavities.listed(open)
                    + (wet ? "; zone " + zone.id() + " is wet" : ""))
            .remedy(
                "fit cavity plugs and write \"blanked\": true on "
                    + connector.id()
                    + ", or \"blank\": true on the cavity");
    if (wet) {
      draft.level(Level.ERROR);
    }
    return draft;
  }

  private static boolean blanked(Connector connector, String cavity) {
    Connector.Cavity own = connector.cavities().get(cavity);
    Boolean blank = own == null ? null : own.blank();
    return blank == null ? connector.blanked() : blank;
  }

  private static @Nullable Zone zone(Facts facts, Connector connector) {
    Layout layout = facts.harness().layout();
    String at = facts.wiring().nodeOf(connector.id()).orElse(null);
    Layout.Node node = at == null ? null : layout.nodes().get(at);
    return node == null || node.zone() == null ? null : facts.harness().zones().get(node.zone());
  }
}
