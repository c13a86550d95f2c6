package org.tugtest.git;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * The variables that Tugtest was started with; git tells its hooks by them where the content of a
 * commit lies.
 */
public record Environment(Map<String, String> variables) {
  /** No variable at all. */
  public static final Environment EMPTY = new Environment(Map.of());

  public Environment {
    variables = Map.copyOf(variables);
  }

  /** The value of a variable, when it is set and not blank. */
  public Optional<String> get(String name) {
    return Optional.ofNullable(variables.get(name)).filter(value -> !value.isBlank());
  }

  /** What follows {@code prefix} in the names of all variables that begin with it, with values. */
  Map<String, String> after(String prefix) {
    Map<String, String> found = new TreeMap<>();
    variables.forEach(
        (name, value) -> {
          if (name.startsWith(prefix)) {
            found.put(name.substring(prefix.length()), value);
          }
        });
    return found;
  }
}
