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

/** A file lies in the harness folder and belongs to no root. */
public final class FileUnused implements Rule {
  private static final RuleInfo INFO =
      RuleInfo.of("file-unused", Heading.WRITTEN, Level.WARNING)
          .stage(Stage.READING)
          .summary("a file in the harness folder is used by no root")
          .subjects("files")
          .looksFor(
              """
              A file whose name ends in .json, below the harness folder, that no root names under
              "uses", directly or through another file. Roots, records, announced changes and shared
              libraries are not meant.
              """)
          .why(
              """
              Nothing in such a file is checked. A loom that was split off and never named under
              "uses" looks finished in the folder and is missing in every report.
              """)
          .remedy("Name the file under \"uses\" of a root, or delete it.")
          .basis("Follows from the format: a harness is a root and the files it uses.")
          .failing(
              """
              // car.harness.json
              {"format": 1, "sketch": true, "wires": {"W1": {"from": "A:1", "to": "B:1"}}}
              // rear.json
              {"format": 1, "wires": {"W2": {"from": "B:2", "to": "C:1"}}}
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
    FileProblems.judge(facts, Problem.Kind.FILE_UNUSED, ledger);
  }
}
