package org.tugtest.read;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tugtest.text.Problem;
import tools.jackson.databind.node.JsonNodeFactory;
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

  /** The tree; empty when nothing of the file can be used. */
  ObjectNode tree() {
    return root == null ? JsonNodeFactory.instance.objectNode() : root;
  }

  /** The result of reading it as a file of its own. */
  <T> ReadFile<T> as(T value) {
    List<FileIndex> indexes = index == null ? List.of() : List.of(index);
    return new ReadFile<>(
        value, new HarnessPlaces(path, indexes), problems, index == null ? null : index.source());
  }
}
