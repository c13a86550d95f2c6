package org.tugtest.rulebook;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import org.tugtest.rule.Heading;
import org.tugtest.rule.RuleInfo;

/** The list of all rules by heading. */
public final class RuleIndex {
  private RuleIndex() {}

  /** The list as Markdown, each rule linked to its page beside it. */
  public static String markdown(Collection<RuleInfo> rules) {
    StringBuilder index = new StringBuilder("# The rules\n");
    for (Heading heading : Heading.values()) {
      List<RuleInfo> under = under(heading, rules);
      if (under.isEmpty()) {
        continue;
      }
      index.append("\n## ").append(heading.word()).append("\n\n");
      index.append("| rule | level | finds that |\n| --- | --- | --- |\n");
      for (RuleInfo rule : under) {
        index.append("| [").append(rule.id()).append("](").append(fileName(rule)).append(") | ");
        index.append(rule.level().word()).append(" | ");
        index.append(rule.summary().replace("|", "\\|").replace("<", "&lt;")).append(" |\n");
      }
    }
    return index.toString();
  }

  /** The list as text, for a terminal. */
  public static String text(Collection<RuleInfo> rules) {
    int width = rules.stream().mapToInt(rule -> rule.id().length()).max().orElse(0);
    StringBuilder index = new StringBuilder();
    for (Heading heading : Heading.values()) {
      List<RuleInfo> under = under(heading, rules);
      if (under.isEmpty()) {
        continue;
      }
      index.append(index.isEmpty() ? "" : "\n").append(heading.word()).append('\n');
      for (RuleInfo rule : under) {
        index.append("  ").append(rule.id()).append(" ".repeat(width - rule.id().length() + 2));
        index.append(String.format(Locale.ROOT, "%-8s", rule.level().word()));
        index.append(rule.summary()).append('\n');
      }
    }
    return index.toString();
  }

  /** The name of the file that holds a rule's page. */
  public static String fileName(RuleInfo rule) {
    return rule.id() + ".md";
  }

  private static List<RuleInfo> under(Heading heading, Collection<RuleInfo> rules) {
    return rules.stream().filter(rule -> rule.heading() == heading).toList();
  }
}
