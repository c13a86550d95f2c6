package org.tugtest.report.html;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Subject;

/**
 * The gravest finding on a thing, as a drawing shows it.
 *
 * @param number of the finding on its page; 0 when it does not stand there
 */
record Mark(int number, Level level, String rule) {
  /** The anchor that tells more. */
  String anchor() {
    return number > 0 ? "finding-" + number : "findings-left";
  }

  /** What stands beside its symbol. */
  String text() {
    return rule.equals("cavity-doubled") ? "doubled" : level.word();
  }

  /** The marks of all things that these findings speak of; of equal ones, those on the page. */
  static Map<Subject, Mark> of(List<FindingView> shown, List<Finding> left) {
    Map<Subject, Mark> marks = new HashMap<>();
    for (FindingView view : shown) {
      put(marks, view.finding(), view.number());
    }
    for (Finding finding : left) {
      put(marks, finding, 0);
    }
    return marks;
  }

  private static void put(Map<Subject, Mark> marks, Finding finding, int number) {
    Mark mark = new Mark(number, finding.level(), finding.rule());
    for (Subject subject : finding.subjects()) {
      marks.merge(subject, mark, (one, other) -> one.level().atLeast(other.level()) ? one : other);
    }
  }
}
