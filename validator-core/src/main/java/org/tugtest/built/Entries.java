package org.tugtest.built;

import java.util.ArrayList;
import java.util.List;
import org.tugtest.facts.Facts;
import org.tugtest.model.BuildRecord;
import org.tugtest.model.Loom;
import org.tugtest.read.ReadFile;
import org.tugtest.text.Place;

/** Holds the entries of one record against the plan that it names. */
final class Entries {
  private final Facts plan;
  private final List<TakenEntry> taken = new ArrayList<>();
  private final List<Refusal> refused = new ArrayList<>();

  Entries(Facts plan) {
    this.plan = plan;
  }

  List<TakenEntry> taken() {
    return taken;
  }

  List<Refusal> refused() {
    return refused;
  }

  /** Takes what fits; a record of another revision does not fit at all. */
  void read(ReadFile<BuildRecord> file) {
    BuildRecord record = file.value();
    file.problems()
        .forEach(
            problem ->
                refused.add(new Refusal(problem.message(), problem.remedy(), problem.at().get(0))));
    if (record.loom() == null || record.revision() == null) {
      return;
    }
    Loom loom = plan.harness().looms().get(record.loom());
    Place head = head(file);
    if (loom == null) {
      refuse(
          record.file() + " is of loom " + record.loom() + ", which " + root() + " has not",
          Names.nearest(record.loom(), plan.harness().looms().keySet(), "looms"),
          head);
      return;
    }
    if (!record.revision().equals(loom.revision())) {
      refuse(
          record.file()
              + " is of revision "
              + record.revision()
              + " of loom "
              + loom.id()
              + "; the plan "
              + (loom.revision() == null ? "gives it no revision" : "is at " + loom.revision()),
          loom.revision() == null
              ? "give the loom its \"revision\""
              : "hold it against the commit of revision "
                  + record.revision()
                  + ", or bring the record up to "
                  + loom.revision(),
          head);
      return;
    }
    for (BuildRecord.Entry entry : record.entries().values()) {
      entry(file, record, entry);
    }
  }

  private String root() {
    return plan.harness().root();
  }

  private static Place head(ReadFile<BuildRecord> file) {
    Place any = file.places().of("record");
    return any.file().isEmpty() ? Place.point(file.value().file(), 1, 1, "") : any;
  }

  private void refuse(String message, String remedy, Place at) {
    refused.add(new Refusal(message, remedy, at));
  }

  private void entry(ReadFile<BuildRecord> file, BuildRecord record, BuildRecord.Entry entry) {
    Place at = file.places().of("entries/" + entry.id());
    if (entry.kind() == null || entry.at() == null) {
      return;
    }
    EntryReader reader = new EntryReader(plan, record, entry, at);
    try {
      taken.add(reader.read());
    } catch (Misfit misfit) {
      refuse(
          "entry " + entry.id() + " of " + record.file() + " " + misfit.getMessage(),
          misfit.remedy(),
          at);
    }
  }

  /** An entry does not fit the plan. */
  static final class Misfit extends Exception {
    private static final long serialVersionUID = 1;
    private final String remedy;

    Misfit(String message, String remedy) {
      super(message, null, false, false);
      this.remedy = remedy;
    }

    String remedy() {
      return remedy;
    }
  }
}
