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

/** A bundle does not go into its covering, or fills it too far. */
public final class CoveringOverfilled implements Rule {
  private static final String PERCENT = "percent";
  private static final double HUNDRED = 100;

  private static final RuleInfo INFO =
      RuleInfo.of("covering-overfilled", Heading.BODY, Level.ERROR)
          .summary("a bundle is too thick for its covering")
          .subjects("segments, breakouts and connectors with coverings")
          .looksFor(
              """
              The thickest piece of a segment against the inner diameter of each of its coverings,
              the inside first, each over what the ones before it make of the bundle; the thickest
              segment at a node with a boot; the wires of a connector with a boot. An error where
              the expected diameter is over the greatest inner diameter, a warning where the
              expected circle fills more of it than 80 %. Tape has no inner diameter and takes
              any bundle. A bundle with a wire of unknown diameter is judged for what is known, and
              counts as not judged when that fits.
              """)
          .why(
              """
              A split conduit that is too tight gapes and lets water and edges in; a sleeve that
              has to be forced over pulls on the contacts.
              """)
          .remedy(
              """
              Take the next larger covering; the details name one from the parts where one fits.
              """)
          .basis(
              """
              Expected diameter: published optima for equal circles, and 1.2 times the root of the
              sum of squares (common practice). 80 % of the inner circle: common practice in
              vehicles, 70 to 80 %; the 40 % of building conduit does not apply.
              """)
          .setting(
              new Setting(
                  PERCENT,
                  80,
                  10,
                  100,
                  "%",
                  "greatest share of the inner circle that the expected circle may fill (common"
                      + " practice)"))
          .failing(
              """
              {"format": 1, "sketch": true,
               "parts": {"wires": {"w": {"areaMm2": 2.5, "maxC": 125, "outerMm": 3.0}},
                 "coverings": {"sleeve-4": {"kind": "braided-sleeve", "innerMinMm": 2,
                   "innerMaxMm": 5}}},
               "layout": {"segments": {
                 "s1": {"from": "a", "to": "b", "lengthMm": 900, "coverings": ["sleeve-4"]}}},
               "devices": {"A": {"at": "a"}, "B": {"at": "b"}},
               "wires": {"W1": {"from": "A:1", "to": "B:1", "part": "w"},
                         "W2": {"from": "A:2", "to": "B:2", "part": "w"}}}
              """)
          .passing(
              """
              {"format": 1, "sketch": true,
               "parts": {"wires": {"w": {"areaMm2": 2.5, "maxC": 125, "outerMm": 3.0}},
                 "coverings": {"sleeve-8": {"kind": "braided-sleeve", "innerMinMm": 4,
                   "innerMaxMm": 10}}},
               "layout": {"segments": {
                 "s1": {"from": "a", "to": "b", "lengthMm": 900, "coverings": ["sleeve-8"]}}},
               "devices": {"A": {"at": "a"}, "B": {"at": "b"}},
               "wires": {"W1": {"from": "A:1", "to": "B:1", "part": "w"},
                         "W2": {"from": "A:2", "to": "B:2", "part": "w"}}}
              """)
          .build();

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    for (Sheath sheath : Sheath.all(facts)) {
      Subject subject = sheath.subject();
      double percent = settings.number(PERCENT, subject);
      boolean misread = sheath.misread();
      Finding.Draft bad = misread ? null : finding(facts, sheath, percent);
      if (misread) {
        ledger.notJudged(subject, Unjudged.MISREAD);
      } else if (bad != null) {
        ledger.finding(bad);
      } else if (sheath.count() == 0) {
        ledger.notJudged(subject, Unjudged.EMPTY);
      } else if (sheath.lacksPart()) {
        ledger.notJudged(subject, Unjudged.NO_PART);
      } else if (!sheath.known()) {
        ledger.notJudged(subject, Unjudged.UNSIZED);
      } else if (sheath.layers().layers().stream().anyMatch(CoveringOverfilled::silent)) {
        ledger.notJudged(subject, "a covering gives no inner diameter");
      } else {
        ledger.fine();
      }
    }
  }

  private static boolean silent(CoverLayers.Layer layer) {
    Covering part = layer.part();
    return part != null
        && part.kind() != Covering.Kind.TAPE
        && part.kind() != Covering.Kind.HEAT_SHIELD
        && layer.mostMm() == null;
  }

  private static Finding.@Nullable Draft finding(Facts facts, Sheath sheath, double percent) {
    Finding.Draft tight = null;
    for (CoverLayers.Layer layer : sheath.layers().layers()) {
      Double most = layer.mostMm();
      if (most == null || most <= 0) {
        continue;
      }
      if (layer.insideMm() > most) {
        return draft(facts, sheath, layer, percent, Measured.over(layer.insideMm(), most, "mm"));
      }
      double fill = HUNDRED * layer.insideMm() * layer.insideMm() / (most * most);
      if (tight == null && fill > percent) {
        tight =
            draft(facts, sheath, layer, percent, Measured.over(fill, percent, "%"))
                .level(Level.WARNING);
      }
    }
    return tight;
  }

  private static Finding.Draft draft(
      Facts facts, Sheath sheath, CoverLayers.Layer layer, double percent, Measured measured) {
    boolean out = measured.unit().equals("mm");
    CoverLayers.Layer first = sheath.layers().layers().get(0);
    String what =
        "the bundle of "
            + sheath.inside()
            + (layer.insideMm() <= first.insideMm() ? "" : " with what is round it already")
            + " in "
            + sheath.text();
    Double most = layer.mostMm();
    Finding.Draft draft =
        Finding.on(sheath.subject(), Subject.part("coverings", layer.id()))
            .message(
                out
                    ? what
                        + " is expected to be "
                        + Millimetres.actual(measured)
                        + " thick; "
                        + layer.id()
                        + " takes at most "
                        + Millimetres.limit(measured)
                    : what
                        + " fills "
                        + measured.actualShown()
                        + " % of "
                        + layer.id()
                        + " ("
                        + Millimetres.text(most == null ? 0 : most)
                        + "); at most "
                        + measured.limitShown()
                        + " % is good practice")
            .measured(measured)
            .basis(sheath.basis().weaker(out ? Basis.GIVEN : Basis.COMMON_PRACTICE));
    Covering part = layer.part();
    Optional<Covering> better =
        new CoverChoice(facts.harness().parts().coverings())
            .over(
                part == null ? null : part.kind(),
                part == null ? Set.of() : part.protects(),
                layer.insideMm(),
                percent / HUNDRED);
    draft.remedy(
        better
            .map(
                one -> "take " + one.id() + " (to " + Millimetres.text(most(one)) + "), which fits")
            .orElse(
                "take a larger covering; none of those in the parts fits and protects as well"));
    return draft.detail(
        "diameters: expected "
            + Millimetres.text(layer.insideMm())
            + ", loose "
            + Millimetres.text(layer.insideLooseMm()));
  }

  private static double most(Covering part) {
    Double most = CoverLayers.most(part);
    return most == null ? 0 : most;
  }
}
