package org.tugtest.expect;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tugtest.text.Place;

/**
 * What came of judging one expectation of a team.
 *
 * @param id as written under {@code expectations}
 * @param message why, one sentence
 * @param at where, the first being the expectation itself; never empty
 * @param lacking what it lacks when it does not hold; null when that is no joint
 */
public record Verdict(
    String id, Answer answer, String message, List<Place> at, @Nullable Lacking lacking) {

  public Verdict {
    at = List.copyOf(at);
    if (at.isEmpty()) {
      throw new IllegalArgumentException(id + ": a verdict needs a place");
    }
  }

  /** A verdict that nothing is known to be lacking for. */
  public Verdict(String id, Answer answer, String message, List<Place> at) {
    this(id, answer, message, at, null);
  }

  /** The same, with what it lacks. */
  Verdict lacks(Lacking what) {
    return answer == Answer.FAILS ? new Verdict(id, answer, message, at, what) : this;
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
