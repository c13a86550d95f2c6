package org.tugtest.hook;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import org.tugtest.report.Gate;

/**
 * What the guard looks at and when it blocks. The hook passes it as arguments.
 *
 * @param harness the harness folder, from the top of the work tree, with {@code /}
 * @param libraries folders of shared parts, likewise
 * @param includes patterns of the files that are looked at; empty: all
 * @param excludes patterns of files that are not
 * @param failOn from which level on a new finding blocks, as {@code tugtest.failOn} takes it
 * @param goals what a person types before the name of a goal
 * @param later what only the full build does, a sentence's end; empty: nothing to say
 */
public record GuardOrder(
    String harness,
    List<String> libraries,
    List<String> includes,
    List<String> excludes,
    String failOn,
    String goals,
    String later) {
  private static final String HARNESS = "--harness";
  private static final String LIBRARY = "--library";
  private static final String INCLUDE = "--include";
  private static final String EXCLUDE = "--exclude";
  private static final String FAIL_ON = "--fail-on";
  private static final String GOALS = "--goals";
  private static final String LATER = "--later";

  public GuardOrder {
    libraries = List.copyOf(libraries);
    includes = List.copyOf(includes);
    excludes = List.copyOf(excludes);
  }

  /** The arguments that {@link #of} reads. */
  public List<String> arguments() {
    List<String> arguments = new ArrayList<>(List.of(HARNESS, harness));
    libraries.forEach(folder -> arguments.addAll(List.of(LIBRARY, folder)));
    includes.forEach(pattern -> arguments.addAll(List.of(INCLUDE, pattern)));
    excludes.forEach(pattern -> arguments.addAll(List.of(EXCLUDE, pattern)));
    arguments.addAll(List.of(FAIL_ON, failOn, GOALS, goals, LATER, later));
    return arguments;
  }

  /**
   * Reads arguments; what is left out has the default of the goals.
   *
   * @throws IllegalArgumentException when one is not known or lacks its value; the message is a
   *     whole sentence
   */
  static GuardOrder of(List<String> arguments) {
    String harness = "src/main/harness";
    List<String> libraries = new ArrayList<>();
    List<String> includes = new ArrayList<>();
    List<String> excludes = new ArrayList<>();
    String failOn = "error";
    String goals = "mvn tugtest:";
    String later = "";
    Iterator<String> next = arguments.iterator();
    while (next.hasNext()) {
      String name = next.next();
      switch (name) {
        case HARNESS -> harness = value(name, next);
        case LIBRARY -> libraries.add(value(name, next));
        case INCLUDE -> includes.add(value(name, next));
        case EXCLUDE -> excludes.add(value(name, next));
        case FAIL_ON -> failOn = value(name, next);
        case GOALS -> goals = value(name, next);
        case LATER -> later = value(name, next);
        default ->
            throw new IllegalArgumentException(
                "the guard does not know "
                    + name
                    + "; it takes "
                    + String.join(", ", HARNESS, LIBRARY, INCLUDE, EXCLUDE, FAIL_ON, GOALS, LATER));
      }
    }
    return new GuardOrder(harness, libraries, includes, excludes, failOn, goals, later);
  }

  private static String value(String name, Iterator<String> next) {
    if (!next.hasNext()) {
      throw new IllegalArgumentException(name + " lacks its value");
    }
    return next.next();
  }

  /** What blocks. */
  Gate gate() {
    return Optional.of(failOn)
        .flatMap(Gate::of)
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    FAIL_ON + " is \"" + failOn + "\"; it takes error, warning, note, never"));
  }
}
