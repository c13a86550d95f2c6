package org.tugtest.read;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tugtest.text.Problem;
import tools.jackson.databind.node.ObjectNode;

/**
 * One file as far as it could be read.
 *
 * @param index null when its bytes are no text
 * @param root null when nothing of it can be used
 */
record ParsedFile(
    String path, @Nullable FileIndex index, @Nullable ObjectNode root, List<Problem> problems) {
  ParsedFile {
    problems = List.copyOf(problems);
  }
}
