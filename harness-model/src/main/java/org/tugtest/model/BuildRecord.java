package org.tugtest.model;

import java.time.LocalDate;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * How one loom was built, against its plan ({@code *.record.json}).
 *
 * @param file path of the record
 * @param plan path of the root it speaks of
 * @param revision of the loom it was built to
 */
public record BuildRecord(
    String file,
    @Nullable String plan,
    @Nullable String loom,
    @Nullable String revision,
    @Nullable String vehicle,
    @Nullable String by,
    @Nullable LocalDate date,
    Map<String, Entry> entries) {

  public BuildRecord {
    entries = Ordered.copyOf(entries);
  }

  /**
   * One deviation. {@code planned} and {@code built} are the same field's value: a text, a number,
   * or a map of texts and numbers (a wire that was added).
   */
  public record Entry(
      String id,
      @Nullable Kind kind,
      @Nullable String at,
      @Nullable Object planned,
      @Nullable Object built,
      @Nullable Double builtMm,
      @Nullable String reason,
      @Nullable String by,
      @Nullable LocalDate date,
      @Nullable String note,
      @Nullable Cause cause,
      @Nullable Safe safe,
      @Nullable Life state,
      boolean accepted,
      @Nullable LocalDate until) {}

  /** The sort of deviation. */
  public enum Kind implements Word {
    RE_PINNED,
    RE_COLOURED,
    RE_GAUGED,
    LENGTH,
    PART,
    ADDED,
    LEFT_OUT,
    MOVED
  }

  /** Why it came about. */
  public enum Cause implements Word {
    WANTED,
    FORCED,
    MISTAKE
  }

  /** Whether the vehicle may run with it. */
  public enum Safe implements Word {
    YES,
    NO,
    UNTIL_CHECKED
  }

  /** How far it has come. */
  public enum Life implements Word {
    NOTED,
    DECIDED,
    VERIFIED
  }
}
