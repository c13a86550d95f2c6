package org.tugtest.model;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * One continuity reading ({@code readings/*.csv}).
 *
 * @param ohms lead resistance taken off; null when only {@code joined} is known
 * @param joined null when {@code ohms} says it
 */
public record Reading(
    Ref from,
    Ref to,
    @Nullable Double ohms,
    @Nullable Boolean joined,
    @Nullable Method method,
    @Nullable String by,
    @Nullable LocalDate date,
    @Nullable String note) {

  /** What it was measured with. */
  public enum Method implements Word {
    METER,
    LAMP,
    INSULATION
  }
}
