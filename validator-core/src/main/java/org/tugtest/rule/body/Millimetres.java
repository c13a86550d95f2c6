package org.tugtest.rule.body;

import org.tugtest.finding.Measured;
import org.tugtest.text.Quoted;

/** Lengths in sentences. */
final class Millimetres {
  private Millimetres() {}

  /** To a tenth: {@code 12.4 mm}. */
  static String text(double mm) {
    return Quoted.number(Math.round(mm * 10) / 10.0) + " mm";
  }

  /** A figure so that it never seems to pass: {@code 299.6 mm}. */
  static String actual(Measured measured) {
    return measured.actualShown() + " mm";
  }

  /** The limit with its own decimals: {@code 300 mm}. */
  static String limit(Measured measured) {
    return measured.limitShown() + " mm";
  }
}
