package org.tugtest.write;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.tugtest.model.Device;
import org.tugtest.read.ReadHarness;
import org.tugtest.text.NaturalOrder;
import org.tugtest.text.Problem;
import org.tugtest.text.SourceText;

/**
 * Writes out what the wires of sketches imply, so that it can be filled in: a connector with its
 * cavities for each unknown name that a wire gives with a cavity, a splice for each name given
 * alone, and the cavities and pins of connectors and devices that list none. A new entry goes into
 * the file whose wires name it; where several do, into the first file of their loom, else into the
 * root. All roots of a folder are taken together, since they may share files.
 */
public final class Adoption {
  private final Map<String, JsonEdit> edits = new TreeMap<>();
  private final Map<String, SourceText> texts = new HashMap<>();
  private final List<Problem> problems = new ArrayList<>();
  private final Set<String> added = new TreeSet<>(NaturalOrder.NATURAL);
  private final Set<String> left = new TreeSet<>();
  private final Map<String, Set<String>> targets = new HashMap<>();

  private Adoption() {}

  /** Writes out what those of {@code roots} imply that are sketches. */
  public static AdoptionResult adopt(Collection<ReadHarness> roots) {
    List<ReadHarness> sketches =
        roots.stream()
            .filter(root -> root.harness().sketch())
            .sorted(Comparator.comparing(r -> r.harness().root(), NaturalOrder.NATURAL))
            .toList();
    List<Problem> unread =
        sketches.stream()
            .filter(sketch -> !sketch.unread().isEmpty())
            .flatMap(sketch -> sketch.problems().stream())
            .filter(problem -> problem.kind() == Problem.Kind.FILE_UNREADABLE)
            .distinct()
            .toList();
    return unread.isEmpty()
        ? new Adoption().adoptAll(sketches)
        : new AdoptionResult.Refused(unread);
  }

  private AdoptionResult adoptAll(List<ReadHarness> sketches) {
    Map<ReadHarness, SketchNeeds> needs = new HashMap<>();
    for (ReadHarness sketch : sketches) {
      texts.putAll(sketch.texts());
      needs.put(sketch, new SketchNeeds(sketch));
    }
    for (boolean intoRoot : new boolean[] {false, true}) {
      for (ReadHarness sketch : sketches) {
        newOwners(sketch, Objects.requireNonNull(needs.get(sketch)), intoRoot);
      }
    }
    for (ReadHarness sketch : sketches) {
      moreNames(sketch, Objects.requireNonNull(needs.get(sketch)));
    }
    if (!problems.isEmpty()) {
      return new AdoptionResult.Refused(problems.stream().distinct().toList());
    }
    Map<String, String> files = new TreeMap<>();
    edits.forEach(
        (path, edit) -> {
          if (!edit.isEmpty()
              && TidyWriter.tidy(path, edit.text()) instanceof TidyResult.Tidied tidied) {
            files.put(path, tidied.text());
          }
        });
    return new AdoptionResult.Adopted(files, List.copyOf(added), List.copyOf(left));
  }

  /** Writes connectors and splices that are not there; those that go into roots in a second go. */
  private void newOwners(ReadHarness sketch, SketchNeeds needs, boolean intoRoot) {
    Set<String> owners = new TreeSet<>(NaturalOrder.NATURAL);
    owners.addAll(needs.connectors().keySet());
    owners.addAll(needs.splices());
    for (String owner : owners) {
      String target = target(sketch, needs, owner);
      if (target.equals(sketch.harness().root()) != intoRoot) {
        continue;
      }
      targets.computeIfAbsent(owner, id -> new HashSet<>()).add(target);
      if (needs.splices().contains(owner)) {
        add(target, "splices/" + owner, List.of("splices", owner));
      } else {
        Objects.requireNonNull(needs.connectors().get(owner))
            .forEach(cavity -> addCavity(target, owner, cavity));
      }
    }
  }

  private void addCavity(String file, String connector, String cavity) {
    add(
        file,
        "connectors/" + connector + ":" + cavity,
        List.of("connectors", connector, "cavities", cavity));
  }

  /** The file for a new entry: one chosen for another root where this root has that file too. */
  private String target(ReadHarness sketch, SketchNeeds needs, String owner) {
    List<String> files = sketch.harness().files();
    for (String chosen : new TreeSet<>(targets.getOrDefault(owner, Set.of()))) {
      if (files.contains(chosen)) {
        return chosen;
      }
    }
    List<String> naming = needs.filesNaming(owner).stream().filter(Adoption::isOurs).toList();
    boolean foreign = naming.size() < needs.filesNaming(owner).size();
    if (naming.isEmpty() || (naming.size() > 1 && !needs.areOneLoom(naming)) || foreign) {
      return sketch.harness().root();
    }
    return naming.get(0);
  }

  /** Writes cavities and pins of things that are there. */
  private void moreNames(ReadHarness sketch, SketchNeeds needs) {
    needs
        .cavities()
        .forEach(
            (connector, cavities) -> {
              String file = sketch.places().of("connectors/" + connector).file();
              cavities.forEach(cavity -> addCavity(file, connector, cavity));
            });
    needs.pins().forEach((device, pins) -> pins.forEach(pin -> addPin(sketch, device, pin)));
  }

  private void addPin(ReadHarness sketch, String id, String pin) {
    Device device = Objects.requireNonNull(sketch.harness().devices().get(id));
    String type = device.type();
    if (type == null) {
      String file = sketch.places().of("devices/" + id).file();
      add(file, "devices/" + id + ":" + pin, List.of("devices", id, "pins", pin));
    } else {
      String part = "parts/deviceTypes/" + type;
      String file = sketch.places().of(part).file();
      add(file, part + ":" + pin, List.of("parts", "deviceTypes", type, "pins", pin));
    }
  }

  private void add(String file, String thing, List<String> names) {
    JsonEdit edit = edit(file);
    if (!isOurs(file)) {
      left.add(thing + " was not written: " + file + " is a shared library.");
    } else if (edit == null) {
      left.add(thing + " was not written: " + file + " cannot be read.");
    } else if (!edit.fits(names)) {
      left.add(thing + " was not written: what stands in its place in " + file + " is no object.");
    } else {
      edit.setIfMissing(names, "{}");
      added.add(thing);
    }
  }

  private @Nullable JsonEdit edit(String file) {
    JsonEdit known = edits.get(file);
    SourceText source = texts.get(file);
    if (known != null || source == null) {
      return known;
    }
    JsonText.Parsed parsed = JsonText.parse(source);
    if (parsed.text() == null) {
      problems.addAll(parsed.problems());
      return null;
    }
    JsonEdit edit = new JsonEdit(parsed.text());
    edits.put(file, edit);
    return edit;
  }

  /** Shared libraries stand outside the harness folder and are never written to. */
  private static boolean isOurs(String file) {
    return !file.startsWith("../");
  }
}
