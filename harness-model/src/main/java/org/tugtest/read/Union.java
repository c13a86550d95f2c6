package org.tugtest.read;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
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
  private static final List<String> LOOM_FIELDS = List.of("title", "revision", "evidence", "stage");

  private final List<BoundFile> files;
  private final List<Problem> problems = new ArrayList<>();

  /** The files in the order in which they count, the root first. */
  Union(List<BoundFile> files) {
    this.files = List.copyOf(files);
  }

  List<Problem> problems() {
    return problems;
  }

  Harness harness() {
    Harness root = files.get(0).said();
    Namespace shared = namespace();
    return new Harness(
        root.root(),
        files.stream().map(BoundFile::path).toList(),
        root.title(),
        root.revision(),
        root.sketch(),
        root.defaults(),
        looms(),
        parts(),
        shared.join("devices", Harness::devices),
        alone("fitted", Harness::fitted),
        shared.join("connectors", Harness::connectors),
        shared.join("splices", Harness::splices),
        shared.join("wires", Harness::wires),
        shared.join("groups", Harness::groups),
        new Layout(
            alone("layout/nodes", said -> said.layout().nodes()),
            alone("layout/segments", said -> said.layout().segments())),
        alone("zones", Harness::zones),
        alone("states", Harness::states),
        alone("limits", Harness::limits),
        alone("waivers", Harness::waivers),
        alone("expectations", Harness::expectations));
  }

  private Namespace namespace() {
    return new Namespace(files, problems);
  }

  private <V> Map<String, V> alone(String section, Function<Harness, Map<String, V>> of) {
    return namespace().join(section, of);
  }

  private Parts parts() {
    return new Parts(
        part("wires", Parts::wires),
        part("housings", Parts::housings),
        part("terminals", Parts::terminals),
        part("seals", Parts::seals),
        part("splices", Parts::splices),
        part("fuses", Parts::fuses),
        part("coverings", Parts::coverings),
        part("supports", Parts::supports),
        part("deviceTypes", Parts::deviceTypes));
  }

  private <V> Map<String, V> part(String kind, Function<Parts, Map<String, V>> of) {
    return alone("parts/" + kind, said -> of.apply(said.parts()));
  }

  private Map<String, Loom> looms() {
    Map<String, Loom> looms = new LinkedHashMap<>();
    Map<String, Place> given = new HashMap<>();
    LoomIds ids = new LoomIds(problems);
    for (BoundFile file : files) {
      FileIndex index = file.index();
      for (Loom loom : file.said().looms().values()) {
        if (index != null) {
          ids.check(loom.id(), index.at("loom", "id"));
          LOOM_FIELDS.stream()
              .filter(field -> index.hasEntry("loom", field))
              .forEach(field -> once(loom.id(), field, index.nameAt("loom", field), given));
        }
        looms.merge(loom.id(), loom, Union::both);
      }
    }
    return looms;
  }

  private void once(String loom, String field, Place place, Map<String, Place> given) {
    Place first = given.putIfAbsent(loom + "/" + field, place);
    if (first != null) {
      problems.add(
          new Problem(
              Problem.Kind.ID_GIVEN_TWICE,
              "looms/" + loom,
              field
                  + " of loom "
                  + loom
                  + " is given in "
                  + first.file()
                  + " and in "
                  + place.file()
                  + ".",
              "Keep it in one of the two files; \"id\" alone joins the other to the loom.",
              List.of(place, first)));
    }
  }

  private static Loom both(Loom first, Loom second) {
    return new Loom(
        first.id(),
        first.title() != null ? first.title() : second.title(),
        first.revision() != null ? first.revision() : second.revision(),
        first.evidence() != null ? first.evidence() : second.evidence(),
        first.stage() != Loom.Stage.PLANNED ? first.stage() : second.stage());
  }
}
