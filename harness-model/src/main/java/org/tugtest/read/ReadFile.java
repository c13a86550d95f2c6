package org.tugtest.read;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tugtest.text.Places;
import org.tugtest.text.Problem;
import org.tugtest.text.SourceText;

/**
 * What came of reading one file that stands beside the harness.
 *
 * @param value what it says; a field with a shape problem is as if left out
 * @param places of {@code entries/ID}, {@code changes/ID} or {@code readings/LINE}
 * @param problems everything wrong with the file as written, sorted by place
 * @param text null when it could not be decoded
 * @param <T> what is read
 */
public record ReadFile<T>(
    T value, Places places, List<Problem> problems, @Nullable SourceText text) {
  public ReadFile {
    problems = List.copyOf(problems);
  }
}
