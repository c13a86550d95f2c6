package org.tugtest.compare.change;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tugtest.finding.Subject;
import org.tugtest.text.Place;

/**
 * One change. Ids before are those of before; where both revisions have the thing, sentences call
 * it as it is called after.
 *
 * @param was the thing before; null when it is new
 * @param is the thing after; null when it is gone
 * @param field what of it changed, by the names that lead there in the files ({@code from}, {@code
 *     elements.pump.amps}); empty when it is the thing itself
 * @param before the value before as people write it; null when there was none
 * @param after the value after; null when there is none
 * @param sentence all of it in words
 * @param group the connector that it is reported under, by its id after; else the device, splice or
 *     section
 * @param placeBefore where it was written; null when it was not
 * @param placeAfter where it is written; null when it is not
 */
public record Change(
    ChangeKind kind,
    @Nullable Subject was,
    @Nullable Subject is,
    String field,
    @Nullable String before,
    @Nullable String after,
    String sentence,
    Group group,
    @Nullable Place placeBefore,
    @Nullable Place placeAfter) {

  public Change {
    if (was == null && is == null) {
      throw new IllegalArgumentException("a change is made to something");
    }
  }

  /** The thing, as it is called after, or before when it is gone. */
  public Subject subject() {
    Subject subject = is == null ? was : is;
    if (subject == null) {
      throw new IllegalStateException("a change is made to something");
    }
    return subject;
  }

  /** The thing by all its names. */
  public List<Subject> subjects() {
    if (was == null || is == null || was.equals(is)) {
      return List.of(subject());
    }
    return List.of(is, was);
  }
}
