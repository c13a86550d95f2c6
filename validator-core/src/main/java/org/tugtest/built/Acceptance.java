package org.tugtest.built;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.tugtest.facts.Facts;
import org.tugtest.model.BuildRecord;
import org.tugtest.model.Harness;
import org.tugtest.model.Loom;
import org.tugtest.model.Wire;
import org.tugtest.read.ReadFile;
import org.tugtest.schema.PublishedSchema;
import org.tugtest.text.JsonPointer;
import org.tugtest.text.NaturalOrder;
import org.tugtest.text.SourceText;
import org.tugtest.write.PlanEdit;

/**
 * Turns the deviations that the team accepts into the files of the next planned revision: the plan
 * says what was built, the loom gets its next revision, and the record is one of that revision with
 * the entries that are left. Either all of a record's accepted entries come into the plan, or none.
 *
 * @param files new texts by path; those that do not change are left out
 * @param done what was taken into the plan, one line each
 * @param left what was not, and why, one line each
 */
public record Acceptance(Map<String, String> files, List<String> done, List<String> left) {
  public Acceptance {
    files = Collections.unmodifiableMap(new TreeMap<>(files));
    done = List.copyOf(done);
    left = List.copyOf(left);
  }

  /** The changes that the accepted entries ask for; nothing is written. */
  public static Acceptance of(Facts plan, Intake intake, List<ReadFile<BuildRecord>> records) {
    return new Work(plan, intake, records).result();
  }

  private static final class Work {
    private final Facts plan;
    private final Intake intake;
    private final List<ReadFile<BuildRecord>> records;
    private final Map<String, String> texts = new TreeMap<>();
    private final Map<String, PlanEdit> edits = new TreeMap<>();
    private final List<String> done = new ArrayList<>();
    private final List<String> left = new ArrayList<>();
    private final Map<String, String> revisions = new TreeMap<>();

    Work(Facts plan, Intake intake, List<ReadFile<BuildRecord>> records) {
      this.plan = plan;
      this.intake = intake;
      this.records = records;
    }

    Acceptance result() {
      Map<String, List<TakenEntry>> byRecord = new LinkedHashMap<>();
      for (TakenEntry entry : intake.entries()) {
        Optional<String> blocked = stands(entry);
        if (blocked.isEmpty()) {
          byRecord.computeIfAbsent(entry.record().file(), none -> new ArrayList<>()).add(entry);
        } else {
          left.add(line(entry) + ": " + blocked.get());
        }
      }
      byRecord.forEach(this::record);
      for (ReadFile<BuildRecord> other : records) {
        String next = revisions.get(other.value().loom());
        if (next != null && !byRecord.containsKey(other.value().file())) {
          left.add(
              other.value().file() + " is still of the revision before " + next + ": bring it up");
        }
      }
      Map<String, String> files = new TreeMap<>();
      texts.forEach(
          (path, text) -> {
            SourceText before = text(path);
            if (before == null || !text.equals(before.text())) {
              files.put(path, text);
            }
          });
      return new Acceptance(files, done, left);
    }

    private Optional<String> stands(TakenEntry entry) {
      BuildRecord.Entry its = entry.entry();
      if (!its.accepted()) {
        return Optional.of("nobody has accepted it");
      }
      if (its.safe() == BuildRecord.Safe.NO) {
        return Optional.of("it is noted as not safe");
      }
      if (its.until() != null && its.until().isBefore(plan.today())) {
        return Optional.of("it was accepted until " + its.until());
      }
      return Optional.empty();
    }

    private static String line(TakenEntry entry) {
      return entry.deviation().told() + ", " + entry.deviation().what();
    }

    private void record(String file, List<TakenEntry> entries) {
      edits.clear();
      List<String> trouble = new ArrayList<>();
      for (TakenEntry entry : entries) {
        for (Alteration alteration : entry.alterations()) {
          alter(entry, alteration).ifPresent(why -> trouble.add(line(entry) + ": " + why));
        }
      }
      String loom = String.valueOf(entries.get(0).record().loom());
      String next = bump(loom);
      closeRecord(file, entries, next);
      edits.forEach(
          (path, edit) ->
              edit.problems().forEach(why -> trouble.add(path + " would break: " + why)));
      if (trouble.isEmpty()) {
        edits.forEach((path, edit) -> texts.put(path, edit.text()));
        entries.forEach(entry -> done.add(line(entry)));
        done.add("loom " + loom + " is now of revision " + next);
        revisions.put(loom, next);
      } else {
        left.addAll(trouble);
        left.add(file + ": nothing of it was taken");
      }
    }

