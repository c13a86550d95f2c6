package org.tugtest.table;

import org.tugtest.finding.Basis;

/**
 * A figure and what it rests on.
 *
 * @param source document and table, or where in the files it is given; as printed after the figure
 */
public record Cited(double value, String source, Basis basis) {
  /** A figure that the harness files give. */
  public static Cited given(double value) {
    return new Cited(value, "given", Basis.GIVEN);
  }
}
