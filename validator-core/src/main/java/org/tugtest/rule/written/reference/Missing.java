package org.tugtest.rule.written.reference;

import java.util.List;
import org.tugtest.finding.Subject;
import org.tugtest.text.Place;

/**
 * Something that is named and is not there.
 *
 * @param kind tells it apart from all others: {@code wire part w1.5}
 * @param by the things that name it, each once; the first is where a person would edit
 * @param at where they do
 */
public record Missing(
    String kind, List<Subject> by, List<Place> at, String message, String remedy) {
  public Missing {
    by = List.copyOf(by);
    at = List.copyOf(at);
  }
}
