package org.tugtest.built;

import org.tugtest.text.Place;

/**
 * Something told of a loom as built that does not fit the plan, so that it is not used.
 *
 * @param message one sentence with the names in it
 * @param remedy what to do, one sentence
 * @param at where it is told
 */
public record Refusal(String message, String remedy, Place at) implements Comparable<Refusal> {
  @Override
  public int compareTo(Refusal other) {
    int byPlace = at.compareTo(other.at);
    return byPlace != 0 ? byPlace : message.compareTo(other.message);
  }
}
