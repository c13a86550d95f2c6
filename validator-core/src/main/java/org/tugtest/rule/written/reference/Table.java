package org.tugtest.rule.written.reference;

import java.util.Collection;
import java.util.List;
import java.util.Set;

/**
 * Things of one kind that can be named.
 *
 * @param noun what each is called, in the singular: {@code wire part}, {@code pin of FB}
 * @param sections where the files define them, as names from the top ({@code parts/wires}); none
 *     when all that there are is known from the thing they belong to
 * @param ids what there is
 * @param advice how to get one more, after "did you mean"
 */
record Table(String noun, List<String> sections, Collection<String> ids, String advice) {
  /** Things that a section defines. */
  static Table of(String noun, String section, Set<String> ids) {
    String[] names = section.split("/", -1);
    return new Table(
        noun,
        List.of(section),
        ids,
        "define it under \"" + String.join("\", \"", names) + "\", or correct the name");
  }

  /** Things that belong to one other thing, all of which are known. */
  static Table closed(String noun, Collection<String> ids) {
    return new Table(noun, List.of(), ids, "");
  }

  /** Whether a file that could not be read may define more of them. */
  boolean open() {
    return !sections.isEmpty();
  }
}
