package org.tugtest.files;

import java.util.Collection;
import java.util.List;
import java.util.stream.Stream;

/**
 * Which files of a folder are looked at.
 *
 * @param includes a file must fit one of them; empty: all files
 * @param excludes and none of these
 */
public record Choice(List<Glob> includes, List<Glob> excludes) {
  /** Every file. */
  public static final Choice ALL = new Choice(List.of(), List.of());

  public Choice {
    includes = List.copyOf(includes);
    excludes = List.copyOf(excludes);
  }

  /** The choice of these patterns; blank ones are left out. */
  public static Choice of(Collection<String> includes, Collection<String> excludes) {
    return new Choice(globs(includes), globs(excludes));
  }

  private static List<Glob> globs(Collection<String> patterns) {
    return patterns.stream().filter(pattern -> !pattern.isBlank()).map(Glob::of).toList();
  }

  /** Whether a file is looked at. */
  public boolean takes(String path) {
    return (includes.isEmpty() || includes.stream().anyMatch(glob -> glob.matches(path)))
        && excludes.stream().noneMatch(glob -> glob.matches(path));
  }

  /** The patterns that fit none of {@code paths}, as they were written, includes first. */
  public List<String> idle(Collection<String> paths) {
    return Stream.concat(includes.stream(), excludes.stream())
        .filter(glob -> paths.stream().noneMatch(glob::matches))
        .map(Glob::pattern)
        .toList();
  }
}
