package org.tugtest.schema;

import java.util.List;

/**
 * What a schema says of a file.
 *
 * @param mismatches in no order that means anything
 * @param complete false when there were too many, so that the file cannot be used
 */
public record Judgement(List<Mismatch> mismatches, boolean complete) {
  public Judgement {
    mismatches = List.copyOf(mismatches);
  }
}
