package org.tugtest.read;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.tugtest.text.Place;
import org.tugtest.text.Problem;
import org.tugtest.text.Quoted;

/** Problems in the order of their places, at most so many of each file. */
final class Capped {
  /** Most problems shown of one file. */
  static final int MOST_SHOWN = 500;

  private static final Comparator<Problem> ORDER =
      Comparator.<Problem, Place>comparing(problem -> problem.at().get(0))
          .thenComparing(Problem::kind)
          .thenComparing(Problem::message);

  private Capped() {}

  static List<Problem> of(List<Problem> problems) {
    List<Problem> sorted = new ArrayList<>(problems);
    sorted.sort(ORDER);
    Map<String, Integer> counts = new HashMap<>();
    List<Problem> shown = new ArrayList<>();
    Map<String, Problem> firstHidden = new HashMap<>();
    for (Problem problem : sorted) {
      String file = problem.at().get(0).file();
      if (counts.merge(file, 1, Integer::sum) <= MOST_SHOWN) {
        shown.add(problem);
      } else {
        firstHidden.putIfAbsent(file, problem);
      }
    }
    firstHidden.forEach(
        (file, problem) -> shown.add(more(file, problem, counts.get(file) - MOST_SHOWN)));
    shown.sort(ORDER);
    return shown;
  }

  private static Problem more(String file, Problem first, int count) {
    return new Problem(
        Problem.Kind.SHAPE_WRONG,
        "files/" + file,
        Quoted.name(file)
            + " has "
            + count
            + (count == 1 ? " more such place." : " more such places."),
        "Put the first ones right; what is left will be shown then.",
        List.of(first.at().get(0)));
  }
}
