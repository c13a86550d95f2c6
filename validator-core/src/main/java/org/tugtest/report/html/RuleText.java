package org.tugtest.report.html;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.tugtest.report.HarnessReport;
import org.tugtest.report.Report;
import org.tugtest.rule.RuleInfo;

/**
 * What a rule looks for, as its page says it.
 *
 * @param found whether it found something here; only such rules are printed
 */
record RuleText(RuleInfo info, boolean found) {
  static List<RuleText> of(Report report, HarnessReport harness, Set<String> found) {
    return report.rules().stream()
        .map(info -> new RuleText(info, found.contains(info.id())))
        .toList();
  }

  /** The anchor of a rule. */
  static String anchor(String rule) {
    return "rule-" + rule.replaceAll("\\s", "-");
  }

  /** The paragraphs of a text. */
  static List<String> paragraphs(String text) {
    return Stream.of(text.strip().split("\\n\\s*\\n"))
        .map(paragraph -> paragraph.strip().replaceAll("\\s*\\n\\s*", " "))
        .toList();
  }
}
