package org.tugtest.report.html;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.tugtest.finding.Subject;
import org.tugtest.report.HarnessReport;
import org.tugtest.report.Report;
import org.tugtest.report.html.text.Few;
import org.tugtest.rule.Coverage;
import org.tugtest.rule.Heading;
import org.tugtest.rule.RuleInfo;

/** How far each rule came, by heading. */
record CoverageRoom(List<Part> parts) {
  private static final int MOST_REASONS = 12;

  /** The rules under one heading. */
  record Part(String heading, List<Row> rows) {}

  /**
   * One rule.
   *
   * @param noun what it judges, in the plural
   */
  record Row(String rule, String summary, String noun, int judged, int subjects, Few<Want> wants) {}

  /**
   * Subjects that were not judged for one reason.
   *
   * @param shown the first of them, as people say them
   * @param list number of the whole list, or -1 when all are shown
   */
  record Want(String reason, int count, List<String> shown, int list) {}

  static CoverageRoom of(Report report, HarnessReport harness, SubjectLists lists) {
    Map<Heading, List<Row>> parts = new EnumMap<>(Heading.class);
    for (Coverage coverage : harness.result().coverage()) {
      report
          .rule(coverage.rule())
          .ifPresent(
              info ->
                  parts
                      .computeIfAbsent(info.heading(), heading -> new ArrayList<>())
                      .add(row(info, coverage, lists)));
    }
    return new CoverageRoom(
        parts.entrySet().stream()
            .map(part -> new Part(part.getKey().word(), List.copyOf(part.getValue())))
            .toList());
  }

  private static Row row(RuleInfo info, Coverage coverage, SubjectLists lists) {
    Few<Map.Entry<String, List<Subject>>> wants =
        Few.of(List.copyOf(coverage.missing().entrySet()), MOST_REASONS);
    return new Row(
        coverage.rule(),
        info.summary(),
        coverage.noun(),
        coverage.judged(),
        coverage.subjects(),
        new Few<>(
            wants.shown().stream()
                .map(want -> want(want.getKey(), want.getValue(), lists))
                .toList(),
            wants.more()));
  }

  private static Want want(String reason, List<Subject> subjects, SubjectLists lists) {
    List<String> ids = subjects.stream().map(CoverageRoom::said).toList();
    boolean all = ids.size() <= SubjectLists.SHORT;
    return new Want(
        reason,
        ids.size(),
        all ? ids : ids.subList(0, SubjectLists.SHORT),
        all ? -1 : lists.number(ids));
  }

  private static String said(Subject subject) {
    return SubjectKey.of(subject).isEmpty() ? subject.place() : subject.id();
  }

  /** Subjects of all rules. */
  int subjects() {
    return parts.stream().flatMap(part -> part.rows().stream()).mapToInt(Row::subjects).sum();
  }

  /** Subjects of all rules that were judged. */
  int judged() {
    return parts.stream().flatMap(part -> part.rows().stream()).mapToInt(Row::judged).sum();
  }

  /** How many rules ran. */
  int rules() {
    return parts.stream().mapToInt(part -> part.rows().size()).sum();
  }
}
