package org.tugtest.rule.body;

import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Basis;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Measured;
import org.tugtest.finding.Subject;
import org.tugtest.model.Covering;
import org.tugtest.route.CoverChoice;
import org.tugtest.route.CoverLayers;
import org.tugtest.rule.Heading;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Setting;
import org.tugtest.rule.Settings;

/** A covering is far too big for what it is round. */
public final class CoveringLoose implements Rule {
  private static final String PERCENT = "percent";
  private static final double HUNDRED = 100;
  private static final double FULL = 0.8;

  private static final RuleInfo INFO =
      RuleInfo.of("covering-loose", Heading.BODY, Level.NOTE)
          .summary("a covering is far too big for its bundle")
          .subjects("segments, breakouts and connectors with coverings")
          .looksFor(
              """
              The thinnest piece of a segment, or the wires of a connector with a boot, expected
              to be thinner than the least diameter its covering closes on; or, in a covering of
              one inner diameter, filling less than a quarter of it. Only the innermost covering
              is looked at. Tape and heat shields are never loose. What may hold a wire that has no
              route is not judged.
              """)
          .why(
              """
              Wires that can move in their covering chafe, and a sleeve that cannot close slides
              along the loom and leaves a part bare. It is also mass for nothing.
              """)
          .remedy(
              """
              Take the next smaller covering; the details name one from the parts where one fits.
              """)
          .basis(
              """
              Least diameter: as the part gives it. A quarter of the inner circle, that is an inner
              diameter of twice the bundle: common practice.
              """)
          .setting(
              new Setting(
                  PERCENT,
                  25,
                  1,
                  80,
                  "%",
                  "least share of a fixed inner circle that the expected circle fills (common"
                      + " practice)"))
          .failing(
              """
              {"format": 1, "sketch": true,
               "parts": {"wires": {"w": {"areaMm2": 2.5, "maxC": 125, "outerMm": 3.0}},
                 "coverings": {"sleeve-8": {"kind": "braided-sleeve", "innerMinMm": 4,
                   "innerMaxMm": 10}}},
               "layout": {"segments": {
                 "s1": {"from": "a", "to": "b", "lengthMm": 900, "coverings": ["sleeve-8"]}}},
               "devices": {"A": {"at": "a"}, "B": {"at": "b"}},
               "wires": {"W1": {"from": "A:1", "to": "B:1", "part": "w"}}}
              """)
          .passing(
              """
              {"format": 1, "sketch": true,
               "parts": {"wires": {"w": {"areaMm2": 2.5, "maxC": 125, "outerMm": 3.0}},
                 "coverings": {"sleeve-4": {"kind": "braided-sleeve", "innerMinMm": 2,
                   "innerMaxMm": 5}}},
               "layout": {"segments": {
                 "s1": {"from": "a", "to": "b", "lengthMm": 900, "coverings": ["sleeve-4"]}}},
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
    Wayward wayward = new Wayward(facts);
    for (Sheath sheath : Sheath.all(facts)) {
      CoverLayers.Layer layer = sheath.layers().layers().get(0);
      Covering part = layer.part();
      Subject subject = sheath.subject();
      if (sheath.misread()) {
        ledger.notJudged(subject, Unjudged.MISREAD);
      } else if (sheath.count() == 0) {
        ledger.notJudged(subject, Unjudged.EMPTY);
      } else if (part == null) {
        ledger.notJudged(subject, Unjudged.NO_PART);
      } else if (part.kind() == Covering.Kind.TAPE || part.kind() == Covering.Kind.HEAT_SHIELD) {
        ledger.fine();
      } else if (layer.leastMm() == null) {
        ledger.notJudged(subject, "its covering gives no least diameter");
      } else if (!sheath.known()) {
        ledger.notJudged(subject, Unjudged.UNSIZED);
      } else {
        judge(facts, sheath, layer, part, wayward, settings.number(PERCENT, subject), ledger);
      }
    }
  }

  private static void judge(
      Facts facts,
      Sheath sheath,
      CoverLayers.Layer layer,
      Covering part,
      Wayward wayward,
      double percent,
      Ledger ledger) {
    Measured measured = measured(sheath.thinMm(), part, percent);
    if (measured == null) {
      ledger.fine();
      return;
    }
    if (wayward.mayRunIn(sheath.subject())) {
      ledger.notJudged(sheath.subject(), Unjudged.WAYWARD);
      return;
    }
    boolean open = measured.unit().equals("mm");
    Finding.Draft draft =
        Finding.on(sheath.subject(), Subject.part("coverings", layer.id()))
            .message(
                "the bundle "
                    + place(sheath)
                    + (open
                        ? " is expected to be "
                            + Millimetres.actual(measured)
                            + " thick"
                            + thinnest(sheath)
                            + "; "
                            + layer.id()
                            + " closes on no less than "
                            + Millimetres.limit(measured)
                        : " fills "
                            + measured.actualShown()
                            + " % of "
                            + layer.id()
                            + thinnest(sheath)
                            + "; less than "
                            + measured.limitShown()
                            + " % is loose"))
            .measured(measured)
            .basis(sheath.basis().weaker(open ? Basis.GIVEN : Basis.COMMON_PRACTICE));
    Optional<Covering> better =
        new CoverChoice(facts.harness().parts().coverings())
            .over(part.kind(), Set.copyOf(part.protects()), layer.insideMm(), FULL);
    boolean smaller =
        better.isPresent() && measured(sheath.thinMm(), better.get(), percent) == null;
    draft.remedy(
        smaller
            ? "take " + better.map(Covering::id).orElse("") + ", which fits"
            : "take a smaller covering, or tape the bundle to the diameter it closes on");
    ledger.finding(draft);
  }

  private static String place(Sheath sheath) {
    Subject subject = sheath.subject();
    return switch (subject.section()) {
      case "segments" -> "in segment " + subject.id();
      case "nodes" -> "at node " + subject.id();
      default -> "at connector " + subject.id();
    };
  }

  private static String thinnest(Sheath sheath) {
    String section = sheath.subject().section();
    boolean whole = sheath.text().equals("segment " + sheath.subject().id());
    return section.equals("nodes") || (section.equals("segments") && !whole)
        ? " where it is thinnest"
        : "";
  }

  /** How far a bundle is too thin for a covering; null when it is not. */
  private static @Nullable Measured measured(double thinMm, Covering part, double percent) {
    Double least = part.innerMinMm();
    if (least != null) {
      return thinMm < least ? Measured.under(thinMm, least, "mm") : null;
    }
    Double inner = CoverLayers.most(part);
    if (inner == null || inner <= 0) {
      return null;
    }
    double fill = HUNDRED * thinMm * thinMm / (inner * inner);
    return fill < percent ? Measured.under(fill, percent, "%") : null;
  }
}
