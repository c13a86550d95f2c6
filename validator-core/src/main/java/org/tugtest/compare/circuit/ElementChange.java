package org.tugtest.compare.circuit;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tugtest.finding.Subject;

/**
 * One element of a device that is not what it was: added, removed, between other pins, closed in
 * other positions, or a fuse way filled or emptied.
 *
 * @param before what it was, in words; null when it is new
 * @param after what it is, in words; null when it is gone
 * @param pins the pins it lies between, before and after
 */
public record ElementChange(
    Subject element,
    @Nullable String before,
    @Nullable String after,
    List<String> pins,
    String sentence) {
  public ElementChange {
    pins = List.copyOf(pins);
  }
}
