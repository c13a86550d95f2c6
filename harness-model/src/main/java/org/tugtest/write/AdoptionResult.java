package org.tugtest.write;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.tugtest.text.Problem;

/** What came of writing out what sketches imply. */
public sealed interface AdoptionResult {

  /**
   * What is written out.
   *
   * @param files tidy texts by path, only of files that change
   * @param added what was added to them: place strings, sorted, without doubles
   * @param left what was not written and why, a sentence each
   */
  record Adopted(Map<String, String> files, List<String> added, List<String> left)
      implements AdoptionResult {
    public Adopted {
      files = Collections.unmodifiableMap(new TreeMap<>(files));
      added = List.copyOf(added);
      left = List.copyOf(left);
    }
  }

  /**
   * Nothing is written, since a file that may say more cannot be read.
   *
   * @param problems why; never empty
   */
  record Refused(List<Problem> problems) implements AdoptionResult {
    public Refused {
      problems = List.copyOf(problems);
    }
  }
}
