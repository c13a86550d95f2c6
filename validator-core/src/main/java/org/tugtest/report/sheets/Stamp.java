package org.tugtest.report.sheets;

import java.util.List;
import org.tugtest.finding.Level;
import org.tugtest.model.Harness;
import org.tugtest.report.HarnessReport;
import org.tugtest.report.Report;
import org.tugtest.report.Revision;
import org.tugtest.text.Series;

/**
 * What every sheet of a root shows, so that a sheet in a hand can be held against the files.
 *
 * @param harness title and revision of the harness
 * @param commit in the words of git: {@code abc1234}, {@code uncommitted, on top of abc1234}
 * @param day date of the commit, and where it comes from when it is another
 * @param check what the check says: {@code 0 errors and 3 warnings found}
 * @param incomplete why the sheet may lack something, one sentence each
 * @param version of the tool
 * @param scope what the sheet is about
 */
public record Stamp(
    String harness,
    String commit,
    String day,
    String check,
    List<String> incomplete,
    String version,
    Scope scope) {
  private static final String OF_COMMIT = "the date of the commit";

  public Stamp {
    incomplete = List.copyOf(incomplete);
  }

  /** The stamp of a root's sheets about all of it. */
  public static Stamp of(Report report, HarnessReport root) {
    Harness harness = root.facts().harness();
    String revision = harness.revision();
    return new Stamp(
        root.title() + (revision == null ? "" : ", revision " + revision),
        report.revision().shown(),
        day(report.revision()),
        check(root),
        Incomplete.sentences(root),
        report.version(),
        Scope.WHOLE);
  }

  /** The same for sheets about a part. */
  public Stamp about(Scope part) {
    return new Stamp(harness, commit, day, check, incomplete, version, part);
  }

  /** Harness and loom, as the margin of each page has them. */
  public String margin() {
    String of = scope.name().isEmpty() ? harness : harness + " · " + scope.name();
    return incomplete.isEmpty() ? of : "NOT COMPLETE · " + of;
  }

  static String day(Revision revision) {
    String from = revision.todayFrom();
    return revision.today() + (from.equals(OF_COMMIT) ? "" : " (" + from + ")");
  }

  private static String check(HarnessReport root) {
    if (!root.result().crashes().isEmpty()) {
      return "could not be finished";
    }
    int errors = root.result().counts().getOrDefault(Level.ERROR, 0);
    int warnings = root.result().counts().getOrDefault(Level.WARNING, 0);
    return Series.and(
            List.of(
                errors == 1 ? "1 error" : errors + " errors",
                warnings == 1 ? "1 warning" : warnings + " warnings"))
        + " found";
  }
}
