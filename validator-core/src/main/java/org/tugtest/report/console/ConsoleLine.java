package org.tugtest.report.console;

import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.tugtest.finding.Level;

/**
 * One line, to be logged by one call. Its text holds no line end and no control character.
 *
 * @param level of the finding it belongs to; null for the closing block
 * @param pieces its text in parts that may be coloured each
 */
public record ConsoleLine(@Nullable Level level, List<Piece> pieces) {

  public ConsoleLine {
    pieces = List.copyOf(pieces);
  }

  /** What a part of a line is. */
  public enum Style {
    /** Text without colour. */
    PLAIN,
    /** {@code path:line:column}. */
    PLACE,
    /** The word for the level. */
    LEVEL,
    /** The id of a rule. */
    RULE,
    /** The verdict when nothing blocks. */
    GOOD,
    /** The verdict when something blocks or could not be checked. */
    BAD
  }

  /** A part of a line. */
  public record Piece(Style style, String text) {}

  /** A line without colour that belongs to a finding. */
  static ConsoleLine plain(@Nullable Level level, String text) {
    return new ConsoleLine(level, List.of(new Piece(Style.PLAIN, text)));
  }

  /** The whole line. */
  public String text() {
    return pieces.stream().map(Piece::text).collect(Collectors.joining());
  }
}
