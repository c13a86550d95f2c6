package org.tugtest.rule.body;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Measured;
import org.tugtest.finding.Subject;
import org.tugtest.model.Layout;
import org.tugtest.route.BendNeed;
import org.tugtest.route.Bundle;
import org.tugtest.rule.Heading;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Setting;
import org.tugtest.rule.Settings;

/** A segment bends more tightly than what lies in it stands. */
public final class BendTooTight implements Rule {
  private static final String WIRE = "timesWire";
  private static final String BUNDLE = "timesBundle";

  private static final RuleInfo INFO =
      RuleInfo.of("bend-too-tight", Heading.BODY, Level.WARNING)
          .gravest(Level.ERROR)
          .summary("a segment bends more tightly than its wires or its bundle stand")
          .subjects("segments with wires")
          .looksFor(
              """
              "bendRadiusMm" of a segment under the greatest of: for each wire and cable on it its
              own "minBendMm", or ten times its outside diameter; twice the loose diameter of the
              bundle with all its coverings. An error where a jacketed cable (a group of kind
              "cable") is bent under six times its diameter. A segment without "bendRadiusMm" is
              not judged, nor one that fits as far as it is known with a wire of unknown diameter.
              """)
          .why(
              """
              A tight bend breaks strands, cracks insulation at heat and cold, and opens the screen
              of a cable, months after the loom was built.
              """)
          .remedy(
              """
              Give the segment a wider bend, route the stiff wire another way, or take a wire of
              finer strands and give its "minBendMm".
              """)
          .basis(
              """
              Ten times the largest wire: AC 43.13-1B 11-96 and 11-117 as restated elsewhere. Twice
              the bundle: a harness maker's guide. Six times a jacketed cable: NASA-STD-8739.4
              7.3.21 as pictured in the NASA workmanship reference, book 4.
              """)
          .setting(
              new Setting(
                  WIRE,
                  BendNeed.OF_WIRE,
                  3,
                  30,
                  "",
                  "multiple of the diameter of a wire (AC 43.13-1B 11-96, as restated)"))
          .setting(
              new Setting(
                  BUNDLE,
                  BendNeed.OF_BUNDLE,
                  1,
                  20,
                  "",
                  "multiple of the diameter of the bundle (a harness maker's guide)"))
          .failing(
              """
              {"format": 1, "sketch": true,
               "parts": {"wires": {"w": {"areaMm2": 2.5, "maxC": 125, "outerMm": 3.0}}},
               "layout": {"segments": {
                 "s1": {"from": "a", "to": "b", "lengthMm": 900, "bendRadiusMm": 20}}},
               "devices": {"A": {"at": "a"}, "B": {"at": "b"}},
               "wires": {"W1": {"from": "A:1", "to": "B:1", "part": "w"}}}
              """)
          .passing(
              """
              {"format": 1, "sketch": true,
               "parts": {"wires": {"w": {"areaMm2": 2.5, "maxC": 125, "outerMm": 3.0}}},
               "layout": {"segments": {
                 "s1": {"from": "a", "to": "b", "lengthMm": 900, "bendRadiusMm": 30}}},
               "devices": {"A": {"at": "a"}, "B": {"at": "b"}},
               "wires": {"W1": {"from": "A:1", "to": "B:1", "part": "w"}}}
              """)
          .build();

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    for (Layout.Segment segment : facts.harness().layout().segments().values()) {
      Subject subject = Subject.of("segments", segment.id());
      List<Bundle> pieces = facts.bundles().of(segment.id());
      Double radius = segment.bendRadiusMm();
      if (pieces.isEmpty()) {
        ledger.notJudged(subject, Unjudged.EMPTY);
      } else if (radius == null) {
        ledger.notJudged(subject, "it gives no bendRadiusMm");
      } else {
        judge(facts, settings, ledger, segment, radius, pieces);
      }
    }
  }

  private static void judge(
      Facts facts,
      Settings settings,
      Ledger ledger,
      Layout.Segment segment,
      double radius,
      List<Bundle> pieces) {
    Subject subject = Subject.of("segments", segment.id());
    BendNeed hard = BendNeed.ofCables(pieces).orElse(null);
    BendNeed need =
        BendNeed.of(
                facts.harness(),
                pieces,
                segment.coverings(),
                settings.number(WIRE, subject),
                settings.number(BUNDLE, subject))
            .orElse(null);
    if (hard != null && radius < hard.mm()) {
      ledger.finding(finding(segment, radius, hard, need).level(Level.ERROR));
    } else if (need != null && radius < need.mm()) {
      ledger.finding(finding(segment, radius, need, null));
    } else if (pieces.stream().anyMatch(piece -> !piece.unsized().isEmpty())) {
      ledger.notJudged(subject, Unjudged.UNSIZED);
    } else {
      ledger.fine();
    }
  }

  private static Finding.Draft finding(
      Layout.Segment segment, double radius, BendNeed need, @Nullable BendNeed more) {
    Measured measured = Measured.under(radius, Math.ceil(need.mm() * 10 - 1e-9) / 10, "mm");
    Subject subject = Subject.of("segments", segment.id());
    Finding.Draft draft = Finding.on(subject);
    if (!need.subject().equals(subject)) {
      draft.and(need.subject());
    }
    double wanted = more == null ? need.mm() : Math.max(more.mm(), need.mm());
    draft
        .message(
            "segment "
                + segment.id()
                + " bends to a radius of "
                + Millimetres.actual(measured)
                + "; "
                + need.because()
                + ", needs "
                + Millimetres.limit(measured))
        .remedy(
            "give "
                + segment.id()
                + " a bend of at least "
                + Millimetres.text(wanted)
                + " or route what is stiff another way")
        .measured(measured)
        .basis(need.basis());
    if (more != null && more.mm() > need.mm()) {
      draft.detail(more.because() + ", would need " + Millimetres.text(more.mm()));
    }
    return draft;
  }
}
