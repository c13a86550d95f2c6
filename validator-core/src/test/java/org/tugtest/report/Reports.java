package org.tugtest.report;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.tugtest.check.CheckResult;
import org.tugtest.check.CheckedFinding;
import org.tugtest.facts.Facts;
import org.tugtest.facts.KnownRules;
import org.tugtest.finding.Basis;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Subject;
import org.tugtest.model.Waiver;
import org.tugtest.read.HarnessReader;
import org.tugtest.read.MemoryFiles;
import org.tugtest.read.ReadLimits;
import org.tugtest.rule.Coverage;
import org.tugtest.rule.Judged;
import org.tugtest.text.Place;

/** Small reports put together by hand; for tests. */
public final class Reports {
  /** The revision in tests. */
  public static final Revision REVISION =
      new Revision(
          "0123456789abcdef0123456789abcdef01234567", false, Judged.TODAY, "date of the commit");

  private Reports() {}

  /** A report on these roots, with no rules; errors block. */
  public static Report of(HarnessReport... roots) {
    return of(new Gate(Level.ERROR, 0), roots);
  }

  /** A report on these roots, with no rules. */
  public static Report of(Gate gate, HarnessReport... roots) {
    return new Report("1.2.3", "src/main/harness", REVISION, gate, List.of(), List.of(roots));
  }

  /** A root without content that has these findings. */
  public static HarnessReport root(String root, CheckedFinding... findings) {
    return root(root, List.of(), findings);
  }

  /** A root without content that has this coverage and these findings. */
  public static HarnessReport root(
      String root, List<Coverage> coverage, CheckedFinding... findings) {
    return new HarnessReport(
        facts(root, "{\"format\": 1}"),
        new CheckResult(root, Arrays.asList(findings), coverage, List.of(), List.of(), List.of()));
  }

  /** What is known of a root that holds this text. */
  public static Facts facts(String root, String json) {
    return Facts.of(
        new HarnessReader(MemoryFiles.of(Map.of(root, json)), ReadLimits.STANDARD).read(root),
        Judged.TODAY,
        KnownRules.NONE);
  }

  /** A finding of rule {@code made-up} on a wire, in a line of {@code car.harness.json}. */
  public static Finding finding(Level level, String wire, int line, @Nullable String cause) {
    return finding(level, wire, line, cause, "wire " + wire + " is bad");
  }

  /** The same with its sentence. */
  public static Finding finding(
      Level level, String wire, int line, @Nullable String cause, String message) {
    return new Finding(
        "made-up",
        level,
        "",
        List.of(Subject.wire(wire)),
        message,
        "mend " + wire,
        null,
        Basis.GIVEN,
        cause,
        null,
        List.of(),
        List.of(new Place("car.harness.json", line, 5, line, 20, "/wires/" + wire)));
  }

  /** A finding that no waiver covers. */
  public static CheckedFinding standing(Finding finding) {
    return new CheckedFinding(finding, null);
  }

  /** A finding that a waiver covers. */
  public static CheckedFinding waived(Finding finding) {
    return new CheckedFinding(
        finding,
        new Waiver(
            "known",
            finding.rule(),
            finding.firstSubject().place(),
            "settled with the bench",
            null,
            null));
  }
}
