package org.tugtest.schema;

import java.util.List;

/**
 * One thing in a file that its schema does not allow.
 *
 * @param names lead from the top of the file to the value, list items by index from 0
 * @param atName it is the name of the value, not the value, that is wrong
 * @param drop whether the value must not be used
 * @param message one sentence
 * @param remedy one sentence
 */
public record Mismatch(
    List<String> names, boolean atName, boolean drop, String message, String remedy) {
  public Mismatch {
    names = List.copyOf(names);
  }
}
