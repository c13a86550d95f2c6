package org.tugtest.report.sheets.rework;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.tugtest.bench.rework.PieceEnd;
import org.tugtest.bench.rework.Step;

/** What a person has to know of the terminal in hand: parked, new, or used again and how often. */
final class Marks {
  /** What a terminal that is used again asks for; how often is common practice. */
  static final String USED_AGAIN =
      "A terminal that is used again: look at it, bend its lance back into shape, replace it when"
          + " it is damaged. Twice in its life at most (common practice).";

  private final Set<List<PieceEnd>> crimped = new HashSet<>();
  private final Map<List<PieceEnd>, Integer> inserted = new HashMap<>();

  /** The mark of the next step; to be asked of all steps in their order. Empty: none. */
  String next(Step step) {
    switch (step.kind()) {
      case CRIMP -> crimped.add(step.ends());
      case PARK -> {
        boolean spare = step.to() != null;
        if (spare) {
          inserted.merge(step.ends(), 1, Integer::sum);
        }
        return spare ? "parked in a spare cavity" : "parked, tied back";
      }
      case INSERT -> {
        if (crimped.contains(step.ends())) {
          return "new terminal";
        }
        int times = inserted.merge(step.ends(), 1, Integer::sum);
        return "used again" + (times > 1 ? ", " + times + " times here" : "");
      }
      default -> {
        return "";
      }
    }
    return "";
  }

  /** The marks of all steps, in their order. */
  static List<String> of(List<Step> steps) {
    Marks marks = new Marks();
    List<String> all = new ArrayList<>();
    steps.forEach(step -> all.add(marks.next(step)));
    return all;
  }
}
