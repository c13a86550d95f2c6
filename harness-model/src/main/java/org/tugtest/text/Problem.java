package org.tugtest.text;

import java.util.List;

/**
 * Something that is wrong with a file as it is written, met while reading. Reading never throws on
 * bad data; it returns what it could read and its problems.
 *
 * @param kind which rule answers for it
 * @param subject place string of the thing ({@code wires/W1}), or {@code files/PATH}
 * @param message one sentence with the names in it
 * @param remedy what to do, one sentence
 * @param at where, the first being where a person would edit; never empty
 */
public record Problem(Kind kind, String subject, String message, String remedy, List<Place> at) {

  public Problem {
    at = List.copyOf(at);
  }

  /** The sort of problem; each has a rule of the same name. */
  public enum Kind {
    /** Syntax, encoding, size, depth, or the file is not there: nothing of it was used. */
    FILE_UNREADABLE,
    /** The text is JSON but not what the schema allows there; the rest of the file was used. */
    SHAPE_WRONG,
    /** One id is given twice, or two ids differ only in case. */
    ID_GIVEN_TWICE,
    /** A file below the harness folder belongs to no root. */
    FILE_UNUSED
  }
}
