package org.tugtest.read;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tugtest.model.Harness;
import org.tugtest.text.Problem;

/**
 * One file and what it says, read once for every root that uses it.
 *
 * @param index null when its bytes are no text
 * @param said what this file alone says; empty when it is unreadable
 * @param readable whether anything of it can be used
 * @param uses as written, in the order written; empty where an entry has a wrong shape
 * @param problems whatever root reads it
 * @param unlessSketch problems only where the root is no sketch
 */
record BoundFile(
    String path,
    @Nullable FileIndex index,
    Harness said,
    boolean readable,
    List<String> uses,
    List<Problem> problems,
    List<Problem> unlessSketch) {
  BoundFile {
    uses = List.copyOf(uses);
    problems = List.copyOf(problems);
    unlessSketch = List.copyOf(unlessSketch);
  }
}
