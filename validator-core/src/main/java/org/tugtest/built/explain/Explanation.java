package org.tugtest.built.explain;

import java.util.List;
import java.util.Optional;
import org.tugtest.facts.TakenReading;

/**
 * What explains some readings that contradict the plan.
 *
 * @param readings those that contradict
 * @param sets sets of things that explain them and contradict no other reading, the likeliest
 *     first; all are as small as can be; empty when no small set does
 * @param telling the reading that would tell the two likeliest apart
 * @param smallest whether no smaller set explains them; false where the search gave up and took the
 *     best step each time
 */
public record Explanation(
    List<TakenReading> readings,
    List<List<Suspect>> sets,
    Optional<Telling> telling,
    boolean smallest) {
  public Explanation {
    readings = List.copyOf(readings);
    sets = sets.stream().map(List::copyOf).toList();
  }
}
