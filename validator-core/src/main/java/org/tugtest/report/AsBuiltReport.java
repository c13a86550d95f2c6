package org.tugtest.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.tugtest.built.Intake;
import org.tugtest.built.Refusal;
import org.tugtest.built.explain.Explanation;
import org.tugtest.built.explain.Explanations;
import org.tugtest.check.CheckResult;
import org.tugtest.check.CheckedFinding;
import org.tugtest.check.Checker;
import org.tugtest.check.RuleCatalog;
import org.tugtest.check.Selection;
import org.tugtest.compare.Comparison;
import org.tugtest.compare.Snapshot;
import org.tugtest.facts.AsBuilt;
import org.tugtest.facts.Deviation;
import org.tugtest.facts.Facts;
import org.tugtest.facts.TakenReading;
import org.tugtest.finding.Subject;
import org.tugtest.rule.Stage;
import org.tugtest.rule.built.Continuity;
import org.tugtest.text.Place;

/**
 * What is told of a loom as it was built, with what came of judging it.
 *
 * @param deviations what was built otherwise than planned, as it was told
 * @param readings what was measured
 * @param explanations what would explain the readings that contradict the plan
 * @param refused what does not fit the plan and was not used; then nothing passes
 */
public record AsBuiltReport(
    List<Judged<Deviation>> deviations,
    List<Judged<TakenReading>> readings,
    List<Explanation> explanations,
    List<Refusal> refused) {

  /**
   * A deviation or a reading with the finding on it.
   *
   * @param found null: none, since it is accepted, fits, or lies within its limits
   */
  public record Judged<T>(T told, @Nullable CheckedFinding found) {}

  public AsBuiltReport {
    deviations = List.copyOf(deviations);
    readings = List.copyOf(readings);
    explanations = List.copyOf(explanations);
    refused = List.copyOf(refused);
  }

  /** The rules that judge a loom as built. */
  public static RuleCatalog rules(RuleCatalog all) {
    return RuleCatalog.of(
        all.rules().stream().filter(rule -> rule.info().stage() == Stage.BUILT).toList());
  }

  /**
   * Judges a loom as built and holds it against its plan.
   *
   * @param label what people call the plan
   * @param astray what else does not fit
   * @param catalog the rules that judge it
   */
  public static HarnessReport harness(
      Facts plan, String label, Intake intake, List<Refusal> astray, RuleCatalog catalog) {
    Facts facts = plan.with(intake.asBuilt());
    CheckResult result = new Checker(catalog, Selection.ALL).check(facts);
    CheckResult none =
        new CheckResult(result.root(), List.of(), List.of(), List.of(), List.of(), List.of());
    TreeSet<Refusal> refused = new TreeSet<>(intake.refused());
    refused.addAll(astray);
    AsBuiltReport told = of(intake, result, List.copyOf(refused));
    Snapshot built = Snapshot.of("as built", intake.built(), result);
    Comparison comparison = Comparison.of(Snapshot.of(label, plan, none), built);
    Snapshot wanted = Snapshot.of(label, intake.planWith(plan, told.left()), none);
    Baseline baseline = Baseline.plan(comparison, wanted, told.accepted());
    return new HarnessReport(facts, result, baseline, told);
  }

  /** The deviations that nothing stands against: nobody puts them right. */
  private List<Deviation> left() {
    return deviations.stream()
        .filter(judged -> judged.found() == null || judged.found().waived())
        .map(Judged::told)
        .toList();
  }

  /** The deviations that stay as they were built since the team accepts them, each a sentence. */
  private List<String> accepted() {
    List<String> sentences = new ArrayList<>();
    for (Judged<Deviation> judged : deviations) {
      CheckedFinding found = judged.found();
      Deviation told = judged.told();
      if (found != null ? found.waived() : told.accepted()) {
        String until = told.until() == null ? "" : " until " + told.until();
        sentences.add(
            told.what() + (found == null ? ", accepted" + until : ", waived") + ": " + told.told());
      }
    }
    return sentences;
  }

  private static AsBuiltReport of(Intake intake, CheckResult result, List<Refusal> refused) {
    AsBuilt told = intake.asBuilt();
    List<Judged<Deviation>> deviations = new ArrayList<>();
    for (Deviation deviation : told.deviations()) {
      deviations.add(new Judged<>(deviation, found(result, deviation.at(), deviation.subject())));
    }
    List<Judged<TakenReading>> readings = new ArrayList<>();
    List<Explanations.Shown> shown = new ArrayList<>();
    for (TakenReading reading : told.readings()) {
      readings.add(new Judged<>(reading, found(result, reading.at(), reading.from().subject())));
      shown.add(new Explanations.Shown(reading, Continuity.joined(reading.reading())));
    }
    return new AsBuiltReport(deviations, readings, Explanations.of(intake.built(), shown), refused);
  }

  private static @Nullable CheckedFinding found(CheckResult result, Place at, Subject subject) {
    Optional<CheckedFinding> found =
        result.findings().stream()
            .filter(checked -> checked.finding().at().contains(at))
            .filter(checked -> checked.finding().subjects().contains(subject))
            .findFirst();
    return found.orElse(null);
  }
}
