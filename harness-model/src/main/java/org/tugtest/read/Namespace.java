package org.tugtest.read;

import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import org.tugtest.model.Harness;
import org.tugtest.text.Place;
import org.tugtest.text.Problem;

/** Ids that must differ from each other; of two that do not, the first is kept. */
final class Namespace {
  private static final Map<String, String> KINDS =
      Map.ofEntries(
          Map.entry("devices", "device"),
          Map.entry("connectors", "connector"),
          Map.entry("splices", "splice"),
          Map.entry("wires", "wire"),
          Map.entry("groups", "group"),
          Map.entry("fitted", "fitted fuse"),
          Map.entry("layout/nodes", "node"),
          Map.entry("layout/segments", "segment"),
          Map.entry("zones", "zone"),
          Map.entry("states", "state"),
          Map.entry("limits", "rule under limits"),
          Map.entry("waivers", "waiver"),
          Map.entry("expectations", "expectation"),
          Map.entry("parts/wires", "wire part"),
          Map.entry("parts/housings", "housing"),
          Map.entry("parts/terminals", "terminal"),
          Map.entry("parts/seals", "seal"),
          Map.entry("parts/splices", "splice part"),
          Map.entry("parts/fuses", "fuse part"),
          Map.entry("parts/coverings", "covering"),
          Map.entry("parts/supports", "support"),
          Map.entry("parts/deviceTypes", "device type"));

  private final List<BoundFile> files;
  private final List<Problem> problems;
  private final Map<String, Taken> taken = new HashMap<>();

  Namespace(List<BoundFile> files, List<Problem> problems) {
    this.files = files;
    this.problems = problems;
  }

  private record Taken(String section, String id, BoundFile file) {}

  /** The entries of one section from all files; those whose id is taken are left out. */
  <V> Map<String, V> join(String section, Function<Harness, Map<String, V>> of) {
    Map<String, V> joined = new LinkedHashMap<>();
    for (BoundFile file : files) {
      for (Map.Entry<String, V> entry : of.apply(file.said()).entrySet()) {
        String id = entry.getKey();
        Taken mine = new Taken(section, id, file);
        Taken first = taken.putIfAbsent(id.toLowerCase(Locale.ROOT), mine);
        if (first == null) {
          joined.put(id, entry.getValue());
        } else {
          problems.add(twice(first, mine, entry.getValue().equals(joined.get(id))));
        }
      }
    }
    return joined;
  }

  private static Problem twice(Taken first, Taken second, boolean same) {
    Place at = place(second);
    Place before = place(first);
    String id = second.id();
    if (!first.id().equals(id)) {
      return onlyCase(thing(second), id, at, first.id(), before);
    }
    boolean sameKind = first.section().equals(second.section());
    String message =
        sameKind
            ? kind(second)
                + " "
                + id
                + " is given in "
                + where(before)
                + " and again in "
                + where(at)
            : id
                + " is a "
                + kind(first)
                + " in "
                + where(before)
                + " and a "
                + kind(second)
                + " in "
                + where(at);
    String remedy =
        !sameKind
            ? "Rename one of the two; devices, connectors, splices, wires and groups share their"
                + " ids."
            : same
                ? "Delete one of the two; they say the same."
                : "Rename or delete one of the two; nothing overrides.";
    return new Problem(
        Problem.Kind.ID_GIVEN_TWICE, thing(second), message + ".", remedy, List.of(at, before));
  }

  /** Two ids that differ only in upper and lower case. */
  static Problem onlyCase(String thing, String id, Place at, String firstId, Place before) {
    return new Problem(
        Problem.Kind.ID_GIVEN_TWICE,
        thing,
        id
            + " in "
            + where(at)
            + " and "
            + firstId
            + " in "
            + where(before)
            + " differ only in upper and lower case.",
        "Rename one of the two, or write both alike if they are meant to be one.",
        List.of(at, before));
  }

  private static String where(Place place) {
    return place.file() + ", line " + place.line();
  }

  private static String kind(Taken taken) {
    return KINDS.getOrDefault(taken.section(), "entry");
  }

  private static String thing(Taken taken) {
    String section = taken.section();
    String layout = "layout/";
    boolean inLayout = section.startsWith(layout);
    return (inLayout ? section.substring(layout.length()) : section) + "/" + taken.id();
  }

  private static Place place(Taken taken) {
    FileIndex index = Objects.requireNonNull(taken.file().index());
    String[] section = taken.section().split("/", -1);
    String[] names = Arrays.copyOf(section, section.length + 1);
    names[section.length] = taken.id();
    return index.nameAt(names);
  }
}