    private Optional<String> alter(TakenEntry entry, Alteration alteration) {
      String thing = alteration.thing();
      Object value = alteration.value();
      if (alteration.fields().isEmpty() && value == null) {
        Optional<String> used = stillNamed(thing);
        if (used.isPresent()) {
          return used;
        }
      }
      Optional<String> unknown = partMissing(alteration);
      if (unknown.isPresent()) {
        return unknown;
      }
      boolean there = isThere(thing);
      String path =
          there ? plan.places().of(thing).file() : fileForNew(thing, entry.record().loom());
      PlanEdit edit = edit(path);
      if (edit == null) {
        return Optional.of(path + " could not be read");
      }
      List<String> names = new ArrayList<>(names(thing, there));
      names.addAll(alteration.fields());
      if (value == null) {
        edit.remove(names);
        return Optional.empty();
      }
      return edit.set(names, value)
          ? Optional.empty()
          : Optional.of("something else stands where " + String.join(".", names) + " would");
    }

    /** Whether a thing of the plan has a place of its own. */
    private boolean isThere(String thing) {
      if (thing.equals("fitted")) {
        return false;
      }
      String pointer = plan.places().of(thing).pointer();
      String id = thing.substring(thing.indexOf('/') + 1);
      return pointer.endsWith(JsonPointer.of(id));
    }

    private List<String> names(String thing, boolean there) {
      if (there) {
        return JsonPointer.names(plan.places().of(thing).pointer());
      }
      int slash = thing.indexOf('/');
      return slash < 0
          ? List.of(thing)
          : List.of(thing.substring(0, slash), thing.substring(slash + 1));
    }

    /** The file of the thing of that loom that comes before it in natural order; else the root. */
    private String fileForNew(String thing, @Nullable String loom) {
      Harness harness = plan.harness();
      if (thing.equals("fitted")) {
        return harness.fitted().keySet().stream()
            .findFirst()
            .map(id -> plan.places().of("fitted/" + id).file())
            .orElse(harness.root());
      }
      String id = thing.substring(thing.indexOf('/') + 1);
      String file = null;
      for (Wire wire : harness.wires().values()) {
        boolean before = NaturalOrder.NATURAL.compare(wire.id(), id) < 0;
        if (Objects.equals(wire.loom(), loom) && (before || file == null)) {
          file = plan.places().of("wires/" + wire.id()).file();
        }
      }
      if (file != null) {
        return file;
      }
      return loom == null ? harness.root() : plan.places().of("looms/" + loom).file();
    }

    /** A connector or splice that wires still name cannot go. */
    private Optional<String> stillNamed(String thing) {
      String id = thing.substring(thing.indexOf('/') + 1);
      for (Wire wire : intake.built().harness().wires().values()) {
        boolean from = wire.from() != null && wire.from().owner().equals(id);
        if (from || (wire.to() != null && wire.to().owner().equals(id))) {
          return Optional.of(
              "wire " + wire.id() + " still ends on it; write an entry for that too");
        }
      }
      return Optional.empty();
    }

    private Optional<String> partMissing(Alteration alteration) {
      if (alteration.fields().isEmpty() || !(alteration.value() instanceof String part)) {
        return Optional.empty();
      }
      String field = alteration.fields().get(alteration.fields().size() - 1);
      Harness harness = plan.harness();
      Map<String, ?> known =
          switch (alteration.thing().split("/", 2)[0] + " " + field) {
            case "wires part" -> harness.parts().wires();
            case "wires fromTerminal", "wires toTerminal", "connectors terminal" ->
                harness.parts().terminals();
            case "connectors housing" -> harness.parts().housings();
            case "splices part" -> harness.parts().splices();
            case "segments supportPart" -> harness.parts().supports();
            default ->
                alteration.thing().equals("fitted") ? harness.parts().fuses() : Map.of(part, part);
          };
      return known.containsKey(part)
          ? Optional.empty()
          : Optional.of(part + " is not among the parts; define it first");
    }

    private String bump(String loom) {
      Loom its = plan.harness().looms().get(loom);
      String is = its == null || its.revision() == null ? "" : its.revision();
      String known = revisions.get(loom);
      String next = known != null ? known : NextRevision.after(is).orElse(is + "+1");
      var place = plan.places().of("looms/" + loom, "revision");
      PlanEdit edit = edit(place.file());
      if (edit != null && known == null) {
        edit.set(JsonPointer.names(place.pointer()), next);
      }
      return next;
    }

    private void closeRecord(String file, List<TakenEntry> entries, String next) {
      PlanEdit edit = edit(file);
      if (edit != null) {
        entries.forEach(entry -> edit.remove(List.of("entries", entry.entry().id())));
        edit.set(List.of("record", "revision"), next);
      }
    }

    private @Nullable PlanEdit edit(String path) {
      PlanEdit known = edits.get(path);
      SourceText read = known == null ? text(path) : null;
      if (known == null && read != null) {
        SourceText text = texts.containsKey(path) ? SourceText.of(path, texts.get(path)) : read;
        boolean record = records.stream().anyMatch(one -> one.value().file().equals(path));
        known = new PlanEdit(text, record ? PublishedSchema.RECORD : PublishedSchema.HARNESS);
        edits.put(path, known);
      }
      return known;
    }

    private @Nullable SourceText text(String path) {
      for (ReadFile<BuildRecord> record : records) {
        if (record.value().file().equals(path)) {
          return record.text();
        }
      }
      return plan.texts().get(path);
    }
  }
}
