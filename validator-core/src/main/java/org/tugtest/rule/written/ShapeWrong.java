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

/** A file says something that the format does not know. */
public final class ShapeWrong implements Rule {
  private static final RuleInfo INFO =
      RuleInfo.of("shape-wrong", Heading.WRITTEN, Level.ERROR)
          .stage(Stage.READING)
          .summary("something in a file is not what the format allows there")
          .subjects("files")
          .looksFor(
              """
              A field that the format does not know, a text where a number belongs, a number out of
              range, a word that is none of the allowed ones, a required field that is missing, a
              field given twice. All such places of all files are reported at once, each with the
              nearest right word.
              """)
          .why(
              """
              A field with a slip in its name is read by nobody: "colur" leaves the wire without a
              colour, and nothing else would say so. The value that is wrong counts as not written;
              the rest of the file is judged.
              """)
          .remedy("Write what the finding asks for; the published schema describes every field.")
          .basis("The published schema of the harness format, version 1.")
          .failing(
              """
              {"format": 1, "sketch": true,
               "wires": {"W1": {"from": "A:1", "to": "B:1", "colur": "RD"}}}
              """)
          .failing(
              """
              {"format": 1, "sketch": true,
               "wires": {"W1": {"from": "A:1", "to": "B:1", "areaMm2": "1.0"}}}
              """)
          .passing(
              """
              {"format": 1, "sketch": true,
               "wires": {"W1": {"from": "A:1", "to": "B:1", "colour": "RD", "areaMm2": 1.0}}}
              """)
          .build();

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    FileProblems.judge(facts, Problem.Kind.SHAPE_WRONG, ledger);
  }
}
