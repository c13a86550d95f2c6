package org.tugtest.rule.written;

import org.tugtest.facts.Facts;
import org.tugtest.finding.Level;
import org.tugtest.rule.Heading;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Settings;
import org.tugtest.rule.Stage;
import org.tugtest.text.Problem;

/** Nothing of a file could be used. */
public final class FileUnreadable implements Rule {
  private static final RuleInfo INFO =
      RuleInfo.of("file-unreadable", Heading.WRITTEN, Level.ERROR)
          .stage(Stage.READING)
          .summary("a file of the harness is not there or cannot be read as JSON")
          .subjects("files")
          .looksFor(
              """
              A file that a root uses and that is not there, lies outside the allowed folders, is
              too large, is not UTF-8, is nested too deeply, or has a mistake in its JSON: a brace,
              comma or quote too many or too few.
              """)
          .why(
              """
              Nothing of such a file is checked, and what other files name in it seems to be
              missing. Rules that would judge something as missing keep silent until it is put
              right, so this is the first finding to deal with.
              """)
          .remedy(
              """
              Go to the line and column that the finding gives. A missing brace or comma is found at
              the first place where the text makes no sense without it, often one line later.
              """)
          .basis("RFC 8259 (JSON) and RFC 3629 (UTF-8); the bounds on size are this tool's own.")
          .failing(
              """
              {"format": 1, "sketch": true,
               "wires": {"W1": {"from": "A:1", "to": "B:1"}
              """)
          .failing(
              """
              // car.harness.json
              {"format": 1, "sketch": true, "uses": ["rear.json"],
               "wires": {"W1": {"from": "A:1", "to": "B:1"}}}
              """)
          .passing(
              """
              // car.harness.json
              {"format": 1, "sketch": true, "uses": ["rear.json"],
               "wires": {"W1": {"from": "A:1", "to": "B:1"}}}
              // rear.json
              {"format": 1, "wires": {"W2": {"from": "B:2", "to": "C:1"}}}
              """)
          .build();

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    FileProblems.judge(facts, Problem.Kind.FILE_UNREADABLE, ledger);
  }
}
