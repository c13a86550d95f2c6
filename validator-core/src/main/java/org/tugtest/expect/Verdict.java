package org.tugtest.expect;

import java.util.List;
import org.tugtest.text.Place;

/**
 * What came of judging one expectation of a team.
 *
 * @param id as written under {@code expectations}
 * @param message why, one sentence
 * @param at where, the first being the expectation itself; never empty
 */
public record Verdict(String id, Answer answer, String message, List<Place> at) {

  public Verdict {
    at = List.copyOf(at);
    if (at.isEmpty()) {
      throw new IllegalArgumentException(id + ": a verdict needs a place");
    }
  }

  /** Whether an expectation holds. */
  public enum Answer {
    /** It is true. */
    HOLDS,
    /** It is not true. */
    FAILS,
    /** It could not be judged. */
    NOT_JUDGED
  }
}
