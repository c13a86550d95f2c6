package org.tugtest.read;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.tugtest.model.Harness;
import org.tugtest.text.Place;
import org.tugtest.text.Places;
import org.tugtest.text.Problem;
import org.tugtest.text.SourceText;

/**
 * What came of reading one root.
 *
 * @param harness everything that could be read; a field with a shape problem is as if left out
 * @param places where each thing is written
 * @param problems everything wrong with the files as written, sorted by place
 * @param texts the text of each file that could be decoded, by path
 * @param unread paths of files of this root of which nothing could be used
 */
public record ReadHarness(
    Harness harness,
    Places places,
    List<Problem> problems,
    Map<String, SourceText> texts,
    List<String> unread) {

  public ReadHarness {
    problems = List.copyOf(problems);
    texts = Map.copyOf(texts);
    unread = List.copyOf(unread);
  }

  /**
   * A harness that stands in no file as it is, such as one that is reckoned with only: each of its
   * things is placed at the head of its root.
   */
  public static ReadHarness unwritten(Harness harness) {
    Place head = Place.point(harness.root(), 1, 1, "");
    return new ReadHarness(harness, (thing, names) -> head, List.of(), Map.of(), List.of());
  }

  /** The same with further problems, such as files that belong to no root. */
  public ReadHarness with(List<Problem> further) {
    List<Problem> all = new ArrayList<>(problems);
    all.addAll(further);
    all.sort(Comparator.comparing(problem -> problem.at().get(0)));
    return new ReadHarness(harness, places, all, texts, unread);
  }
}
