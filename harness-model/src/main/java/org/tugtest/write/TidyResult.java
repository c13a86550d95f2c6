package org.tugtest.write;

import java.util.List;
import org.tugtest.text.Problem;

/** What came of tidying one file. */
public sealed interface TidyResult {

  /**
   * The tidy text.
   *
   * @param text with LF ends, no byte-order mark, and a line end at its end
   * @param changed whether it differs from what came in
   */
  record Tidied(String text, boolean changed) implements TidyResult {}

  /**
   * The file was left alone: its syntax is broken, or a name is given twice in one object.
   *
   * @param problems why; never empty
   */
  record Refused(List<Problem> problems) implements TidyResult {
    public Refused {
      problems = List.copyOf(problems);
    }
  }
}
