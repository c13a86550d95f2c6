package org.tugtest.read;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Where the entries of {@code uses} lead. */
final class UsePath {
  private UsePath() {}

  /** Why a path cannot be named there, going on after it; null when it can. */
  static @Nullable String fault(String used) {
    if (used.indexOf('\\') >= 0) {
      return "has a backslash; paths are written with /";
    }
    if (used.startsWith("/") || used.matches("[A-Za-z]:.*")) {
      return "is an absolute path; paths are relative to the file that names them";
    }
    if (used.contains("://")) {
      return "is an address; only files beside this one can be used";
    }
    if (List.of(used.split("/", -1)).contains("")) {
      return "has an empty step";
    }
    return null;
  }

  /** {@code used}, as the file at {@code from} says it, relative to the harness folder. */
  static String resolve(String from, String used) {
    List<String> steps = folder(from);
    for (String step : used.split("/", -1)) {
      if (step.equals("..") && !steps.isEmpty() && !steps.get(steps.size() - 1).equals("..")) {
        steps.remove(steps.size() - 1);
      } else if (!step.equals(".")) {
        steps.add(step);
      }
    }
    return String.join("/", steps);
  }

  /** What the file at {@code from} has to say to use the file at {@code path}. */
  static String relative(String from, String path) {
    List<String> base = folder(from);
    List<String> steps = new ArrayList<>(List.of(path.split("/", -1)));
    int shared = 0;
    while (shared < base.size()
        && shared < steps.size() - 1
        && base.get(shared).equals(steps.get(shared))) {
      shared++;
    }
    List<String> relative = new ArrayList<>();
    for (int up = shared; up < base.size(); up++) {
      relative.add("..");
    }
    relative.addAll(steps.subList(shared, steps.size()));
    return String.join("/", relative);
  }

  private static List<String> folder(String path) {
    List<String> steps = new ArrayList<>(List.of(path.split("/", -1)));
    steps.remove(steps.size() - 1);
    return steps;
  }
}
