package org.tugtest.report.html;

import java.util.Comparator;
import java.util.List;
import org.tugtest.built.Refusal;
import org.tugtest.check.CheckedFinding;
import org.tugtest.facts.Deviation;
import org.tugtest.facts.TakenReading;
import org.tugtest.report.AsBuiltReport;
import org.tugtest.report.AsBuiltText;
import org.tugtest.report.HarnessReport;
import org.tugtest.report.Report;

/**
 * What is told of a loom as it was built.
 *
 * @param right readings that show what the plan says
 * @param readings those that do not first
 */
record AsBuiltRoom(
    FirstOf<Refused> refused,
    FirstOf<Line> deviations,
    FirstOf<AsBuiltText.Explained> explanations,
    int right,
    FirstOf<Line> readings) {

  /** Something that does not fit the plan. */
  record Refused(String at, String message, String remedy) {}

  /**
   * A deviation or a reading.
   *
   * @param sign of how it stands
   * @param standing how it stands, in words
   * @param why what was said of it; may be empty
   * @param told where it is told
   */
  record Line(String sign, String standing, String what, String why, String told) {}

  static AsBuiltRoom of(
      Report report, HarnessReport harness, AsBuiltReport built, PageShare share) {
    int most = share.entries();
    List<Line> deviations =
        built.deviations().stream().map(one -> deviation(report, harness, one)).toList();
    List<Line> readings =
        built.readings().stream()
            .sorted(Comparator.comparing(one -> one.found() == null))
            .map(one -> reading(report, harness, one))
            .toList();
    return new AsBuiltRoom(
        FirstOf.of(built.refused().stream().map(one -> refused(report, one)).toList(), most),
        FirstOf.of(deviations, most),
        FirstOf.of(
            built.explanations().stream().map(one -> AsBuiltText.of(report, one)).toList(), most),
        Math.toIntExact(built.readings().stream().filter(one -> one.found() == null).count()),
        FirstOf.of(readings, most));
  }

  private static Refused refused(Report report, Refusal refusal) {
    return new Refused(report.shown(refusal.at()), refusal.message(), refusal.remedy());
  }

  private static Line deviation(
      Report report, HarnessReport harness, AsBuiltReport.Judged<Deviation> judged) {
    Deviation deviation = judged.told();
    return new Line(
        sign(judged.found()),
        AsBuiltText.standing(report, harness, judged),
        deviation.what(),
        deviation.reason(),
        deviation.told());
  }

  private static Line reading(
      Report report, HarnessReport harness, AsBuiltReport.Judged<TakenReading> judged) {
    TakenReading reading = judged.told();
    String note = reading.reading().note();
    return new Line(
        sign(judged.found()),
        AsBuiltText.standing(judged, report, harness),
        reading.from() + " to " + reading.to() + " reads " + AsBuiltText.reads(reading.reading()),
        note == null ? "" : note,
        report.path(reading.at().file()) + ":" + reading.at().line());
  }

  private static String sign(@org.jspecify.annotations.Nullable CheckedFinding found) {
    if (found == null) {
      return "ok";
    }
    return found.waived() ? "waived" : found.finding().level().word();
  }
}
