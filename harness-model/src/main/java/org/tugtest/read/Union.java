package org.tugtest.read;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import org.tugtest.model.Harness;
import org.tugtest.model.Layout;
import org.tugtest.model.Loom;
import org.tugtest.model.Parts;
import org.tugtest.text.Place;
import org.tugtest.text.Problem;

/** Puts the files of one root together; nothing overrides, the first that gives an id is kept. */
final class Union {
  private final List<Problem> problems;

  Union(List<Problem> problems) {
    this.problems = problems;
  }

  Harness of(List<BoundFile> files) {
    Harness root = files.get(0).said();
    Namespace shared = new Namespace(files);
    return new Harness(
        root.root(),
        files.stream().map(BoundFile::path).toList(),
        root.title(),
        root.revision(),
        root.sketch(),
        root.defaults(),
        looms(files),
        parts(files),
        shared.join("devices", Harness::devices),
        new Namespace(files).join("fitted", Harness::fitted),
        shared.join("connectors", Harness::connectors),
        shared.join("splices", Harness::splices),
        shared.join("wires", Harness::wires),
        shared.join("groups", Harness::groups),
        new Layout(
            new Namespace(files).join("layout/nodes", said -> said.layout().nodes()),
            new Namespace(files).join("layout/segments", said -> said.layout().segments())),
        new Namespace(files).join("zones", Harness::zones),
        new Namespace(files).join("states", Harness::states),
        new Namespace(files).join("limits", Harness::limits),
        new Namespace(files).join("waivers", Harness::waivers),
        new Namespace(files).join("expectations", Harness::expectations));
  }

  private Parts parts(List<BoundFile> files) {
    return new Parts(
        part(files, "wires", Parts::wires),
        part(files, "housings", Parts::housings),
        part(files, "terminals", Parts::terminals),
        part(files, "seals", Parts::seals),
        part(files, "splices", Parts::splices),
        part(files, "fuses", Parts::fuses),
        part(files, "coverings", Parts::coverings),
        part(files, "supports", Parts::supports),
        part(files, "deviceTypes", Parts::deviceTypes));
  }

  private <V> Map<String, V> part(
      List<BoundFile> files, String kind, Function<Parts, Map<String, V>> of) {
    return new Namespace(files).join("parts/" + kind, said -> of.apply(said.parts()));
  }

  private Map<String, Loom> looms(List<BoundFile> files) {
    Map<String, Loom> looms = new LinkedHashMap<>();
    for (BoundFile file : files) {
      file.said().looms().forEach((id, loom) -> looms.merge(id, loom, Union::both));
    }
    return looms;
  }

  private static Loom both(Loom first, Loom second) {
    return new Loom(
        first.id(),
        first.title() != null ? first.title() : second.title(),
        first.revision() != null ? first.revision() : second.revision(),
        first.evidence() != null ? first.evidence() : second.evidence(),
        first.stage() != Loom.Stage.PLANNED ? first.stage() : second.stage());
  }

  /** Ids that must differ from each other. */
  private final class Namespace {
    private final List<BoundFile> files;
    private final Map<String, Taken> taken = new HashMap<>();

    Namespace(List<BoundFile> files) {
      this.files = files;
    }

    private record Taken(String section, String id, BoundFile file) {}

    <V> Map<String, V> join(String section, Function<Harness, Map<String, V>> of) {
      Map<String, V> joined = new LinkedHashMap<>();
      for (BoundFile file : files) {
        for (Map.Entry<String, V> entry : of.apply(file.said()).entrySet()) {
          Taken mine = new Taken(section, entry.getKey(), file);
          Taken first = taken.putIfAbsent(entry.getKey().toLowerCase(Locale.ROOT), mine);
          if (first == null) {
            joined.put(entry.getKey(), entry.getValue());
          } else {
            twice(first, mine);
          }
        }
      }
      return joined;
    }

    private void twice(Taken first, Taken second) {
      boolean same = first.id().equals(second.id());
      problems.add(
          new Problem(
              Problem.Kind.ID_GIVEN_TWICE,
              thing(second),
              same
                  ? second.id()
                      + " is given twice, in "
                      + first.section()
                      + " and "
                      + second.section()
                  : second.id() + " differs from " + first.id() + " only in upper and lower case",
              "Rename one of them.",
              List.of(place(second), place(first))));
    }

    private String thing(Taken taken) {
      return taken.section().replace("layout/", "") + "/" + taken.id();
    }

    private Place place(Taken taken) {
      FileIndex index = java.util.Objects.requireNonNull(taken.file().index());
      String[] section = taken.section().split("/", -1);
      String[] names = java.util.Arrays.copyOf(section, section.length + 1);
      names[section.length] = taken.id();
      return index.nameAt(names);
    }
  }
}
